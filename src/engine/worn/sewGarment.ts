// A draft sewn and worn: the panels of each half on the body they were drafted for, at rest, and how they fit.

import { type Body, checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { type BodySides, bodyOfSide, wholeSides } from '../body/sides';
import type { Draft } from '../draft/draft';
import type { Style } from '../style/style';
import { styleOfSide } from '../style/styleOfSide';
import { identityOf, type PieceIdentity } from '../terms/identity';
import { type LevelName, SIDES, type Side } from '../terms/names';
import { tapeAt } from './body/surface';
import { makeWornBody, type WornBody } from './body/wornBody';
import { constructionOf } from './construction';
import { type Fields, fieldsOf } from './measure/fields';
import { type FitFigures, figuresOf } from './measure/figures';
import { type Band, bandAt, type Part, partAt } from './measure/regions';
import type { PlacedMesh } from './mesh/carriedOver';
import { type Draped, draping } from './solve/drape';

/**
 * Why a garment is not judged. `cannotBeSewn`: the draft has errors or lacks a panel. `shouldered`: the body has no arms yet, and
 * what hangs from shoulders comes to rest in several places. `bodyNotMet`: no surface has all these girths. `notAtRest`: forces
 * were not in balance within the work allowed.
 */
export type NotJudged = 'cannotBeSewn' | 'shouldered' | 'bodyNotMet' | 'notAtRest';

/** One half on its body; x to the wearer's left for a left half, to her right for a right one, and its mirror image where alike. */
export interface WornHalf {
  readonly side: Side | null;
  readonly body: WornBody;
  readonly draped: Draped;
  readonly fields: Fields;
  /** Heights of the draft's levels on paper, mm. */
  readonly levels: readonly { readonly name: LevelName; readonly y: number }[];
  /** Null where the garment is not at rest. */
  readonly figures: FitFigures | null;
  /** Another rest of more energy; null where none was found. */
  readonly other: OtherWay | null;
}

/** Another way in which a garment can come to rest on its body: how far the cloth lies from here at the most, mm, and where. */
export interface OtherWay {
  readonly apart: number;
  readonly band: Band;
  readonly part: Part;
}

export interface WornGarment {
  /** Null where the figures stand. */
  readonly notJudged: NotJudged | null;
  /** One half where both are alike, else the left and the right. Empty where nothing was sewn. */
  readonly halves: readonly WornHalf[];
  /** Pieces beside the panels that are not sewn on: bands, sleeves, straps, modesty panels. */
  readonly leftOut: readonly PieceIdentity[];
}

export interface WornChoice {
  /** Width of the mesh, mm: 12 for figures, 24 while something is pulled. */
  readonly width?: number;
  /** What an earlier run of the same panels came to, by half. */
  readonly from?: readonly PlacedMesh[];
}

const USUAL_WIDTH_MM = 12;

/** The most that a tape round the body may differ from the girth, mm. */
const GIRTH_TOLERANCE_MM = 0.1;

/** Sews a draft on the body it was made for. Pure: the same input gives the same result. */
export function sewGarment(...input: Parameters<typeof sewing>): WornGarment {
  const work = sewing(...input);
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** The same in steps of some ms: it pauses between them, so that a caller may do other things or leave off. */
export function* sewing(
  drafted: Draft,
  measurements: Measurements,
  style: Style,
  sides: BodySides | null = null,
  choice: WornChoice = {},
): Generator<void, WornGarment> {
  const leftOut = drafted.extras.filter(({ kind }) => kind !== 'facing').map(identityOf);
  const none = (notJudged: NotJudged): WornGarment => ({ notJudged, halves: [], leftOut });
  const { body } = checkBody(measurements);
  if (!body || drafted.pieces.length === 0 || drafted.issues.some(({ severity }) => severity === 'error'))
    return none('cannotBeSewn');
  if (style.shoulders && style.shoulders.bandAbove === undefined) return none('shouldered');
  const jobs = drafted.halves
    ? SIDES.map((side) => ({
        side,
        half: drafted.halves?.[side] ?? drafted,
        style: styleOfSide(style, side),
      }))
    : [{ side: null, half: drafted, style }];
  const halves: WornHalf[] = [];
  for (const [i, { side, half, style: own }] of jobs.entries()) {
    const on = makeWornBody(side ? bodyOf(measurements, body, sides, side) : body);
    if (!on.levels.every(({ z, girth }) => Math.abs(tapeAt(on.surface, z) - girth) <= GIRTH_TOLERANCE_MM))
      return none('bodyNotMet');
    halves.push(yield* wornHalf(half, on, own, side, choice, choice.from?.[i]));
  }
  const atRest = halves.every(({ figures }) => figures !== null);
  return { notJudged: atRest ? null : 'notAtRest', halves, leftOut };
}

function bodyOf(measurements: Measurements, body: Body, sides: BodySides | null, side: Side): Body {
  return checkBody(bodyOfSide(measurements, body, wholeSides(sides), side)).body ?? body;
}

function* wornHalf(
  drafted: Draft,
  body: WornBody,
  style: Style,
  side: Side | null,
  { width = USUAL_WIDTH_MM }: WornChoice,
  from: PlacedMesh | undefined,
): Generator<void, WornHalf> {
  const levels = drafted.levels.map(({ name, y }) => ({ name, y }));
  const draped = yield* draping(drafted.pieces, body, constructionOf(style, drafted), {
    width,
    from,
  });
  const fields = fieldsOf(draped);
  const figures = draped.rest.atRest ? figuresOf(draped, fields, body, drafted) : null;
  return { side, body, draped, fields, levels, figures, other: otherWayOf(draped, body) };
}

function otherWayOf({ other, places }: Draped, { levels }: WornBody): OtherWay | null {
  if (!other) return null;
  const [x = 0, y = 0, z = 0] = places.subarray(3 * other.vertex, 3 * other.vertex + 3);
  return { apart: other.apart, band: bandAt(z, levels), part: partAt(x, y) };
}

/** The farthest other way of a garment's halves; null where each has one rest. */
export const otherWay = ({ halves }: Pick<WornGarment, 'halves'>): OtherWay | null =>
  halves.flatMap(({ other }) => other ?? []).sort((a, b) => b.apart - a.apart)[0] ?? null;
