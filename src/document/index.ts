// The document layer's one way in.

export { acknowledge, isRead, wantsReading } from './acknowledgement';
export { pointX, slantDart, straighten, straightenAt } from './axis';
export {
  type BackedUpClient,
  type BackedUpStyle,
  compareBackup,
  compareStyles,
  type Difference,
  readBackup,
  restore,
  writeBackup,
} from './backup';
export {
  BOOK_VERSION,
  type Book,
  type Client,
  type OwnStyle,
  openClient,
  openSheet,
  type SavedDraft,
  type Sheet,
  type Unit,
} from './book';
export {
  addClient,
  addSheet,
  archiveClient,
  byLastUse,
  duplicateClient,
  openClientOf,
  removeClient,
  removeSheet,
} from './clients';
export {
  addWedge,
  balanceAll,
  changeClient,
  changeSheet,
  changeStyle,
  removeWedge,
  setCup,
  setEdgeNode,
  setIntake,
  setSideZip,
  setSizing,
  setStation,
  setStationAt,
  setTurnedHem,
} from './commands';
export {
  type DartEnd,
  type DartSpace,
  dartSpace,
  endsOf,
  setDartPoint,
  setEnds,
  setJoinedSide,
  WEDGE_ENDS,
  WEDGE_ENDS_WORDS,
} from './darts';
export { apply, type Delta, delta } from './delta';
export { DEMO_BOOK, DEMO_CLIENT } from './demo';
export {
  edgeShapeName,
  edgeShapeNamed,
  HEM_EDGES,
  type NamedEdge,
  TOP_EDGES,
} from './edgeShapes';
export { type Expected, expectedOf, unusualOnes } from './expected';
export { setExtra } from './extras';
export { type Fault, type Read, refuse } from './files/fault';
export { isObject, kindOf, parseJson } from './files/json';
export { type FileUnit, readLength, readUnit } from './files/readLength';
export { readSides } from './files/readSides';
export { type FileStyle, readStyle } from './files/readStyle';
export { type History, record, redo, startHistory, undo } from './history';
export { formatDifference, formatLength, plainLength } from './lengths/formatLength';
export { type LengthUnit, MM_PER } from './lengths/lengthUnit';
export { parseLength } from './lengths/parseLength';
export { readBook } from './migrations/readBook';
export { addStyle, keepStyle, removeStyle, renameStyle, styleCalled } from './ownStyles';
export {
  dartsBelowShoulders,
  SHOULDER_KIND_WORDS,
  SHOULDER_KINDS,
  type ShoulderKind,
  type ShoulderNumber,
  setShoulderKind,
  setShoulderNumber,
  shoulderKind,
  shoulderNumber,
  topFromOverBust,
  wedgeRunsUp,
} from './shoulders';
export { bookOnTable, setDiffering, setRightWedges, setSide, styleOnTable } from './sides';
export { NAMED_STYLES } from './styles';
export { beginSet, needsThird, setMeasurement, setReading, takeEstimate } from './tape';
export { turnIntakeTo } from './turnIntakeTo';
export {
  estimatedSentence,
  estimateWritten,
  offeredLength,
  offeredSentence,
  unusualSentence,
} from './words/expected';
export { issueSentence } from './words/issues';
export { lengthFaultSentence, outsideSpanSentence } from './words/lengthFaults';
export { LEVEL_WORDS } from './words/levels';
export { MEASUREMENT_WORDS } from './words/measurements';
export { edgeName, pieceLabel, pieceLabelOf, seamName, TURNED_HEM } from './words/pieces';
export { SAFETY_CAUTIONS, SAFETY_STANDING } from './words/safety';
export { EDGE_NODE_WORDS } from './words/styleFields';
export { unusualLine, widerThanBustLine } from './words/unusual';
export { wedgeName, wedgeNameOf } from './words/wedges';
export { writeStyle } from './writeStyle';
