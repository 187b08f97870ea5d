import type { EditCall } from '../../core/boat/history.ts';
import { readingName, readingWords } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { NumberEntry } from '../../core/sources-shape.ts';
import { briefNames } from './brief-names.ts';
import { type UnitNames, unitNameOf } from './source-rows.ts';

/** One engine, tank or battery with its number, and what it had better be. */
export interface NumberRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly isOpen: boolean;
  readonly lights: readonly string[];
}

const whyWords: Readonly<Record<NumberEntry['why'], string>> = {
  stands: '',
  clash: 'another has this number',
  none: 'it has none yet',
  'too-high': 'some displays do not show it',
  side: 'port is 0 and starboard 1 by common practice',
};

const factOf = (names: UnitNames, { now, proposed, port, why, setBy }: NumberEntry): string => {
  if (why === 'stands') return `number ${proposed}`;
  const where = `${setBy === 'input' ? 'by the input, ' : ''}in ${unitNameOf(names, port)}`;
  return `${now === undefined ? '' : `now ${now}, `}better ${proposed}: ${whyWords[why]}; set it ${where}`;
};

/** Every engine, gearbox, tank, battery, charger and AC supply with its number. */
export const numberRows = (names: UnitNames, { numbers }: Pick<Plan, 'numbers'>): NumberRow[] => {
  const brief = { kit: briefNames(names.kit) };
  return numbers.map((entry) => ({
    key: `${entry.reading} ${entry.source} ${entry.port} ${entry.now ?? ''}`,
    what: `${readingWords[entry.reading]}, ${unitNameOf(brief, entry.source)}`,
    fact: factOf(brief, entry),
    isOpen: entry.why !== 'stands',
    lights: [...new Set([entry.source, entry.port].map((port) => port.slice(0, port.indexOf('.'))))],
  }));
};

/**
 * The edits that give every unit the number proposed for it, as one step; undefined where none is to be changed in a unit of
 * the file. The numbers of inputs stand in the sheet of their adapter and are set there by hand.
 */
export const numberEdit = ({
  numbers,
}: Pick<Plan, 'numbers'>): { readonly title: string; readonly edits: readonly EditCall[] } | undefined => {
  const changed = numbers.filter(({ why, setBy }) => why !== 'stands' && setBy === 'unit');
  if (changed.length === 0) return undefined;
  return {
    title: `Number ${changed.map(({ reading, proposed }) => readingName({ reading, instance: proposed })).join(', ')}.`,
    edits: changed.map(({ reading, port, proposed }) => ({
      edit: 'set-instance',
      params: { port, reading, instance: proposed },
    })),
  };
};
