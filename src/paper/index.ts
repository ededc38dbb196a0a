// The paper layer's one way in.

export { draftingSheetHtml } from './draftingSheet/draftingSheetHtml';
export { draftingSheetPdf } from './draftingSheet/draftingSheetPdf';
export { nestedDxf } from './dxf/nestedDxf';
export { patternDxf } from './dxf/patternDxf';
export { isDrawnByDevice } from './glyphs/deviceLetters';
export { type FontFiles, glyphsFor, withGlyphs } from './glyphs/glyphs';
export { type WithFace, withFace } from './glyphs/pageFace';
export { type Layout, layOut, type PatternInput } from './layout/layOut';
export {
  layOutOnePage,
  ONE_PAGE_MARGIN_MM,
  ONE_PAGES,
  type OnePageChoice,
  type OnePageLayout,
  onePageSentence,
  wholeOnPaper,
} from './layout/onePage';
export type { PlacedPanel } from './layout/placePanels';
export type { PlanInput } from './layout/planInput';
export { planPanels } from './layout/planPanels';
export { CLOTH_SPANS, type Cloth, laidWidth, OPEN_CLOTH } from './layPlan/cloth';
export { cutOnce, type PieceToLay } from './layPlan/copies';
export { labelAt } from './layPlan/labelAt';
export { layFile } from './layPlan/layFile';
export { layPdf } from './layPlan/layPdf';
export { layProjectorPdf } from './layPlan/layProjectorPdf';
export { layRollPdf, layStrips } from './layPlan/layRollPdf';
export { laySvg } from './layPlan/laySvg';
export { layFaultSentence } from './layPlan/layTexts';
export type { LayFault, LayPlan } from './layPlan/plan';
export { placesOf, planAgain, sumOf } from './layPlan/planFrom';
export { startLay } from './layPlan/startLay';
export { isCutOnce } from './making/layers';
export { makingCsv } from './making/makingCsv';
export { type MakingList, makingList } from './making/makingList';
export { MAKING_SOURCES, type MakingSection, makingSections, WORKSHOP_CARE } from './making/makingSections';
export { amountOf, makingNames, makingText } from './making/makingText';
export {
  checkMaking,
  MAKING_FIELDS,
  type MakingField,
  type MakingSettings,
  usualMaking,
} from './making/settings';
export type { NestedInput } from './nested/nestedInput';
export { dashOfSize, numbersOfSizes } from './nested/sizeLines';
export type { Stroke } from './panel/strokes';
export { nestedPagePdf, nestedPdf, nestedSheets } from './pdf/nested/nestedPdf';
export { nestedProjectorPdf } from './pdf/nested/nestedProjector';
export { onePagePdf } from './pdf/onePagePdf';
export { type PageWatch, patternPdf } from './pdf/patternPdf';
export {
  DEFAULT_PROJECTOR,
  gridSideMm,
  isProjectorChoice,
  LEAST_LINE_MM,
  MOST_LINE_MM,
  type ProjectorChoice,
  planProjected,
  projectorPdf,
} from './pdf/projectorPdf';
export { estimatedLines } from './remarks/estimates';
export { recordOf } from './remarks/record';
export { checkPaper, paperSentence } from './sheets/checkPaper';
export { type Correction, correctionFrom, correctionText, isCorrection } from './sheets/correction';
export { ownPartOf, sheetName, windowOf } from './sheets/grid';
export { DEFAULT_PAPER_CHOICE, PAPERS, type PaperChoice, type PaperName, paperChoice } from './sheets/papers';
export { nestedSvg } from './svg/nestedSvg';
export { patternSvg } from './svg/patternSvg';
export { MM_PER_POINT } from './text/textWidth';
