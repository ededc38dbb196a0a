// The paper layer's one way in.

export { patternDxf } from './dxf/patternDxf';
export type { InkLine } from './ink';
export { type Layout, layOut, type PatternInput } from './layOut';
export { patternPdf } from './pdf/patternPdf';
export type { PlacedPanel, PlanInput } from './placePanels';
export { checkPaper, paperSentence } from './sheets/checkPaper';
export { ownPartOf, sheetName, windowOf } from './sheets/grid';
export { DEFAULT_PAPER_CHOICE, PAPERS, type PaperChoice, type PaperName, paperChoice } from './sheets/papers';
export { patternSvg } from './svg/patternSvg';
