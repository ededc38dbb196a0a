// The numbers of a style by name, from the path the engine or a style file gives them.

import { EDGE_NODES, type EdgeNodeName, LEVEL_NAMES, type LevelName, type Style } from '../../engine';
import { LEVEL_WORDS } from './levels';
import { wedgeNameOf } from './wedges';

export interface StyleField {
  /** With a capital, to begin a sentence. */
  readonly name: string;
  readonly kind: 'length' | 'share';
}

const PLAIN: Readonly<Record<string, StyleField>> = {
  wedges: { name: 'The list of wedges', kind: 'share' },
  overBustAbove: { name: 'The over-bust line above the bust line', kind: 'length' },
  topFrom: { name: 'The line the top edge is measured from', kind: 'share' },
  topAbove: { name: 'The top edge above its line', kind: 'length' },
  hemBelow: { name: 'The hem below the waist line', kind: 'length' },
  'closure.front': { name: 'The closing at centre front', kind: 'length' },
  'closure.sideZip': { name: 'The side zip', kind: 'share' },
  joinedSide: { name: 'Front and back side panel in one', kind: 'share' },
  turnedHem: { name: 'The turned hem', kind: 'share' },
  'closure.back': { name: 'The closing at centre back', kind: 'length' },
  'closure.lacingGap': { name: 'The lacing gap', kind: 'length' },
  'balance.sideShare': { name: 'The part the side seam takes', kind: 'share' },
  'balance.cap': { name: 'The most one wedge may take', kind: 'length' },
  'shoulders.drop': { name: 'The drop of the shoulder', kind: 'length' },
  'shoulders.armholeIn': { name: 'How far the armhole goes in', kind: 'length' },
  'shoulders.intake.front': { name: 'The front wedge at the shoulder', kind: 'length' },
  'shoulders.intake.back': { name: 'The back wedge at the shoulder', kind: 'length' },
  'shoulders.bandAbove': { name: 'The height of the shoulder band at the centres', kind: 'length' },
  'extras.modesty.overlap': { name: 'The overlap of the modesty panel', kind: 'length' },
  'extras.facing.width': { name: 'The width of the facing', kind: 'length' },
  'extras.straps.length': { name: 'The length of the straps', kind: 'length' },
  'extras.straps.width': { name: 'The width of the straps', kind: 'length' },
  'allowances.seam': { name: 'The allowance of the seams', kind: 'length' },
  'allowances.side': { name: 'The allowance of the side seam', kind: 'length' },
  'allowances.top': { name: 'The allowance of the top edge', kind: 'length' },
  'allowances.hem': { name: 'The allowance of the hem', kind: 'length' },
  'allowances.centre': { name: 'The allowance of centre front and centre back', kind: 'length' },
};

/** What the number at a path of a style is called; the path itself where it has no name. */
export function styleField(path: string, style: Pick<Style, 'wedges'>): StyleField {
  const level = levelAtEnd(path);
  if (level !== null && path === `ease.${level}`)
    return { name: `The ease at the ${LEVEL_WORDS[level]}`, kind: 'length' };
  if (level !== null && path === `frontShare.${level}`)
    return { name: `The front's share of the ${LEVEL_WORDS[level]}`, kind: 'share' };
  return PLAIN[path] ?? nodeField(path) ?? wedgeField(path, level, style) ?? { name: path, kind: 'share' };
}

/** The places where top edge and hem are given a height. */
export const EDGE_NODE_WORDS: Readonly<Record<EdgeNodeName, string>> = {
  centreFront: 'centre front',
  bustLine: 'the bust line',
  sideFront: 'side-front',
  underarm: 'the underarm',
  sideBack: 'side-back',
  centreBack: 'centre back',
};

function nodeField(path: string): StyleField | null {
  const [, edge, name] = /^(topShape|hemShape)\.(\w+)/.exec(path) ?? [];
  const node = EDGE_NODES.find((each) => each === name);
  if (!node) return null;
  return {
    name: `The ${edge === 'topShape' ? 'top edge' : 'hem'} at ${EDGE_NODE_WORDS[node]}`,
    kind: 'length',
  };
}

function wedgeField(path: string, level: LevelName | null, style: Pick<Style, 'wedges'>): StyleField | null {
  const [, id, part] =
    /^wedges\.(.+?)\.(station|weight|id|block|sizing|cup\.\w+|(?:upper|lower)\.\w+|(?:stationAt|intake)(?:\.\w+)?)$/.exec(
      path,
    ) ?? [];
  if (id === undefined || part === undefined) return null;
  const of = `of the ${inSentence(wedgeNameOf(id, style))}`;
  if (part === 'id' || part === 'block' || part === 'sizing' || part === 'weight')
    return { name: `The ${part} ${of}`, kind: 'share' };
  if (part.startsWith('cup'))
    return { name: `The fullness ${part === 'cup.below' ? 'line' : 'intake'} ${of}`, kind: 'length' };
  const point = /^(upper|lower)\.(from|below)$/.exec(part);
  if (point)
    return point[2] === 'from'
      ? { name: `The level of the ${point[1]} point ${of}`, kind: 'share' }
      : { name: `The ${point[1]} point ${of}`, kind: 'length' };
  const at = level === null ? '' : ` at the ${LEVEL_WORDS[level]}`;
  return part.startsWith('intake')
    ? { name: `The intake ${of}${at}`, kind: 'length' }
    : { name: `The station ${of}${at}`, kind: 'share' };
}

const levelAtEnd = (path: string): LevelName | null =>
  LEVEL_NAMES.find((level) => path.endsWith(`.${level}`)) ?? null;

/** A name that begins a line, as it is written within one. */
export const inSentence = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
