import { headingClearanceM } from '../../facts/heading-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';
import { magneticSites } from './heading-words.ts';

const raise =
  'Raise it off the plating, above the deck or into a house that is not of steel, at least 1 m off; where iron stays near have it adjusted. A satellite compass or a gyro needs none of this.';

/** Plating bends the Earth’s own field: inside a steel hull a sensor finds the boat, not north. */
export const headingSensorInSteel: Rule = {
  id: 'compass/heading-sensor-in-steel',
  level: 'fault',
  title: 'A magnetic heading sensor stands in steel, or too near to it.',
  sources: ['maker-heading-clearance', 'practice-heading-siting'],
  check: ({ index, plan }) => {
    const limit = { value: headingClearanceM('steel'), unit: 'm', source: sourceWords('maker-heading-clearance') };
    return magneticSites({ plan }).flatMap(({ site, heading }): Observation[] => {
      const known = index.kit.get(site.unit)?.site ?? {};
      const name = unitName(index, site.unit);
      if (known.steelLocker === true) {
        const says = `${name} stands in a locker of steel: the field it should feel hardly gets in, and what is stowed beside it turns it besides.`;
        return [{ about: [site.unit], says, cure: raise }];
      }
      const steel = heading.near.find(({ is, verdict }) => is === 'steel' && verdict !== 'good');
      if (steel === undefined || (known.adjuster === true && steel.verdict === 'doubtful')) return [];
      const measured = steel.by === 'kind';
      return [
        {
          about: [site.unit],
          level: measured && steel.verdict === 'not' && known.adjuster !== true ? 'fault' : 'doubt',
          says: measured
            ? `${name} stands ${metres(steel.distanceM)} from plating of steel.`
            : `${name} stands in a hull of steel, as the drawing has it ${metres(steel.distanceM)} from the plating; nobody has measured it.`,
          measured: { value: steel.distanceM, unit: 'm' },
          limit,
          cure: measured ? raise : `Measure how far it is from the nearest plating and enter it. ${raise}`,
        },
      ];
    });
  },
};
