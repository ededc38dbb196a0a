// The top edge of the under-bust corset lies on the ribs between its bones, and does not run in waves.

import { expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draft } from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { bodyFor, wear } from '../../support/bodies/wornBodies';

/** The most that the edge of a panel sags or rises from the straight line between its seams, mm. */
const MOST_SAG_MM = 3;

it('has the under-bust line on the cloth, so that its girth is proved', () => {
  const style = NAMED_STYLES.get('under-bust')?.style;
  if (!style) throw new Error('no such style');
  for (const woman of drawBodies(40, 55_120)) {
    const { levels, proof } = draft(woman, style);
    if (!levels.some(({ name }) => name === 'underBust')) continue;
    const row = proof.ledger.find(({ level }) => level === 'underBust');
    expect(row?.sewnGirth).toBeCloseTo(row?.targetGirth ?? Number.NaN, 1);
  }
});

it('lies in no waves on women with full busts over slim ribs', () => {
  const style = NAMED_STYLES.get('under-bust')?.style;
  if (!style) throw new Error('no such style');
  const women = drawBodies(40, 55_120)
    .filter(({ bust, underBust }) => bust - underBust > 125)
    .slice(0, 4);
  expect(women).toHaveLength(4);
  for (const woman of women) {
    const { mesh, places } = wear(woman, style, bodyFor(woman)).draped;
    const heightOf = (v: number | undefined): number => places[3 * (v ?? Number.NaN) + 2] ?? Number.NaN;
    for (const { kind, sewn } of mesh.lines) {
      if (kind !== 'top') continue;
      const [from, to] = [heightOf(sewn[0]), heightOf(sewn.at(-1))];
      for (const [i, v] of sewn.entries()) {
        const straight = from + ((to - from) * i) / (sewn.length - 1);
        expect(Math.abs(heightOf(v) - straight)).toBeLessThan(MOST_SAG_MM);
      }
    }
  }
});
