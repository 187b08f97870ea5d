import type { Reference } from '../../boat/sheet.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingWords } from '../../facts/reading-words.ts';
import type { Reaches } from '../../readings/reaches.ts';
import type { SourceEntry, SourceWay } from '../../sources-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const isNorth = (reference: Reference | undefined): reference is 'true' | 'magnetic' =>
  reference === 'true' || reference === 'magnetic';

type Differs = (reaches: Reaches, entry: SourceEntry, other: SourceWay) => string | undefined;

const headingDiffers: Differs = (reaches, { at, primary }, other) => {
  const both = isNorth(primary.reference) && isNorth(other.reference) && primary.reference !== other.reference;
  return both && !reaches.has(at, 'variation')
    ? `as ${primary.reference} from the one and as ${other.reference} from the other, and no variation reaches it to make one from the other`
    : undefined;
};

const depthDiffers: Differs = (_, { primary }, other) => {
  if (primary.withOffset === true && other.withOffset === false)
    return 'with its offset from the one and without from the other: below keel or surface here, below the transducer there';
  return primary.withOffset === false && other.withOffset === true
    ? 'without offset from the one and with it from the other: below the transducer here, below keel or surface there'
    : undefined;
};

/** The readings that two sources may give in two ways of which the screen cannot make one out of the other. */
const kinds: Readonly<Partial<Record<ReadingId, { readonly differs: Differs; readonly cure: string }>>> = {
  heading: { differs: headingDiffers, cure: 'Set both to the same reference, or bring variation to the screen.' },
  depth: {
    differs: depthDiffers,
    cure: 'Send DPT in place of DBT, or mark on the screen which of the two it shows.',
  },
};

/** The second source of a screen gives the same reading otherwise: when it takes over the figure jumps, and nothing says why. */
export const backupReadsDifferently: Rule = {
  id: 'readings/backup-reads-differently',
  level: 'doubt',
  title: 'Two sources at one screen read differently.',
  sources: ['heading-reference', 'message-fields'],
  looksAt: 'whole-plan',
  check: ({ index, plan, reaches }) =>
    plan.sources.flatMap((entry) =>
      entry.backups.flatMap((backup): Observation[] => {
        const kind = kinds[entry.reading];
        const how = kind?.differs(reaches, entry, backup);
        if (kind === undefined || how === undefined) return [];
        const [first, other] = [entry.primary.from, backup.from].map((port) => unitName(index, port));
        return [
          {
            about: [entry.at, ...[entry.primary, backup].map(({ from }) => from.split('.')[0] ?? from)],
            apart: [entry.reading, ...(entry.instance === undefined ? [] : [entry.instance])],
            says: `${unitName(index, entry.at)} has ${readingWords[entry.reading]} from ${first} and, should that fail, from ${other}: ${how}. When it changes over the figure jumps.`,
            cure: kind.cure,
          },
        ];
      }),
    ),
};
