// The paper layer's one way in.

export type { InkLine } from './ink';
export { type Layout, layOut, type PatternInput, type PlacedPanel } from './layOut';
export { patternPdf } from './pdf/patternPdf';
export { checkPaper, paperSentence } from './sheets/checkPaper';
export { ownPartOf, sheetName, windowOf } from './sheets/grid';
export { DEFAULT_PAPER_CHOICE, PAPERS, type PaperChoice, type PaperName, paperChoice } from './sheets/papers';
