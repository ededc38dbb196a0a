// The styles that can be asked for by name: our own, in the words of the trade, each a place to start from.

import {
  balancedWedge,
  DEFAULT_STYLE,
  inches,
  type Style,
  USUAL_BAND_ABOVE,
  USUAL_EXTRAS,
  USUAL_SHOULDERS,
} from '../../engine';
import { STYLE_TITLES } from '../messages/words/presets';
import { edgeShapeNamed, HEM_EDGES, TOP_EDGES } from './edgeShapes';
import {
  BELOW_BUST_FRONT,
  bustDart,
  closedDart,
  FEWER,
  lowered,
  manualWedge,
  openDart,
  STRAIGHT_FRONT,
} from './wedges';

export interface NamedStyle {
  /** What it is called on paper. */
  readonly title: string;
  readonly style: Style;
}

const top = (name: string) => edgeShapeNamed(name, TOP_EDGES);
const hem = (name: string) => edgeShapeNamed(name, HEM_EDGES);

/** What a bodice with shoulders is larger than the body, so that arms and breath have room (common practice, no source). */
const BODICE_EASE: Style['ease'] = {
  overBust: inches(1),
  bust: inches(1.5),
  underBust: inches(1),
  waist: inches(0.5),
  highHip: inches(1),
  hip: inches(1.5),
};

/** The weight of a side-front dart beside a bust seam or dart of 3: it begins lower, and taking more it would end blunt. */
const BESIDE_BUST = 2.2;

export const NAMED_STYLES: ReadonlyMap<string, NamedStyle> = new Map<string, NamedStyle>([
  ['default', { title: STYLE_TITLES.default, style: DEFAULT_STYLE }],
  [
    'ball-bodice',
    {
      title: STYLE_TITLES['ball-bodice'],
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
      title: STYLE_TITLES['bridal-bodice'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
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
      title: STYLE_TITLES['under-bust'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        topFrom: 'underBust',
        // So little that the edge is hardly longer than the under-bust line, and enough that the line lies on the cloth and is proved.
        topAbove: inches(1 / 16),
        hemBelow: inches(4.5),
        hemShape: hem('dipped'),
        closure: { front: 'busk', back: 'lacing', lacingGap: inches(2) },
        wedges: BELOW_BUST_FRONT,
      },
    },
  ],
  [
    'cincher',
    {
      title: STYLE_TITLES.cincher,
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        // From waist to under-bust line some bodies have 1 in and others 4: an edge so many inches above the waist would end on the breast.
        topFrom: 'underBust',
        topAbove: -inches(0.25),
        hemBelow: inches(2.75),
        closure: { front: 'busk', back: 'lacing', lacingGap: inches(2) },
        wedges: BELOW_BUST_FRONT,
      },
    },
  ],
  [
    'long-line',
    {
      title: STYLE_TITLES['long-line'],
      style: { ...DEFAULT_STYLE, topShape: top('scoop'), hemBelow: inches(7), hemShape: hem('arched') },
    },
  ],
  [
    'stage-bodice',
    {
      title: STYLE_TITLES['stage-bodice'],
      style: {
        ...DEFAULT_STYLE,
        topShape: {
          ...top('square'),
          sideBack: top('high-back').sideBack,
          centreBack: top('high-back').centreBack,
        },
        // So high a back leans in with the body: with the usual width it stands off 12 mm at the top as worn, with this 8.
        ease: { ...DEFAULT_STYLE.ease, overBust: -inches(0.5) },
        frontShare: { overBust: 0.53 },
        hemBelow: inches(3),
        hemShape: hem('arched'),
      },
    },
  ],
  [
    'v-front',
    {
      title: STYLE_TITLES['v-front'],
      style: { ...DEFAULT_STYLE, topShape: top('v'), hemBelow: inches(3), hemShape: hem('dipped') },
    },
  ],
  [
    'long-line-side-panels',
    {
      title: STYLE_TITLES['long-line-side-panels'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        topShape: top('scoop'),
        hemBelow: inches(5),
        hemShape: hem('dipped'),
        closure: { front: 'busk', back: 'lacing', lacingGap: inches(2) },
        joinedSide: true,
        // Nearer the side than elsewhere, for the panel beyond them is two in one.
        wedges: STRAIGHT_FRONT.map((wedge) =>
          wedge.station > 0 ? { ...wedge, station: wedge.block === 'front' ? 0.65 : 0.6 } : wedge,
        ),
      },
    },
  ],
  [
    'off-shoulder-bridal',
    {
      title: STYLE_TITLES['off-shoulder-bridal'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        ease: { ...DEFAULT_STYLE.ease, waist: -inches(1) },
        topShape: top('sweetheart'),
        hemBelow: inches(2.5),
        hemShape: hem('pointed'),
        closure: { front: 'fold', back: 'lacing', lacingGap: inches(1.5) },
        wedges: STRAIGHT_FRONT,
        shoulders: { ...USUAL_SHOULDERS, bandAbove: USUAL_BAND_ABOVE },
        extras: { modesty: USUAL_EXTRAS.modesty },
      },
    },
  ],
  [
    'princess-bodice',
    {
      title: STYLE_TITLES['princess-bodice'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        ease: BODICE_EASE,
        // No seam of the back lets out there, so the side seam runs straight down and front and back stay as long.
        frontShare: { hip: 0.51 },
        topShape: { ...top('level'), centreFront: { beyond: inches(2), kind: 'smooth' } },
        closure: { front: 'fold', back: 'zip', lacingGap: 0 },
        shoulders: USUAL_SHOULDERS,
        wedges: [
          balancedWedge('front-bust', 'front', 0, 3),
          closedDart('front-side', 'front', 0.5, BESIDE_BUST),
          closedDart('back-centre', 'back', 0, 1.3),
          lowered(closedDart('back-side', 'back', 0.5, 1)),
        ],
      },
    },
  ],
  [
    'armhole-bridal',
    {
      title: STYLE_TITLES['armhole-bridal'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        ease: { ...BODICE_EASE, underBust: 0, waist: 0 },
        topShape: { ...top('level'), centreFront: { beyond: inches(2), kind: 'smooth' } },
        hemBelow: inches(2.5),
        hemShape: hem('pointed'),
        closure: { front: 'fold', back: 'zip', lacingGap: 0 },
        shoulders: USUAL_SHOULDERS,
        wedges: [
          { ...balancedWedge('front-bust', 'front', 0, 3), endsAt: { edge: 'armhole', part: 0.43 } },
          { ...balancedWedge('front-side', 'front', 0.6, 2.5), endsAt: { edge: 'armhole', part: 0.75 } },
          { ...balancedWedge('back-side', 'back', 0, 2), endsAt: { edge: 'armhole', part: 0.65 } },
        ],
      },
    },
  ],
  [
    'darted-bodice',
    {
      title: STYLE_TITLES['darted-bodice'],
      style: {
        ...DEFAULT_STYLE,
        ease: BODICE_EASE,
        // A dart takes little at the over-bust line, so the front has nearly the part there that it has at the bust, and both side
        // lines lean alike.
        frontShare: { overBust: 0.522 },
        topShape: { ...top('level'), centreFront: { beyond: inches(2.5), kind: 'smooth' } },
        hemBelow: 0,
        closure: { front: 'fold', back: 'hooks', lacingGap: 0 },
        shoulders: USUAL_SHOULDERS,
        wedges: [
          bustDart('front-armhole', { edge: 'armhole', part: 0.4 }),
          openDart('front-bust', 'front', 0, 3),
          lowered(openDart('front-side', 'front', 0.5, BESIDE_BUST)),
          openDart('back-centre', 'back', 0, 1.3),
          lowered(openDart('back-side', 'back', 0.5, 1)),
        ],
      },
    },
  ],
  [
    'basque-bodice',
    {
      title: STYLE_TITLES['basque-bodice'],
      style: {
        ...DEFAULT_STYLE,
        balance: FEWER,
        ease: { ...BODICE_EASE, waist: 0 },
        topShape: { ...top('level'), centreFront: { beyond: inches(2), kind: 'smooth' } },
        hemBelow: inches(2.5),
        hemShape: hem('pointed'),
        closure: { front: 'hooks', back: 'seam', lacingGap: 0 },
        shoulders: USUAL_SHOULDERS,
        wedges: [
          balancedWedge('front-bust', 'front', 0, 3),
          openDart('front-side', 'front', 0.5, BESIDE_BUST),
          balancedWedge('back-centre', 'back', 0, 1.3),
          openDart('back-side', 'back', 0.5, 1),
        ],
      },
    },
  ],
  [
    'hand-method',
    {
      title: STYLE_TITLES['hand-method'],
      style: {
        ...DEFAULT_STYLE,
        overBustAbove: inches(2),
        frontShare: { overBust: 0.5, bust: 0.5, underBust: 0.5, waist: 0.5, highHip: 0.5, hip: 0.5 },
        wedges: [
          // Front and back take alike, and less than a middling body asks for, so that the side lines lean in alike and not out.
          manualWedge('front-centre', 'front', -1, 0, 0.375),
          manualWedge('front-bust', 'front', 0, 0.25, 0.875),
          manualWedge('front-side', 'front', 0.55, 0, 0.5),
          manualWedge('back-centre', 'back', 0, 0.25, 1),
          manualWedge('back-side', 'back', 0.5, 0, 0.75),
        ],
      },
    },
  ],
]);
