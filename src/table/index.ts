// The editor's one way in.

export type { HandleActions, Steps } from './gestures/useHandleDrag';
export { type Handle, intakeNow } from './handles';
export { layOut, type TableLayout } from './layout';
export { ClosedUp, type PointedOut } from './view/ClosedUp';
export { CuttingTable } from './view/CuttingTable';
export { pathThrough } from './view/paths';
