// The seam walk as marks on the drawing: one over each seam, by the row of the proof.

import type { SeamMark } from '../../table';
import type { Proof } from './proofs';

/** Which cell of a row has the difference. */
const DIFFERENCE = 2;

export const seamMarks = ({ rows }: Proof): readonly SeamMark[] =>
  rows.flatMap(({ key, head, cells, off }) => {
    const difference = cells[DIFFERENCE];
    return typeof head !== 'string' && head.place.kind === 'seam' && typeof difference === 'string'
      ? [{ key, seam: head.place, difference: off ? difference : null }]
      : [];
  });
