// The engine's one way in.

export {
  MEASUREMENTS,
  type MeasurementName,
  type Measurements,
} from './body/measurements';
export {
  type BodySides,
  differs,
  SIDE_LEVELS,
  SIDES_SPANS,
} from './body/sides';
export type { Block } from './draft/block';
export {
  balancedWedge,
  DEFAULT_STYLE,
  LEVEL_EDGE,
  USUAL_BAND_ABOVE,
  USUAL_CUP,
  USUAL_SHOULDERS,
} from './draft/defaultStyle';
export { type Draft, draft } from './draft/draft';
export { draftWhole, styleOfHand } from './draft/draftWhole';
export type { EdgeNodePlace } from './draft/edgeNodes';
export { EXTRAS_SPANS, USUAL_EXTRAS } from './draft/extras';
export { halfOf } from './draft/halfOf';
export type { Level } from './draft/levels';
export { openWidth } from './draft/openings';
export type { DartLines, Edge, EdgeReference, Mark, Piece } from './draft/piece';
export { isThrough } from './draft/run';
export { stationOf, stationX } from './draft/station';
export { SHOULDERS_SPANS, STYLE_SPANS } from './draft/styleSpans';
export { turnsHemUp } from './draft/turnedHem';
export { dartAngle, type Turn, turnIntake } from './draft/turnIntake';
export {
  type Allowances,
  BACK_CLOSURES,
  type Closure,
  DART_LEVELS,
  type DartPoint,
  EDGE_NODES,
  type EdgeNode,
  type EdgeNodeName,
  type EdgeShape,
  type Extras,
  FRONT_CLOSURES,
  HANDS,
  type Hand,
  LEAST_PANEL_MM,
  LEVEL_NAMES,
  type LevelName,
  MOST_WEDGES,
  type PerLevel,
  type Shoulders,
  type Side,
  type Style,
  TOP_LEVELS,
  type TopLevel,
  type Wedge,
} from './draft/types';
export type { DraftedWedge } from './draft/wedge';
export { distance, type Point } from './geometry/point';
export { crossingsAt, pointsDown, polylineLength } from './geometry/polyline';
export { type SmoothLine, xAt } from './geometry/smoothLine';
export type { Issue, IssueCode, Severity } from './issue';
export { type BandWalkRow, bandWalk } from './proof/bandWalk';
export { MOST_REDUCTION_MM, MOST_REDUCTION_SHARE, USUAL_REDUCTION_MM } from './proof/cautions';
export { closeUp, type Placement, placePoint } from './proof/closedUp';
export { closeUpWhole } from './proof/closedUpWhole';
export type { EdgeRunRow } from './proof/edgeRun';
export type { LedgerRow } from './proof/ledger';
export type { DartWalkRow, SeamWalkRow } from './proof/seamWalk';
export { type ClosedAt, type PiecePart, partsOf } from './proof/slash';
export { inches, MM_PER_INCH } from './units';
