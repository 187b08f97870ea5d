import type { AtSea } from './at-sea.ts';
import type { Measures } from './measures.ts';
import type { ShipPapers } from './ship-papers.ts';
import { sortedBy } from './sorted-by.ts';

const byUnit = (entry: { readonly unit: string }): string[] => [entry.unit];
const byId = (entry: { readonly id: string }): string[] => [entry.id];

/** Measures with their lists in order; the parts of the air draft keep theirs, from the water up. */
export const canonicalMeasures = ({ transducers, screens, typed, ...others }: Measures): Measures => ({
  ...others,
  ...(transducers === undefined ? {} : { transducers: sortedBy(transducers, byUnit) }),
  ...(screens === undefined ? {} : { screens: sortedBy(screens, byUnit) }),
  ...(typed === undefined ? {} : { typed: sortedBy(typed, ({ unit, what }) => [unit, what]) }),
});

/** Papers with the list of them in order. */
export const canonicalPapers = ({ paperwork, ...others }: ShipPapers): ShipPapers => ({
  ...others,
  ...(paperwork === undefined ? {} : { paperwork: sortedBy(paperwork, ({ paper }) => [paper]) }),
});

/** Trials by their ids; runs, tacks and points keep the order in which they were made. */
export const canonicalSea = ({ logs, winds, leads, swings, bridges }: AtSea): AtSea => ({
  ...(logs === undefined ? {} : { logs: sortedBy(logs, byId) }),
  ...(winds === undefined ? {} : { winds: sortedBy(winds, byId) }),
  ...(leads === undefined ? {} : { leads: sortedBy(leads, byId) }),
  ...(swings === undefined ? {} : { swings: sortedBy(swings, byId) }),
  ...(bridges === undefined ? {} : { bridges: sortedBy(bridges, byId) }),
});
