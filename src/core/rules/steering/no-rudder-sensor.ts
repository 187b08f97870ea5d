import type { Rule } from '../rule.ts';
import { eachCheck } from './drive-words.ts';

export const noRudderSensor: Rule = {
  id: 'steering/no-rudder-sensor',
  level: 'fault',
  title: 'A pilot that needs a rudder sensor has none.',
  sources: ['practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['rudder-sensor'], ({ drive, computer }) => ({
      says: `${computer} with ${drive} needs a rudder sensor, and none is joined to it. It cannot be set up, and does not know where the rudder stops.`,
      cure: 'Fit a rudder sensor of a kind the computer hears, and join it to the computer.',
    })),
};
