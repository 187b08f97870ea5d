import { outputCure } from '../../steering/output-words.ts';
import type { Rule } from '../rule.ts';
import { asFigures, eachCheck } from './drive-words.ts';

export const motorVoltsDiffer: Rule = {
  id: 'steering/motor-volts-differ',
  level: 'fault',
  title: 'A drive is made for other volts than its pilot computer gives.',
  sources: ['practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['motor-volts'], ({ entry, check, drive, computer }) => ({
      says: `${drive} is made for ${check.asked} V, and ${computer} gives it ${check.given} V.`,
      ...asFigures(check),
      cure: `${outputCure(entry.instead)} Do not try it: 24 V burn a 12 V motor, and 12 V turn a 24 V motor too weakly to steer.`,
    })),
};
