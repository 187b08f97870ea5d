import type { SensorCheck } from '../../sensor-shape.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';
import { badChecks, measuredPart } from './sensor-words.ts';

const where = ({ check, measured = 0, limit = 0 }: SensorCheck): string => {
  if (check === 'from-keel') return `${metres(measured)} from the keel; ${metres(limit)} is asked for`;
  const along = measured < 0 ? `${metres(-measured)} behind the forward edge` : `${metres(measured)} ahead`;
  return `${along} of the keel; a paddle wheel goes ${metres(limit)} ahead of it`;
};

/** A keel shades a sounder’s beam, and parts the water a wheel should feel. */
export const besideTheKeel: Rule = {
  id: 'sensors/beside-the-keel',
  level: 'doubt',
  title: 'A sensor in the hull sits too near to the keel.',
  sources: ['practice-transducer-place'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'from-keel', 'ahead-of-keel').map(({ site, check }) => ({
      about: [site.unit],
      apart: [check.check],
      says: `${unitName(index, site.unit)} sits ${where(check)}.`,
      ...measuredPart(check),
      cure: 'Put it ahead of the keel. A place beside it reads on one tack and not on the other.',
    })),
};
