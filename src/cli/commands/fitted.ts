import { fittedEdits } from '../../core/as-fitted/fitted-edits.ts';
import { type FoundKind, foundKinds, foundOtherwise } from '../../core/as-fitted/found-otherwise.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { leadChoices } from '../../core/leading/lead-choices.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { fittedText } from '../../papers/lists/fitted-text.ts';
import { type FoundSubject, foundSubjects } from '../../papers/lists/found-subjects.ts';
import { labelOf } from '../../papers/lists/label-of.ts';
import { keepUnits } from '../../papers/lists/print-figure.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { namedOrNumbered } from '../named-or-numbered.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { today } from '../today.ts';
import { typedDay } from '../typed-day.ts';

/** What differs, by the name of its option, and who found it. */
interface FittedOptions {
  readonly place?: string;
  readonly length?: string;
  readonly ways?: string;
  readonly wire?: string;
  readonly fuse?: string;
  readonly is?: string;
  readonly on?: string;
  readonly by?: string;
  readonly note?: string;
  readonly undo?: boolean;
}

const width = 80;

const optionOf = {
  place: 'place',
  length: 'length',
  route: 'ways',
  wire: 'wire',
  fuse: 'fuse',
  other: 'is',
} as const satisfies Record<FoundKind, keyof FittedOptions>;

/** How the value of each kind is written. */
const written: Readonly<Record<FoundKind, string>> = {
  place: 'Write --place with the id of a place.',
  length: 'Write --length like 4.2 m, or "13 ft 9 in".',
  route: 'Write --ways with the ids of the ways, with commas.',
  wire: 'Write --wire like 2.5 mm², or "AWG 14".',
  fuse: 'Write --fuse with its amperes, like 7.5.',
  other: 'Write --is with what it is like, in words.',
};

/** The one thing that was said to differ. */
const typedOf = (options: FittedOptions): { readonly what: FoundKind; readonly typed: string } => {
  const said = foundKinds.flatMap((what) => {
    const typed = options[optionOf[what]];
    return typed === undefined ? [] : [{ what, typed }];
  });
  const [one] = said;
  if (one !== undefined && said.length === 1) return one;
  throw new UserError({
    says: one === undefined ? 'What came out otherwise is missing.' : 'Several things at once are said to differ.',
    whatToDo: 'Give one of --place, --length, --ways, --wire, --fuse and --is; each difference is noted alone.',
  });
};

const subjectsFor = (what: FoundKind, all: ReturnType<typeof foundSubjects>): readonly FoundSubject[] => {
  if (what === 'place') return all.units;
  if (what === 'wire') return all.wires;
  if (what === 'fuse') return all.circuits;
  return what === 'other' ? [...all.units, ...all.lines, ...all.circuits, ...all.places] : all.lines;
};

const thingOf: Readonly<Record<FoundKind, string>> = {
  place: 'unit',
  length: 'line',
  route: 'line',
  wire: 'line of a feed',
  fuse: 'circuit',
  other: 'unit, line, circuit or place',
};

/** A line lies where a line of its kind can be led; what is typed is one of these. */
const mayLieSo = (boat: Boat, { lines }: Plan, id: string, ways: readonly string[]): void => {
  const line = lines.find((one) => one.id === id);
  const routes = line === undefined ? [] : leadChoices(boat, line).map((choice) => choice.ways.join(','));
  if (routes.includes(ways.join(','))) return;
  const other = [...new Set(routes)];
  throw new UserError({
    says: `${id} is not led through ${ways.join(',')}.`,
    whatToDo: other.length === 0 ? 'No other way leads there.' : 'Write --ways with one of these:',
    more: other.map((one) => `  ${one}`),
  });
};

const tell = (says: string): void => {
  process.stdout.write(`${textLines(keepUnits(says), { width, lead: '' }).join('\n')}\n`);
};

/**
 * `fairlead fitted FILE THING`: what came out otherwise than planned, by one option that says how; the boat file follows the
 * boat, and the difference stands in her papers. With `--undo` a difference is taken back; without a thing all are listed.
 */
export const fitted = async (file: string, thing: string | undefined, options: FittedOptions): Promise<void> => {
  const read = await loadBoat(file);
  const { boat } = read;
  const list = `fairlead fitted ${fileAsTyped(file)}`;
  if (thing !== undefined && options.undo === true) {
    const ids = (boat.fitted ?? []).map(({ id }) => id);
    const id = namedOrNumbered(thing, { ids, what: 'difference', list });
    await changeBoatFile(file, read, [{ edit: 'take-back-fitted', params: { id } }]);
    tell(`${id} is taken back, and what the file was made to say by it, kept in ${file}.`);
    return;
  }
  const plan = await solveAtTerminal(boat, await picturesBeside(file));
  if (thing === undefined) {
    process.stdout.write(fittedText(boat, plan));
    return;
  }
  const { what, typed } = typedOf(options);
  const subjects = subjectsFor(what, foundSubjects(boat, plan));
  const labelled = plan.lines.find((line) => labelOf(line) === thing)?.id;
  const about = namedOrNumbered(labelled ?? thing, { ids: subjects.map(({ id }) => id), what: thingOf[what], list });
  const found = foundOtherwise({ what, about, typed });
  if (found === undefined)
    throw new UserError({ says: `“${typed}” is given behind --${optionOf[what]}.`, whatToDo: written[what] });
  if (found.what === 'route') mayLieSo(boat, plan, about, found.ways);
  const { on, by, note } = options;
  const signed = {
    on: on === undefined ? today() : typedDay(on, '--on'),
    ...(by === undefined ? {} : { by }),
    ...(note === undefined ? {} : { note }),
  };
  const { boat: after } = await changeBoatFile(file, read, fittedEdits({ boat, plan }, found, signed));
  const noted = after.fitted?.at(-1);
  const name = subjects.find(({ id }) => id === about)?.says ?? about;
  const was = noted?.was === undefined ? '' : `was ${noted.was}, `;
  tell(`${name}: ${was}is ${noted?.is}, noted as ${noted?.id} and kept in ${file}.`);
};
