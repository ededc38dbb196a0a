// The plan of a medium, made in a worker; on the page where the browser has none.

import { useEffect, useMemo, useRef, useState } from 'react';
import { openPlanner, type Planner } from './openPlanner';
import { makeQuickPlan, type PlanJobOf, type PlanKind, type PlanOf } from './planJob';

interface Planned<Kind extends PlanKind> {
  /** The last plan that was made; null before the first. */
  readonly plan: PlanOf<Kind> | null;
  /** It is the plan of this job, and not of one before. */
  readonly isCurrent: boolean;
}

/** @param job the same object as long as nothing in it changes; null where there is nothing to lay out */
export function usePlan<Kind extends PlanKind>(job: PlanJobOf<Kind> | null): Planned<Kind> {
  const [made, setMade] = useState<{ job: PlanJobOf<Kind>; plan: PlanOf<Kind> } | null>(null);
  const planner = useRef<Planner<Kind> | null>(null);
  const hasWorkers = typeof Worker !== 'undefined';
  useEffect(
    () => () => {
      planner.current?.end();
      planner.current = null;
    },
    [],
  );
  useEffect(() => {
    if (!job || !hasWorkers) return;
    let isWanted = true;
    planner.current ??= openPlanner();
    void planner.current.plan(job).then((plan) => {
      if (isWanted) setMade({ job, plan });
    });
    return () => {
      isWanted = false;
    };
  }, [job, hasWorkers]);
  const onPage = useMemo(() => (job && !hasWorkers ? makeQuickPlan(job) : null), [job, hasWorkers]);
  if (!job) return { plan: null, isCurrent: true };
  if (!hasWorkers) return { plan: onPage, isCurrent: true };
  return { plan: made?.plan ?? null, isCurrent: made?.job === job };
}
