import { outputCure, outputKind } from '../../steering/output-words.ts';
import type { Rule } from '../rule.ts';
import { eachCheck } from './drive-words.ts';

export const outputOfAnotherKind: Rule = {
  id: 'steering/output-of-another-kind',
  level: 'fault',
  title: 'The output of a pilot computer works another kind of drive.',
  sources: ['practice-drive-match'],
  check: (input) =>
    eachCheck(input, ['output-kind'], ({ entry, check, drive, computer }) => ({
      says: `${drive} wants an output for ${outputKind(check.askedKind)}, and that of ${computer} is for ${(check.givenKinds ?? []).map(outputKind).join(' or ')}.`,
      cure: outputCure(entry.instead),
    })),
};
