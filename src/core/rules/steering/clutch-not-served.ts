import type { DriveCheck } from '../../drives-shape.ts';
import { outputCure } from '../../steering/output-words.ts';
import type { Rule } from '../rule.ts';
import { asFigures, eachCheck } from './drive-words.ts';

const what = ({ check, asked, given }: DriveCheck, drive: string, computer: string): string => {
  if (check === 'clutch-volts')
    return `The clutch of ${drive} is made for ${asked} V, and ${computer} gives it ${given} V.`;
  if (check === 'clutch-current')
    return `The clutch of ${drive} draws ${asked} A, and ${computer} gives it ${given} A.`;
  return `${drive} has a clutch or a bypass, and ${computer} has no output for it.`;
};

export const clutchNotServed: Rule = {
  id: 'steering/clutch-not-served',
  level: 'fault',
  title: 'The clutch or bypass of a drive has no output that fits it.',
  sources: ['practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['clutch-output', 'clutch-volts', 'clutch-current'], ({ entry, check, drive, computer }) => ({
      says: `${what(check, drive, computer)} The pilot never bites, or the helm is never free.`,
      ...asFigures(check),
      cure: outputCure(entry.instead),
    })),
};
