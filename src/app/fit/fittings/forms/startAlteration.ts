// An alteration as its form begins with it, and what is still wanting of one.

import { FITTINGS, type SeenName } from '../../../../document';
import {
  type Alteration,
  type AlteredPlace,
  type Draft,
  type SeamEnd,
  type SeamHeight,
  type SeamName,
  type Style,
  seamEnd,
} from '../../../../engine';
import { alterableSeams, boundsOf, edgesOf, levelNames } from './alterable';

export type AlterationKind = Alteration['kind'];

const place = (name: 'centreFront' | 'side' | 'centreBack'): AlteredPlace => ({ kind: 'landmark', name });
const WAIST: SeamHeight = { kind: 'level', level: 'waist' };
const FIRST: SeamName = {
  kind: 'seam',
  pieces: [
    { kind: 'panel', block: 'front', number: 1 },
    { kind: 'panel', block: 'front', number: 2 },
  ],
};

/** The first seam between two panels, where a form begins. */
const firstSeam = (draft: Draft, style: Style): SeamName =>
  alterableSeams(draft, style).find(
    (seam) => seam.kind === 'seam' && JSON.stringify(seam.pieces[0]) !== JSON.stringify(seam.pieces[1]),
  ) ?? FIRST;

/** An alteration of a kind with nothing altered yet. */
export function startOf(kind: AlterationKind, draft: Draft, style: Style): Alteration {
  switch (kind) {
    case 'seam':
      return seamAt(firstSeam(draft, style), WAIST, 0);
    case 'length':
      return {
        kind,
        between: ['underBust', 'waist'],
        side: 'both',
        at: [
          { place: place('centreBack'), by: 0 },
          { place: place('side'), by: 0 },
        ],
      };
    case 'edge':
      return {
        kind,
        edge: edgesOf(draft)[0] ?? 'top',
        side: 'both',
        at: [{ place: firstSeam(draft, style), by: 0 }],
      };
    case 'bustPoint':
      return { kind, side: 'both', out: 0, down: 0 };
  }
}

/** An alteration of a seam by the same amount on both edges, mm. */
export const seamAt = (seam: SeamName, height: SeamHeight, each: number): Alteration => ({
  kind: 'seam',
  seam,
  side: 'both',
  at: [{ height, a: each, b: each }],
});

/** The alteration that something seen calls for; `mm` is what was pinned, measured or found wanting there. */
export function alterationSeen(
  seen: Exclude<SeenName, 'gapUneven'>,
  mm: number,
  { draft, unaltered, style }: { readonly draft: Draft; readonly unaltered: Draft; readonly style: Style },
): Alteration {
  const seam = firstSeam(draft, style);
  const levels = levelNames(draft);
  const level = (name: (typeof levels)[number] | undefined): SeamHeight =>
    name ? { kind: 'level', level: name } : WAIST;
  const end = (which: SeamEnd): SeamHeight | null =>
    seamEnd(unaltered, seam, which) === null ? null : { kind: 'end', end: which };
  const inside = levels.filter(
    (name) => (draft.proof.ledger.find((row) => row.level === name)?.sewnGirth ?? null) !== null,
  );
  const at = (height: SeamHeight, by: number): Alteration => seamAt(seam, height, by / 2);
  const round = (by: number): Alteration => ({
    kind: 'length',
    between: ['underBust', 'waist'],
    side: 'both',
    at: [
      { place: place('centreFront'), by },
      { place: place('centreBack'), by },
    ],
  });
  const raised = (by: number): Alteration => ({
    kind: 'edge',
    edge: edgesOf(draft)[0] ?? 'top',
    side: 'both',
    at: [{ place: seam, by }],
  });
  switch (seen) {
    case 'gapAtTop':
      return at(end('top') ?? level(inside[0]), mm);
    case 'topCutsIn':
      return at(end('top') ?? level(inside[0]), -mm);
    case 'topTooLow':
      return raised(mm);
    case 'topTooHigh':
      return raised(-mm);
    case 'pointTooLow':
      return { kind: 'bustPoint', side: 'both', out: 0, down: -mm };
    case 'pointTooHigh':
      return { kind: 'bustPoint', side: 'both', out: 0, down: mm };
    case 'pointOffSeam':
      return { kind: 'bustPoint', side: 'both', out: mm, down: 0 };
    case 'hollowUnderBust':
      return at(level('underBust'), mm);
    case 'dragLines':
      return at(level('bust'), -mm);
    case 'waistBelowTape':
      return round(mm);
    case 'waistAboveTape':
      return round(-mm);
    case 'foldsAtBack':
      return {
        kind: 'length',
        between: ['underBust', 'waist'],
        side: 'both',
        at: [
          { place: place('centreBack'), by: mm },
          { place: place('side'), by: 0 },
        ],
      };
    case 'hemStandsOff':
      return at(end('hem') ?? level(inside.at(-1)), mm);
    case 'hemCutsIn':
      return at(end('hem') ?? level(inside.at(-1)), -mm);
  }
}

/** Why an alteration cannot be made as it stands; null where it can. */
export function wantingOf(alteration: Alteration, draft: Draft): string | null {
  const { form } = FITTINGS;
  const amounts = amountsOf(alteration);
  if (amounts.some((mm) => Number.isNaN(mm))) return form.unread;
  if (alteration.kind === 'length') {
    const bounds = boundsOf(draft);
    const [upper, lower] = alteration.between.map((bound) => bounds.indexOf(bound));
    if ((upper ?? 0) >= (lower ?? 0)) return form.order;
  }
  return amounts.every((mm) => mm === 0) ? form.nothing : null;
}

function amountsOf(alteration: Alteration): number[] {
  switch (alteration.kind) {
    case 'seam': {
      const heights = alteration.at.flatMap(({ height }) =>
        height.kind === 'belowWaist' ? [height.mm] : [],
      );
      const amounts = alteration.at.flatMap(({ a, b }) => [a, b]);
      // A height is no amount, but one that cannot be read stops the whole.
      return [...amounts, ...heights.filter((mm) => Number.isNaN(mm))];
    }
    case 'bustPoint':
      return [alteration.out, alteration.down];
    default:
      return alteration.at.map(({ by }) => by);
  }
}
