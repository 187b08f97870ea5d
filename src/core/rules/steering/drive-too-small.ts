import type { Rule } from '../rule.ts';
import { asFigures, eachCheck } from './drive-words.ts';

export const driveTooSmall: Rule = {
  id: 'steering/drive-too-small',
  level: 'fault',
  title: 'A drive is rated for a lighter boat.',
  sources: ['memory-laden-share', 'practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['boat-weight'], ({ check, drive }) => ({
      says: `${drive} is rated for boats up to ${check.given} kg laden, and this one weighs ${Math.round(check.asked ?? 0)} kg. It holds in calm water and gives up in a following sea.`,
      ...asFigures(check),
      cure: 'Take a drive rated for the laden boat; its maker’s own selection by rudder and speed comes first.',
    })),
};
