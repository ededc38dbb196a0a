// The numbers of a style by name, from the path the engine or a style file gives them.

import { EDGE_NODES, LEVEL_NAMES, type LevelName, type Style } from '../../engine';
import { catalogue } from './catalogue';
import { EDGE_NODE_WORDS } from './edgeNodes';
import { inSentence } from './inSentence';
import { LEVEL_WORDS } from './levels';
import { wedgeNameOf } from './wedges';

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
  'extras.straps.length': 'The length of the straps',
  'extras.straps.width': 'The width of the straps',
  'allowances.seam': 'The allowance of the seams',
  'allowances.side': 'The allowance of the side seam',
  'allowances.top': 'The allowance of the top edge',
  'allowances.hem': 'The allowance of the hem',
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
export function styleField(path: string, style: Pick<Style, 'wedges'>): StyleField {
  const level = levelAtEnd(path);
  if (level !== null && path === `ease.${level}`)
    return { name: FIELDS.ease({ level: LEVEL_WORDS[level] }), kind: 'length' };
  if (level !== null && path === `frontShare.${level}`)
    return { name: FIELDS.frontShare({ level: LEVEL_WORDS[level] }), kind: 'share' };
  return (
    plainField(path) ?? nodeField(path) ?? wedgeField(path, level, style) ?? { name: path, kind: 'share' }
  );
}

function plainField(path: string): StyleField | null {
  const name = PLAIN[path];
  return name === undefined ? null : { name, kind: SHARES.has(path) ? 'share' : 'length' };
}

function nodeField(path: string): StyleField | null {
  const [, edge, name] = /^(topShape|hemShape)\.(\w+)/.exec(path) ?? [];
  const node = EDGE_NODES.find((each) => each === name);
  if (!node) return null;
  const write = edge === 'topShape' ? FIELDS.topAt : FIELDS.hemAt;
  return { name: write({ place: EDGE_NODE_WORDS[node] }), kind: 'length' };
}

function wedgeField(path: string, level: LevelName | null, style: Pick<Style, 'wedges'>): StyleField | null {
  const [, id, part] =
    /^wedges\.(.+?)\.(station|weight|id|kind|block|sizing|endsAt\.(?:edge|part)|cup\.\w+|(?:upper|lower)(?:\.\w+)?|(?:stationAt|intake)(?:\.\w+)?)$/.exec(
      path,
    ) ?? [];
  if (id === undefined || part === undefined) return null;
  const wedge = inSentence(wedgeNameOf(id, style));
  if (part === 'id' || part === 'kind' || part === 'block' || part === 'sizing' || part === 'weight')
    return { name: WEDGE_FIELDS[part]({ wedge }), kind: 'share' };
  if (part === 'endsAt.edge' || part === 'endsAt.part')
    return { name: WEDGE_FIELDS[part === 'endsAt.edge' ? 'endEdge' : 'endPart']({ wedge }), kind: 'share' };
  if (part.startsWith('cup'))
    return { name: WEDGE_FIELDS[part === 'cup.below' ? 'cupLine' : 'cupIntake']({ wedge }), kind: 'length' };
  const [, end, of] = /^(upper|lower)(?:\.(from|below))?$/.exec(part) ?? [];
  if (end === 'upper' || end === 'lower')
    return of === 'from'
      ? { name: WEDGE_FIELDS[end].level({ wedge }), kind: 'share' }
      : { name: WEDGE_FIELDS[end].point({ wedge }), kind: 'length' };
  const [write, kind] = part.startsWith('intake')
    ? ([WEDGE_FIELDS.intake, 'length'] as const)
    : ([WEDGE_FIELDS.station, 'share'] as const);
  return { name: write({ wedge, level: level === null ? null : LEVEL_WORDS[level] }), kind };
}

const FIELDS = catalogue({
  ease: ({ level }: { level: string }) => `The ease at the ${level}`,
  frontShare: ({ level }: { level: string }) => `The front's share of the ${level}`,
  topAt: ({ place }: { place: string }) => `The top edge at ${place}`,
  hemAt: ({ place }: { place: string }) => `The hem at ${place}`,
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
  station: ({ wedge, level }: OfWedgeAt) =>
    level === null ? `The station of the ${wedge}` : `The station of the ${wedge} at the ${level}`,
});

const levelAtEnd = (path: string): LevelName | null =>
  LEVEL_NAMES.find((level) => path.endsWith(`.${level}`)) ?? null;
