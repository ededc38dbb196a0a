// The drafting sheet: who draws by nothing but what is written on it comes out where the engine does.

import { describe, expect, it } from 'vitest';
import {
  DEMO_CLIENT,
  edgeName,
  NAMED_STYLES,
  parseLength,
  pieceLabel,
  type Unit,
  wedgeNameOf,
} from '../../../src/document';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  type Edge,
  type Piece,
  type Point,
  type Style,
} from '../../../src/engine';
import { type SmoothLine, smoothLine, xAt } from '../../../src/engine/geometry/smoothLine';
import type { PlanInput } from '../../../src/paper';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import type { DraftingSheet, DraftingStep } from '../../../src/paper/draftingSheet/elements/draftingStep';
import { drawBodies } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';
import { DEMO_SHEET, demoPattern } from '../demoPattern';
import { sampled, toLines } from '../readPattern';

/** What a hand may be out by: 1/16 in, the finest division of the tape. */
const HAND_MM = 25.4 / 16;
/** Between two marks, each out by up to half a division, a curve through them may swing by a division more. Our own bound. */
const CURVE_MM = 2 * HAND_MM;

const SHOULDERED = [
  'princess-bodice',
  'darted-bodice',
  'basque-bodice',
  'armhole-bridal',
  'off-shoulder-bridal',
] as const;
const STYLES = randomFrom(77);
const ALL: readonly { readonly name: string; readonly input: PlanInput }[] = [
  { name: 'demo in inches', input: demoPattern() },
  { name: 'demo in cm', input: { ...demoPattern(), client: { ...DEMO_CLIENT, unit: 'cm' } } },
  ...SHOULDERED.map((name) => ({
    name,
    input: demoPattern('A4', NAMED_STYLES.get(name)?.style),
  })),
  ...drawBodies(20, 808).map((drawn, i) => {
    const name = SHOULDERED[i % SHOULDERED.length] ?? '';
    // The survey has no width of shoulders.
    const body = withShoulders(drawn);
    const style = NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE;
    const unit: Unit = i % 3 === 0 ? 'cm' : 'in';
    return {
      name: `${name} on body ${i}`,
      input: {
        draft: draft(body, style),
        client: { name: 'Drawn', unit, measurements: body, estimated: [] },
        savedDraft: { ...DEMO_SHEET, style },
        date: '1 May 2026',
      },
    };
  }),
  ...drawBodies(30, 615).map((body, i) => {
    const style: Style = i < 10 ? DEFAULT_STYLE : { ...DEFAULT_STYLE, ...randomStyle(STYLES) };
    const unit: Unit = i % 3 === 0 ? 'cm' : 'in';
    return {
      name: `body ${i}`,
      input: {
        draft: draft(body, style),
        client: { name: 'Drawn', unit, measurements: body, estimated: [] },
        savedDraft: { ...DEMO_SHEET, style },
        date: '1 May 2026',
      },
    };
  }),
];
const CASES = ALL.filter(({ input }) => input.draft.pieces.length > 0);

/** A drawing made from the words of a sheet alone. */
class DrawnSheet {
  readonly lines: ReadonlyMap<string, number>;

  constructor(
    readonly sheet: DraftingSheet,
    readonly unit: Unit,
  ) {
    this.lines = new Map(this.rows(/^Centre lines/).map(([name = '', y]) => [name, this.read(y)]));
  }

  read(text: string | undefined): number {
    const parsed = parseLength(text ?? '', this.unit, { signed: true });
    if (!parsed.ok) throw new Error(`“${text}” is no length: ${parsed.fault}`);
    return parsed.mm;
  }

  step(heading: RegExp): DraftingStep | undefined {
    return this.sheet.steps.find((step) => heading.test(step.heading));
  }

  rows(heading: RegExp): readonly (readonly string[])[] {
    return this.sheet.steps
      .filter((step) => heading.test(step.heading))
      .flatMap(({ tables }) => tables.flatMap(({ rows }) => rows));
  }

  /** Marks of a column of a step, by the line they stand on. */
  marks(heading: string, column: string): Map<string, Point> {
    const step = this.sheet.steps.find((each) => each.heading === heading);
    const [table] = step?.tables ?? [];
    const i = table?.columns.indexOf(column) ?? -1;
    return new Map(
      (table?.rows ?? []).map((row) => [
        row[0] ?? '',
        { x: i < 0 ? 0 : this.read(row[i]), y: this.lines.get(row[0] ?? '') ?? Number.NaN },
      ]),
    );
  }

  /** "⅛ above", "on the line" below a line: a height. */
  against(said: string | undefined, line: number): number {
    if (said === 'on the line') return line;
    const match = /^(.+) (above|below)$/.exec(said ?? '');
    if (!match) throw new Error(`“${said}” says no height`);
    return line + (match[2] === 'above' ? -1 : 1) * this.read(match[1]);
  }
}

/** Both long edges of a piece as the sheet has them drawn: column of a step. */
function longEdges(
  drafted: Draft,
  style: Style,
  piece: Piece,
): { edge: Edge; heading: string; column: string }[] {
  const block = drafted.blocks?.[piece.block];
  if (!block) return [];
  const side = piece.block === 'front' ? 'Front' : 'Back';
  const heading = (id: string): string => {
    const name = wedgeNameOf(id, style);
    return `${side}: ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  };
  const centre = block.wedges.find(({ onCentre }) => onCentre);
  const cuts = block.wedges.filter(
    (wedge) => wedge !== centre && wedge.extent.upper === null && wedge.extent.lower === null,
  );
  const [before, after] = [cuts[piece.number - 2], cuts[piece.number - 1]];
  const long = piece.edges.filter(
    ({ role, dart }) => (role === 'seam' || role === 'centre') && dart === undefined,
  );
  return long.map((edge) => {
    const isSide = edge.isSideSeam || edge.points === long.at(-1)?.points;
    if (edge === long[0] && piece.number === 1)
      return { edge, heading: centre ? heading(centre.id) : 'none', column: 'Outer leg' };
    if (!isSide || edge === long[0]) return { edge, heading: heading(before?.id ?? ''), column: 'Outer leg' };
    return after
      ? { edge, heading: heading(after.id), column: 'Inner leg' }
      : { edge, heading: `${side}: the side seam`, column: 'Side seam from the centre line' };
  });
}

const xOn = ({ points }: Edge, y: number): number | null => {
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if ((a.y <= y && b.y >= y) || (b.y <= y && a.y >= y))
      return a.y === b.y ? a.x : a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
  }
  return null;
};

describe.each(CASES)('drawn by hand: $name', ({ input }) => {
  const { draft: drafted, client, savedDraft } = input;
  const reader = new DrawnSheet(draftingSheet(input), client.unit);

  it('has every leg and side seam where the panels have their edges, at each level', () => {
    let compared = 0;
    for (const piece of drafted.pieces)
      for (const { edge, heading, column } of longEdges(drafted, savedDraft.style, piece)) {
        if (heading === 'none') {
          for (const { x } of edge.points) expect(x).toBe(0);
          continue;
        }
        const marks = reader.marks(heading, column);
        for (const level of drafted.levels) {
          const x = xOn(edge, level.y);
          if (x === null) continue;
          const mark = [...marks.values()].find(({ y }) => Math.abs(y - level.y) < 1);
          const away = Math.hypot((mark?.x ?? Number.NaN) - x, (mark?.y ?? Number.NaN) - level.y);
          expect(away, `${piece.id}, ${heading}, ${level.name}`).toBeLessThanOrEqual(HAND_MM);
          compared += 1;
        }
      }
    // A garment that lies between two levels has none to compare at.
    const reached = drafted.proof.ledger.filter(({ sewnGirth }) => sewnGirth !== null).length;
    expect(compared).toBeGreaterThanOrEqual(reached * drafted.pieces.length);
  });

  it('keeps a smooth curve through the marks on the edge between them too', () => {
    for (const piece of drafted.pieces)
      for (const { edge, heading, column } of longEdges(drafted, savedDraft.style, piece)) {
        if (heading === 'none') continue;
        const marks = [...reader.marks(heading, column).values()];
        const line = smoothLine(
          marks.map(({ y }) => y),
          marks.map(({ x }) => x),
          // Beyond its last marks a curve is drawn as it goes there.
          { start: 'free', end: 'free' },
        );
        const ys = edge.points.map(({ y }) => y);
        const drawn = sampled(
          Array.from({ length: 400 }, (_, i) => {
            const y = Math.min(...ys) + ((Math.max(...ys) - Math.min(...ys)) * i) / 399;
            return { x: drawnAt(line, y), y };
          }),
          5,
        );
        for (const point of drawn)
          expect(toLines(point, [edge.points]), `${piece.id}, ${heading}, ${point.y}`).toBeLessThanOrEqual(
            CURVE_MM,
          );
      }
  });

  it('has ends and balance marks of both mates where truing put them', () => {
    const rows = reader.rows(/^True/);
    const line = (name: string): number =>
      [...reader.lines].find(([key]) => key.toLowerCase().split(', ').includes(name))?.[1] ?? Number.NaN;
    const upperLine = (block: 'front' | 'back', number: number): string => {
      const end = drafted.blocks?.[block].upper?.ends.filter(({ isDart }) => !isDart)[number - 1];
      if (end?.edge !== 'armhole') return block === 'front' ? 'mid-shoulder' : 'mid-shoulder of the back';
      const near = [...reader.lines].find(
        ([name, y]) => /^End in the armhole/.test(name) && Math.abs(y - end.at.point.y) <= HAND_MM / 2 + 0.01,
      );
      return near?.[0].toLowerCase() ?? 'no line';
    };
    const label = ({ block, number }: Piece): string => `${block === 'front' ? 'Front' : 'Back'} ${number}`;
    for (const { seam, a, b } of drafted.proof.seams) {
      const { kind } = seam;
      if (kind === 'shoulder' || kind === 'dart' || kind === 'joined') continue;
      const mates = [a, b].map(({ piece, edge }) => {
        const own = drafted.pieces.find(({ id }) => id === piece.id) as Piece;
        const ys = (own.edges[edge] as Edge).points.map(({ y }) => y);
        const marks = new Map(
          own.marks.flatMap((mark) =>
            mark.edge === edge && mark.level !== null ? [[mark.level, mark.at.y] as const] : [],
          ),
        );
        return { own, top: Math.min(...ys), hem: Math.max(...ys), marks };
      });
      const called = mates.map(({ own }) => label(own)).join(' – ');
      const check = (what: string, lineName: string, heights: readonly number[]): void => {
        const row = rows.find(([name, from]) => name === `${called}, ${what}` && from === lineName);
        for (const [i, y] of heights.entries()) {
          const drawn = reader.against(row ? row[i + 2] : 'on the line', line(lineName));
          expect(Math.abs(drawn - y), `${called}, ${what}, ${lineName}`).toBeLessThanOrEqual(
            HAND_MM / 2 + 0.01,
          );
        }
      };
      check(
        'upper end',
        // A wedge of a shouldered block runs up to mid-shoulder, or to its own end in the armhole.
        kind === 'wedge' && drafted.blocks?.[a.piece.block].upper
          ? upperLine(a.piece.block, a.piece.number)
          : 'top line',
        mates.map(({ top }) => top),
      );
      check(
        'lower end',
        'hem line',
        mates.map(({ hem }) => hem),
      );
      const names = {
        overBust: 'over-bust',
        bust: 'bust',
        underBust: 'under-bust',
        waist: 'waist',
        highHip: 'high hip',
        hip: 'hip',
      };
      for (const level of mates[0]?.marks.keys() ?? [])
        check(
          'mark',
          names[level],
          mates.map(({ marks }) => marks.get(level) ?? Number.NaN),
        );
    }
  });

  it('has top edge, hem, neckline, shoulder and armhole through its points', () => {
    const rows = reader
      .rows(/: neckline, shoulder|^Top edge|^Hem$/)
      .filter(([name = '']) => !name.includes(' – '));
    const starts = rows.flatMap(([name], i) => (name === '' ? [] : [i]));
    const free = drafted.pieces.flatMap((piece) =>
      piece.edges
        .filter(({ role }) => role !== 'seam' && role !== 'centre')
        .map((edge) => ({ edge, name: `${pieceLabel(piece)}, ${edgeName(edge, piece)}` })),
    );
    expect(starts.map((i) => rows[i]?.[0]).sort()).toEqual(free.map(({ name }) => name).sort());
    const drawn = starts.map((start, i) => ({
      name: rows[start]?.[0],
      points: rows
        .slice(start, starts[i + 1])
        .map(([, x, y]): Point => ({ x: reader.read(x), y: reader.read(y) })),
    }));
    const away = (p: Point | undefined, q: Point | undefined): number =>
      Math.hypot((p?.x ?? Number.NaN) - (q?.x ?? 0), (p?.y ?? 0) - (q?.y ?? 0));
    for (const { edge, name } of free) {
      const ends = [edge.points[0], edge.points.at(-1)].sort((p, q) => (p?.x ?? 0) - (q?.x ?? 0));
      const own = drawn.filter((each) => each.name === name);
      const found = own.find(
        ({ points }) => Math.max(away(points[0], ends[0]), away(points.at(-1), ends[1])) <= HAND_MM,
      );
      expect(found, name).toBeDefined();
      for (const point of found?.points ?? [])
        expect(toLines(point, [edge.points])).toBeLessThanOrEqual(HAND_MM);
    }
  });

  it('has the points of darts, and legs from there to their marks, where they are cut', () => {
    const [points, legs] = reader.step(/^Darts$/)?.tables ?? [];
    const darts = drafted.pieces.flatMap((piece) => piece.darts);
    expect(legs?.rows ?? []).toHaveLength(darts.length);
    const drawn = (points?.rows ?? []).map(([, x, y]) => ({ x: reader.read(x), y: reader.read(y) }));
    for (const [i, { inner, outer }] of darts.entries()) {
      const [, innerLeg, outerLeg] = legs?.rows[i] ?? [];
      for (const [said, leg] of [
        [innerLeg, inner],
        [outerLeg, outer],
      ] as const) {
        const length = leg
          .slice(1)
          .reduce(
            (sum, { x, y }, j) => sum + Math.hypot(x - (leg[j] as Point).x, y - (leg[j] as Point).y),
            0,
          );
        expect(Math.abs(reader.read(said) - length)).toBeLessThanOrEqual(HAND_MM / 2 + 0.01);
      }
      // Both legs meet at each point of a dart; the point is on the sheet.
      for (const [a, b] of [
        [inner[0], outer[0]],
        [inner.at(-1), outer.at(-1)],
      ]) {
        if (!a || !b || Math.hypot(a.x - b.x, a.y - b.y) > 0.1) continue;
        expect(Math.min(...drawn.map(({ x, y }) => Math.hypot(x - a.x, y - a.y)))).toBeLessThanOrEqual(
          HAND_MM,
        );
      }
    }
  });

  it('adds up: closed half and wedges to the width, panels to half of the garment', () => {
    for (const side of ['Front', 'Back']) {
      const rows = reader.rows(new RegExp(`^${side}: the side seam`));
      for (const [, net, wedges, width] of rows)
        if (net !== '') expect(reader.read(net) + reader.read(wedges)).toBeCloseTo(reader.read(width), 3);
    }
    for (const [name, panels = '', together, must] of reader.rows(/^Prove/)) {
      const sum = panels.split(' + ').reduce((all, each) => all + reader.read(each), 0);
      expect(sum, name).toBeCloseTo(reader.read(together), 3);
      // Each panel is rounded by itself: half a division a panel, and half of one for the sum itself.
      expect(Math.abs(sum - reader.read(must)), name).toBeLessThanOrEqual(
        (drafted.pieces.length + 1) * (HAND_MM / 2) + 0.1,
      );
    }
  });

  it('says only numbers', () => {
    expect(JSON.stringify(reader.sheet)).not.toMatch(/NaN|undefined|Infinity|"–"/);
    for (const { tables } of reader.sheet.steps)
      for (const { columns, rows } of tables)
        for (const row of rows) expect(row).toHaveLength(columns.length);
  });
});

describe('a sheet with shoulders or darts', () => {
  const sheetOf = (name: string): DrawnSheet =>
    new DrawnSheet(draftingSheet(demoPattern('A4', NAMED_STYLES.get(name)?.style)), DEMO_CLIENT.unit);

  it('names mid-shoulder and the points of darts for what they are', () => {
    const princess = [...sheetOf('princess-bodice').lines.keys()];
    expect(princess[0]).toBe('Mid-shoulder');
    // The second dart behind ends half an inch lower than the first.
    expect(princess.filter((name) => name.startsWith('Dart point at '))).toHaveLength(3);
    const darted = [...sheetOf('darted-bodice').lines.keys()];
    // Two heights of waist darts, and the bust dart above them.
    expect(darted.filter((name) => name.startsWith('Dart point at '))).toHaveLength(3);
    expect(darted[0]).toMatch(/^End in the armhole at /);
    for (const name of [...princess, ...darted]) expect(name).not.toMatch(/cup/i);
    expect([...new DrawnSheet(draftingSheet(demoPattern()), 'in').lines.keys()].join()).not.toMatch(
      /Dart|shoulder/,
    );
  });

  it('gives no sum to the over-bust line where the side line does not lie at it', () => {
    const { style } = NAMED_STYLES.get('princess-bodice') as { style: Style };
    // A full bust close under the arm: the girth falls by 140 mm within 35 mm of height.
    const girths = { bust: 1060, overBust: 920, underBust: 800, waist: 720, bustPointWidth: 210 };
    const lengths = {
      neckToBust: 290,
      neckToUnderBust: 365,
      neckToWaist: 425,
      neckToHip: 630,
      underarmToWaist: 170,
    };
    const body = { ...DEMO_CLIENT.measurements, ...girths, ...lengths };
    for (const [measurements, isHeld] of [
      [DEMO_CLIENT.measurements, false],
      [body, true],
    ] as const) {
      const { steps } = draftingSheet({
        draft: draft(measurements, style),
        client: { name: 'Drawn', unit: 'cm', measurements, estimated: [] },
        savedDraft: { ...DEMO_SHEET, style },
        date: '1 May 2026',
      });
      const side = steps.find(({ heading }) => heading === 'Front: the side seam') as DraftingStep;
      const rows = side.tables[0]?.rows ?? [];
      const [line, closed, wedges, x] = rows.find(([name]) => name === 'Over-bust') ?? [];
      expect([line, x]).not.toContain('');
      expect([closed, wedges].filter((cell) => cell === '')).toHaveLength(isHeld ? 2 : 0);
      expect(side.sentences.some((sentence) => sentence.includes('no cloth goes round'))).toBe(isHeld);
      expect(rows.find(([name]) => name === 'Bust')).not.toContain('');
    }
  });

  it('gives a wedge the lines from the one above its own end down, and no end of another wedge', () => {
    const ends: number[] = [];
    for (const name of ['princess-bodice', 'armhole-bridal', 'darted-bodice', 'basque-bodice'])
      for (const { heading, tables } of draftingSheet(demoPattern('A4', NAMED_STYLES.get(name)?.style))
        .steps) {
        if (!/^(Front|Back): .* wedge/.test(heading)) continue;
        const lines = (tables[0]?.rows ?? []).map(([line]) => line ?? '');
        const own = lines.filter((line) => /^(End in|Mid-shoulder)/.test(line));
        expect(own.length, `${name}, ${heading}: ${own}`).toBeLessThanOrEqual(1);
        ends.push(...own.map((line) => lines.indexOf(line)));
      }
    expect(ends.length).toBeGreaterThan(5);
    expect(Math.max(...ends)).toBeLessThanOrEqual(1);
  });

  it('gives a dart numbers between its points only, and the side seam from the underarm down', () => {
    const reader = sheetOf('princess-bodice');
    const dart = reader.rows(/^Front: side-front dart/);
    expect(dart[0]?.[0]).toMatch(/^Dart point/);
    expect(dart.at(-1)?.[0]).toMatch(/^Dart point/);
    expect(dart.slice(1, -1).length).toBeGreaterThan(2);
    for (const [, intake] of dart.slice(1, -1)) expect(reader.read(intake)).toBeGreaterThan(0);
    for (const [, intake] of [dart[0], dart.at(-1)].map((row) => row ?? []))
      expect(reader.read(intake)).toBe(0);
    expect(reader.rows(/^Front: the side seam/)[0]?.[0]).toMatch(/^Over-bust/);
    expect(reader.rows(/^Front: bust wedge/)[0]?.[0]).toBe('Mid-shoulder');
  });

  it('measures shoulder seams and the legs of darts instead of truing them from the waist', () => {
    for (const name of ['princess-bodice', 'darted-bodice']) {
      const reader = sheetOf(name);
      const trued = reader.rows(/^True/);
      // Where front and back are one panel each, the side seam has the name of the shoulder seam.
      const measured =
        name === 'princess-bodice'
          ? /Front 1 – (Front 1|Back 1)|Back 1 – Back 1/
          : /Front 1 – Front 1|Back 1 – Back 1/;
      for (const [seam] of trued) expect(seam).not.toMatch(measured);
      const made = demoPattern('A4', NAMED_STYLES.get(name)?.style).draft;
      const shoulder = reader.rows(/^Back: neckline/).filter(([seam = '']) => seam.includes(' – '));
      const rows = made.proof.seams.filter(({ seam }) => seam.kind === 'shoulder');
      expect(shoulder).toHaveLength(rows.length);
      for (const [i, { lengthA, lengthB }] of rows.entries()) {
        expect(Math.abs(reader.read(shoulder[i]?.[1]) - lengthA)).toBeLessThanOrEqual(HAND_MM / 2 + 0.01);
        expect(Math.abs(reader.read(shoulder[i]?.[2]) - lengthB)).toBeLessThanOrEqual(HAND_MM / 2 + 0.01);
      }
      const [points, legs] = reader.step(/^Darts$/)?.tables ?? [];
      const darts = made.pieces.flatMap((piece) => piece.darts);
      expect(legs?.rows).toHaveLength(darts.length);
      // A closed dart has two points, an open one has one.
      expect(points?.rows).toHaveLength(darts.reduce((sum, { open }) => sum + (open ? 1 : 2), 0));
      for (const [, inner, outer] of legs?.rows ?? [])
        expect(Math.abs(reader.read(inner) - reader.read(outer))).toBeLessThanOrEqual(HAND_MM);
    }
    expect(sheetOf('off-shoulder-bridal').step(/^Darts$|neckline/)).toBeUndefined();
  });
});

describe('a sheet with a shoulder band', () => {
  const style = NAMED_STYLES.get('off-shoulder-bridal')?.style as Style;

  /** Every point of a band's step lies on the band, and its allowances are the band's own. */
  const follows = (reader: DrawnSheet, heading: RegExp, band: Piece | undefined): void => {
    const [edges, marks] = reader.step(heading)?.tables ?? [];
    expect(band).toBeDefined();
    expect(edges?.rows.filter(([name]) => name !== '').map(([name]) => name)).toEqual([
      `centre ${band?.block}`,
      ...(band?.edges ?? []).flatMap(({ mate, role }) =>
        role === 'seam' && mate ? [`edge to ${pieceLabel(mate.piece)}`] : [],
      ),
      'armhole',
      'shoulder line',
      'neckline',
    ]);
    let at = -1;
    for (const [name, x, y, allowance] of edges?.rows ?? []) {
      if (name !== '') at += 1;
      const edge = band?.edges[at] as Edge;
      const point = { x: reader.read(x), y: reader.read(y) };
      expect(toLines(point, [edge.points]), name).toBeLessThanOrEqual(HAND_MM);
      if (name === '' || allowance === 'on the fold') continue;
      expect(reader.read(allowance)).toBeCloseTo(edge.allowance, 3);
    }
    expect(marks?.rows).toHaveLength(band?.marks.length ?? 0);
    for (const [, x, y] of marks?.rows ?? [])
      expect(
        toLines(
          { x: reader.read(x), y: reader.read(y) },
          (band?.edges ?? []).filter(({ role }) => role === 'seam').map(({ points }) => points),
        ),
      ).toBeLessThanOrEqual(HAND_MM);
  };

  it('draws each band through its own points, and rules it as no strip', () => {
    const input = demoPattern('A4', style);
    const reader = new DrawnSheet(draftingSheet(input), DEMO_CLIENT.unit);
    for (const block of ['front', 'back'] as const)
      follows(
        reader,
        new RegExp(`^${block} shoulder band$`, 'i'),
        input.draft.extras.find(({ id }) => id === `${block}-band`),
      );
    expect(reader.rows(/^Beside the panels/).map(([strip]) => strip)).toEqual(['Back modesty panel']);
  });

  it('draws the bands of each half in that half’s own coordinates, where the sides differ', () => {
    const rightWedges = style.wedges.map((wedge) => ({ ...wedge, id: `right-${wedge.id}` }));
    const input = demoPattern('A4', { ...style, rightWedges });
    const whole = draftWhole(DEMO_CLIENT.measurements, { ...style, rightWedges });
    const reader = new DrawnSheet(draftingSheet({ ...input, draft: whole }), DEMO_CLIENT.unit);
    for (const side of ['left', 'right'] as const)
      follows(
        reader,
        new RegExp(`^${side} half: front shoulder band$`, 'i'),
        whole.halves?.[side].extras.find(({ id }) => id === 'front-band'),
      );
    // Each panel once, as the sheet's remark and the whole draft have it.
    const cut = reader.rows(/half: cut apart/);
    expect(cut).toHaveLength(whole.pieces.length);
    for (const [, count] of cut) expect(count).toBe('1');
  });
});

describe('a sheet', () => {
  it('has no steps where nothing could be drafted', () => {
    const input = demoPattern();
    const none = draft({ ...DEMO_TAPE, waist: null }, DEFAULT_STYLE);
    const sheet = draftingSheet({ ...input, draft: none });
    expect(sheet.steps).toEqual([]);
    expect(sheet.warning).toMatch(/do not cut/);
  });
});

const DEMO_TAPE = drawBodies(1, 3)[0] as ReturnType<typeof drawBodies>[number];

/** x of a curve at a height, going straight on past its first and last mark. */
function drawnAt(line: SmoothLine, y: number): number {
  const { ys, slopes } = line;
  const last = ys.length - 1;
  const within = Math.min(ys[last] ?? y, Math.max(ys[0] ?? y, y));
  const slope = (y < within ? slopes[0] : slopes[last]) ?? 0;
  return xAt(line, within) + slope * (y - within);
}
