import { byCodeUnit } from '../../boat/ids.ts';
import type { EssentialFunction } from '../../facts/essential-functions.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { shownAlone, watchedReadings, watchedScreens } from '../../facts/watched-functions.ts';
import { type JobsInput, kindOf } from './job-frame.ts';

/** The units by which a function is had, from what feels it to where it is read, whenever all of them are aboard and joined. */
export type FunctionPath = readonly string[];

const unitsOf = (ports: readonly string[], at: string): string[] => [
  ...new Set([...ports.map((port) => port.split('.')[0] ?? port), at]),
];

const isRead = (input: JobsInput, at: string): boolean => watchedScreens.kinds.includes(kindOf(input, at));

/** Ways of a reading, before and after, at whatever people read it on. */
const readingPaths = (input: JobsInput, reading: ReadingId): FunctionPath[] => {
  const { plan, index } = input;
  const old = plan.before.filter((seen) => seen.reading === reading && isRead(input, seen.at));
  const fresh = plan.readings.filter((one) => one.reading === reading && one.arrives && isRead(input, one.at));
  const alone = index.boat.kit.filter(
    ({ id }) => shownAlone.byKind[kindOf(input, id)] === reading && !isModule(input, id),
  );
  return [
    ...old.map(({ by, at }) => unitsOf(by, at)),
    ...fresh.flatMap(({ by, backups, at }) => [by, ...backups].map((ports) => unitsOf(ports, at))),
    ...alone.map(({ id }) => [id, ...feltBy(input, id)]),
  ];
};

/** Without a screen of its own: what it feels goes out by the network. */
const isModule = ({ index }: JobsInput, unit: string): boolean =>
  index.sheetOf.get(unit)?.ports.some(({ protocol }) => protocol === 'ethernet' || protocol === 'nmea2000') === true;

/** What is wired straight to a unit by a lead of its own: the transducer of a sounder, the antenna of a radio. */
const wiredTo = ({ index, plan }: JobsInput, unit: string, kind: 'analog' | 'coax'): string[] => {
  const joins = new Map([...index.boat.joins, ...plan.joins].map((join) => [join.id, join]));
  return [...joins.values()]
    .filter((join) => join.kind === kind && join.members.some(({ kit }) => kit === unit))
    .flatMap(({ members }) => members.map(({ kit }) => kit))
    .filter((kit) => kit !== unit);
};

const feltBy = (input: JobsInput, unit: string): string[] =>
  wiredTo(input, unit, 'analog').filter((other) => kindOf(input, other) === 'transducer');

/** Every fixed radio of a kind with each of its antennas; one whose antenna nobody entered counts by itself. */
const radioPaths = (input: JobsInput, kind: string): FunctionPath[] =>
  input.index.boat.kit
    .filter(({ id }) => kindOf(input, id) === kind && input.index.sheetOf.get(id)?.ownBattery !== true)
    .flatMap(({ id }) => {
      const antennas = wiredTo(input, id, 'coax').filter((other) => kindOf(input, other) === 'radio-antenna');
      return antennas.length === 0 ? [[id]] : antennas.map((antenna) => [id, antenna]);
    });

const unique = (paths: readonly FunctionPath[]): FunctionPath[] => [
  ...new Map(paths.map((path) => [[...path].sort(byCodeUnit).join(' '), path])).values(),
];

/** The paths of a function that readings or a radio give, old and new ones. */
export const pathsOf = (input: JobsInput, wanted: EssentialFunction): FunctionPath[] => {
  if (wanted === 'vhf') return unique(radioPaths(input, 'vhf-radio'));
  if (wanted === 'ais') return unique(radioPaths(input, 'ais'));
  const reading = watchedReadings.byFunction[wanted];
  return reading === undefined ? [] : unique(readingPaths(input, reading));
};
