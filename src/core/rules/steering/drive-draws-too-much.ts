import { outputCure } from '../../steering/output-words.ts';
import type { Rule } from '../rule.ts';
import { asFigures, eachCheck } from './drive-words.ts';

export const driveDrawsTooMuch: Rule = {
  id: 'steering/drive-draws-too-much',
  level: 'fault',
  title: 'A drive draws more than the output of its pilot computer gives.',
  sources: ['practice-drive-match', 'memory-pilot-outputs'],
  check: (input) =>
    eachCheck(input, ['run-current', 'peak-current'], ({ entry, check, drive, computer }) => ({
      says: `${drive} draws ${check.asked} A ${check.check === 'peak-current' ? 'at its peak' : 'as it runs'}, and the output of ${computer} gives ${check.given} A${check.check === 'peak-current' ? '' : ' for long'}.`,
      ...asFigures(check),
      cure: outputCure(entry.instead),
    })),
};
