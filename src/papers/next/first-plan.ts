import type { NextThing } from './next-thing.ts';

/** What a first plan takes, in its order, each with the things that still keep it open. */
const parts = [
  { id: 'boat', by: ['places'] },
  { id: 'kit', by: ['kit'] },
  { id: 'needs', by: ['needs'] },
  { id: 'wires', by: ['wiring'] },
  { id: 'sound', by: ['danger', 'fault', 'missing', 'unfed'] },
] as const;

export type FirstPlanPart = (typeof parts)[number]['id'];

/** How far the first plan of a boat has come: each part, and whether it is done. A part is done only after those before it. */
export const firstPlan = (
  things: readonly NextThing[],
): readonly { readonly id: FirstPlanPart; readonly isDone: boolean }[] => {
  const open = new Set(things.map(({ id }) => id));
  const upTo = parts.findIndex(({ by }) => by.some((id) => open.has(id)));
  return parts.map(({ id }, at) => ({ id, isDone: upTo === -1 || at < upTo }));
};
