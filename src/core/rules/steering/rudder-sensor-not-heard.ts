import type { Rule } from '../rule.ts';
import { eachCheck } from './drive-words.ts';

export const rudderSensorNotHeard: Rule = {
  id: 'steering/rudder-sensor-not-heard',
  level: 'fault',
  title: 'A pilot computer does not hear the kind of rudder sensor it is given.',
  sources: ['practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['rudder-kind'], ({ check, computer }) => ({
      says: `${computer} is given a rudder sensor of the kind ${check.askedKind ?? 'not known'}, and hears ${(check.givenKinds ?? []).join(' or ') || 'none'}.`,
      cure: `Fit a sensor of a kind it hears${(check.givenKinds ?? []).length === 0 ? '' : `: ${(check.givenKinds ?? []).join(' or ')}`}.`,
    })),
};
