// A plain sentence or two for everything the engine has to say: what, where, and what would cure it.

import {
  type EdgeName,
  type Issue,
  type IssueCode,
  MOST_REDUCTION_MM,
  MOST_REDUCTION_SHARE,
  type Style,
  USUAL_REDUCTION_MM,
} from '../../../engine';
import type { LengthUnit } from '../../units/lengthUnit';
import { catalogue } from '../catalogue';
import { inSentence } from '../words/inSentence';
import { pieceLabel, seamName } from '../words/pieces';
import { wedgePhrase, wedgePlaceOf } from '../words/wedges';
import {
  MEASUREMENT_SENTENCES,
  type MeasurementWords,
  measurementName,
  measurementWords,
  type Parts,
} from './measurementIssues';
import { type StyleField, styleField } from './styleFields';

export interface IssueContext {
  /** The unit lengths are written in. */
  readonly unit: LengthUnit;
  /** The style that was drafted: its wedges give the names. */
  readonly style: Pick<Style, 'wedges' | 'rightWedges'>;
  /** The cautions that this issue wants read were read: it is told as a fact. Not so where left out. */
  readonly read?: boolean;
}

/** The sentence for an issue. Parts of the place that the issue lacks are spoken of in general words. */
export const issueSentence = (issue: Issue, context: IssueContext): string => sentenceOf(issue, context);

function sentenceOf<Code extends IssueCode>(issue: Issue<Code>, context: IssueContext): string {
  const write: Sentences[Code] = SENTENCES[issue.code];
  return write({ ...wordsFor(issue.at, context), values: issue.values });
}

interface Words extends MeasurementWords {
  /** A number as it is. */
  readonly plain: (value: number) => string;
  readonly percent: (share: number) => string;
  /** The least length of a span that has no upper end, as it is easily read. */
  readonly atLeast: (mm: number) => string;
  /** "Front 1", "the front", or "the draft". */
  readonly piece: string;
  /** The same to begin a sentence: "The front". */
  readonly pieceFirst: string;
  /** "the bust wedge", or "the wedge beside it". */
  readonly wedge: string;
  /** The same to begin a sentence: "The bust wedge". */
  readonly wedgeFirst: string;
  readonly seam: string;
  /** An edge of a piece: "top edge". */
  readonly edge: string;
  /** An angle, rad, in degrees. */
  readonly degrees: (angle: number) => string;
  /** The number of the style that the issue stands at. */
  readonly styleName: string;
  /** A span of that number, in words. */
  readonly styleSpan: (span: { readonly least: number; readonly most: number }) => string;
  /** What to do about cautions not yet read; of those that were, nothing. */
  readonly unread: string;
}

function wordsFor(at: Issue['at'], { unit, style, read = false }: IssueContext): Words {
  const styled = at.field === undefined ? UNKNOWN_FIELD : styleField(at.field, style);
  const field = measurementName(at.field) ?? (at.field === undefined ? 'A measurement' : styled.name);
  const words = measurementWords(at, unit, field);
  const whole = at.block ? `${at.side ? `${at.side} ` : ''}${at.block}` : 'draft';
  const wedge = at.wedge === undefined ? 'wedge beside it' : wedgePhrase(wedgePlaceOf(at.wedge, style));
  return {
    ...words,
    plain,
    percent: (share) => `${plain(Math.round(100 * share))} %`,
    atLeast: (mm) => words.span({ least: mm, most: Number.NaN }).least,
    piece: at.piece === undefined ? `the ${whole}` : pieceLabel(at.piece),
    pieceFirst: at.piece === undefined ? `The ${whole}` : pieceLabel(at.piece),
    wedge: `the ${wedge}`,
    wedgeFirst: `The ${wedge}`,
    seam: at.seam === undefined ? 'a seam' : seamName(at.seam),
    edge: EDGE_WORDS[at.edge ?? 'top'],
    degrees: (angle) => `${plain(Math.round((angle * 180) / Math.PI))}°`,
    styleName: styled.name,
    styleSpan: (span) => {
      const { least, most } =
        styled.kind === 'length' ? words.span(span) : { least: plain(span.least), most: plain(span.most) };
      return `${least} to ${most}`;
    },
    unread: read ? '' : ' Read the cautions for tight lacing and mark them as read, or take less.',
  };
}

/** A free edge of a piece, within a sentence. */
const EDGE_WORDS: Readonly<Record<EdgeName, string>> = {
  top: 'top edge',
  neckline: 'neckline',
  hem: 'hem',
  armhole: 'armhole',
};

const UNKNOWN_FIELD: StyleField = { name: 'A number of the style', kind: 'share' };

const plain = (value: number): string => (Number.isFinite(value) ? String(value).replace('-', '−') : '–');

/** A width that rounds to the least it should be must not be written as that least. */
const narrower = (width: string, least: string): string =>
  width === least ? `a hair less than ${least}` : width;

const ceiling = (written: (mm: number) => string): string =>
  `about ${written(MOST_REDUCTION_MM)} or ${Math.round(100 * MOST_REDUCTION_SHARE)} %, whichever is less`;

/** One for each code: a code without words does not compile, nor does a sentence with a value that its code has not. */
type Sentences = { readonly [Code in IssueCode]: (parts: Parts<Words, Code>) => string };

const SENTENCES: Sentences = catalogue<Sentences>({
  ...MEASUREMENT_SENTENCES,
  styleOutOfRange: ({ styleName, styleSpan, values }) =>
    values.least !== undefined
      ? `${styleName} must be from ${styleSpan(values)}. Set it within that.`
      : `${styleName} is missing, stands twice, or is not something the draft knows. Choose it anew.`,
  halvesNotOnFold: ({ block }) =>
    `The two sides differ, so the centre ${block} is joined by a seam and does not lie on the fold.`,
  centresUneven: ({ seam, written, values }) =>
    `The left and the right edge at ${seam} differ by ${written(values.apart)} and cannot be sewn together. Let the two sides differ less there.`,
  girthUsedUp: ({ level, written, values }) =>
    values.target >= 1
      ? `The cloth at the ${level} would measure only ${written(values.target)}, too little for both front and back. Take away less in ease, or make the lacing gap smaller.`
      : `Nothing is left of the girth at the ${level} after ease and lacing gap. Take away less in ease, or make the lacing gap smaller.`,
  tooManyWedges: ({ block, plain, values }) =>
    `The ${block} has ${plain(values.count)} wedges; ${plain(values.most)} is the most it can have. Take some off.`,
  panelTooNarrow: ({ pieceFirst, level, wedge, written, values }) =>
    `${pieceFirst} is only ${narrower(written(values.width), written(values.least))} wide near the ${level}; it needs at least ${written(values.least)} to be sewn. Move ${wedge} away from its neighbour or the side seam, take less into it there, or take it off.`,
  panelCrossed: ({ piece, level, wedge, values }) =>
    Number.isFinite(values.width)
      ? `The edges of ${piece} meet or cross near the ${level}, so it cannot be cut. Take less into ${wedge} there, move it away from its neighbour or the side seam, or take it off.`
      : `Top edge and hem of ${piece} run into each other or across a seam, so it cannot be cut. Make the garment longer, or take less into the wedges beside it.`,
  intakeNotPlaced: ({ block, level, written, values }) =>
    `At the ${level} the wedges of the ${block} had no room for ${written(values.left)}; the side seam takes it. Add a wedge, or raise the most one wedge may take, if the side grows too hollow.`,
  wedgesTakeLess: ({ block, level, written, values }) =>
    `At the ${level} the balanced wedges of the ${block} take less than their share, so that no panel is narrower than ${written(values.least)}; the side seam takes the rest.`,
  wedgesMovedIn: ({ block, level, written, values }) =>
    `At the ${level} the wedges of the ${block} stand nearer the centre than their stations say, so that no panel is narrower than ${written(values.least)}.`,
  panelsUnlike: ({ piece, level, written, values }) =>
    `At the ${level}, ${piece} is ${written(values.width)} wide and the panel beside it ${written(values.beside)}. Move the wedge between them to share the width more evenly.`,
  dartLeftOut: ({ wedgeFirst }) =>
    `${wedgeFirst} would take next to nothing on this body and is left out. Give it an intake of its own, or take it off.`,
  dartClosedEarly: ({ wedgeFirst }) =>
    `${wedgeFirst} would take next to nothing at the edge it opens in, so it is closed before that edge.`,
  dartTooShort: ({ wedge, written, values }) =>
    `The points of ${wedge} are in the wrong order or nearer than ${written(values.least)} to each other. Move them apart.`,
  dartTakesNothing: ({ wedgeFirst }) =>
    `${wedgeFirst} crosses no level between its points, so it takes nothing. Let it reach the waist or another level.`,
  dartEndsAtEdge: ({ wedgeFirst, piece }) =>
    `${wedgeFirst} in ${piece} has a point too near the edge, or shuts just as it reaches the edge, and cannot be sewn. Move the point, or let the dart run on to the edge.`,
  sideDartOffSeam: ({ wedgeFirst, written, values }) =>
    `${wedgeFirst} cannot open so far below the armhole: the side seam has room for it from ${written(values.least)} to ${written(values.most)} below. Open it higher or lower.`,
  sideDartMeets: ({ wedgeFirst }) =>
    `${wedgeFirst} has no clear way from the side seam to the bust point: it meets another dart or an edge. Open it higher, lower the upper point of the dart beside it, or let it open in another edge.`,
  dartOffPanel: ({ wedgeFirst }) =>
    `${wedgeFirst} lies across another wedge or beyond its panels. Move it to where there is cloth on both sides of it.`,
  sidePanelAtCentre: () =>
    'Front and back cannot be cut in one at the side: one of them has no seam between the side and its centre line. Add a wedge that runs through, or keep the side seam.',
  shoulderNeedsTop: () =>
    'Shoulders stand on the over-bust line, but the top edge is measured from a lower one. Measure it from the over-bust line, or leave the shoulders out.',
  shoulderNeedsSideSeam: () =>
    'The armhole is parted by the side seam, so the side panel of a shouldered block cannot be cut in one. Keep the side seam, or leave the shoulders out.',
  shoulderWedges: ({ wedgeFirst, block }) =>
    `${wedgeFirst} has no place to end on a shouldered ${block}: one wedge ends at mid-shoulder, and each other needs a place of its own in neckline, shoulder or armhole, in the order of the wedges; of darts only the one nearest to the bust point may open there, and in the side seam only one that no other wedge runs up beside. Say where it ends, give it an upper point, or take it off.`,
  topAboveArmpit: ({ written, values }) =>
    `The top edge at the side stands ${written(values.over)} higher than the underarm and would cut in. Lower the top edge.`,
  topOnBreast: ({ written, values }) =>
    `The top edge is measured from the waist and stands ${written(values.over)} above the under-bust line, on the breast. Measure it from the under-bust line, or lower it.`,
  topLineEstimated: ({ written, values }) =>
    `The top edge is measured from the under-bust line, which the draft goes without; it is measured from half way between bust and waist instead, ${written(values.above)} above the waist. Measure neck to under-bust again, or measure the top edge from the waist.`,
  garmentTooShort: ({ written, values }) =>
    values.height >= 1
      ? `Only ${written(values.height)} is left between top edge and hem; ${written(values.least)} is the least that can be sewn. Lower the hem or raise the top edge.`
      : 'The hem lies above the top edge. Lower the hem or raise the top edge.',
  hemTooLongToSit: ({ written, values }) =>
    `The hem reaches ${written(values.over)} below the lap when she sits, and will push up. Raise the hem.`,
  seamTooUneven: ({ seam, written, values }) =>
    `The two edges of ${seam} differed by ${written(values.lengthDifference)} before truing, more than should be eased away. Move the wedge or share its intake with another.`,
  seamBendsTightly: ({ seam, level, written, values }) =>
    `Near the ${level}, ${seam} bends to a radius of ${written(values.radius)}; under ${written(values.least)} it cannot be sewn. Share what is taken there with another wedge, or look at the measurements beside that level.`,
  edgeBendsTightly: ({ edge, piece, level, written, values }) =>
    `Near the ${level}, the ${edge} of ${piece} bends to a radius of ${written(values.radius)}; under ${written(values.least)} it cannot be sewn. Move its places apart, or make one a corner.`,
  seamLeansFar: ({ seam, level, degrees, values }) =>
    `Near the ${level}, ${seam} leans ${degrees(values.angle)} from upright. Take more into the wedges there, or look at the measurements beside that level.`,
  armholeTip: ({ pieceFirst, degrees, values }) =>
    `${pieceFirst} ends at the armhole in a tip of ${degrees(values.angle)}, too narrow to sew well. Let its seam end lower in the armhole, or nearer the side.`,
  underarmBeak: ({ piece, degrees, values }) =>
    `The top edge of ${piece} meets the side seam at ${degrees(values.angle)} and makes a beak at the underarm. Pull in less at the over-bust, or let the wedges take more of it there.`,
  letOutPastAllowance: ({ pieceFirst, seam, written, values }) =>
    `${pieceFirst} is let out by ${written(values.out)} at ${seam}, where its allowance is ${written(values.allowance)}: the mock-up as sewn has no cloth for it. Try the alteration in a new one.`,
  sidePushedOut: ({ block, level, written, values }) =>
    `At the ${level} the wedges set by hand on the ${block} take ${written(values.by)} more than it is smaller than at the bust, so the side seam runs outwards there. Take less into them.`,
  bandUneven: ({ written, values }) =>
    `The shoulder bands of a half are ${written(values.bands)} long where they are sewn on, the top edges there ${written(values.panels)}. Look at the side seam: its two edges differ too much.`,
  buskNeedsStraightCentre: ({ wedge }) =>
    `A busk needs a straight centre front, and ${wedge} curves it. Take that wedge off or to nothing, or close the front with a seam.`,
  edgeTooSteep: ({ seam }) =>
    `At ${seam} the top edge or hem runs so steeply that it cannot cross straight on. Move the place of the edge beside it, or make it a corner.`,
  foldBecomesSeam: ({ wedge, block }) =>
    `The centre ${block} cannot lie on the fold, because ${wedge} curves it: it is cut as a seam. Take that wedge off to keep the fold.`,
  sideZipNeedsSeam: () =>
    'A side zip needs a side seam, and the side panel is cut in one. Keep the side seam, or open the garment elsewhere.',
  zipNeedsAllowance: ({ field, atLeast, values }) =>
    `A zip wants a seam allowance of ${atLeast(values.least)}; ${inSentence(field)} is less. Widen it, or sew the zip close.`,
  noOpening: () =>
    'The garment opens nowhere: both centres are joined or on the fold. Give it lacing, hooks, a zip or a busk at one of them, or a zip in the side seam.',
  waistReduction: ({ written, percent, values }) =>
    `The waist is drawn in by ${written(values.reduction)} (${percent(values.share)}), more than the usual ${written(USUAL_REDUCTION_MM)}. Let the wearer grow used to it by degrees; if she is in doubt, take less.`,
  waistReductionHigh: ({ written, percent, unread, values }) =>
    `The waist is drawn in by ${written(values.reduction)} (${percent(values.share)}); ${ceiling(written)}, is the usual ceiling.${unread}`,
  ribReductionHigh: ({ written, percent, unread, values }) =>
    `The ribs at the under-bust are drawn in by ${written(values.reduction)} (${percent(values.share)}); even for a waist ${ceiling(written)}, is the usual ceiling (common practice).${unread}`,
  girthReductionHigh: ({ level, written, percent, values }) =>
    `The ${level} is drawn in by ${written(values.reduction)} (${percent(values.share)}); even for a waist ${ceiling(written)}, is the usual ceiling (common practice). Look for a slip of the keyboard, or take less.`,
  sleeveNeedsArm: () =>
    'The sleeve is cut to the upper arm, which was not measured, so it is left out. Measure the upper arm, or leave the sleeve out.',
  sleeveNeedsTop: () =>
    'The sleeve is sewn to a top edge on both sides of the side seam; here there is none, so it is left out. Leave the shoulders out and keep the side seam, or leave the sleeve out.',
  extraHasNoRoom: ({ styleName, block }) =>
    `${styleName} is more than the laced edge of the ${block} has room for: that edge bends too tightly, or top edge and hem run along it or meet. The piece is left out; make it narrower.`,
  hemNeedsAllowance: () =>
    'The hem is to be turned up, but it has no allowance to turn. Give it one, or bind the hem.',
  hemTurnsShort: ({ piece }) =>
    `The hem of ${piece} bends or meets a seam so that its allowance, turned up, could not lie flat on the cloth above it: the corners of its cut line are as for a bound hem. Make the hem allowance smaller, or face the hem there.`,
  cutLineUnsure: ({ piece }) =>
    `The cut line round ${piece} could not be drawn, so it lies on the sew line without allowance. Make the allowances smaller, or the piece wider.`,
});
