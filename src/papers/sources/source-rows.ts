import type { EditCall } from '../../core/boat/history.ts';
import { readingName, readingWords } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Better, SourceEntry, SourceWay } from '../../core/sources-shape.ts';
import { everyWords } from '../cards/form-words.ts';
import { briefNames } from './brief-names.ts';

/** What naming a unit looks up. */
export interface UnitNames {
  readonly kit: ReadonlyMap<string, { readonly name: string }>;
}

/** One source of a row: its port, whose it is, and what is said of it. */
export interface SourceOffer {
  /** `kit.port` */
  readonly from: string;
  readonly name: string;
  readonly says: string;
}

/** A screen of a row, with the source that was chosen for it alone. */
interface SourceScreen {
  readonly kit: string;
  readonly name: string;
  readonly ownChoice?: string;
}

/** One reading with the screens that have it from the same source, with the same ones standing by. */
export interface SourceRow {
  readonly key: string;
  readonly reading: SourceEntry['reading'];
  readonly instance?: number;
  /** "position", "engine 0" */
  readonly what: string;
  readonly screens: readonly SourceScreen[];
  readonly first: SourceOffer;
  readonly standBy: readonly SourceOffer[];
  /** why the first counts */
  readonly why: string;
  /** several come in and one has to be chosen on each screen */
  readonly isChoice: boolean;
  /** the port chosen by the person for the boat */
  readonly boatChoice?: string;
  readonly lights: readonly string[];
}

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));
export const unitNameOf = ({ kit }: UnitNames, port: string): string => {
  const id = port.includes('.') ? unitOf(port) : port;
  return kit.get(id)?.name ?? id;
};

const becauseWords = (because: Better, { everyMs }: SourceWay): string => {
  const words: Readonly<Record<Better, string>> = {
    sensor: 'it is made to measure this',
    reference: 'it comes in the reference that is wanted',
    offset: 'its offset travels with it',
    rate: everyMs === undefined ? 'it comes more often' : `it comes more often, ${everyWords(everyMs)}`,
    converters: 'it passes fewer converters',
    rests: 'its sheets are better known',
    number: 'it has the lower number',
    path: 'its way is shorter',
    name: 'it is the next one’s equal, and first by name',
  };
  return words[because];
};

const whyWords = ({ chosen, because, primary }: SourceEntry): string => {
  if (chosen === 'only') return 'the only source';
  if (chosen === 'all') return 'all of them count';
  if (chosen === 'owner-here') return 'chosen by you for this screen';
  if (chosen === 'owner-boat') return 'chosen by you';
  const reason = because === undefined ? 'best for all screens together' : becauseWords(because, primary);
  return chosen === 'boat' ? `proposed for the whole boat: ${reason}` : `proposed: ${reason}`;
};

const numberWords = ({ instance }: SourceWay): string => (instance === undefined ? '' : `number ${instance}`);

const converterWords = ({ converters }: SourceWay): string => {
  if (converters === 0) return '';
  return converters === 1 ? 'by a converter' : `by ${converters} converters`;
};

type Way = SourceWay & { readonly shares?: readonly string[] | undefined };

const partsOf = (names: UnitNames, way: Way): string[] => {
  const shared = (way.shares ?? []).map((kit) => unitNameOf(names, kit));
  return [
    numberWords(way),
    way.everyMs === undefined ? '' : everyWords(way.everyMs),
    way.reference ?? '',
    converterWords(way),
    shared.length === 0 ? '' : `fails with ${shared.join(' and ')} too`,
  ];
};

/** A source with what holds of it at every screen of a row. */
const offerOf = (names: UnitNames, ways: readonly [Way, ...Way[]]): SourceOffer => {
  const [first, ...others] = ways.map((way) => partsOf(names, way));
  const said = (first ?? []).filter((part) => part !== '' && others.every((parts) => parts.includes(part)));
  return { from: ways[0].from, name: unitNameOf(names, ways[0].from), says: said.join(', ') };
};

/** The sources that stand by at any screen of a row, each once, in the order in which they come up. */
const standByOf = (names: UnitNames, entries: readonly SourceEntry[]): SourceOffer[] => {
  const ways = new Map<string, [Way, ...Way[]]>();
  for (const backup of entries.flatMap(({ backups }) => backups)) {
    const known = ways.get(backup.from);
    if (known === undefined) ways.set(backup.from, [backup]);
    else known.push(backup);
  }
  return [...ways.values()].map((own) => offerOf(names, own));
};

const groupKey = ({ reading, instance, chosen, primary }: SourceEntry): string =>
  [reading, instance ?? '', chosen, primary.from].join(' ');

/** The source plan, a row for each reading and source: which screens have it from there, why, and what stands by. */
export const sourceRows = (
  names: UnitNames & { readonly boat: { readonly sources?: readonly Choice[] | undefined } },
  { sources }: Pick<Plan, 'sources'>,
): SourceRow[] => {
  const brief = { kit: briefNames(names.kit) };
  const groups = new Map<string, SourceEntry[]>();
  for (const entry of sources) groups.set(groupKey(entry), [...(groups.get(groupKey(entry)) ?? []), entry]);
  const choices = names.boat.sources ?? [];
  return [...groups.values()].flatMap((entries) => {
    const [first] = entries;
    if (first === undefined) return [];
    const meant = choices.filter(({ reading, instance }) => reading === first.reading && instance === first.instance);
    const boatChoice = meant.find(({ at }) => at === undefined)?.primary;
    return [
      {
        // not by its source, so that the choice stays where it is while another is taken
        key: `${first.reading} ${first.instance ?? ''} ${first.at}`,
        reading: first.reading,
        ...(first.instance === undefined ? {} : { instance: first.instance }),
        what: readingName(first),
        screens: entries.map(({ at }) => {
          const ownChoice = meant.find((choice) => choice.at === at)?.primary;
          return { kit: at, name: unitNameOf(brief, at), ...(ownChoice === undefined ? {} : { ownChoice }) };
        }),
        first: offerOf(brief, [first.primary, ...entries.slice(1).map(({ primary }) => primary)]),
        standBy: standByOf(brief, entries),
        why: whyWords(first),
        isChoice: first.backups.length > 0 && first.chosen !== 'all' && first.reading !== 'time-date',
        ...(boatChoice === undefined ? {} : { boatChoice }),
        lights: [unitOf(first.primary.from), ...entries.map(({ at }) => at)],
      },
    ];
  });
};

interface Choice {
  readonly reading: string;
  readonly instance?: number | undefined;
  readonly at?: string | undefined;
  readonly primary: string;
}

/**
 * The edit by which another source counts for the boat, or at one screen with `at`; without `from` the plan proposes again.
 * One step of undo, in words.
 */
export const chooseEdit = (
  names: UnitNames,
  { reading, instance }: Pick<SourceRow, 'reading' | 'instance'>,
  { from, at }: { readonly from?: string; readonly at?: string },
): { readonly title: string; readonly edits: readonly EditCall[] } => {
  const which = {
    reading,
    ...(instance === undefined ? {} : { instance }),
    ...(at === undefined ? {} : { at }),
  };
  const where = at === undefined ? '' : ` at ${unitNameOf(names, at)}`;
  return from === undefined
    ? {
        title: `Let the plan propose where ${readingWords[reading]}${where} comes from.`,
        edits: [{ edit: 'let-source-go', params: which }],
      }
    : {
        title: `Take ${readingName({ reading, instance })}${where} from ${unitNameOf(names, from)}.`,
        edits: [{ edit: 'choose-source', params: { ...which, primary: from } }],
      };
};

const listed = (all: readonly string[]): string =>
  all.length > 3 ? `${all.slice(0, 2).join(', ')} and ${all.length - 2} more` : all.join(', ');

/** A row as one sentence: "position for 9 units from the antenna, every 100 ms; stands by: …". */
export const sourceSentence = ({ what, screens, first, standBy, why }: SourceRow): string => {
  const where = screens.length > 2 ? `${screens.length} units` : screens.map(({ name }) => name).join(' and ');
  const said = first.says === '' ? '' : ` (${first.says})`;
  const others = standBy.length === 0 ? '' : `; stands by: ${listed(standBy.map(({ name }) => name))}`;
  return `${what} for ${where}: from ${first.name}${said}, ${why}${others}.`;
};
