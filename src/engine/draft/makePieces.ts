// Makes the finished pieces of a half draft: alters and trues its panels, cuts them, and makes sleeve and bands to fit them.

import {
  type AlteredDraft,
  applyAlterations,
  type HalfAlterations,
  planAlterations,
} from '../alterations/alterDraft';
import { checkClosure } from '../block/closure';
import type { Level } from '../block/lines/levels';
import type { Body } from '../body/body';
import type { BaseDraft } from '../edges/baseDraft';
import { withBandsMated } from '../extras/bandParts';
import { shoulderBands } from '../extras/shoulderBand';
import { withSleeve } from '../extras/sleeve';
import { crossingsOf } from '../panels/crossings';
import { cutApart } from '../panels/cutApart';
import { heightOn } from '../panels/raisedSeam';
import { type TruedSeam, trueSeam } from '../panels/truing';
import { cutPieces } from '../pieces/cutPieces';
import type { OutlinedPanel } from '../pieces/edgeNodes';
import { type FinishedSeam, finishedSeam } from '../pieces/finishedSeam';
import type { Piece } from '../pieces/piece';
import type { Style } from '../style/style';
import { checkHem } from '../style/turnedHem';
import { type Issue, issue } from '../terms/issue';
import type { CutDraft } from './cutAgain';

export interface MadePieces {
  /** The base draft that the blocks were cut apart from: with its edges altered. */
  readonly planned: BaseDraft;
  /** The same as the panels were altered. */
  readonly baseDraft: BaseDraft;
  /** What alterations did; null where none were asked for. */
  readonly altered: AlteredDraft | null;
  /** Front panels from the centre, then back panels from the centre. */
  readonly pieces: readonly Piece[];
  readonly bands: readonly Piece[];
  readonly sleeve: readonly Piece[];
  /** The seams between the panels, and each centre edge. */
  readonly seams: readonly FinishedSeam[];
  /** The seams of open darts. */
  readonly darts: readonly FinishedSeam[];
  /** The panels that the pieces were made of. */
  readonly outlined: readonly OutlinedPanel[];
  /** How many panels the wedges ask for, made or not. */
  readonly expectedCount: number;
  /** Issues of the panels and of their closing. */
  readonly panelIssues: readonly Issue[];
  /** Issues of alterations, bands and sleeve. */
  readonly besideIssues: readonly Issue[];
}

/** The least height of a garment that has room for its seams. mm */
export const LEAST_HEIGHT_MM = 40;

/**
 * Makes the pieces of a base draft that was cut apart. A piece that cannot be made is left out, and a blocking issue names it.
 *
 * @param toTurn id of a bust dart that is turned afterwards: the piece it lies on has no cut line yet
 */
export function makePieces(
  body: Body,
  style: Style,
  levels: readonly Level[],
  drafted: CutDraft,
  alterations: HalfAlterations,
  toTurn: string | null = null,
): MadePieces {
  const plan = planAlterations(drafted.baseDraft, style, alterations);
  const planned = plan?.baseDraft ?? drafted.baseDraft;
  const { blocks, edges, span } = planned;
  const isCut = planned === drafted.baseDraft || drafted.apart.areSurelyWide;
  const apart = isCut ? drafted.apart : cutApart(blocks, style, levels, edges, span);
  const altered = plan && applyAlterations(plan, apart, style.allowances);
  const { baseDraft, panels, seams: untrued } = altered ?? { ...drafted, ...apart };
  const seams = untrued.map((seam) =>
    trueSeam(seam, levels, heightOn(seam, span.waist), crossingsOf(seam, baseDraft)),
  );
  const closure = checkClosure(blocks, style);
  const cut = cutPieces(panels, seams, style, baseDraft, closure.onFold, apart.issues, toTurn);
  const sleeved = withSleeve(body.upperArm, style, cut.pieces);
  const bands = baseDraft.bands
    ? shoulderBands(baseDraft.bands, edges.top, seams, style, closure.onFold, sleeved.panels)
    : { pieces: [], issues: [] };
  const finished = (seam: TruedSeam): FinishedSeam => finishedSeam(seam, cut.referenceTo);
  return {
    planned,
    baseDraft,
    altered,
    pieces: withBandsMated(sleeved.panels, bands.pieces),
    bands: bands.pieces,
    sleeve: sleeved.sleeve,
    seams: seams.map(finished),
    darts: cut.darts.map(finished),
    outlined: cut.made,
    expectedCount: apart.expectedCount,
    panelIssues: [
      ...apart.issues,
      ...tooShort(seams),
      ...tooSteep(seams),
      ...closure.issues,
      ...checkHem(style),
      ...cut.issues,
    ],
    besideIssues: [...(altered?.issues ?? []), ...bands.issues, ...sleeved.issues],
  };
}

/** A blocking issue for each seam at which top edge and hem come too near each other. */
const tooShort = (seams: readonly TruedSeam[]): Issue[] =>
  seams
    .map(({ seam, edges }) => ({ seam: seam.identity, height: edges.hem.y - edges.top.y }))
    .filter(({ height }) => height < LEAST_HEIGHT_MM)
    .map(({ seam, height }) =>
      issue('garmentTooShort', { height, least: LEAST_HEIGHT_MM }, { seam, field: 'hemBelow' }),
    );

/** A blocking issue for each seam at which an edge would run along it. */
const tooSteep = (seams: readonly TruedSeam[]): Issue[] =>
  seams.filter(({ steep }) => steep).map(({ seam }) => issue('edgeTooSteep', {}, { seam: seam.identity }));
