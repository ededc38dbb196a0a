// What of a draft can be altered: its seams and darts by name, the heights on them, the edges and places round the body.

import {
  type AlteredPlace,
  type BlockName,
  centreSeam,
  type Draft,
  hasArmhole,
  isCentre,
  keyOfSeam,
  LANDMARKS,
  type LengthBound,
  type LevelName,
  levelsReached,
  type SeamHeight,
  type SeamName,
  type Style,
  seamNameOf,
} from '../../../../engine';

/** Every seam and dart that can be altered, from centre front round to centre back, each once. */
export function alterableSeams(
  { proof, turnedDart, halves }: Draft,
  { closure }: Style,
): readonly SeamName[] {
  const centre = (block: BlockName): SeamName[] =>
    closure[block] === 'fold' || closure[block] === 'busk' ? [] : [centreSeam(block)];
  const turned = [turnedDart, halves?.left.turnedDart, halves?.right.turnedDart].map((each) => each?.wedge);
  const found = [
    ...centre('front'),
    // A dart that was turned into the side seam is set on Draft.
    ...proof.seams.flatMap(({ seam, a, b }) =>
      seam.kind === 'centre' || (seam.kind === 'dart' && turned.includes(seam.wedge))
        ? []
        : (seamNameOf(seam, { a, b }) ?? []),
    ),
    ...proof.closedDarts.flatMap(({ seam }) => seamNameOf(seam, null) ?? []),
    ...centre('back'),
  ];
  return [...new Map(found.map((seam) => [keyOfSeam(seam), seam])).values()];
}

/** Nearer to a level than this a press means the level. mm */
const AT_LEVEL_MM = 10;

/** A height on the cloth as a fitting names it, where the draft has a waist. */
export function heightAt({ levels }: Draft, y: number): SeamHeight {
  const nearest = [...levels].sort((a, b) => Math.abs(a.y - y) - Math.abs(b.y - y))[0];
  if (nearest && Math.abs(nearest.y - y) < AT_LEVEL_MM) return { kind: 'level', level: nearest.name };
  const waist = levels.find(({ name }) => name === 'waist')?.y ?? 0;
  return { kind: 'belowWaist', mm: Math.round(y - waist) };
}

/** The levels that the garment reaches somewhere. */
export const levelNames = (draft: Draft): readonly LevelName[] =>
  levelsReached(draft).map(({ name }) => name);

/** Between what a garment can be shortened, from the top down. */
export const boundsOf = (draft: Draft): readonly LengthBound[] => ['top', ...levelNames(draft), 'hem'];

/** Places round the body, those of the body first. */
export const placesOf = (draft: Draft, style: Style): readonly AlteredPlace[] => [
  ...LANDMARKS.map((name) => ({ kind: 'landmark', name }) as const),
  ...alterableSeams(draft, style).filter((seam) => seam.kind === 'seam' && !isCentre(seam)),
];

/** The edges that the garment has. */
export const edgesOf = ({ pieces }: Draft): readonly ('top' | 'hem' | 'neckline' | 'armhole')[] =>
  hasArmhole(pieces) ? ['neckline', 'armhole', 'hem'] : ['top', 'hem'];
