import type { Kit, Place } from '../../core/boat/boat-schema.ts';
import type { Sheet } from '../../core/boat/sheet.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { likelyPlaces } from '../../core/kit/likely-places.ts';
import { placeUnit } from '../../core/kit/place-unit.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { ownSheetsIn } from '../own-sheets.ts';

interface AddOptions {
  readonly at?: string;
  readonly fate?: string;
  readonly phase?: number;
  readonly name?: string;
  readonly boats?: string;
}

const width = 80;
const othersTold = 3;
const fates: readonly Kit['fate'][] = ['comes', 'stays', 'goes'];

/** The sheet of that id, else those that answer to the words, the best first. */
const sheetsFor = (words: readonly string[], own: readonly Sheet[]): readonly Sheet[] => {
  const [asked = ''] = words;
  const named = words.length === 1 ? [...own, ...typicalSheets].find(({ id }) => id === asked) : undefined;
  const found = named === undefined ? findSheets(words.join(' '), own).map(({ sheet }) => sheet) : [named];
  if (found.length > 0) return found;
  throw new UserError({
    says: `No sheet answers to “${words.join(' ')}”.`,
    whatToDo: 'Use fewer words; fairlead sheets without any lists them all.',
  });
};

/** The place that was named by its id, or by words of its name that only one has; without a name the likeliest. */
const placeFor = (at: string | undefined, likely: readonly Place[]): Place => {
  const named = likely.filter(({ id }) => id === at);
  const words = (at ?? '').toLowerCase();
  const found = named.length > 0 ? named : likely.filter(({ name }) => name.toLowerCase().includes(words));
  const [place] = at === undefined ? likely : found;
  if (place !== undefined && (at === undefined || found.length === 1)) return place;
  throw new UserError({
    says: found.length === 0 ? `The boat has no place “${at}”.` : `“${at}” could be ${found.length} places.`,
    whatToDo: 'Give the id of one of these, the likeliest first:',
    more: (found.length === 0 ? likely : found).map(({ id, name }) => `  ${id.padEnd(18)}  ${name}`),
  });
};

const fateFrom = (text: string): Kit['fate'] => {
  const fate = fates.find((one) => one === text);
  if (fate !== undefined) return fate;
  throw new UserError({ says: `“${text}” is no fate.`, whatToDo: 'Write --fate comes, stays or goes.' });
};

const otherWords = (what: string, ids: readonly string[]): string[] =>
  ids.length === 0 ? [] : [`${what} ${ids.slice(0, othersTold).join(', ')}.`];

/**
 * `fairlead add FILE WORDS…`: a unit put aboard as one step, by what it is called or by the id of its sheet, at the place
 * named with `--at` or at the likeliest; with it come its sheet, the first bus and what such a unit usually has to show.
 */
export const add = async (file: string, words: readonly string[], options: AddOptions): Promise<void> => {
  const { at, fate = 'comes', phase, name, boats = 'boats' } = options;
  const read = await loadBoat(file);
  const [sheet, ...others] = sheetsFor(words, await ownSheetsIn(boats));
  if (sheet === undefined) return;
  const likely = likelyPlaces(read.boat, sheet);
  const place = placeFor(at, likely);
  const placed = placeUnit(read.boat, {
    sheet,
    place: place.id,
    fate: fateFrom(fate),
    ...(phase === undefined ? {} : { phase }),
    ...(name === undefined ? {} : { name }),
  });
  await changeBoatFile(file, read, placed.edits);
  const says = [
    `${placed.says} It is ${placed.unit.id}, of the sheet ${sheet.id}.`,
    ...otherWords(
      'Other sheets that answer:',
      others.map(({ id }) => id),
    ),
    ...(at === undefined
      ? otherWords(
          'Other likely places, with --at:',
          likely.slice(1).map(({ id }) => id),
        )
      : []),
  ];
  process.stdout.write(`${says.flatMap((one) => textLines(one, { width, lead: '' })).join('\n')}\n`);
  process.stderr.write(`Next, when all are aboard: fairlead wire ${file}\n`);
};
