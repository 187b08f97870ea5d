import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { type BadCheck, badChecks } from './sensor-words.ts';

const inCore = (index: BoatIndex, { site }: BadCheck): Pick<Observation, 'says' | 'cure'> => {
  const name = unitName(index, site.unit);
  return index.sheetOf.get(site.unit)?.sensor?.inHull === true
    ? {
        says: `${name} looks through the hull, and where it sits the hull has a core: what sound gets into it does not come out again.`,
        cure: 'Find solid laminate of about 12 mm, most often near the keel, or fit one that goes through the hull.',
      }
    : {
        says: `${name} goes through a hull with a core, and round the hole the core is open: water creeps into it for years.`,
        cure: 'Ashore: cut the core back round the hole, fill a ring of it solid, and drill through that.',
      };
};

const inWood = (index: BoatIndex, { site }: BadCheck): Pick<Observation, 'says' | 'cure'> => ({
  says: `${unitName(index, site.unit)} has a housing of plastic and goes through a hull of wood. The wood swells when she is afloat, and cracks it below the waterline.`,
  cure: 'Fit one of bronze.',
});

/** Core lets no sound through and a hole in it lets water in; wood swells and crushes a housing of plastic. */
export const hullDoesNotSuit: Rule = {
  id: 'sensors/hull-does-not-suit',
  level: 'fault',
  title: 'What the hull is of does not suit a sensor in it.',
  sources: ['practice-transducer-place', 'practice-metal-housing'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'laminate', 'material').map((found) => ({
      about: [found.site.unit],
      apart: [found.check.check],
      ...(found.check.check === 'material' ? inWood : inCore)(index, found),
    })),
};
