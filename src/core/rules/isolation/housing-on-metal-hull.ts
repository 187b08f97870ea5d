import { throughHullKinds } from '../../facts/isolation-figures.ts';
import type { Observation, Rule } from '../rule.ts';

/** Bronze in steel or aluminium under water is a battery of its own, minus or no minus. */
export const housingOnMetalHull: Rule = {
  id: 'isolation/housing-on-metal-hull',
  level: 'fault',
  title: 'A metal housing goes through a metal hull without anything between them.',
  sources: ['practice-metal-housing'],
  check: ({ index, plan }) => {
    if (plan.isolation.hull === 'other') return [];
    // one that is joined to the minus as well has a finding of its own
    const joined = new Set(plan.isolation.ways.flatMap(({ bonds }) => bonds.flatMap(({ about }) => about)));
    return index.boat.kit
      .filter(({ id, fate, mount }) => {
        const sheet = index.sheetOf.get(id);
        return (
          !joined.has(id) &&
          fate !== 'goes' &&
          mount === 'metal' &&
          sheet?.earthing?.body === 'metal' &&
          throughHullKinds.has(sheet.kind)
        );
      })
      .map(
        ({ id, name }): Observation => ({
          about: [id],
          says: `${name} has a housing of metal and goes straight through a hull of ${index.boat.hull.material}. Under water the two metals and the sea are a battery, and the hull round it is what wastes away.`,
          cure: 'Fit a housing of plastic, or one with an insulating sleeve and washers made for metal hulls, ashore; measure that it is open to the hull before the boat floats.',
        }),
      );
  },
};
