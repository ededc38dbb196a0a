// The editor's one way in.

export { askedRun, crosses } from './dartRun';
export type { RestingPlace } from './gestures/settle';
export type { HandleActions, Steps } from './gestures/useHandleDrag';
export { type TableView, useTableView } from './gestures/useTableView';
export type { Handle } from './handle';
export { layOut } from './layout';
export type { NewWedge } from './view/AddGuide';
export type { PointedOut } from './view/ClosedPart';
export { ClosedUp, type Picked } from './view/ClosedUp';
export { CuttingTable } from './view/CuttingTable';
export { pathThrough } from './view/paths';
export type { Viewport } from './view/viewport';
export { SIZING_SIGNS } from './view/WedgeSigns';
export { intakeNow } from './wedgeHandles';
