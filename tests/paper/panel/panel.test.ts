// What is written on the panels: inside them, clear of lines, and readable.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { type Style, USUAL_SHOULDERS, withPoints } from '../../../src/engine';
import { identifyPiece } from '../../../src/engine/terms/identity';
import { layOut, type PlacedPanel, patternPdf, planProjected } from '../../../src/paper';
import { boxOfText, cornersOf } from '../../../src/paper/panel/textBlock';
import { DEMO_SHEET, demoPattern, quickPattern } from '../demoPattern';
import { type ReadPoint, readPattern, sampled, toLines } from '../readPattern';

const style = DEMO_SHEET.style;

/** Even-odd rule, by its own reckoning. */
const within = ({ x, y }: ReadPoint, ring: readonly ReadPoint[]): boolean =>
  ring.filter((a, i) => {
    const b = ring[(i + 1) % ring.length] as ReadPoint;
    return a.y > y !== b.y > y && a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) > x;
  }).length %
    2 ===
  1;

const sewn = ({ piece, offset }: PlacedPanel): ReadPoint[] =>
  piece.edges
    .flatMap(({ points }) => points.slice(0, -1))
    .map(({ x, y }) => ({ x: x + offset.x, y: y + offset.y }));

const closed = (points: readonly ReadPoint[]): ReadPoint[] => [...points, points[0] as ReadPoint];

/** The front bust wedge as a dart from the hem, a back wedge as one with two points. */
const DARTED: Style = {
  ...style,
  wedges: style.wedges.map((wedge) => {
    if (wedge.station !== 0) return wedge;
    const upper = { from: 'bust', below: 25 } as const;
    return withPoints(
      wedge,
      wedge.block === 'front' ? { upper } : { upper, lower: { from: 'waist', below: 60 } },
    );
  }),
};

const styles: readonly (readonly [string, Style])[] = [
  ['the default style', style],
  [
    'a front on the fold',
    {
      ...style,
      closure: { ...style.closure, front: 'fold' },
      wedges: style.wedges.filter(({ station }) => station > -1),
    },
  ],
  ['edges without allowance', { ...style, allowances: { seam: 0, side: 0, top: 0, hem: 0, centre: 0 } }],
  [
    'eight panels',
    {
      ...style,
      wedges: [
        ...style.wedges,
        ...[0.72, -0.5].map((station, i) => ({
          ...(style.wedges[1] as Style['wedges'][number]),
          id: `more-${i}`,
          station,
          weight: 1,
        })),
      ],
    },
  ],
  ['a short bodice', { ...style, hemBelow: -40 }],
  ['darts open and closed', DARTED],
  ['darts under shoulders', { ...DARTED, shoulders: USUAL_SHOULDERS }],
  ['a side panel cut in one', { ...style, joinedSide: true }],
];

describe.each(styles)('texts of %s', (_, tried) => {
  const { panels } = layOut(demoPattern('A4', tried));

  it('stand on every panel: its name, client, draft, how often it is cut', () => {
    expect(panels.length).toBeGreaterThan(3);
    for (const { piece, texts } of panels) {
      const said = texts.map(({ text }) => text).join('\n');
      expect(said).toContain(
        piece.kind === 'sidePanel'
          ? 'Side panel'
          : `${piece.block === 'front' ? 'Front' : 'Back'} ${piece.number}`,
      );
      expect(said).toContain('Wren Abernathy');
      expect(said).toContain('Winter ball bodice');
      expect(said).toContain(piece.cut.onFold ? 'Cut 1 on fold' : 'Cut 2');
    }
  });

  it('name each edge and each level marked on the panel', () => {
    for (const { piece, texts } of panels) {
      const said = texts.map(({ text }) => text);
      expect(said.filter((text) => / · (\d|½|no allowance|place on fold)/.test(text))).toHaveLength(
        piece.edges.filter(({ dart }) => dart === undefined).length,
      );
      expect(said.filter((text) => text === 'Dart')).toHaveLength(piece.darts.length);
      if (piece.marks.some(({ level }) => level === 'waist')) expect(said).toContain('Waist');
    }
  });

  it('lie over no line and over no other text, and are 6 pt or more', () => {
    for (const { lines, texts } of panels) {
      const boxes = texts.map((text) => closed(cornersOf(boxOfText(text))));
      const drawn = lines.map(({ points }) => points);
      for (const [i, box] of boxes.entries()) {
        expect(texts[i]?.sizePt).toBeGreaterThanOrEqual(6 - 1e-9);
        expect(Math.min(...sampled(box, 0.5).map((point) => toLines(point, drawn)))).toBeGreaterThan(0.2);
        const others = boxes.filter((_other, j) => j !== i);
        expect(sampled(box, 0.5).some((point) => others.some((other) => within(point, other)))).toBe(false);
      }
    }
  });

  it('have their title inside the sew line', () => {
    for (const panel of panels) {
      const title = panel.texts.slice(0, 4).flatMap((text) => cornersOf(boxOfText(text)));
      expect(title.every((corner) => within(corner, sewn(panel)))).toBe(true);
    }
  });
});

const shelf = (name: string): Style => {
  const found = NAMED_STYLES.get(name)?.style;
  if (!found) throw new Error(`no style ${name}`);
  return found;
};

describe('the text of an edge on the fold', () => {
  it.each(['bridal-bodice', 'off-shoulder-bridal', 'darted-bodice'])('lies on the panel: %s', (name) => {
    const folded = layOut(quickPattern('A4', shelf(name))).panels.filter(({ piece }) => piece.cut.onFold);
    expect(folded.length).toBeGreaterThan(0);
    for (const panel of folded) {
      const text = panel.texts.find((each) => each.text.endsWith('place on fold'));
      const corners = text ? cornersOf(boxOfText(text)) : [];
      expect(corners.map((corner) => within(corner, sewn(panel)))).toEqual([true, true, true, true]);
    }
  });
});

/** Letters of a projector's size would just fit in, were the lines thin. */
const NARROW: Style = {
  ...DARTED,
  allowances: { seam: 6.35, side: 6.35, top: 6.35, hem: 6.35, centre: 6.35 },
};

describe('texts in a projector’s light', () => {
  // The sew line is half as heavy as the cut line.
  it.each([0.5, 1.5, 3])('stay off lines that are drawn %f mm heavy', (lineMm) => {
    for (const tried of [DARTED, NARROW, shelf('darted-bodice'), shelf('princess-bodice')])
      for (const { lines, texts } of planProjected(demoPattern('A4', tried), { widthMm: 914.4, lineMm })
        .panels)
        for (const text of texts) {
          const box = sampled(closed(cornersOf(boxOfText(text))), 0.5);
          for (const { kind, points } of lines) {
            const halfMm = kind === 'cut' ? lineMm / 2 : lineMm / 4;
            expect(Math.min(...box.map((point) => toLines(point, [points]))), text.text).toBeGreaterThan(
              halfMm,
            );
          }
        }
  });
});

describe('the title of a panel', () => {
  it('stands well clear of the lines, in smaller letters where it must', () => {
    const { panels } = layOut(quickPattern());
    for (const { texts, lines } of panels) {
      const title = texts.slice(0, 4).flatMap((text) => sampled(closed(cornersOf(boxOfText(text))), 0.5));
      const drawn = lines.filter(({ kind }) => kind === 'sew').map(({ points }) => points);
      expect(Math.min(...title.map((point) => toLines(point, drawn)))).toBeGreaterThan(3.9);
    }
  });
});

describe('lines of a panel', () => {
  it('are the engine’s own points', () => {
    for (const { piece, offset, lines } of layOut(quickPattern()).panels) {
      const drawn = lines
        .filter(({ kind }) => kind === 'cut' || kind === 'sew')
        .flatMap(({ points }) => points);
      for (const { x, y } of [...piece.cutLine, ...piece.edges.flatMap(({ points }) => points)])
        expect(
          Math.min(...drawn.map((point) => Math.hypot(point.x - x - offset.x, point.y - y - offset.y))),
        ).toBeLessThan(1e-9);
    }
  });

  it('carry each balance mark across the seam line, out to the cut line', () => {
    for (const { piece, offset, lines } of layOut(quickPattern()).panels) {
      const marks = lines.filter(({ kind }) => kind === 'mark');
      expect(marks).toHaveLength(piece.marks.length);
      const ring = closed(piece.cutLine).map(({ x, y }) => ({ x: x + offset.x, y: y + offset.y }));
      for (const [i, { points }] of marks.entries()) {
        const [inner, outer] = points as [ReadPoint, ReadPoint];
        const at = piece.marks[i]?.at as ReadPoint;
        expect(toLines({ x: at.x + offset.x, y: at.y + offset.y }, [points])).toBeLessThan(1e-6);
        expect(toLines(outer, [ring])).toBeLessThan(1e-6);
        expect(Math.hypot(inner.x - at.x - offset.x, inner.y - at.y - offset.y)).toBeCloseTo(4, 6);
      }
    }
  });
});

describe('a panel with no room for its title', () => {
  it('has it beside the cut line, with a line that leads to it', () => {
    const drafted = demoPattern();
    const [front] = drafted.draft.pieces;
    if (!front) throw new Error('the demo draft has pieces');
    const corners = [
      { x: 0, y: 0 },
      { x: 0, y: 30 },
      { x: 12, y: 30 },
      { x: 12, y: 0 },
    ];
    const edges = front.edges.map((edge, i) => ({
      ...edge,
      allowance: 0,
      points: [corners[i] as ReadPoint, corners[(i + 1) % 4] as ReadPoint],
    }));
    const grain = [
      { x: 6, y: 5 },
      { x: 6, y: 25 },
    ] as const;
    const small = { ...front, edges, cutLine: corners, grain, marks: [] };
    const [panel] = layOut({ ...drafted, draft: { ...drafted.draft, pieces: [small] } }).panels;
    const title = panel?.texts.find(({ text }) => text.startsWith('Front 1 · Cut 2'));
    const leader = panel?.lines.find(({ kind }) => kind === 'leader');
    const right = (panel?.offset.x ?? 0) + 12;
    expect(title?.start.x).toBeGreaterThan(right);
    expect(leader?.points[0]?.x).toBeGreaterThan(right);
    expect(leader?.points[1]?.x).toBeCloseTo(right - 6, 6);
  });
});

describe('a panel as narrow as a strap', () => {
  it('has the texts of its short edges inside, each with a line that leads to its edge', () => {
    const drafted = demoPattern();
    const [front] = drafted.draft.pieces;
    if (!front) throw new Error('the demo draft has pieces');
    const corners = [
      { x: 0, y: 0 },
      { x: 0, y: 320 },
      { x: 24, y: 320 },
      { x: 24, y: 0 },
    ];
    const edges = front.edges.map((edge, i) => ({
      ...edge,
      role: 'seam' as const,
      isSideSeam: i % 2 === 1,
      mate: { piece: identifyPiece('panel', 'front', 2), edge: i },
      allowance: 6,
      points: [corners[i] as ReadPoint, corners[(i + 1) % 4] as ReadPoint],
    }));
    const cutLine = corners.map(({ x, y }) => ({ x: x === 0 ? -6 : 30, y: y === 0 ? -6 : 326 }));
    const grain = [
      { x: 9, y: 30 },
      { x: 9, y: 290 },
    ] as const;
    const strap = { ...front, edges, cutLine, grain, marks: [] };
    const [panel] = layOut({ ...drafted, draft: { ...drafted.draft, pieces: [strap] } }).panels;
    if (!panel) throw new Error('laid out');
    const named = panel.texts.filter(({ text }) => text.endsWith('· ¼ in'));
    expect(named).toHaveLength(4);
    const leaders = panel.lines.filter(({ kind }) => kind === 'leader');
    expect(leaders).toHaveLength(2);
    const ends = leaders.map(({ points }) => (points[1]?.y ?? 0) - panel.offset.y);
    expect(ends.sort((a, b) => a - b)).toEqual([0, 320]);
    const boxes = panel.texts.map((text) => closed(cornersOf(boxOfText(text))));
    const drawn = panel.lines.map(({ points }) => points);
    for (const box of boxes)
      expect(Math.min(...sampled(box, 0.5).map((point) => toLines(point, drawn)))).toBeGreaterThan(0.2);
  });
});

describe('the darts of a pattern', () => {
  it('are drawn once, as sew lines from end to end, and have no allowance on the first page', async () => {
    const asked = quickPattern('A4', DARTED);
    const { panels } = layOut(asked);
    const darts = panels.flatMap(({ piece, offset, lines }) =>
      piece.darts.map(({ inner, outer }) => ({ legs: [inner, outer], offset, lines })),
    );
    expect(darts.map(({ legs }) => legs.length)).toEqual([2, 2]);
    for (const { legs, offset, lines } of darts)
      for (const leg of legs) {
        const along = leg.map(({ x, y }) => ({ x: x + offset.x, y: y + offset.y }));
        const over = lines.filter(
          ({ kind, points }) =>
            kind === 'sew' && Math.max(...along.map((point) => toLines(point, [points]))) < 1e-6,
        );
        expect(over).toHaveLength(1);
      }
    const { pages } = await readPattern(await patternPdf(asked));
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).not.toContain('none:');
  });
});
