// The editor's one way in.

export type { RestingPlace } from './gestures/snap';
export type { HandleActions, Steps } from './gestures/useHandleDrag';
export { type TableView, useTableView } from './gestures/useTableView';
export { askedRun, crosses } from './handles/dartExtent';
export type { Handle } from './handles/handle';
export { intakeNow } from './handles/wedgeHandles';
export { layOut } from './layout/layout';
export type { Viewport } from './layout/viewport';
export type { NewWedge } from './view/AddGuide';
export type { PointedOut } from './view/ClosedPart';
export { ClosedUp, type Picked } from './view/ClosedUp';
export { CuttingTable } from './view/CuttingTable';
export { pathThrough } from './view/paths';
export { SIZING_SIGNS } from './view/WedgeSigns';
