import type { Boat } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';

const columns = [
  'label',
  'kind',
  'from',
  'to',
  'route',
  'length m',
  'longest m',
  'length is',
  'cable',
  'line id',
] as const;

/** One field by RFC 4180. A text that a spreadsheet would take for a formula gets an apostrophe in front. */
const field = (value: string | number): string => {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** An end of a line in words: a unit with its plug, a tee with what it serves, a bus, panel or bank by name. */
const endWords = (names: ReadonlyMap<string, string>, end: string): string => {
  const slash = end.indexOf('/');
  if (slash >= 0) {
    const bus = end.slice(0, slash);
    const tee = end.slice(slash + 1);
    return `${names.get(bus) ?? bus}, tee of ${names.get(tee.split('.')[0] ?? tee) ?? tee}`;
  }
  const [id = end, plug] = end.split('.');
  const name = names.get(id) ?? id;
  return plug === undefined ? name : `${name} (${plug.split('#')[0]})`;
};

const namesIn = (boat: Boat): ReadonlyMap<string, string> =>
  new Map([
    ...boat.kit.map((unit): [string, string] => [unit.id, unit.name]),
    ...boat.buses.map((bus): [string, string] => [bus.id, bus.name]),
    ...boat.supply.panels.map((panel): [string, string] => [panel.id, `panel ${panel.id}`]),
    ...boat.supply.banks.map((bank): [string, string] => [bank.id, `bank ${bank.id}`]),
  ]);

const hundredth = (lengthM: number): number => Math.round(lengthM * 100) / 100;

const lineFields = (
  line: LineEntry,
  { names, places }: { names: ReadonlyMap<string, string>; places: ReadonlyMap<string, string> },
): (string | number)[] => [
  line.label ?? '',
  line.kind,
  endWords(names, line.from),
  endWords(names, line.to),
  line.places.map((id) => places.get(id) ?? id).join(' > '),
  hundredth(line.lengthM),
  hundredth(line.longestM),
  line.guessed ? 'partly guessed' : 'known',
  line.kept === undefined ? 'new' : `aboard: ${line.kept.join(' + ')}`,
  line.id,
];

/**
 * Every line of the boat as CSV (RFC 4180, CR LF), sorted by kind and id: ends and route in words, the length as entered and
 * the longest it can be with every doubt against it, in metres, and whether the cable is aboard already.
 */
export const cableSchedule = (boat: Boat, plan: Plan): string => {
  const names = namesIn(boat);
  const places = new Map(boat.places.map((place) => [place.id, place.name]));
  const rows = plan.lines.map((line) => lineFields(line, { names, places }));
  return [columns, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
};
