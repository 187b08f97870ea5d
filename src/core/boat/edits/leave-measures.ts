import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';

/** Takes lists that hold nothing out of a part of the boat, and the part itself where nothing is left in it. */
export const withoutEmptyLists = <Part extends 'measures' | 'papers' | 'sea'>(boat: Draft<Boat>, part: Part): void => {
  const lists: Record<string, unknown> | undefined = boat[part];
  if (lists === undefined) return;
  for (const [name, list] of Object.entries(lists)) if (Array.isArray(list) && list.length === 0) delete lists[name];
  if (Object.keys(lists).length === 0) delete boat[part];
};

const without = <Entry extends { unit?: string }>(list: Entry[] | undefined, unit: string): Entry[] =>
  (list ?? []).filter((entry) => entry.unit !== unit);

/** Takes out what was measured of a unit, typed into it, or tried with it at sea. */
export const leaveMeasures = (boat: Draft<Boat>, unit: string): void => {
  const { measures, sea } = boat;
  if (measures !== undefined) {
    if (measures.airDraftParts !== undefined) measures.airDraftParts = without(measures.airDraftParts, unit);
    if (measures.transducers !== undefined) measures.transducers = without(measures.transducers, unit);
    if (measures.screens !== undefined) measures.screens = without(measures.screens, unit);
    if (measures.typed !== undefined) measures.typed = without(measures.typed, unit);
  }
  if (sea !== undefined) {
    if (sea.logs !== undefined) sea.logs = without(sea.logs, unit);
    if (sea.winds !== undefined) sea.winds = without(sea.winds, unit);
    if (sea.leads !== undefined) sea.leads = without(sea.leads, unit);
    if (sea.swings !== undefined) sea.swings = without(sea.swings, unit);
  }
  withoutEmptyLists(boat, 'measures');
  withoutEmptyLists(boat, 'sea');
};
