// A worker that makes one plan after another; of those that wait only the last is made.

import { makeQuickPlan, type PlanJobOf, type PlanKind, type PlanOf } from './planJob';

export interface Planner<Kind extends PlanKind> {
  /** The plan; it never comes where another was asked for before this one was begun. */
  readonly plan: (job: PlanJobOf<Kind>) => Promise<PlanOf<Kind>>;
  readonly end: () => void;
}

interface Asked<Kind extends PlanKind> {
  readonly job: PlanJobOf<Kind>;
  readonly made: (plan: PlanOf<Kind>) => void;
}

/** Where the worker fails, plans are made on the page. */
export function openPlanner<Kind extends PlanKind>(): Planner<Kind> {
  let running: Asked<Kind> | null = null;
  let next: Asked<Kind> | null = null;
  let worker: Worker | null = null;
  const onPage = ({ job, made }: Asked<Kind>): void => made(makeQuickPlan(job));
  const start = (asked: Asked<Kind>): void => {
    if (!worker) {
      onPage(asked);
      return;
    }
    running = asked;
    try {
      worker.postMessage(asked.job);
    } catch {
      fail();
    }
  };
  const goOn = (): void => {
    const waiting = next;
    [running, next] = [null, null];
    if (waiting) start(waiting);
  };
  const fail = (): void => {
    worker?.terminate();
    worker = null;
    const last = next ?? running;
    [running, next] = [null, null];
    if (last) onPage(last);
  };
  try {
    worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<PlanOf<Kind>>) => {
      running?.made(data);
      goOn();
    });
    worker.addEventListener('error', fail);
  } catch {
    worker = null;
  }
  return {
    plan: (job) =>
      new Promise((made) => {
        if (running) next = { job, made };
        else start({ job, made });
      }),
    end: () => {
      [running, next] = [null, null];
      worker?.terminate();
    },
  };
}
