import { readingName, readingWords } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SettingEntry } from '../../core/sources-shape.ts';
import { everyWords, messageCode, messageName } from '../cards/form-words.ts';
import { printCount } from '../lists/print-figure.ts';
import { briefNames } from './brief-names.ts';
import { type UnitNames, unitNameOf } from './source-rows.ts';

/** One thing to set: where in the unit, what, how, and for whom. */
export interface SettingRow {
  readonly key: string;
  /** the port, absent for what is set for the whole unit */
  readonly port: string;
  readonly what: string;
  /** "on", "off", "number 1" */
  readonly to: string;
  readonly more: string;
  readonly forWhom: string;
}

/** One unit with everything to set in it. */
export interface SettingUnit {
  readonly kit: string;
  readonly name: string;
  readonly place: string;
  readonly rows: readonly SettingRow[];
}

const portOf = (dotted: string | undefined): string => dotted?.slice(dotted.indexOf('.') + 1) ?? '';

const messageWords = (entry: SettingEntry): string => {
  const [code, name] = [messageCode(entry), messageName(entry)];
  return code === undefined ? 'a message' : name === undefined ? code : `${code} (${name})`;
};

const readingsWords = ({ readings }: SettingEntry): string =>
  readings.map((reading) => readingWords[reading]).join(', ');

const oneReading = ({ readings, instance }: SettingEntry): string => {
  const [reading] = readings;
  return reading === undefined ? '' : readingName({ reading, instance });
};

const offWords: Readonly<Record<NonNullable<SettingEntry['why']>, string>> = {
  doubled: 'another brings the same',
  'line-full': 'the line is too full, and nobody needs it',
  satellites: 'long, and nobody needs it',
};

const rateWords = ({ everyMs, enoughMs }: SettingEntry): string => {
  const enough = enoughMs === undefined || enoughMs === everyMs ? '' : `${everyWords(enoughMs)} is enough`;
  return [everyMs === undefined ? 'as it happens' : everyWords(everyMs), enough]
    .filter((part) => part !== '')
    .join('; ');
};

const offsetWords: Readonly<Record<string, string>> = {
  keel: 'transducer to keel, with a minus',
  waterline: 'transducer to waterline, with a plus',
  transducer: 'depth below the transducer is wanted',
};

type Words = Pick<SettingRow, 'what' | 'to' | 'more'>;

const wordsOf = (names: UnitNames, entry: SettingEntry): Words => {
  const { does, source, to, was, backups = [] } = entry;
  const from = source === undefined ? '' : unitNameOf(names, source);
  const ports = `from ${portOf(entry.port)} to ${portOf(to)}`;
  switch (does) {
    case 'speed':
      return { what: 'speed of the line', to: `${entry.baud} baud`, more: '8 bits, no parity, 1 stop bit' };
    case 'send':
      return { what: messageWords(entry), to: 'on', more: rateWords(entry) };
    case 'stop':
      return {
        what: entry.sentence === undefined ? readingsWords(entry) : messageWords(entry),
        to: 'off',
        more: entry.why === undefined ? '' : offWords[entry.why],
      };
    case 'stand-by':
      return {
        what: readingsWords(entry),
        to: 'stands by',
        more: 'give it another number, or switch it on only when the first fails',
      };
    case 'pass':
      return { what: readingsWords(entry), to: 'pass on', more: ports };
    case 'no-echo':
      return { what: readingsWords(entry), to: 'do not give back', more: `${ports}: it came from there` };
    case 'no-heading':
      return { what: 'heading from VHW', to: 'off', more: `${from} has no compass` };
    case 'number':
      return {
        what: `${readingsWords(entry)}${from === '' ? '' : ` of ${from}`}`,
        to: `number ${entry.instance}`,
        more: was === undefined ? '' : `now ${was}`,
      };
    case 'offset':
      return {
        what: `offset of the depth${from === '' ? '' : ` of ${from}`}`,
        to: entry.reference === 'transducer' ? 'leave at 0' : 'enter here',
        more: offsetWords[entry.reference ?? ''] ?? 'with a plus to waterline, with a minus to keel',
      };
    case 'no-offset':
      return { what: `offset of the depth of ${from}`, to: 'leave at 0', more: 'it is entered nearer to its source' };
    case 'reference':
      return { what: readingsWords(entry), to: entry.reference ?? '', more: '' };
    default:
      return {
        what: oneReading(entry),
        to: `choose ${from}`,
        more: `stands by: ${backups.map((port) => unitNameOf(names, port)).join(', ')}`,
      };
  }
};

const forWhom = (names: UnitNames, { does, at, kit, readings, asBackup }: SettingEntry): string => {
  const others = at.filter((unit) => unit !== kit);
  if (others.length === 0) return '';
  const who =
    others.length > 2 ? printCount(others.length, 'unit') : others.map((unit) => unitNameOf(names, unit)).join(' and ');
  const what = does === 'send' ? `${readings.map((reading) => readingWords[reading]).join(', ')} for ` : 'for ';
  return `${what}${who}${asBackup === true ? ', standing by' : ''}`;
};

interface Names extends UnitNames {
  readonly kit: ReadonlyMap<string, { readonly name: string; readonly place: string }>;
  readonly places: ReadonlyMap<string, { readonly name: string }>;
}

/** What to set, unit by unit: the table to work from aboard. */
export const settingUnits = (names: Names, { settings }: Pick<Plan, 'settings'>): SettingUnit[] => {
  const brief = { kit: briefNames(names.kit) };
  const byUnit = new Map<string, SettingEntry[]>();
  for (const entry of settings) byUnit.set(entry.kit, [...(byUnit.get(entry.kit) ?? []), entry]);
  return [...byUnit].map(([kit, entries]) => {
    const place = names.kit.get(kit)?.place ?? '';
    return {
      kit,
      name: unitNameOf(names, kit),
      place: names.places.get(place)?.name ?? place,
      rows: entries.map((entry) => ({
        key: entry.id,
        port: portOf(entry.port),
        ...wordsOf(brief, entry),
        forWhom: forWhom(brief, entry),
      })),
    };
  });
};

/** A setting as one sentence: "n2k: PGN 129025 (Position, Rapid Update) on, every 100 ms; position for 9 units". */
export const settingSentence = ({ port, what, to, more, forWhom: whom }: SettingRow): string => {
  const after = [more, whom].filter((part) => part !== '').join('; ');
  return `${port === '' ? '' : `${port}: `}${what}: ${to}${after === '' ? '' : `, ${after}`}.`;
};
