// The girth ledger, what each wedge is said to take and the widths of panels tell of one and the same cloth: read again here off
// the finished outlines, by code of the tests, in every ready style.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { type Draft, draft, type Piece } from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { withShoulders } from '../support/bodies/sizedBodies';
import { howMany } from '../support/howMany';
import { ringOf, sewnAcross } from '../support/judges/outline';

const BODIES = drawBodies(howMany({ few: 10, all: 100 }), 1616).map(withShoulders);

/** Half of the finest division of the tape: two lengths nearer than this are written alike, or a division apart. mm */
const HALF_SIXTEENTH_MM = 25.4 / 32;

/** The least and the greatest x of an outline at a height; null where it does not cross it. */
function spanAt(piece: Piece, y: number): [number, number] | null {
  const ring = ringOf(piece);
  const crossed = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as { x: number; y: number };
    return a.y > y !== b.y > y ? [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)] : [];
  });
  return crossed.length < 2 ? null : [Math.min(...crossed), Math.max(...crossed)];
}

/** What lies open between neighbouring panels of a block at a height, by the wedge that parts them, mm. */
function gapsAt({ pieces, blocks }: Draft, block: 'front' | 'back', y: number): Map<string, number> {
  const panels = pieces.filter((piece) => piece.kind === 'panel' && piece.block === block);
  const parting = (blocks?.[block].wedges ?? []).filter(
    ({ onCentre, extent }) => !onCentre && extent.upper === null && extent.lower === null,
  );
  return new Map(
    parting.flatMap(({ id }, i): [string, number][] => {
      const [before, after] = [i + 1, i + 2].map((number) => panels.find((each) => each.number === number));
      const [from, to] = [before && spanAt(before, y), after && spanAt(after, y)];
      return from && to ? [[id, to[0] - from[1]]] : [];
    }),
  );
}

describe.each([...NAMED_STYLES])('in the style %s', (_, { style }) => {
  const drafts = BODIES.map((body) => draft(body, style));

  it('panels add up to the sewn girth of each level, and that is what was to be', () => {
    let rows = 0;
    for (const { pieces, proof } of drafts)
      for (const { y, sewnGirth, targetGirth, widths } of proof.ledger) {
        if (sewnGirth === null) continue;
        rows += 1;
        const own = Object.entries(widths).map(([id, width]): number => {
          const across = sewnAcross(pieces.find((piece) => piece.id === id) as Piece, y);
          expect(Math.abs((across ?? Number.NaN) - width)).toBeLessThan(HALF_SIXTEENTH_MM / 8);
          return across ?? Number.NaN;
        });
        const sum = own.reduce((all, each) => all + each, 0);
        expect(Math.abs(2 * sum - sewnGirth)).toBeLessThan(HALF_SIXTEENTH_MM / 4);
        expect(Math.abs(sewnGirth - targetGirth)).toBeLessThan(HALF_SIXTEENTH_MM / 4);
      }
    expect(rows).toBeGreaterThanOrEqual(BODIES.length);
  });

  it('what wedges and side seams take together is what the half girth grows smaller by from the bust', () => {
    for (const { proof } of drafts) {
      const bust = proof.ledger.find(({ level }) => level === 'bust');
      for (const { targetGirth, taken } of proof.ledger) {
        const all = [...Object.values(taken.wedges), taken.sideSeam.front, taken.sideSeam.back];
        const sum = all.reduce((so, each) => so + each, 0);
        const smaller = ((bust?.targetGirth ?? Number.NaN) - targetGirth) / 2;
        expect(Math.abs(sum - smaller)).toBeLessThan(HALF_SIXTEENTH_MM / 8);
      }
    }
  });

  it('each wedge takes what lies open between the panels beside it, and the ledger says the same', () => {
    let found = 0;
    for (const made of drafts)
      for (const { level, y, sewnGirth, taken } of made.proof.ledger) {
        if (sewnGirth === null || style.joinedSide) continue;
        for (const block of ['front', 'back'] as const)
          for (const [id, gap] of gapsAt(made, block, y)) {
            found += 1;
            const wedge = made.blocks?.[block].wedges.find((each) => each.id === id);
            expect(Math.abs(gap - (wedge?.intake.get(level) ?? 0)), `${id} ${level}`).toBeLessThan(
              HALF_SIXTEENTH_MM / 4,
            );
            // The ledger counts from the bust.
            const fromBust = gap - (wedge?.intake.get('bust') ?? 0);
            expect(Math.abs((taken.wedges[id] ?? Number.NaN) - fromBust), `${id} ${level}`).toBeLessThan(
              HALF_SIXTEENTH_MM / 4,
            );
          }
      }
    if (!style.joinedSide && style.wedges.some(({ kind, station }) => kind === 'through' && station > -1))
      expect(found).toBeGreaterThan(BODIES.length);
  });
});
