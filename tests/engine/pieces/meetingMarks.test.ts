// Marks on an edge at which two pieces meet that are sewn to it one beside the other.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draft, type Piece, type Style } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';

const BODY = { ...withShoulders(MEAN_BODY), upperArm: 290 };
const styleOf = (name: string): Style => (NAMED_STYLES.get(name) as { style: Style }).style;

const lengthOf = (points: Piece['edges'][number]['points']): number =>
  points.reduce((sum, { x, y }, i) => {
    const before = points[i - 1];
    return before ? sum + Math.hypot(x - before.x, y - before.y) : sum;
  }, 0);

const meeting = ({ marks }: Piece) => marks.filter(({ kind, level }) => kind === 'balance' && level === null);

describe('a shoulder line that two panels of the other block are sewn to', () => {
  it('is marked where they meet, so far from the neck as the first of them is long with its ease', () => {
    const { pieces } = draft(BODY, styleOf('princess-bodice'));
    const [front, back] = ['front-1', 'back-1'].map((id) => pieces.find((piece) => piece.id === id)) as [
      Piece,
      Piece,
    ];
    const marks = meeting(back);
    expect(marks).toHaveLength(1);
    const [mark] = marks;
    const parts = back.edges.filter(({ role }) => role === 'shoulder');
    expect(parts).toHaveLength(2);
    const neck = parts.find(({ shoulder }) => shoulder === 'neck');
    const ends = [neck?.points[0], neck?.points.at(-1)];
    expect(ends).toContainEqual(mark?.at);
    const own = front.edges.find(({ role }) => role === 'shoulder');
    expect(lengthOf(neck?.points ?? [])).toBeCloseTo(lengthOf(own?.points ?? []) + (neck?.ease ?? 0), 6);
    expect(meeting(front)).toEqual([]);
  });

  it('has no such mark where the seams of both blocks meet there, or none ends in it', () => {
    for (const name of ['basque-bodice', 'armhole-bridal', 'darted-bodice'])
      for (const piece of draft(BODY, styleOf(name)).pieces) expect(meeting(piece), name).toEqual([]);
  });
});

it('a shoulder band is marked where panels meet, and none of these marks is called a level', () => {
  const { extras, pieces } = draft(BODY, styleOf('off-shoulder-bridal'));
  for (const block of ['front', 'back'] as const) {
    const band = extras.find((piece) => piece.kind === 'band' && piece.block === block) as Piece;
    expect(meeting(band)).toHaveLength(pieces.filter((piece) => piece.block === block).length - 1);
    expect(band.marks).toHaveLength(meeting(band).length);
  }
});
