// The document layer's one way in.

export { acknowledge, isRead, wantsReading } from './edit/acknowledgement';
export { pointX, slantDart, straighten, straightenAt } from './edit/axis';
export {
  addClient,
  addDraft,
  archiveClient,
  byLastUse,
  duplicateClient,
  openClientOf,
  removeClient,
  removeDraft,
} from './edit/clients';
export {
  addWedge,
  balanceAll,
  changeClient,
  changeDraft,
  changeStyle,
  setCup,
  setEdgeNode,
  setIntake,
  setSideZip,
  setSizing,
  setStation,
  setStationAt,
  setTurnedHem,
} from './edit/commands';
export {
  type DartSpace,
  dartSpace,
  setDartPoint,
  setEnds,
  setJoinedSide,
  WEDGE_KINDS,
} from './edit/darts';
export { setExtra } from './edit/extras';
export { beginSet, needsThird, setMeasurement, setReading, takeEstimate } from './edit/measurementEdits';
export { addStyle, keepStyle, removeStyle, renameStyle, styleCalled } from './edit/ownStyles';
export {
  dartsBelowShoulders,
  SHOULDER_KINDS,
  type ShoulderKind,
  type ShoulderNumber,
  setShoulderKind,
  setShoulderNumber,
  shoulderKind,
  shoulderNumber,
  topFromOverBust,
  wedgeRunsUp,
} from './edit/shoulders';
export { setDiffering, setRightWedges, setSide } from './edit/sides';
export { turnIntakeTo } from './edit/turnIntakeTo';
export { removeWedge, wedgesBeside, wedgesOf, wedgeWithId } from './edit/wedgeLists';
export { type Fault, type Read, refuse } from './files/fault';
export { kindOf, parseJson } from './files/json';
export { type FileUnit, readLength, readUnit } from './files/readLength';
export { readSides } from './files/readSides';
export { type FileStyle, readStyle } from './files/readStyle';
export { writeStyle } from './files/writeStyle';
export { CANVAS } from './messages/canvas';
export { changeSentence } from './messages/changes';
export { SHOULDER_KIND_WORDS, WEDGE_KIND_WORDS } from './messages/choices';
export { CLI } from './messages/cli';
export { BACKUP, CLIENT_BOOK } from './messages/clientBook';
export { CUT } from './messages/cut';
export { DRAFT } from './messages/draft';
export {
  estimatedSentence,
  estimateWritten,
  offeredLength,
  offeredSentence,
  unusualSentence,
} from './messages/expected';
export { FIELDS, GIRTHS, ISSUES } from './messages/fields';
export { FILES } from './messages/files';
export { issueSentence } from './messages/issues';
export { KEEPING } from './messages/keeping';
export { lengthFaultSentence, outsideSpanSentence } from './messages/lengthFaults';
export { LEVEL_TITLES, LEVEL_WORDS } from './messages/levels';
export { MAKING } from './messages/making';
export { MEASURE } from './messages/measure';
export { measurementIssueSentence } from './messages/measurementIssues';
export { MEASUREMENT_WORDS } from './messages/measurements';
export { edgeName, edgeTitle, pieceLabel, seamLabel, seamName, TURNED_HEM } from './messages/pieces';
export { PRINTER_FAULTS } from './messages/printers';
export { REAL_SIZE } from './messages/realSize';
export { SAFETY_CAUTIONS, SAFETY_STANDING } from './messages/safety';
export { SHELL } from './messages/shell';
export { SHOULDER_CARD } from './messages/shoulderCard';
export { STYLE_BOOK } from './messages/styleBook';
export { TABLE } from './messages/table';
export { PROOFS, TRUE } from './messages/true';
export { unusualLine, widerThanBustLine } from './messages/unusual';
export { WEDGE_CARDS } from './messages/wedgeCards';
export { wedgeNameOf, wedgePhrase, wedgePlaceOf, wedgeShortNameOf } from './messages/wedges';
export {
  type BackedUpClient,
  type BackedUpStyle,
  compareBackup,
  compareStyles,
  readBackup,
  restore,
} from './model/backup';
export {
  BOOK_VERSION,
  type Book,
  type Client,
  type ComparisonDraft,
  type OwnStyle,
  openClient,
  openDraftOf,
  type SavedDraft,
  type Unit,
} from './model/book';
export { type Change, type ChangeOf, type ExtraLengthPath, sameChange } from './model/change';
export { apply, type Delta, delta } from './model/delta';
export { type History, record, redo, startHistory, undo } from './model/history';
export { isObject } from './model/isObject';
export { readBook } from './model/readBook';
export { writeBackup } from './model/writeBackup';
export { DEMO_BOOK, DEMO_CLIENT } from './presets/demo';
export {
  edgeShapeName,
  edgeShapeNamed,
  HEM_EDGES,
  type NamedEdge,
  TOP_EDGES,
} from './presets/edgeShapes';
export { NAMED_STYLES } from './presets/styles';
export { type Expected, expectedOf, unusualOnes } from './statistics/expected';
export { formatDifference, formatLength, plainLength } from './units/formatLength';
export { type LengthUnit, MM_PER } from './units/lengthUnit';
export { parseLength } from './units/parseLength';
