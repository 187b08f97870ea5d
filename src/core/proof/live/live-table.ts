import { byCodeUnit } from '../../boat/ids.ts';
import { readingName } from '../../facts/reading-words.ts';
import { ageWords } from './age-words.ts';
import type { LiveReading, LiveSnapshot } from './live-snapshot.ts';

/** What a table of a live bus is made from. */
export interface LiveTableOptions {
  readonly boatName: string;
  /** names of the units by id */
  readonly names: ReadonlyMap<string, string>;
  readonly columns: number;
  readonly rows: number;
}

const agesColumns = 8;
const whoColumns = 26;
const mostFindings = 4;
const mostSent = 2;
const headRows = 5;

const cut = (text: string, columns: number): string =>
  text.length <= columns ? text : `${text.slice(0, Math.max(0, columns - 1))}…`;

const row = ([who, what, age]: readonly [string, string, string], columns: number): string => {
  const whatColumns = Math.max(10, columns - whoColumns - agesColumns - 2);
  return `${cut(who, whoColumns).padEnd(whoColumns)} ${cut(what, whatColumns).padEnd(whatColumns)} ${age.padStart(agesColumns)}`;
};

/** Who says a reading: the unit of the plan, else the sender by its address or its talker. */
const whoSays = (snapshot: LiveSnapshot, { unit, sender }: LiveReading, names: ReadonlyMap<string, string>): string => {
  if (unit !== undefined) return names.get(unit) ?? unit;
  const of = snapshot.senders[sender];
  if (of?.talker !== undefined) return `talker ${of.talker}`;
  return of?.address === undefined ? 'sender without address' : `address ${of.address}`;
};

const saidOf = (reading: LiveReading): string => {
  const name = readingName(reading);
  if (reading.empty === true) return `${name}: no value`;
  const says = reading.says ?? reading.short;
  return says === undefined ? name : `${name}: ${says}`;
};

const unitsLine = ({ units }: LiveSnapshot, names: ReadonlyMap<string, string>): string => {
  if (units.length === 0) return 'Units of the plan: none known yet.';
  const nameOf = (state: string): string[] =>
    units.flatMap((unit) => (unit.state === state ? [names.get(unit.unit) ?? unit.unit] : []));
  const speaking = units.filter(({ state }) => state === 'speaking').length;
  const silent = nameOf('silent');
  const unheard = nameOf('unheard');
  return [
    `${speaking} of ${units.length} planned units speak.`,
    ...(silent.length === 0 ? [] : [`Silent: ${silent.join(', ')}.`]),
    ...(unheard.length === 0 ? [] : [`Not heard: ${unheard.join(', ')}.`]),
  ].join(' ');
};

/**
 * A live bus as a table for a terminal, no wider and no longer than that: how the source stands, which units speak, each
 * reading with its age, the newest findings.
 */
export const liveTable = (snapshot: LiveSnapshot, options: LiveTableOptions): string[] => {
  const { boatName, names, columns, rows } = options;
  const { source, frames, sentences, damaged, findings } = snapshot;
  const shown = findings.slice(0, Math.min(mostFindings, Math.max(0, rows - headRows - 4)));
  // whatever was sent is seen by the person who allowed it
  const sent = snapshot.news.filter(({ of }) => of === 'sent').slice(-mostSent);
  const told = [...shown.map(({ level, says }) => `${level}: ${says}`), ...sent.map(({ says }) => says)]
    .slice(-Math.max(0, rows - headRows - 4))
    .map((line) => cut(line, columns));
  const room = Math.max(1, rows - headRows - (told.length === 0 ? 0 : told.length + 1));
  const all = snapshot.readings
    .map((reading) => ({ reading, who: whoSays(snapshot, reading, names) }))
    // units of the plan first; what one says stands together, and nothing moves while nothing new is said
    .sort(
      (a, b) => Number(a.reading.unit === undefined) - Number(b.reading.unit === undefined) || byCodeUnit(a.who, b.who),
    )
    .map(({ reading, who }) => {
      const age = `${ageWords(reading.ageMs)}${reading.silent === true ? '!' : ''}`;
      return row([who, saidOf(reading), age], columns);
    });
  const more = all.length > room ? [`… and ${all.length - room + 1} more readings`] : [];
  return [
    cut(`${boatName} by ${source.says}: ${source.words}`, columns),
    cut(
      `${frames} frames, ${sentences} sentences${damaged === 0 ? '' : `, ${damaged} damaged`}. ${unitsLine(snapshot, names)}`,
      columns,
    ),
    '',
    row(['who', 'says', 'age'], columns),
    ...(more.length === 0 ? all : all.slice(0, room - 1)),
    ...more,
    ...(told.length === 0 ? [] : ['', ...told]),
  ];
};
