// A plain sentence or two for everything the engine has to say: what, where, and what would cure it.

import {
  type Issue,
  type IssueCode,
  MOST_REDUCTION_MM,
  MOST_REDUCTION_SHARE,
  type Style,
  USUAL_REDUCTION_MM,
} from '../../engine';
import { formatLength } from '../units/formatLength';
import type { LengthUnit } from '../units/lengthUnit';
import { catalogue } from './catalogue';
import { inSentence } from './inSentence';
import {
  MEASUREMENT_SENTENCES,
  type MeasurementParts,
  measurementName,
  measurementParts,
} from './measurementIssues';
import { pieceLabel, seamName } from './pieces';
import { styleField } from './styleFields';
import { wedgeNameOf } from './wedges';

export interface IssueContext {
  /** The unit lengths are written in. */
  readonly unit: LengthUnit;
  /** The style that was drafted: its wedges give the names. */
  readonly style: Pick<Style, 'wedges'>;
  /** The cautions that this issue wants read were read: it is told as a fact. Not so where left out. */
  readonly read?: boolean;
}

/** The sentence for an issue. Parts of the place that the issue lacks are spoken of in general words. */
export function issueSentence(issue: Issue, context: IssueContext): string {
  return SENTENCES[issue.code](partsOf(issue, context));
}

interface Parts extends MeasurementParts {
  /** Any length, with its unit. */
  readonly written: (mm: number) => string;
  /** A number of the issue's values, written. */
  readonly count: (name: string) => string;
  readonly percent: (name: string) => string;
  /** "Front 1", "the front", or "the draft". */
  readonly piece: string;
  /** The same to begin a sentence: "The front". */
  readonly pieceFirst: string;
  /** "the bust wedge", or "the wedge beside it". */
  readonly wedge: string;
  /** The same to begin a sentence: "The bust wedge". */
  readonly wedgeFirst: string;
  readonly seam: string;
  /** The number of the style that the issue stands at, and its span, in words. */
  readonly styleName: string;
  readonly styleSpan: string;
  /** What to do about cautions not yet read; of those that were, nothing. */
  readonly unread: string;
}

function partsOf(issue: Issue, { unit, style, read = false }: IssueContext): Parts {
  const { at } = issue;
  const styled = styleField(at.field ?? 'A number of the style', style);
  const field = measurementName(at.field) ?? (at.field === undefined ? 'A measurement' : styled.name);
  const parts = measurementParts(issue, unit, field);
  const { number, least, most } = parts;
  const plain = (value: number): string => (Number.isFinite(value) ? String(value).replace('-', '−') : '–');
  const whole = at.block ? `${at.side ? `${at.side} ` : ''}${at.block}` : 'draft';
  const wedge = at.wedge === undefined ? 'wedge beside it' : inSentence(wedgeNameOf(at.wedge, style));
  return {
    ...parts,
    written: (mm) => formatLength(mm, unit, { withUnit: true }),
    count: (name) => plain(number(name)),
    percent: (name) => `${plain(Math.round(100 * number(name)))} %`,
    piece: at.piece === undefined ? `the ${whole}` : pieceLabel(at.piece),
    pieceFirst: at.piece === undefined ? `The ${whole}` : pieceLabel(at.piece),
    wedge: `the ${wedge}`,
    wedgeFirst: `The ${wedge}`,
    seam: at.seam === undefined ? 'a seam' : seamName(at.seam),
    styleName: styled.name,
    styleSpan:
      styled.kind === 'length'
        ? `${least} to ${most}`
        : `${plain(number('least'))} to ${plain(number('most'))}`,
    unread: read ? '' : ' Read the cautions for tight lacing and mark them as read, or take less.',
  };
}

/** A width that rounds to the least it should be must not be written as that least. */
const narrower = (width: string, least: string): string =>
  width === least ? `a hair less than ${least}` : width;

const ceiling = (written: (mm: number) => string): string =>
  `about ${written(MOST_REDUCTION_MM)} or ${Math.round(100 * MOST_REDUCTION_SHARE)} %, whichever is less`;

/** One for each code: a code without words does not compile. */
const SENTENCES: Readonly<Record<IssueCode, (parts: Parts) => string>> = catalogue({
  ...MEASUREMENT_SENTENCES,
  styleOutOfRange: ({ styleName, styleSpan, number }) =>
    Number.isFinite(number('least'))
      ? `${styleName} must be from ${styleSpan}. Set it within that.`
      : `${styleName} is missing, stands twice, or is not something the draft knows. Choose it anew.`,
  halvesNotOnFold: ({ block }) =>
    `The two sides differ, so the centre ${block} is joined by a seam and does not lie on the fold.`,
  centresUneven: ({ seam, length }) =>
    `The left and the right edge at ${seam} differ by ${length('apart')} and cannot be sewn together. Let the two sides differ less there.`,
  girthUsedUp: ({ level, length, number }) =>
    number('target') > 0
      ? `The cloth at the ${level} would measure only ${length('target')}, too little for both front and back. Take away less in ease, or make the lacing gap smaller.`
      : `Nothing is left of the girth at the ${level} after ease and lacing gap. Take away less in ease, or make the lacing gap smaller.`,
  tooManyWedges: ({ block, count }) =>
    `The ${block} has ${count('count')} wedges; ${count('most')} is the most it can have. Take some off.`,
  panelTooNarrow: ({ pieceFirst, level, wedge, length }) =>
    `${pieceFirst} is only ${narrower(length('width'), length('least'))} wide near the ${level}; it needs at least ${length('least')} to be sewn. Move ${wedge} away from its neighbour or the side seam, take less into it there, or take it off.`,
  panelCrossed: ({ piece, level, wedge, number }) =>
    Number.isFinite(number('width'))
      ? `The edges of ${piece} meet or cross near the ${level}, so it cannot be cut. Take less into ${wedge} there, move it away from its neighbour or the side seam, or take it off.`
      : `Top edge and hem of ${piece} run into each other or across a seam, so it cannot be cut. Make the garment longer, or take less into the wedges beside it.`,
  intakeNotPlaced: ({ block, level, length }) =>
    `At the ${level} the wedges of the ${block} had no room for ${length('left')}; the side seam takes it. Add a wedge, or raise the most one wedge may take, if the side grows too hollow.`,
  dartTooShort: ({ wedge, length }) =>
    `The points of ${wedge} are in the wrong order or nearer than ${length('least')} to each other. Move them apart.`,
  dartTakesNothing: ({ wedgeFirst }) =>
    `${wedgeFirst} crosses no level between its points, so it takes nothing. Let it reach the waist or another level.`,
  dartEndsAtEdge: ({ wedgeFirst, piece }) =>
    `${wedgeFirst} in ${piece} has a point too near the edge, or shuts just as it reaches the edge, and cannot be sewn. Move the point, or let the dart run on to the edge.`,
  dartOffPanel: ({ wedgeFirst }) =>
    `${wedgeFirst} lies across another wedge or beyond its panels. Move it to where there is cloth on both sides of it.`,
  sidePanelAtCentre: () =>
    'Front and back cannot be cut in one at the side: one of them has no seam between the side and its centre line. Add a wedge that runs through, or keep the side seam.',
  shoulderNeedsTop: () =>
    'Shoulders stand on the over-bust line, but the top edge is measured from a lower one. Measure it from the over-bust line, or leave the shoulders out.',
  shoulderNeedsSideSeam: () =>
    'The armhole is parted by the side seam, so the side panel of a shouldered block cannot be cut in one. Keep the side seam, or leave the shoulders out.',
  shoulderWedges: ({ wedgeFirst, block }) =>
    `${wedgeFirst} has no place to end on a shouldered ${block}: one wedge ends at mid-shoulder, and each other needs a place of its own in neckline, shoulder or armhole, in the order of the wedges, or a point below. Give it a place or an upper point, or take it off.`,
  topAboveArmpit: ({ length }) =>
    `The top edge at the side stands ${length('over')} higher than the underarm and would cut in. Lower the top edge.`,
  garmentTooShort: ({ length, number }) =>
    number('height') > 0
      ? `Only ${length('height')} is left between top edge and hem; ${length('least')} is the least that can be sewn. Lower the hem or raise the top edge.`
      : 'The hem lies above the top edge. Lower the hem or raise the top edge.',
  hemTooLongToSit: ({ length }) =>
    `The hem reaches ${length('over')} below the lap when she sits, and will push up. Raise the hem.`,
  seamTooUneven: ({ seam, length }) =>
    `The two edges of ${seam} differed by ${length('lengthDifference')} before truing, more than should be eased away. Move the wedge or share its intake with another.`,
  buskNeedsStraightCentre: ({ wedge }) =>
    `A busk needs a straight centre front, and ${wedge} curves it. Take that wedge off or to nothing, or close the front with a seam.`,
  edgeTooSteep: ({ seam }) =>
    `At ${seam} the top edge or hem runs so steeply that it cannot cross straight on. Move the place of the edge beside it, or make it a corner.`,
  foldBecomesSeam: ({ wedge, block }) =>
    `The centre ${block.replace(/^the /, '')} cannot lie on the fold, because ${wedge} curves it: it is cut as a seam. Take that wedge off to keep the fold.`,
  sideZipNeedsSeam: () =>
    'A side zip needs a side seam, and the side panel is cut in one. Keep the side seam, or open the garment elsewhere.',
  zipNeedsAllowance: ({ field, least }) =>
    `A zip wants a seam allowance of ${least}; ${inSentence(field)} is less. Widen it, or sew the zip close.`,
  noOpening: () =>
    'The garment opens nowhere: both centres are joined or on the fold. Give it lacing, hooks, a zip or a busk at one of them, or a zip in the side seam.',
  waistReduction: ({ length, percent, written }) =>
    `The waist is drawn in by ${length('reduction')} (${percent('share')}), more than the usual ${written(USUAL_REDUCTION_MM)}. Let the wearer grow used to it by degrees; if she is in doubt, take less.`,
  waistReductionHigh: ({ length, percent, written, unread }) =>
    `The waist is drawn in by ${length('reduction')} (${percent('share')}); ${ceiling(written)}, is the usual ceiling.${unread}`,
  ribReductionHigh: ({ length, percent, written, unread }) =>
    `The ribs at the under-bust are drawn in by ${length('reduction')} (${percent('share')}); even for a waist ${ceiling(written)}, is the usual ceiling (common practice).${unread}`,
  girthReductionHigh: ({ level, length, percent, written }) =>
    `The ${level} is drawn in by ${length('reduction')} (${percent('share')}); even for a waist ${ceiling(written)}, is the usual ceiling (common practice). Look for a slip of the keyboard, or take less.`,
  extraHasNoRoom: ({ styleName, block }) =>
    `${styleName} is more than the laced edge of the ${block} has room for: that edge bends too tightly, or top edge and hem run along it or meet. The piece is left out; make it narrower.`,
  hemNeedsAllowance: () =>
    'The hem is to be turned up, but it has no allowance to turn. Give it one, or bind the hem.',
  hemTurnsShort: ({ piece }) =>
    `The hem of ${piece} bends or meets a seam so that its allowance, turned up, could not lie flat on the cloth above it: the corners of its cut line are as for a bound hem. Make the hem allowance smaller, or face the hem there.`,
  cutLineUnsure: ({ piece }) =>
    `The cut line round ${piece} could not be drawn, so it lies on the sew line without allowance. Make the allowances smaller, or the piece wider.`,
});
