import { useSyncExternalStore } from 'react';
import type { Plan } from '../../../core/plan-shape.ts';
import type { PlanWork } from '../../../core/work-shape.ts';

/** The latest order that was found, with the plan it is for: a plan has a quick one only. */
let found: { readonly plan: Plan; readonly work: PlanWork } | undefined;
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Keeps an order that was found for a plan. */
export const keepWork = (plan: Plan, work: PlanWork): void => {
  found = { plan, work };
  for (const listener of listeners) listener();
};

/** The work of a plan with the best order that was found for it. */
export const useFoundWork = (plan: Plan): PlanWork | undefined => {
  const latest = useSyncExternalStore(subscribe, () => found);
  return latest?.plan === plan ? latest.work : plan.work;
};
