import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import { toMillimetre } from '../../core/boat/edits/to-millimetre.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { nearestName } from '../../core/boat/nearest-name.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { currencyOf } from '../../papers/lists/cure-words.ts';
import { printMoney } from '../../papers/lists/order-words.ts';
import { keepUnits } from '../../papers/lists/print-figure.ts';
import { tapeRows } from '../../papers/lists/tape-rows.ts';
import { inBothUnits } from '../../papers/starting/in-both-units.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { typedLength } from '../typed-length.ts';

interface TapeOptions {
  readonly seen?: boolean;
  readonly pulled?: boolean;
  readonly bore?: number;
  readonly counted?: boolean;
}

const width = 80;

const knownWords = { assumed: 'nobody has seen it', seen: 'seen', pulled: 'a line was pulled through' } as const;

const endsOf = ({ places }: Boat, { ends }: Way): string =>
  ends.map((end) => places.find(({ id }) => id === end)?.name ?? end).join(' to ');

const standsSo = ({ length, known, bore }: Way): string =>
  [
    `${inBothUnits(length.valueM)}, ${length.how}`,
    ...(bore === undefined ? [] : [`bore ${bore.mm} mm, ${bore.how}`]),
    knownWords[known],
  ].join('; ');

const rowOf = (id: string, words: string): string[] =>
  textLines(keepUnits(words), { width, lead: `${id.padEnd(8)}  ` });

/** What could still change the order, most money first, and after it every other way. */
const toTape = (boat: Boat, plan: Plan): string => {
  const currency = currencyOf(boat);
  const rows = tapeRows(indexBoat(boat), plan, { currency });
  const first = plan.tape.flatMap(({ about }, at) => {
    const row = rows[at];
    return row === undefined ? [] : rowOf(about, `${row.todo}: ${printMoney(row.atStake)} ${currency} at stake`);
  });
  const told = new Set(plan.tape.map(({ about }) => about));
  const rest = boat.ways.filter(({ id }) => !told.has(id));
  return [
    ...(first.length === 0
      ? ['Nothing that is not yet taped or seen could change the order.']
      : ['These could still change the order, most money first:', ...first]),
    ...(rest.length === 0 ? [] : ['', first.length === 0 ? 'All ways:' : 'All other ways:']),
    ...rest.flatMap((way) => rowOf(way.id, `${endsOf(boat, way)}: ${standsSo(way)}`)),
  ].join('\n');
};

const noSuchThing = ({ ways, kit }: Boat, file: string, typed: string): UserError => {
  const near = nearestName(
    typed,
    [...ways, ...kit].map(({ id }) => id),
  );
  return new UserError({
    says: `The boat has no way and no unit “${typed}”${near === undefined ? '.' : `; did you mean ${near}?`}`,
    whatToDo: `fairlead tape ${fileAsTyped(file)} lists her ways.`,
  });
};

const wayEdits = (
  way: string,
  valueM: number | undefined,
  { seen, pulled, bore, counted }: TapeOptions,
): EditCall[] => {
  const calls: EditCall[] = [];
  if (valueM !== undefined) calls.push({ edit: 'tape-length', params: { way, length: { valueM, how: 'taped' } } });
  if (pulled === true) calls.push({ edit: 'change-way', params: { way, known: 'pulled' } });
  else if (seen === true) calls.push({ edit: 'change-way', params: { way, known: 'seen' } });
  if (bore !== undefined) calls.push({ edit: 'change-way', params: { way, bore: { mm: bore, how: 'taped' } } });
  if (counted === true) calls.push({ edit: 'change-way', params: { way, counted } });
  return calls;
};

/** A unit has no bore and is not looked into: of its cable only the length is found. */
const tailEdits = (unit: string, valueM: number | undefined): EditCall[] =>
  valueM === undefined ? [] : [{ edit: 'tape-tail', params: { unit, tail: { valueM, how: 'taped' } } }];

/**
 * `fairlead tape FILE WAY LENGTH`: the length of a way as taped, in place of a guess, that it was seen or a line pulled
 * through it, its bore; of a unit the length from its place to its plug; without either, what is to be taped, and all ways.
 */
export const tape = async (
  file: string,
  id: string | undefined,
  length: string | undefined,
  options: TapeOptions,
): Promise<void> => {
  const read = await loadBoat(file);
  if (id === undefined) {
    process.stdout.write(`${toTape(read.boat, await solveAtTerminal(read.boat))}\n`);
    return;
  }
  const isWay = read.boat.ways.some((way) => way.id === id);
  if (!isWay && !read.boat.kit.some((unit) => unit.id === id)) throw noSuchThing(read.boat, file, id);
  const typed = typedLength(length, 'The length');
  const valueM = typed === undefined ? undefined : toMillimetre(typed);
  const calls = isWay ? wayEdits(id, valueM, options) : tailEdits(id, valueM);
  if (calls.length === 0)
    throw new UserError({
      says: 'The length is missing.',
      whatToDo: `Write it behind the ${isWay ? 'way' : 'unit'}, like 3.45 or "11 ft 4 in".`,
    });
  const { boat } = await changeBoatFile(file, read, calls);
  const way = boat.ways.find((one) => one.id === id);
  const says =
    way === undefined
      ? `${boat.kit.find((unit) => unit.id === id)?.name ?? id}: ${inBothUnits(valueM ?? 0)} from its place to its plug, taped.`
      : `${endsOf(boat, way)}: ${standsSo(way)}.`;
  process.stdout.write(`${textLines(keepUnits(says), { width, lead: '' }).join('\n')}\n`);
};
