// A plan made from where each outline lies.

import type { KeptPlace } from '../../document';
import { type Point, signedArea } from '../../engine';
import { movedOnto } from './affine';
import { type Cloth, laidWidth } from './cloth';
import { type Copy, copiesOn, type PieceToLay, type Way, wayFor } from './copies';
import { isClear } from './isClear';
import type { LayPlan, Placed } from './plan';

interface LaidCopy {
  readonly copy: Copy;
  readonly way: Way;
  /** Where the least of its outline lies on the cloth, mm. */
  readonly at: Point;
}

export function planFrom(cloth: Cloth, laid: readonly LaidCopy[]): LayPlan {
  const placed = laid.map(({ copy: { piece, of, copy, onFold }, way, at }): Placed => {
    const outline = way.ring.map(({ x, y }) => ({ x: x + at.x, y: y + at.y }));
    const { mirrored, turn } = way;
    return { piece, of, copy, mirrored, onFold, turn, outline, onto: movedOnto(way.onto, at) };
  });
  const lengthMm = placed.flatMap(({ outline }) => outline).reduce((most, { x }) => Math.max(most, x), 0);
  const area = placed.reduce((sum, { outline }) => sum + Math.abs(signedArea(outline)), 0);
  return { cloth, lengthMm, density: lengthMm > 0 ? area / (lengthMm * laidWidth(cloth)) : 0, placed };
}

/** Where the outlines of a plan lie, in their order, to a hundred-millionth of a mm. */
export const placesOf = ({ placed }: LayPlan): KeptPlace[] =>
  placed.map(({ outline, turn, mirrored }) => ({
    x: rounded(Math.min(...outline.map(({ x }) => x))),
    y: rounded(Math.min(...outline.map(({ y }) => y))),
    turn,
    mirrored,
  }));

const rounded = (mm: number): number => Math.round(mm * 1e8) / 1e8 + 0;

/** The plan again, from the pieces and where each lay; null where the places are not those of these pieces, or it cannot be cut. */
export function planAgain(
  asked: readonly PieceToLay[],
  cloth: Cloth,
  places: readonly KeptPlace[],
): LayPlan | null {
  const copies = copiesOn(asked, cloth);
  if (copies.length !== places.length) return null;
  const laid: LaidCopy[] = [];
  for (const [i, copy] of copies.entries()) {
    const { x, y, ...lies } = places[i] as KeptPlace;
    const way = wayFor(copy, cloth, lies);
    if (!way) return null;
    laid.push({ copy, way, at: { x, y } });
  }
  const plan = planFrom(cloth, laid);
  return isClear(plan) ? plan : null;
}

/** A sum over the outlines of pieces and how often they are cut, rounded to 0.001 mm: 16 hexadecimal digits. */
export const sumOf = (asked: readonly PieceToLay[]): string => {
  const text = JSON.stringify(
    asked.map(({ piece: { id, cut, cutLine, grain }, layers, bias }) => [
      [id, cut.count, cut.onFold, layers, bias],
      [...cutLine, ...grain].map(({ x, y }) => [Math.round(x * 1000), Math.round(y * 1000)]),
    ]),
  );
  return [0xdeadbeef, 0x41c6ce57].map((seed) => fnv1a(text, seed)).join('');
};

/** Fowler–Noll–Vo hash 1a of a text's 16-bit units, from a start of its own. 8 hexadecimal digits. */
function fnv1a(text: string, start: number): string {
  let hash = 0x811c9dc5 ^ start;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
