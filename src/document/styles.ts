// The styles that can be asked for by name: our own, in the words of the trade, each a place to start from.

import { balancedWedge, DEFAULT_STYLE, inches, type Side, type Style, type Wedge } from '../engine';
import { edgeShapeNamed, HEM_EDGES, TOP_EDGES } from './edgeShapes';

export interface NamedStyle {
  /** What it is called on paper. */
  readonly title: string;
  readonly style: Style;
}

const top = (name: string) => edgeShapeNamed(name, TOP_EDGES);
const hem = (name: string) => edgeShapeNamed(name, HEM_EDGES);

/** Wedges without one at centre front, where a busk or a fold wants a straight edge. */
const STRAIGHT_FRONT: readonly Wedge[] = [
  balancedWedge('front-bust', 'front', 0, 3),
  balancedWedge('front-side', 'front', 0.5, 2),
  balancedWedge('back-centre', 'back', 0, 2),
  balancedWedge('back-side', 'back', 0.5, 1),
];

/** A wedge with the same intake at every level where it has one; inches, as it is taken with a ruler. */
function byHand(id: string, block: Side, station: number, overBust: number, waist: number): Wedge {
  return {
    ...balancedWedge(id, block, station, 1),
    sizing: 'hand',
    intake: {
      overBust: inches(overBust),
      bust: 0,
      underBust: inches(waist / 2),
      waist: inches(waist),
      highHip: inches(waist / 2),
      hip: 0,
    },
  };
}

export const NAMED_STYLES: ReadonlyMap<string, NamedStyle> = new Map<string, NamedStyle>([
  ['default', { title: 'Over-bust corset', style: DEFAULT_STYLE }],
  [
    'ball-bodice',
    {
      title: 'Ball bodice, sweetheart and pointed',
      style: {
        ...DEFAULT_STYLE,
        topShape: top('sweetheart'),
        hemBelow: inches(2.5),
        hemShape: hem('pointed'),
      },
    },
  ],
  [
    'bridal-bodice',
    {
      title: 'Bridal bodice to the waist',
      style: {
        ...DEFAULT_STYLE,
        topShape: top('sweetheart'),
        hemBelow: 0,
        ease: { ...DEFAULT_STYLE.ease, waist: -inches(1) },
        closure: { front: 'fold', back: 'lacing', lacingGap: inches(1.5) },
        wedges: STRAIGHT_FRONT,
      },
    },
  ],
  [
    'under-bust',
    {
      title: 'Under-bust corset with a busk',
      style: {
        ...DEFAULT_STYLE,
        topFrom: 'underBust',
        topAbove: inches(0.5),
        hemBelow: inches(4.5),
        hemShape: hem('dipped'),
        closure: { front: 'busk', back: 'lacing', lacingGap: inches(2) },
        wedges: STRAIGHT_FRONT,
      },
    },
  ],
  [
    'cincher',
    {
      title: 'Waist cincher',
      style: {
        ...DEFAULT_STYLE,
        topFrom: 'waist',
        topAbove: inches(2.75),
        hemBelow: inches(2.75),
        closure: { front: 'busk', back: 'lacing', lacingGap: inches(2) },
        wedges: STRAIGHT_FRONT,
      },
    },
  ],
  [
    'long-line',
    {
      title: 'Long-line corset over the hip',
      style: { ...DEFAULT_STYLE, topShape: top('scoop'), hemBelow: inches(7), hemShape: hem('arched') },
    },
  ],
  [
    'stage-bodice',
    {
      title: 'Stage bodice, square and high behind',
      style: {
        ...DEFAULT_STYLE,
        topShape: {
          ...top('square'),
          sideBack: top('high-back').sideBack,
          centreBack: top('high-back').centreBack,
        },
        hemBelow: inches(3),
        hemShape: hem('arched'),
      },
    },
  ],
  [
    'v-front',
    {
      title: 'V-front bodice with a dipped hem',
      style: { ...DEFAULT_STYLE, topShape: top('v'), hemBelow: inches(3), hemShape: hem('dipped') },
    },
  ],
  [
    'hand-method',
    {
      title: 'Hand method, a quarter and put back',
      style: {
        ...DEFAULT_STYLE,
        frontShare: { overBust: 0.5, bust: 0.5, underBust: 0.5, waist: 0.5, highHip: 0.5, hip: 0.5 },
        wedges: [
          byHand('front-centre', 'front', -1, 0, 0.5),
          byHand('front-bust', 'front', 0, 0.25, 1.5),
          byHand('front-side', 'front', 0.5, 0, 1),
          byHand('back-centre', 'back', 0, 0.5, 1),
          byHand('back-side', 'back', 0.5, 0, 0.5),
        ],
      },
    },
  ],
]);
