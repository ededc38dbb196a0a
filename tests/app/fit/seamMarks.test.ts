import { expect, it } from 'vitest';
import { type Proof, seamWalk } from '../../../src/app/fit/proofs';
import { seamMarks } from '../../../src/app/fit/seamMarks';
import { DEMO_BOOK, openClient, openDraftOf } from '../../../src/document';
import { draft } from '../../../src/engine';

const client = openClient(DEMO_BOOK);
const { style } = openDraftOf(client);
const proof = seamWalk(draft(client.measurements, style), 'in', style);

it('has a mark over each seam, without a difference where the mates are as long as each other', () => {
  expect(seamMarks(proof).map(({ difference }) => difference)).toEqual([null, null, null, null, null]);
  expect(new Set(seamMarks(proof).map(({ key }) => key)).size).toBe(5);
});

it('has the difference of mates that are not, and none of rows that are no seams', () => {
  const [first, second] = proof.rows;
  if (!first || !second || typeof second.head === 'string') throw new Error('no rows');
  const place = { kind: 'dart', piece: 'front-1', wedge: 'bust' } as const;
  const uneven: Proof = {
    ...proof,
    rows: [
      { ...first, cells: ['11', '11 1/8', '1/8', ''], off: true },
      { ...second, head: { ...second.head, place } },
    ],
  };
  expect(seamMarks(uneven).map(({ key, difference }) => [key, difference])).toEqual([[first.key, '1/8']]);
});
