// The numbers of a style by name, from the path the engine or a style file gives them.

import { EDGE_NODES, type EdgeNodeName, LEVEL_NAMES, type Style } from '../../../engine';
import { catalogue } from '../catalogue';
import { EDGE_NODE_WORDS } from '../words/edgeNodes';
import { LEVEL_WORDS } from '../words/levels';
import { wedgePhrase, wedgePlaceOf } from '../words/wedges';

export interface StyleField {
  /** With a capital, to begin a sentence. */
  readonly name: string;
  readonly kind: 'length' | 'share';
}

const PLAIN: Readonly<Record<string, string>> = catalogue({
  wedges: 'The list of wedges',
  overBustAbove: 'The over-bust line above the bust line',
  topFrom: 'The line the top edge is measured from',
  topAbove: 'The top edge above its line',
  hemBelow: 'The hem below the waist line',
  'closure.front': 'The closing at centre front',
  'closure.sideZip': 'The side zip',
  joinedSide: 'Front and back side panel in one',
  turnedHem: 'The turned hem',
  'closure.back': 'The closing at centre back',
  'closure.lacingGap': 'The lacing gap',
  'balance.sideShare': 'The part the side seam takes',
  'balance.cap': 'The most one wedge may take',
  'shoulders.drop': 'The drop of the shoulder',
  'shoulders.armholeIn': 'How far the armhole goes in',
  'shoulders.ease': 'The ease of the back shoulder',
  'shoulders.rise': 'The height of the back neck point above the nape',
  'shoulders.intake.front': 'The front wedge at the shoulder',
  'shoulders.intake.back': 'The back wedge at the shoulder',
  'shoulders.bandAbove': 'The height of the shoulder band at the centres',
  'extras.modesty.overlap': 'The overlap of the modesty panel',
  'extras.facing.width': 'The width of the facing',
  'extras.sleeve.depth': 'The depth of the sleeve',
  'extras.sleeve.ease': 'The ease of the sleeve over the arm',
  'extras.sleeve.gathered': 'What is gathered in at the sleeve',
  'extras.sleeve.joined': 'How far the sleeve is sewn to the top edge',
  'extras.straps.length': 'The length of the straps',
  'extras.straps.width': 'The width of the straps',
  'allowances.seam': 'The allowance of the seams',
  'allowances.side': 'The allowance of the side seam',
  'allowances.top': 'The allowance of the top edge',
  'allowances.hem': 'The allowance of the hem',
  'allowances.armhole': 'The allowance of the armhole',
  'allowances.neckline': 'The allowance of the neckline',
  'allowances.centre': 'The allowance of centre front and centre back',
});

/** The ones among them that are no lengths. */
const SHARES: ReadonlySet<string> = new Set([
  'wedges',
  'topFrom',
  'closure.sideZip',
  'joinedSide',
  'turnedHem',
  'balance.sideShare',
]);

/** What the number at a path of a style is called; the path itself where it has no name. */
export const styleField = (path: string, style: StyleWedges): StyleField =>
  new Map(commonFields()).get(path) ?? new Map(wedgeFields(style)).get(path) ?? { name: path, kind: 'share' };

type StyleWedges = Pick<Style, 'wedges' | 'rightWedges'>;
type NamedField = readonly [path: string, field: StyleField];

const asLength = (name: string): StyleField => ({ name, kind: 'length' });
const asShare = (name: string): StyleField => ({ name, kind: 'share' });

/** The fields that every style has. */
const commonFields = (): NamedField[] => [
  ...Object.entries(PLAIN).map(
    ([path, name]): NamedField => [path, SHARES.has(path) ? asShare(name) : asLength(name)],
  ),
  ...LEVEL_NAMES.flatMap((each): NamedField[] => {
    const level = LEVEL_WORDS[each];
    return [
      [`ease.${each}`, asLength(FIELDS.ease({ level }))],
      [`frontShare.${each}`, asShare(FIELDS.frontShare({ level }))],
    ];
  }),
  ...EDGE_NODES.flatMap((node) => [...nodeFields('topShape', node), ...nodeFields('hemShape', node)]),
];

function nodeFields(edge: 'topShape' | 'hemShape', node: EdgeNodeName): NamedField[] {
  const field = asLength(FIELDS[edge]({ place: EDGE_NODE_WORDS[node] }));
  return ['', '.beyond', '.kind'].map((part) => [`${edge}.${node}${part}`, field]);
}

/** The fields of each wedge, of either half. A wedge without an id stands in paths by its place in its list. */
const wedgeFields = (style: StyleWedges): NamedField[] =>
  [style.wedges, style.rightWedges ?? []].flatMap((wedges) =>
    wedges.flatMap((wedge, place) => {
      const known = typeof wedge.id === 'string';
      const fields = fieldsOfWedge(wedgePhrase(known ? wedgePlaceOf(wedge.id, style) : null));
      return fields.map(([path, field]): NamedField => [`wedges.${known ? wedge.id : place}.${path}`, field]);
    }),
  );

function fieldsOfWedge(wedge: string): NamedField[] {
  const { cupLine, cupIntake, fromCentre, endEdge, endPart, endBelow, upper, lower, intake, station } =
    WEDGE_FIELDS;
  return [
    ...(['id', 'kind', 'block', 'sizing', 'weight'] as const).map(
      (part): NamedField => [part, asShare(WEDGE_FIELDS[part]({ wedge }))],
    ),
    ['endsAt.edge', asShare(endEdge({ wedge }))],
    ['endsAt.part', asShare(endPart({ wedge }))],
    ['endsAt.below', asLength(endBelow({ wedge }))],
    ['cup.below', asLength(cupLine({ wedge }))],
    ['cup.intake', asLength(cupIntake({ wedge }))],
    ['upper', asLength(upper.point({ wedge }))],
    ['upper.below', asLength(upper.point({ wedge }))],
    ['upper.from', asShare(upper.level({ wedge }))],
    ['lower', asLength(lower.point({ wedge }))],
    ['lower.below', asLength(lower.point({ wedge }))],
    ['lower.from', asShare(lower.level({ wedge }))],
    ['station', asShare(station({ wedge, level: null }))],
    ['stationAt', asShare(station({ wedge, level: null }))],
    ['fromCentre', asLength(fromCentre({ wedge, level: null }))],
    ['intake', asLength(intake({ wedge, level: null }))],
    ...LEVEL_NAMES.flatMap((each): NamedField[] => {
      const level = LEVEL_WORDS[each];
      return [
        [`stationAt.${each}`, asShare(station({ wedge, level }))],
        [`fromCentre.${each}`, asLength(fromCentre({ wedge, level }))],
        [`intake.${each}`, asLength(intake({ wedge, level }))],
      ];
    }),
  ];
}

const FIELDS = catalogue({
  ease: ({ level }: { level: string }) => `The ease at the ${level}`,
  frontShare: ({ level }: { level: string }) => `The front's share of the ${level}`,
  topShape: ({ place }: { place: string }) => `The top edge at ${place}`,
  hemShape: ({ place }: { place: string }) => `The hem at ${place}`,
});

interface OfWedge {
  /** As it is called within a sentence. */
  readonly wedge: string;
}

/** `level` is null where the number holds at every level. */
interface OfWedgeAt extends OfWedge {
  readonly level: string | null;
}

const WEDGE_FIELDS = catalogue({
  id: ({ wedge }: OfWedge) => `The id of the ${wedge}`,
  kind: ({ wedge }: OfWedge) => `The kind of the ${wedge}`,
  block: ({ wedge }: OfWedge) => `The block of the ${wedge}`,
  sizing: ({ wedge }: OfWedge) => `The sizing of the ${wedge}`,
  weight: ({ wedge }: OfWedge) => `The weight of the ${wedge}`,
  cupLine: ({ wedge }: OfWedge) => `The fullness line of the ${wedge}`,
  cupIntake: ({ wedge }: OfWedge) => `The fullness intake of the ${wedge}`,
  endEdge: ({ wedge }: OfWedge) => `The edge in which the ${wedge} ends`,
  endPart: ({ wedge }: OfWedge) => `The place along the edge at which the ${wedge} ends`,
  endBelow: ({ wedge }: OfWedge) => `The distance below the armhole at which the ${wedge} opens`,
  upper: {
    level: ({ wedge }: OfWedge) => `The level of the upper point of the ${wedge}`,
    point: ({ wedge }: OfWedge) => `The upper point of the ${wedge}`,
  },
  lower: {
    level: ({ wedge }: OfWedge) => `The level of the lower point of the ${wedge}`,
    point: ({ wedge }: OfWedge) => `The lower point of the ${wedge}`,
  },
  intake: ({ wedge, level }: OfWedgeAt) =>
    level === null ? `The intake of the ${wedge}` : `The intake of the ${wedge} at the ${level}`,
  fromCentre: ({ wedge, level }: OfWedgeAt) =>
    level === null
      ? `The distance of the ${wedge} from the centre`
      : `The distance of the ${wedge} from the centre at the ${level}`,
  station: ({ wedge, level }: OfWedgeAt) =>
    level === null ? `The station of the ${wedge}` : `The station of the ${wedge} at the ${level}`,
});
