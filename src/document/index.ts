// The document layer's one way in.

export { acknowledge, isRead, wantsReading } from './edit/acknowledgement';
export { allowanceEdges, followsTop, setAllowance } from './edit/allowances';
export { carryOver } from './edit/carryOver';
export { addClient } from './edit/clients/addClient';
export {
  addDraft,
  addPeople,
  archiveClient,
  byLastUse,
  duplicateClient,
  openClientOf,
  openedAfter,
  removeClient,
  removeDraft,
} from './edit/clients/clients';
export { freeName } from './edit/clients/freeName';
export {
  asksWhich,
  beginSet,
  needsThird,
  setMeasurement,
  setReading,
  takeEstimate,
} from './edit/clients/measurementEdits';
export { addStyle, keepStyle, removeStyle, renameStyle, styleCalled } from './edit/clients/ownStyles';
export {
  type BackedUpClient,
  type BackedUpStyle,
  compareClients,
  comparedWith,
  compareStyles,
  type RestoreHow,
  restore,
} from './edit/clients/restore';
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
export { setExtra } from './edit/extras';
export {
  addAlterations,
  addFitting,
  changeFittings,
  removeAlteration,
  removeFitting,
  setAlteration,
  setFitting,
  setNote,
  switchAlteration,
} from './edit/fittings';
export { setFrontShare } from './edit/frontShare';
export { keepLay } from './edit/lays';
export { MOCKUP_ALLOWANCE_MM, mockupStyle } from './edit/mockup';
export { setPanelWidth } from './edit/panelWidth';
export { keepPrint, nextMockup, printOf, withPrint } from './edit/prints';
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
export { keepAxis, pointX, slantDart, straighten, straightenAt } from './edit/wedges/axis';
export {
  type DartSpace,
  dartSpace,
  setDartPoint,
  setEnds,
  setJoinedSide,
  WEDGE_KINDS,
} from './edit/wedges/darts';
export { turnIntakeTo } from './edit/wedges/turnIntakeTo';
export { setSideBelow, setUpperEdge, setUpperPart } from './edit/wedges/upperEnd';
export { removeWedge, wedgesBeside, wedgesOf, wedgeWithId } from './edit/wedges/wedgeLists';
export { type Fault, type Read, refuse } from './files/fault';
export { kindOf, parseJson } from './files/json';
export { type LaidNumbers, layNumbers, listParts } from './files/numberList';
export { readFittings } from './files/readFittings';
export { type FileUnit, readLength, readUnit } from './files/readLength';
export { hasMeasurement, type ReadColumn, type ReadPeople, readPeople } from './files/readPeople';
export { readSides } from './files/readSides';
export { type FileStyle, readStyle } from './files/readStyle';
export { type ChosenUses, type ColumnUse, columnLabel, passedOver, withUse } from './files/tableColumns';
export { writeStyle } from './files/writeStyle';
export { badPartsSentence } from './messages/book/badParts';
export { bookFaultSentence } from './messages/book/bookFaults';
export { changeSentence } from './messages/book/changes';
export { CLI } from './messages/book/cli';
export { COLUMNS } from './messages/book/columns';
export { FILES } from './messages/book/files';
export { KEEPING } from './messages/book/keeping';
export { PEOPLE } from './messages/book/people';
export { PRINTER_FAULTS } from './messages/book/printers';
export { SIZES } from './messages/book/sizes';
export { GLOSSARY } from './messages/help/glossary';
export { HELP } from './messages/help/help';
export { SOURCES } from './messages/help/sources';
export { DRAFTING_PANELS } from './messages/paper/draftingPanels';
export { DRAFTING_BLOCKS, DRAFTING_SHEET, type LegEnds } from './messages/paper/draftingSheet';
export { FITTING_FORM } from './messages/paper/fittingForm';
export { LAY_PLAN } from './messages/paper/layPlan';
export { MAKING_FIGURES } from './messages/paper/makingFigures';
export { MAKING_LIST } from './messages/paper/makingList';
export { NESTED } from './messages/paper/nested';
export { ONE_PAGE_FAULTS, PAPER_FAULTS } from './messages/paper/papers';
export { FIRST_PAGE, PATTERN } from './messages/paper/pattern';
export { RECORD } from './messages/paper/record';
export { REMARKS } from './messages/paper/remarks';
export {
  estimatedSentence,
  estimateWritten,
  offeredLength,
  offeredSentence,
  unusualSentence,
  usualRange,
} from './messages/remarks/expected';
export { issueSentence } from './messages/remarks/issues';
export { lengthFaultSentence, outsideSpanSentence } from './messages/remarks/lengthFaults';
export { measurementIssueSentence } from './messages/remarks/measurementIssues';
export { ALTERATION_REFUSED } from './messages/remarks/refusedAlterations';
export { SAFETY_CAUTIONS, SAFETY_STANDING } from './messages/remarks/safety';
export { unusualLine, widerThanBustLine } from './messages/remarks/unusual';
export { notJudgedSentence } from './messages/remarks/worn';
export { SHOULDER_KIND_WORDS, WEDGE_KIND_WORDS } from './messages/screens/choices';
export { BACKUP, CLIENT_BOOK } from './messages/screens/clients/clientBook';
export { MEND, WIDTHS } from './messages/screens/clients/mend';
export { RELEASE, START } from './messages/screens/clients/start';
export { CUT } from './messages/screens/cut/cut';
export { LAY } from './messages/screens/cut/lay';
export { MAKING } from './messages/screens/cut/making';
export { SIZING } from './messages/screens/cut/sizing';
export { CANVAS } from './messages/screens/draft/canvas';
export { DRAFT } from './messages/screens/draft/draft';
export { SHOULDER_CARD } from './messages/screens/draft/shoulderCard';
export { STYLE_BOOK } from './messages/screens/draft/styleBook';
export { TABLE } from './messages/screens/draft/table';
export { WEDGE_CARDS } from './messages/screens/draft/wedgeCards';
export { FIELDS, GIRTHS, ISSUES } from './messages/screens/fields';
export { FIT, PROOFS } from './messages/screens/fit/fit';
export { FITTINGS } from './messages/screens/fit/fittings';
export { SEEN, SEEN_NAMES, type SeenName } from './messages/screens/fit/seenOnClient';
export { WORN } from './messages/screens/fit/worn';
export { MEASURE } from './messages/screens/measure';
export { REAL_SIZE } from './messages/screens/realSize';
export { SHELL } from './messages/screens/shell';
export { STEP_STATES } from './messages/screens/stepStates';
export {
  ALTERED_EDGES,
  alterationWords,
  BOUND_TITLES,
  heightWords,
  isAllRound,
  placeWords,
  seamEdgeTitles,
  seamTitle,
} from './messages/words/alterations';
export { inSentence } from './messages/words/inSentence';
export { LEVEL_TITLES, LEVEL_WORDS } from './messages/words/levels';
export { MEASUREMENT_WORDS } from './messages/words/measurements';
export { edgeName, edgeTitle, pieceLabel, seamLabel, seamName, TURNED_HEM } from './messages/words/pieces';
export { wedgeNameOf, wedgePhrase, wedgePlaceOf, wedgeShortNameOf } from './messages/words/wedges';
export {
  BOOK_VERSION,
  type Book,
  type Client,
  type ClientEntry,
  type ComparisonDraft,
  type DraftNotes,
  type OwnStyle,
  openClient,
  openDraftOf,
  type SavedDraft,
  type Unit,
  type UnopenedClient,
} from './model/book';
export { type Change, type ChangeOf, type ExtraLengthPath, sameChange } from './model/change';
export { apply, type Delta, delta } from './model/delta';
export { entriesOf, entryOf, withOpened, withUnopened } from './model/entries';
export {
  alterationsOf,
  countOutcomes,
  type Fitting,
  type FittingOutcome,
  inForce,
  type KeptAlteration,
  outcomesOf,
} from './model/fittings';
export { followed, type Outside } from './model/follow';
export { type History, record, redo, startHistory, undo } from './model/history';
export { isObject } from './model/isObject';
export { type Backup, type ReadBackup, readBackup } from './model/kept/readBackup';
export { readBook } from './model/kept/readBook';
export type { BookFault } from './model/kept/readBookData';
export { type FaultyPart, readOne, readParts } from './model/kept/readParts';
export { withIdsApart } from './model/kept/withIdsApart';
export { writeBackup } from './model/kept/writeBackup';
export {
  type DraftOnCloth,
  type KeptLay,
  type KeptPlace,
  LAY_LAYERS,
  type LayCloth,
  type LayLayer,
  type PieceOnCloth,
} from './model/lays';
export type { Migrations } from './model/migrations/migrate';
export { MIGRATIONS } from './model/migrations/migrations';
export { SHARED_ID } from './model/newClient';
export type { KeptPrint } from './model/prints';
export { isOwn, withStamps } from './model/stamps';
export { PROGRAM, PROGRAM_VERSION } from './model/version';
export { DEMO_BOOK, DEMO_CLIENT, demoBook } from './presets/demo';
export {
  edgeShapeName,
  edgeShapeNamed,
  HEM_EDGES,
  type NamedEdge,
  TOP_EDGES,
} from './presets/edgeShapes';
export { NAMED_STYLES } from './presets/styles';
export { chartCsv } from './sizes/chartCsv';
export { proveSize, type SizeProof } from './sizes/proveSize';
export { type NamedBody, type ReadBodies, readCast, readSizes } from './sizes/readSizes';
export { rowFaultSentence } from './sizes/rowFaultSentence';
export { draftSize, errorsOf, type SizedDraft } from './sizes/sizedDrafts';
export { sizesCsv, sizesTableCsv } from './sizes/sizesCsv';
export { jumpsOf, type SizeRow, sizeTable, stepsOf } from './sizes/sizeTable';
export { type Expected, expectedOf, unusualOnes } from './statistics/expected';
export {
  CHART_BUSTS,
  CHART_SPANS,
  type ChartChoice,
  type ChartSize,
  sizeChart,
} from './statistics/sizeChart';
export { formatLength, plainLength, writtenLength } from './units/formatLength';
export { type LengthUnit, MM_PER } from './units/lengthUnit';
export { type ParsedLength, parseLength } from './units/parseLength';
export { parsePercent } from './units/parsePercent';
export { percentOf } from './units/percentOf';
