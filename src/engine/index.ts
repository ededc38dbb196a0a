// The engine's one way in.

export { carriedOver } from './alterations/closed/carryOver';
export { shareOverSeams } from './alterations/closed/shareOverSeams';
export {
  type Alteration,
  type AlteredPlace,
  type AlteredSide,
  LANDMARKS,
  type LengthBound,
  type PanelName,
  type RefusalCode,
  SEAM_ENDS,
  type SeamAlteration,
  type SeamEnd,
  type SeamHeight,
  type SeamName,
} from './alterations/terms/alteration';
export { isCentre } from './alterations/terms/alterationsOfSide';
export { MOST_ALTERED_MM, MOST_FROM_WAIST_MM } from './alterations/terms/checkAmounts';
export { type PartedPanels, partedPanels } from './alterations/terms/partedPanels';
export { withSeams } from './alterations/terms/withSeams';
export { type Block, partingWedges } from './block/block';
export { dartAngle } from './block/lines/closedDart';
export { isThrough, reaches } from './block/lines/extent';
export type { Level } from './block/lines/levels';
export { axisX, onCentre, stationOf, stationX } from './block/lines/station';
export { topUnderLine } from './block/lines/topHeight';
export type { DraftedWedge } from './block/lines/wedge';
export { asksForSide } from './block/shoulders/sideDart';
export { partingEnds, type UpperEnd } from './block/shoulders/upperEdges';
export { type Turn, turnIntake } from './block/turnIntake';
export {
  MEASUREMENTS,
  type MeasurementGroup,
  type MeasurementName,
  type Measurements,
  UNMEASURED,
} from './body/measurements';
export {
  type BodySides,
  differs,
  SIDE_LEVELS,
  SIDES_SPANS,
} from './body/sides';
export { type BandWalkRow, bandWalk } from './checks/bandWalk';
export { MOST_REDUCTION_MM, MOST_REDUCTION_SHARE, USUAL_REDUCTION_MM } from './checks/cautions';
export { closeUp, type Placement, placePoint } from './checks/closedUp';
export type { EdgeContinuityRow } from './checks/edgeContinuity';
export { finishedCloth, type LedgerRow } from './checks/ledger';
export { raisedPath, stopsAlong } from './checks/raisedWidth';
export type { DartWalkRow, SeamWalkRow } from './checks/seamWalk';
export { type ClosedAt, type PiecePart, partsOf } from './checks/slash';
export { closeUpWhole } from './draft/closedUpWhole';
export { type Draft, draft } from './draft/draft';
export { draftWhole } from './draft/draftWhole';
export { halfOf } from './draft/halfOf';
export { levelsReached } from './draft/levelsReached';
export { centreSeam, keyOfSeam, seamEnd, seamNameOf } from './draft/seamNamed';
export { distanceToChord, nearestFraction } from './geometry/chord';
export { isInside } from './geometry/isInside';
export { between, distance, type Point, turnAbout } from './geometry/point';
export { crossingsAt, pointsDown, polylineLength, ringThrough, signedArea } from './geometry/polyline';
export { type SmoothLine, xAt } from './geometry/smoothLine';
export { edgesAt, hasArmhole, innerEdge, outerEdge } from './pieces/edgeLookup';
export type { EdgeNodePlace } from './pieces/edgeNodes';
export type { DartLines, Edge, EdgeReference, Mark, Piece } from './pieces/piece';
export { rightSideUp } from './pieces/rightSideUp';
export { checkStyle } from './style/checkStyle';
export {
  balancedWedge,
  DEFAULT_STYLE,
  LEVEL_EDGE,
  USUAL_BAND_ABOVE,
  USUAL_EXTRAS,
  USUAL_SHOULDERS,
} from './style/defaultStyle';
export type { DataOf, Field, Fields, NumberUnit } from './style/fields';
export { halfOpenAt, openWidth } from './style/openings';
export {
  type Allowances,
  BACK_CLOSURES,
  type Closure,
  EDGE_NODES,
  type EdgeNode,
  type EdgeNodeName,
  type EdgeShape,
  type Extras,
  FRONT_CLOSURES,
  LEAST_PANEL_MM,
  MOST_WEDGES,
  type Shoulders,
  STYLE,
  type Style,
  TOP_LEVELS,
  type TopLevel,
} from './style/style';
export { styleOfSide } from './style/styleOfSide';
export { styleSchema } from './style/styleSchema';
export { type StylePath, styleSpan, wedgeSpan } from './style/styleSpans';
export { turnsHemUp } from './style/turnedHem';
export {
  DART_LEVELS,
  type DartPoint,
  type EndsAt,
  type Opening,
  type UpperEdge,
  USUAL_CUP,
  USUAL_SIDE_BELOW,
  WEDGE_FIELDS,
  WEDGE_IN_FILE,
  type Wedge,
  type WedgeKind,
} from './style/wedgeFields';
export { type DartEnd, isDart, kindFrom, POINTS_OF, withPoints } from './style/wedgeKind';
export { identityOf, type PieceIdentity, type SeamIdentity } from './terms/identity';
export type { EdgeName, Issue, IssueCode, IssueValues, Severity } from './terms/issue';
export { type BlockName, LEVEL_NAMES, type LevelName, type PerLevel, SIDES, type Side } from './terms/names';
export { inches, MM_PER_INCH } from './terms/units';
export { sectionPoints } from './worn/body/surface';
export type { FitFigures } from './worn/measure/figures';
export { clothLength, tapeRound } from './worn/measure/girths';
export { type WornPlace, worstPlaces } from './worn/measure/worst';
export {
  type NotJudged,
  type OtherWay,
  otherWay,
  sewGarment,
  sewing,
  type WornGarment,
  type WornHalf,
} from './worn/sewGarment';
export { type WholeMesh, wholeMesh } from './worn/wholeMesh';
