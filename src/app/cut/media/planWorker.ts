// The worker that lays panels out on a medium, so that the page still answers meanwhile.

import { makePlan, type PlanJob } from './planJob';

self.addEventListener('message', ({ data }: MessageEvent<PlanJob>) => {
  self.postMessage(makePlan(data));
});
