import { type StepId, stepIds } from '../route.ts';

/** The step one was last at, boat by boat, so that a boat opens where the work was left. */
const keyOf = (id: string): string => `fairlead-step ${id}`;

/** Keeps the step one is at in a boat. */
export const keepStep = (id: string, step: StepId): void => {
  try {
    localStorage.setItem(keyOf(id), step);
  } catch {
    // a private window may bar storage: the boat then opens at the first step
  }
};

/** Where a boat opens: the step one was last at, the first where she was never open here. */
export const lastStep = (id: string): StepId => {
  try {
    const kept = localStorage.getItem(keyOf(id));
    return stepIds.find((step) => step === kept) ?? 'boat';
  } catch {
    return 'boat';
  }
};
