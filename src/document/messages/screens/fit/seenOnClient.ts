// What a fitter sees on the client, what it means, and what is altered for it. Common practice.

import { catalogue } from '../../catalogue';

/** What is seen, in the order in which a fitter looks: from the top down. */
export const SEEN_NAMES = [
  'gapAtTop',
  'topCutsIn',
  'topTooLow',
  'topTooHigh',
  'pointOffSeam',
  'pointTooLow',
  'pointTooHigh',
  'hollowUnderBust',
  'dragLines',
  'gapUneven',
  'waistBelowTape',
  'waistAboveTape',
  'foldsAtBack',
  'hemStandsOff',
  'hemCutsIn',
] as const;

export type SeenName = (typeof SEEN_NAMES)[number];

interface Seen {
  readonly what: string;
  readonly means: string;
  /** What is to be typed as its amount; null for what is read level by level in a form of its own. */
  readonly amount: string | null;
}

export const SEEN: Readonly<Record<SeenName, Seen>> = catalogue({
  gapAtTop: {
    what: 'The top edge stands off',
    means:
      'There is too much cloth at the top: take in the seam where it stands off, half of what you pin on each edge.',
    amount: 'Pinned out at the seam',
  },
  topCutsIn: {
    what: 'The top edge cuts in',
    means: 'There is too little cloth at the top: let out the seam that lies there.',
    amount: 'Wanting at the seam',
  },
  topTooLow: {
    what: 'The top edge lies too low',
    means: 'Raise the edge at the seam that lies there; it runs out to nothing at the seams beside it.',
    amount: 'Higher by',
  },
  topTooHigh: {
    what: 'The top edge lies too high',
    means: 'Lower the edge at the seam that lies there; it runs out to nothing at the seams beside it.',
    amount: 'Lower by',
  },
  pointOffSeam: {
    what: 'The bust point lies off its seam',
    means: 'Move the bust point to where it is; the seam over it follows.',
    amount: 'Farther out by',
  },
  pointTooLow: {
    what: 'The bust of the mock-up sits too low',
    means: 'Move the bust point up to where hers is; the lines of the bust follow.',
    amount: 'Too low by',
  },
  pointTooHigh: {
    what: 'The bust of the mock-up sits too high',
    means: 'Move the bust point down to where hers is; the lines of the bust follow.',
    amount: 'Too high by',
  },
  hollowUnderBust: {
    what: 'The cloth stands hollow under the bust',
    means: 'Take in the seam under the bust, half of what you pin on each edge.',
    amount: 'Pinned out at the seam',
  },
  dragLines: {
    what: 'Drag lines run towards a point',
    means: 'Cloth is wanting where they point to: let out the seam that lies nearest.',
    amount: 'Wanting at the seam',
  },
  gapUneven: {
    what: 'The lacing gap is uneven: ( ), ) (, V or A',
    means:
      'Too wide a gap wants more cloth at that level, too narrow a gap less. Type what you read at each level; it is shared over the seams.',
    amount: null,
  },
  waistBelowTape: {
    what: 'The waist sits below the waist tape',
    means: 'The body of the garment is too long above the waist: shorten it all round.',
    amount: 'Too low by',
  },
  waistAboveTape: {
    what: 'The waist sits above the waist tape',
    means: 'The body of the garment is too short above the waist: lengthen it all round.',
    amount: 'Too high by',
  },
  foldsAtBack: {
    what: 'Folds lie across the back at the waist',
    means:
      'The back is too long for its hollow: a fold is taken out at centre back that runs out to nothing at the side.',
    amount: 'Taken up by the fold',
  },
  hemStandsOff: {
    what: 'The hem stands off',
    means: 'There is too much cloth below: take in the seam at the lowest level.',
    amount: 'Pinned out at the seam',
  },
  hemCutsIn: {
    what: 'The hem cuts in',
    means: 'There is too little room below: let out the seam at the lowest level.',
    amount: 'Wanting at the seam',
  },
});
