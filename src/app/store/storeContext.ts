// The hooks of the store and of the drafts in view. Each file takes what it names and no more, so that the first step does not
// fetch the engine.

export { draftOfSide, draftOnce, useCommittedDraft, useDraft } from './drafts';
export { usePullAtRest } from './pullAtRest';
export { SeenContext, StoreContext, useKept, useKeptStyle, useOpen, useStore } from './storeHooks';
