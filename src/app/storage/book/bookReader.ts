// What reads the storage, as a part of its own that is fetched when there is something to read: the schema, the migrations, the
// library they are written with, and what inflates.

export { fetchSteps, NO_STEPS } from '../records/migrations';
export { headsOf, openKept } from '../records/openKept';
export { outsideOf } from '../records/outsideOf';
export { packBody } from '../records/packing';
export { readClientRecord } from '../records/readRecord';
export { Move } from './move';
