import { breaksA, interruptTable, lithiumBreaks } from '../../facts/interrupt.ts';
import type { BankEntry, MainEntry, PanelEntry } from '../../panels-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { amperes } from './supply-words.ts';

const why: Readonly<Record<MainEntry['neededBy'], string>> = {
  table: 'by the cranking amperes behind it',
  stated: 'as the battery states its short-circuit current',
  lithium: 'at a lithium bank',
  unknown: 'at the least; the bank is large and states no figure',
  'no-figure': 'at the least; the cranking amperes of the bank are not known',
  'limits-itself': '',
};

const limitOfMain = ({ neededA, neededBy }: MainEntry) => ({
  value: neededA,
  unit: 'A',
  source: sourceWords(neededBy === 'lithium' ? lithiumBreaks.source : interruptTable.source),
});

const mainTooLow = (about: readonly string[], name: string, main: MainEntry): Observation[] => {
  if (main.breaks !== 'no' || main.givenA === undefined) return [];
  return [
    {
      about,
      says: `${name} can break ${amperes(main.givenA)}; a short there is ${amperes(main.neededA)} or more, ${why[main.neededBy]}. It may burst and go on burning instead of opening.`,
      measured: { value: main.givenA, unit: 'A' },
      limit: limitOfMain(main),
      cure: `Fit a fuse that breaks ${amperes(main.neededA)} or more, such as class T, which breaks ${amperes(breaksA['class-t'].amps)}. Take the negative off first; use insulated tools.`,
    },
  ];
};

/** A large bank that does not say what it gives when shorted: then the table is only the least. */
const notStated = ({ bank, main }: BankEntry): Observation[] =>
  main.neededBy !== 'unknown' || main.breaks === 'no' || (main.givenA ?? 0) >= interruptTable.largestClassA
    ? []
    : [
        {
          about: [bank],
          level: 'doubt',
          says: `The bank ${bank} is so large that its main must break what its maker states as short-circuit current, and that is not entered.`,
          cure: 'Ask the maker of the battery and enter it, or fit class T.',
        },
      ];

const circuitsTooLow = ({ panel, circuits, branchA }: PanelEntry): Observation[] =>
  circuits
    .filter(({ interruptA }) => interruptA !== undefined && interruptA < branchA)
    .map(({ circuit, interruptA = 0 }) => ({
      about: [panel, circuit],
      says: `The circuit ${circuit} of the panel ${panel} can break ${amperes(interruptA)}; behind its bank a circuit must break ${amperes(branchA)}.`,
      measured: { value: interruptA, unit: 'A' },
      limit: { value: branchA, unit: 'A', source: sourceWords(interruptTable.source) },
      cure: 'Fit a breaker or fuse that is printed to break as much.',
    }));

/** A fuse that cannot break a short bursts, and the short goes on. */
export const interruptTooLow: Rule = {
  id: 'supply/interrupt-too-low',
  level: 'fault',
  title: 'A fuse or breaker cannot break the short that its bank can give.',
  sources: ['abyc-e11', 'practice-fault-current', 'practice-device-aic', 'memory-device-aic'],
  check: ({ plan }) => [
    ...plan.banks
      .filter(({ serves }) => serves.length > 0)
      .flatMap((entry) => [
        ...mainTooLow([entry.bank], `The main of the bank ${entry.bank}`, entry.main),
        ...notStated(entry),
      ]),
    ...plan.panels.flatMap((entry) => [
      ...mainTooLow([entry.panel, entry.source], `The main of the panel ${entry.panel}`, entry.main),
      ...circuitsTooLow(entry),
    ]),
  ],
};
