import { describe, expect, it } from 'vitest';
import {
  type BlockName,
  balancedWedge,
  type Draft,
  draft,
  LEAST_PANEL_MM,
  type LevelName,
  type Style,
  type Wedge,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { howMany } from '../../support/howMany';
import { SET_LINES } from '../../support/styles/setLines';

const intakesAt = (
  style: Style,
  block: BlockName,
  level: 'overBust' | 'bust' | 'underBust' | 'waist' | 'hip',
  body = MEAN_BODY,
): number[] =>
  (draft(body, style).blocks?.[block].wedges ?? []).map((wedge) => wedge.intake.get(level) ?? Number.NaN);

const netOf = (levels: Draft['levels'], name: LevelName, block: BlockName): number =>
  levels.find((level) => level.name === name)?.net[block] ?? Number.NaN;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const withWedges = (wedges: readonly Wedge[], more: Partial<Style> = {}): Style => ({
  ...SET_LINES,
  ...more,
  wedges,
});

/** What the front's wedges have to place at the waist of the mean body, by hand from the style's figures. */
const wantedAtWaist = (sideShare: number): number => {
  const [bust, waist] = [MEAN_BODY.bust / 2, (MEAN_BODY.waist - 50.8) / 2];
  return 0.53 * bust - 0.51 * waist - (sideShare * (bust - waist)) / 2;
};

describe('balancing', () => {
  it('places what bust and level differ by, less the side seam', () => {
    expect(sum(intakesAt(SET_LINES, 'front', 'waist'))).toBeCloseTo(wantedAtWaist(0.22), 9);
    expect(intakesAt(SET_LINES, 'front', 'bust')).toEqual([0, 0, 0]);
  });

  it('shares by weight where nothing is capped', () => {
    const [centre, bust, side] = intakesAt(SET_LINES, 'front', 'waist') as [number, number, number];
    expect(bust / centre).toBeCloseTo(2.5, 9);
    expect(side / centre).toBeCloseTo(3, 9);
  });

  it('caps a wedge, gives the rest to the others, then to the side, and says so', () => {
    const capped = { ...SET_LINES, balance: { sideShare: 0.22, cap: 18 } };
    expect(Math.max(...intakesAt(capped, 'front', 'waist'))).toBeLessThanOrEqual(18);
    const low = { ...SET_LINES, balance: { sideShare: 0.22, cap: 5 } };
    const made = draft(MEAN_BODY, low);
    expect(intakesAt(low, 'front', 'waist')).toEqual([5, 5, 5]);
    const said = made.issues.find(
      ({ code, at }) => code === 'intakeNotPlaced' && at.block === 'front' && at.level === 'waist',
    );
    expect(said?.values.left).toBeCloseTo(wantedAtWaist(0.22) - 15, 6);
    expect(said?.severity).toBe('note');
  });

  it('leaves a wedge sized by hand alone and works round it', () => {
    const locked = withWedges(
      SET_LINES.wedges.map((wedge) =>
        wedge.id === 'front-bust' ? { ...wedge, sizing: 'manual' as const, intake: { waist: 12 } } : wedge,
      ),
    );
    const [centre, bust, side] = intakesAt(locked, 'front', 'waist') as [number, number, number];
    expect(bust).toBe(12);
    expect(centre + bust + side).toBeCloseTo(wantedAtWaist(0.22), 9);
    expect(side / centre).toBeCloseTo(3, 9);
    expect(intakesAt(locked, 'front', 'underBust')[1]).toBe(0);
  });

  it('leaves a panel that can be sewn and boned beside a centre wedge sized by hand, however much is to be placed', () => {
    // A slim waist, and no cap but the panels themselves; the centre wedge lies wholly on the panel's side of the centre line.
    const slim = { ...MEAN_BODY, waist: MEAN_BODY.waist - 150 };
    for (const station of [-0.3, -0.4, -0.5])
      for (const taken of [10, 20]) {
        const wedges: Wedge[] = [
          { ...balancedWedge('centre', 'front', -1, 1), sizing: 'manual', intake: { waist: taken } },
          balancedWedge('bust', 'front', station, 1),
        ];
        const style = withWedges(wedges, { balance: { sideShare: 0.22, cap: 150 } });
        expect(intakesAt(style, 'front', 'waist', slim)[1]).toBeGreaterThan(5);
        const { proof, issues } = draft(slim, style);
        const waist = proof.ledger.find(({ level }) => level === 'waist');
        expect(waist?.widths['front-1']).toBeGreaterThanOrEqual(LEAST_PANEL_MM);
        expect(issues.filter(({ code }) => code === 'panelTooNarrow')).toEqual([]);
      }
  });

  it('takes nothing where the wedges by hand already take more than is needed', () => {
    const locked = withWedges([
      { ...balancedWedge('front-hand', 'front', -0.2, 1), sizing: 'manual', intake: { waist: 90 } },
      balancedWedge('front-left', 'front', 0.5, 1),
    ]);
    expect(intakesAt(locked, 'front', 'waist')).toEqual([90, 0]);
  });

  it('is never negative from bust to waist, nor above but where the block widens there; a panel left too narrow is a blocking issue', {
    timeout: 60_000,
  }, () => {
    for (const body of drawBodies(howMany({ few: 40, all: 400 }), 5)) {
      const { blocks, levels, issues, proof } = draft(body, SET_LINES);
      for (const block of ['front', 'back'] as const) {
        const wedges = blocks?.[block].wedges ?? [];
        for (const { intake } of wedges)
          for (const level of ['bust', 'underBust', 'waist'] as const)
            expect(intake.get(level) ?? 0).toBeGreaterThanOrEqual(0);
        // All wedges together let out half of what the block is wider there, its centre line none of it. What the girth above the
        // bust asks of them is taken in all the same: the side seam has a part of that, also where it is less than nothing.
        const wider = netOf(levels, 'overBust', block) - netOf(levels, 'bust', block);
        const taken = wedges.map(({ intake }) => intake.get('overBust') ?? 0);
        const half = (name: LevelName): number => netOf(levels, name, 'front') + netOf(levels, name, 'back');
        const side = (SET_LINES.balance.sideShare * (half('bust') - half('overBust'))) / 2;
        const toTakeIn = Math.max(0, -wider - side);
        if (wider > 0) expect(sum(taken)).toBeCloseTo(toTakeIn - wider / 2, 6);
        else expect(Math.min(...taken)).toBeGreaterThanOrEqual(0);
        for (const [i, { onCentre }] of wedges.entries())
          if (onCentre) expect(taken[i]).toBeGreaterThanOrEqual(0);
      }
      const narrow = issues.filter(({ code }) => code === 'panelTooNarrow').map(({ at }) => at.piece);
      for (const { widths } of proof.ledger)
        for (const [piece, width] of Object.entries(widths))
          if (width < LEAST_PANEL_MM) expect(narrow).toContain(piece);
    }
  });

  it('wedges and side seam together are the suppression, exactly', () => {
    for (const body of drawBodies(howMany({ few: 40, all: 200 }), 6)) {
      const { blocks, levels } = draft(body, SET_LINES);
      const bust = levels.find(({ name }) => name === 'bust');
      for (const name of ['front', 'back'] as const)
        for (const level of levels) {
          const block = blocks?.[name];
          if (!block || !bust) throw new Error('a drawn body is drafted');
          const wedges = sum(
            block.wedges.map(
              (wedge) => (wedge.intake.get(level.name) ?? 0) - (wedge.intake.get('bust') ?? 0),
            ),
          );
          const seam = (block.width.get('bust') ?? 0) - (block.width.get(level.name) ?? 0);
          expect(wedges + seam).toBeCloseTo(bust.net[name] - level.net[name], 9);
        }
    }
  });
});
