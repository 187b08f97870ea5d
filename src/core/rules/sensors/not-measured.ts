import type { SensorCheck } from '../../sensor-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { sensorSites } from './sensor-words.ts';

const asks: Readonly<Record<SensorCheck['check'], string>> = {
  'ahead-of-propeller': 'where the propeller is',
  'from-keel': 'where the keel begins and ends',
  'ahead-of-keel': 'where the keel begins',
  'off-centreline': 'how far it is from the centreline',
  headroom: 'how much room is over it',
  tilt: 'how far the hull leans there',
  laminate: 'whether the hull is solid there or has a core',
  housing: 'whether the old housing is to stay',
  material: 'what its housing is of',
  'clear-air': 'what stands beside it',
};

/** What nobody has measured is measured best before the boat is lifted: one advice for the boat. */
export const notMeasured: Rule = {
  id: 'sensors/not-measured',
  level: 'advice',
  title: 'Something is not known of where new sensors in the hull are to sit.',
  sources: ['practice-transducer-place'],
  check: ({ index, plan }) => {
    const open = sensorSites({ plan }).flatMap(({ site, sensor }) => {
      const wanted = sensor.checks.flatMap(({ check, verdict }) => (verdict === 'ask' ? [asks[check]] : []));
      return wanted.length === 0 ? [] : [{ unit: site.unit, wanted }];
    });
    if (open.length === 0) return [];
    const told = open.map(({ unit, wanted }) => `of ${unitName(index, unit)} ${wanted.join(', ')}`);
    const found: Observation = {
      about: open.map(({ unit }) => unit),
      apart: [index.boat.hull.kind],
      says: `Before a hole is made nobody has said ${told.join('; ')}.`,
      cure: 'Measure it while she is ashore, or ask the yard that last had her out, and enter it.',
    };
    return [found];
  },
};
