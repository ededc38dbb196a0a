// Darts and the side panel without a side seam on realistic bodies: every bound of every draft, read off the finished outlines.

import { describe, expect, it } from 'vitest';
import {
  type BlockName,
  balancedWedge,
  type DartPoint,
  DEFAULT_STYLE,
  draft,
  type Style,
  type Wedge,
  withPoints,
} from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { lengthOf, sewnAcross } from '../../support/judges/outline';

const SEED = 407;
const COUNT = howMany({ few: 50, all: 300 });
const CLOSED = howMany({ few: 20, all: 100 });
const BODIES = drawBodies(COUNT, SEED);

interface Ends {
  readonly upper?: DartPoint;
  readonly lower?: DartPoint;
}

const dart = (id: string, block: BlockName, station: number, ends: Ends): Wedge =>
  withPoints(balancedWedge(id, block, station, 2), ends);

const byHand = (wedge: Wedge, intake: Wedge['intake']): Wedge => ({ ...wedge, sizing: 'manual', intake });

const UPPER: Ends = { upper: { from: 'bust', below: 25 } };
const FISH_EYE: Ends = { ...UPPER, lower: { from: 'waist', below: 80 } };
const FROM_TOP: Ends = { lower: { from: 'waist', below: 60 } };

const inner = DEFAULT_STYLE.wedges.filter(({ station }) => station < 0.4);

const STYLES: readonly { name: string; style: Style }[] = [
  {
    name: 'closed darts',
    style: {
      ...DEFAULT_STYLE,
      wedges: [...inner, dart('fs', 'front', 0.5, FISH_EYE), dart('bs', 'back', 0.5, FISH_EYE)],
    },
  },
  {
    name: 'darts open at the hem',
    style: {
      ...DEFAULT_STYLE,
      wedges: [...inner, dart('fs', 'front', 0.5, UPPER), dart('bs', 'back', 0.5, UPPER)],
    },
  },
  {
    name: 'darts open at the waist, two in one panel',
    style: {
      ...DEFAULT_STYLE,
      hemBelow: 0,
      wedges: [
        dart('fb', 'front', 0, { upper: { from: 'bust', below: 20 } }),
        dart('fs', 'front', 0.55, { upper: { from: 'bust', below: 40 } }),
        dart('bs', 'back', 0, UPPER),
      ],
    },
  },
  {
    name: 'darts open at the top edge',
    style: {
      ...DEFAULT_STYLE,
      wedges: [
        ...inner,
        byHand(dart('fs', 'front', 0.5, FROM_TOP), { overBust: 15, bust: 12, underBust: 18, waist: 25 }),
        byHand(dart('bs', 'back', 0.5, FROM_TOP), { overBust: 10, bust: 12, underBust: 18, waist: 25 }),
      ],
    },
  },
  { name: 'a side panel without a side seam', style: { ...DEFAULT_STYLE, joinedSide: true } },
  {
    name: 'a dart in a side panel without a side seam',
    style: {
      ...DEFAULT_STYLE,
      joinedSide: true,
      wedges: [...inner, byHand(dart('fd', 'front', 0.6, FISH_EYE), { underBust: 8, waist: 14 })],
    },
  },
];

describe.each(STYLES)(`$name on ${COUNT} drawn bodies, seed ${SEED}`, ({ style }) => {
  it('keeps every bound, and is refused at most one time in a hundred', DRAWN, () => {
    let refused = 0;
    for (const [i, body] of BODIES.entries()) {
      const made = draft(body, style);
      const findings = judge(body, style, made);
      expect(broken(findings), `body ${i}`).toEqual([]);
      expect(
        findings.filter(({ bound }) => bound === 'D1').length,
        `body ${i}: girths measured`,
      ).toBeGreaterThan(0);
      if (made.issues.some(({ severity }) => severity === 'error')) refused += 1;
    }
    expect(refused).toBeLessThanOrEqual(COUNT / 100);
  });
});

describe('darts', () => {
  const [closed, open] = STYLES.map(({ style }) => BODIES.slice(0, CLOSED).map((body) => draft(body, style)));

  it('closed ones have legs of one length and a drill mark half an inch inside each point', () => {
    const darts = (closed ?? []).flatMap(({ pieces }) =>
      pieces.flatMap((piece) => piece.darts.map((lines) => ({ piece, lines }))),
    );
    expect(darts.length).toBeGreaterThan((19 / 10) * CLOSED);
    for (const { piece, lines } of darts) {
      expect(lines.open).toBe(false);
      expect(Math.abs(lengthOf(lines.inner) - lengthOf(lines.outer))).toBeLessThan(0.05);
      const drills = piece.marks.filter(({ kind }) => kind === 'drill').map(({ at }) => at.y);
      const [top, foot] = [lines.inner[0]?.y ?? 0, lines.inner.at(-1)?.y ?? 0];
      // Half an inch inside the point: common practice, no source.
      expect(drills).toEqual([top + 12.7, foot - 12.7]);
    }
  });

  it('open ones part the hem with two legs that are each other’s mates', () => {
    for (const { pieces } of open ?? []) {
      const legs = pieces.flatMap((piece) => piece.edges.filter((edge) => edge.dart !== undefined));
      expect(legs.length % 2).toBe(0);
      expect(legs.every(({ role, mate }) => role === 'seam' && mate !== null)).toBe(true);
    }
  });

  it('take as much as the ledger says', () => {
    for (const { pieces, blocks, levels } of closed ?? []) {
      const waist = levels.find(({ name }) => name === 'waist')?.y ?? 0;
      for (const block of ['front', 'back'] as const) {
        const cloth = pieces
          .filter((piece) => piece.block === block)
          .reduce((sum, piece) => sum + (sewnAcross(piece, waist) ?? Number.NaN), 0);
        const net = levels.find(({ name }) => name === 'waist')?.net[block] ?? Number.NaN;
        expect(cloth).toBeCloseTo(net, 6);
        expect(
          blocks?.[block].wedges.some(
            ({ extent, intake }) => extent.upper !== null && (intake.get('waist') ?? 0) > 3,
          ),
        ).toBe(true);
      }
    }
  });
});

describe('a side panel without a side seam', () => {
  it('stands for the two side panels and keeps their width at every level', () => {
    for (const body of BODIES.slice(0, CLOSED)) {
      const [apart, joined] = [
        draft(body, DEFAULT_STYLE),
        draft(body, { ...DEFAULT_STYLE, joinedSide: true }),
      ];
      expect(joined.pieces.map(({ id }) => id)).toEqual(['front-1', 'front-2', 'side', 'back-1', 'back-2']);
      let compared = 0;
      for (const row of apart.proof.ledger) {
        const [front, back] = [row.widths['front-3'], row.widths['back-3']];
        const whole = joined.proof.ledger.find(({ level }) => level === row.level)?.widths.side;
        // The over-bust line lies at the top edge, which the panels do not cross at one place.
        if (front === undefined || back === undefined || whole === undefined) continue;
        expect(whole).toBeCloseTo(front + back, 6);
        compared += 1;
      }
      expect(compared).toBeGreaterThan(0);
    }
  });

  it('is refused with a reason where there is no seam between the side and a centre line', () => {
    const made = draft(BODIES[0] as (typeof BODIES)[number], {
      ...DEFAULT_STYLE,
      wedges: [],
      joinedSide: true,
    });
    expect(made.issues.find(({ code }) => code === 'sidePanelAtCentre')?.severity).toBe('error');
    expect(made.pieces.length).toBeGreaterThan(0);
  });
});

describe('a dart that cannot be sewn is refused where it stands', () => {
  const body = BODIES[0] as (typeof BODIES)[number];
  const told = (wedge: Wedge): string[] =>
    draft(body, { ...DEFAULT_STYLE, wedges: [...inner, wedge] })
      .issues.filter(({ at }) => at.wedge === 'd' || at.field?.startsWith('wedges.d'))
      .map(({ code, severity }) => `${code} ${severity}`);

  it.each([
    [
      'points crossed',
      { upper: { from: 'waist', below: 50 }, lower: { from: 'bust', below: 20 } },
      'dartTooShort error',
    ],
    [
      'no level between its points',
      { upper: { from: 'waist', below: 8 }, lower: { from: 'waist', below: 60 } },
      'dartTakesNothing warn',
    ],
    [
      'its point at the hem',
      { upper: { from: 'bust', below: 20 }, lower: { from: 'waist', below: 97 } },
      'dartEndsAtEdge error',
    ],
  ] satisfies [string, Ends, string][])('%s', (_, ends, expected) => {
    const wedge = byHand(dart('d', 'front', 0.5, ends), { underBust: 10, waist: 20, highHip: 8, hip: 4 });
    expect(told(wedge)).toContain(expected);
  });

  it('a dart that would add cloth', () => {
    expect(told(byHand(dart('d', 'front', 0.5, FISH_EYE), { waist: -5 }))).toContain('styleOutOfRange error');
  });
});
