import type { Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';

/** Every unit has a distance within which its magnets, iron and currents turn a compass; it stands on its plate. */
export const unitTooNear: Rule = {
  id: 'compass/unit-too-near',
  level: 'fault',
  title: 'A unit stands nearer to a compass than its maker allows.',
  sources: ['iso-25862', 'maker-compass-distance'],
  check: ({ index, plan }) =>
    plan.compass.flatMap((entry) =>
      entry.units
        .filter(({ safeBy, tooNear }) => safeBy === 'sheet' && tooNear)
        .map(({ unit, distanceM, safeM }): Observation => {
          const isTypical = index.sheetOf.get(unit)?.source === 'typical';
          const asked = isTypical ? 'units of its kind usually ask for' : 'its sheet asks for';
          return {
            about: [entry.compass, unit],
            ...(isTypical ? { level: 'doubt' } : {}),
            says: `${unitName(index, unit)} stands ${metres(distanceM)} from ${unitName(index, entry.compass)}; ${asked} ${metres(safeM)}.`,
            measured: { value: distanceM, unit: 'm' },
            limit: {
              value: safeM,
              unit: 'm',
              source: isTypical ? sourceWords('maker-compass-distance') : 'the sheet of the unit',
            },
            cure: `${isTypical ? 'Read the plate of the unit; if it says the same, move it' : 'Move it'} to another place, at least ${metres(safeM)} off. Whatever is changed near a compass, swing it afterwards and write a new card.`,
          };
        }),
    ),
};
