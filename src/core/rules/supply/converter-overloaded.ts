import { converterLoad } from '../../facts/supply-figures.ts';
import type { ConverterEntry } from '../../panels-shape.ts';
import { within } from '../../power/within.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { aFew, amperes } from './supply-words.ts';

const overloaded = ({ converter, ratedA, mostA, peakA, serves }: ConverterEntry): Observation[] => {
  const limit = { value: (ratedA * converterLoad.value) / 100, unit: 'A', source: sourceWords(converterLoad.source) };
  const isAlways = !within({ value: mostA, limit: limit.value });
  if (!isAlways && (peakA === undefined || within({ value: peakA, limit: limit.value }))) return [];
  const drawnA = isAlways ? mostA : (peakA ?? mostA);
  return [
    {
      about: [converter, ...aFew(serves)],
      level: isAlways ? 'fault' : 'doubt',
      says: `The converter ${converter} gives ${amperes(ratedA)}; what hangs on it draws ${amperes(drawnA)} ${isAlways ? 'with everything at its most' : 'for moments'}. It shuts down then, and takes all of it down.`,
      measured: { value: drawnA, unit: 'A' },
      limit,
      cure: `Fit one of ${Math.ceil(drawnA)} A or more, or give the heaviest unit one of its own.`,
    },
  ];
};

/** A converter that is asked for more than it gives shuts down when it is needed: when the radio sends. */
export const converterOverloaded: Rule = {
  id: 'supply/converter-overloaded',
  level: 'fault',
  title: 'More hangs on a converter than it can give.',
  sources: ['choice-converter-load'],
  check: ({ plan }) => plan.converters.flatMap(overloaded),
};
