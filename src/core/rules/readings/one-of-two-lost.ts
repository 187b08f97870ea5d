import { readingWords } from '../../facts/reading-words.ts';
import { type LostNumbers, lostNumbers } from '../../readings/lost-numbers.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const numberWords = (numbers: LostNumbers['numbers']): string =>
  numbers.map((number) => (number === undefined ? 'without a number' : `${number}`)).join(' and ');

/** Behind a converter that knows one rudder, the second is not there, or reads as the first. */
export const oneOfTwoLost: Rule = {
  id: 'readings/one-of-two-lost',
  level: 'doubt',
  title: 'One of two is lost behind a converter.',
  sources: ['practice-converter'],
  check: ({ index, reaches }) =>
    lostNumbers(reaches).map(({ reading, from, to, numbers, passed, listeners }) => {
      const behind = listeners.map((unit) => unitName(index, unit)).join(' and ');
      const others =
        numbers.length - passed === 1
          ? 'the other is not there, or reads as the first'
          : 'the others are not there, or read as the first';
      return {
        about: [to, ...listeners],
        apart: [reading, from.split('.')[1] ?? from],
        says: `${unitName(index, from)} is given ${readingWords[reading]} ${numberWords(numbers)} and passes on ${passed === 1 ? 'one' : passed} of them to ${behind}: ${others}.`,
        measured: { value: passed, unit: 'numbers' },
        cure: `Bring it to ${behind} over the bus, or let only the one that is wanted there reach the converter.`,
      };
    }),
};
