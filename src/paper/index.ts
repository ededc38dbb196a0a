// The paper layer's one way in.

export type { InkLine, InkText } from './ink';
export { type Layout, layOut, type PatternInput, type PlacedPanel } from './layOut';
export { patternPdf } from './pdf/patternPdf';
export { type CheckedPaper, checkPaper, type PaperFault, paperSentence } from './sheets/checkPaper';
export { type Grid, ownPartOf, type SheetPlace, sheetName, windowOf } from './sheets/grid';
export { DEFAULT_PAPER_CHOICE, PAPERS, type PaperChoice, type PaperName, paperChoice } from './sheets/papers';
