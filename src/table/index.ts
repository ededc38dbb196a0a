// What other layers may import of the drawing that one edits.

export { type CanvasView, useCanvasView } from './gestures/useCanvasView';
export type { HandleActions, StepSizes } from './gestures/useHandlePull';
export { askedExtent } from './handles/dartExtent';
export type { Handle } from './handles/handle';
export { isSideDart } from './handles/sideDartHandles';
export { intakeNow } from './handles/wedgeHandles';
export { type CanvasLayout, layOut, layoutOf, lineHeight, type ShownBlocks } from './layout/layOut';
export type { Viewport } from './layout/viewport';
export type { PointedOut } from './view/closedUp/ClosedPart';
export { ClosedUp } from './view/closedUp/ClosedUp';
export type { SeamLengths } from './view/closedUp/SeamLengthTexts';
export type { SeamMark } from './view/closedUp/SeamMarks';
export type { EdgePull, Picked } from './view/closedUp/useEdgePull';
export { DraftCanvas } from './view/DraftCanvas';
export { GarmentSketch, type SketchFrame } from './view/GarmentSketch';
export type { NewWedge } from './view/lines/AddGuide';
export { pathThrough } from './view/lines/paths';
export { SIZING_SIGNS } from './view/WedgeSigns';
