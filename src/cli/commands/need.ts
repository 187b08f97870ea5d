import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Kit, Need } from '../../core/boat/boat-schema.ts';
import { isSameNeed } from '../../core/boat/edits/same-need.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { type ReadingId, readingIds } from '../../core/facts/reading-ids.ts';
import { readingName, readingWords } from '../../core/facts/reading-words.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { changeBoatFile } from '../change-boat-file.ts';

interface NeedOptions {
  readonly at?: string;
  readonly number?: number;
  readonly wish?: boolean;
  readonly remove?: boolean;
}

const width = 80;

const needsText = (boat: Boat): string => {
  const { kit } = indexBoat(boat);
  const rows = boat.needs.map((need) => {
    const says = `${readingName(need)} at ${kit.get(need.at)?.name ?? need.at}${need.must ? '' : ', a wish'}`;
    return textLines(`${says} [${need.at}]`, { width, lead: '- ' }).join('\n');
  });
  return rows.length === 0 ? 'Nothing is said yet of what must be seen where.\n' : `${rows.join('\n')}\n`;
};

/** The reading of that id, or the only one whose words hold what was typed. */
const readingOf = (typed: string): ReadingId => {
  const words = typed.toLowerCase();
  const named = readingIds.filter((id) => id === words || readingWords[id].toLowerCase() === words);
  const found = named.length > 0 ? named : readingIds.filter((id) => readingWords[id].toLowerCase().includes(words));
  const [reading] = found;
  if (reading !== undefined && found.length === 1) return reading;
  throw new UserError({
    says: found.length === 0 ? `There is no reading “${typed}”.` : `“${typed}” could be ${found.length} readings.`,
    whatToDo: 'Write one of these:',
    more: (found.length === 0 ? readingIds : found).map((id) => `  ${readingWords[id]}`),
  });
};

/** The unit of that id, or the only one whose name holds what was typed. */
const unitOf = ({ kit }: Boat, typed: string | undefined): Kit => {
  const there = kit.filter(({ fate }) => fate !== 'goes');
  const words = (typed ?? '').toLowerCase();
  const named = there.filter(({ id }) => id === words);
  const found = named.length > 0 ? named : there.filter(({ name }) => name.toLowerCase().includes(words));
  const [unit] = found;
  if (typed !== undefined && unit !== undefined && found.length === 1) return unit;
  throw new UserError({
    says:
      typed === undefined
        ? 'At which screen it is to be seen is missing.'
        : found.length === 0
          ? `The boat has no unit “${typed}”.`
          : `“${typed}” could be ${found.length} units.`,
    whatToDo: 'Write --at with the id of one of these:',
    more: (found.length === 0 ? there : found).map(({ id, name }) => `  ${id.padEnd(18)}  ${name}`),
  });
};

/** `fairlead need FILE READING… --at UNIT`: what must be seen at a screen, or with `--remove` no longer; without a reading all that is said. */
export const need = async (
  file: string,
  words: readonly string[],
  { at, number, wish = false, remove = false }: NeedOptions,
): Promise<void> => {
  const read = await loadBoat(file);
  if (words.length === 0) {
    process.stdout.write(needsText(read.boat));
    return;
  }
  const unit = unitOf(read.boat, at);
  const which: Pick<Need, 'reading' | 'instance' | 'at'> = {
    reading: readingOf(words.join(' ')),
    at: unit.id,
    ...(number === undefined ? {} : { instance: number }),
  };
  const isThere = read.boat.needs.some((one) => isSameNeed(one, which));
  const call: EditCall = remove
    ? { edit: 'remove-need', params: which }
    : { edit: isThere ? 'change-need' : 'add-need', params: { ...which, must: !wish } };
  await changeBoatFile(file, read, [call]);
  const says = `${readingName(which)} at ${unit.name}: ${remove ? 'no longer wanted' : wish ? 'a wish' : 'a must'}, kept in ${file}.`;
  process.stdout.write(`${textLines(says, { width, lead: '' }).join('\n')}\n`);
};
