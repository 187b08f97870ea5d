import { fewInWords } from '../../core/boat/edits/few-in-words.ts';
import type { JobKind } from '../../core/facts/job-kinds.ts';
import type { Job } from '../../core/work-shape.ts';
import { printCount } from '../lists/print-figure.ts';
import { trialName } from '../proof/trial-words.ts';
import { thingName, type WorkNames } from './work-names.ts';

/** What is done in a job of each kind, `of` the things it is about; without such the bare words. */
const kindWords: Readonly<
  Record<Exclude<JobKind, 'own'>, { readonly bare: string; readonly of?: (what: string) => string }>
> = {
  paper: { bare: 'Papers', of: (what) => `Papers: ${what}` },
  survey: { bare: 'Look at what is aboard, and photograph it' },
  label: { bare: 'Label cables before anything is unplugged', of: (what) => `Label the cables of ${what}` },
  'save-settings': { bare: 'Save the old settings', of: (what) => `Save the settings of ${what}` },
  'open-way': { bare: 'Open a way', of: (what) => `Open the way ${what}` },
  'temporary-feed': { bare: 'Lead a temporary feed', of: (what) => `Lead a temporary feed: ${what}` },
  'take-out': { bare: 'Take out', of: (what) => `Take out ${what}` },
  'haul-out': { bare: 'Haul her out' },
  'mast-down': { bare: 'Mast down' },
  pull: { bare: 'Pull cables', of: (what) => `Pull ${what}` },
  'mast-pull': { bare: 'Pull cables in the mast', of: (what) => `Pull in the mast: ${what}` },
  cut: { bare: 'Cut and bore', of: (what) => `Cut and bore at ${what}` },
  mount: { bare: 'Mount', of: (what) => `Mount ${what}` },
  'mount-aloft': { bare: 'Mount aloft', of: (what) => `Mount aloft: ${what}` },
  underwater: { bare: 'Work below the waterline', of: (what) => `Fit below the waterline: ${what}` },
  seal: { bare: 'Seal, and let it cure', of: (what) => `Seal the way ${what}, and let it cure` },
  connect: { bare: 'Make up ends and plug in', of: (what) => `Make up the ends of ${what} and plug in` },
  panel: { bare: 'Feed and fuse', of: (what) => `Feed and fuse at ${what}` },
  'power-up': { bare: 'Power up', of: (what) => `Power up ${what}` },
  update: { bare: 'Bring the software up to date', of: (what) => `Bring the software of ${what} up to date` },
  'mast-up': { bare: 'Mast up' },
  launch: { bare: 'Launch her' },
  'watch-for-water': { bare: 'Look for water once she is afloat', of: (what) => `Look for water at ${what}` },
  'take-temporary-feed-out': {
    bare: 'Take the temporary feed out',
    of: (what) => `Take out the temporary feed: ${what}`,
  },
  'dock-test': { bare: 'Test at the dock', of: (what) => `Test ${what} at the dock` },
  'drive-check': { bare: 'Try the drive at the berth', of: (what) => `Try the drive at the berth: ${what}` },
  'sea-trial': { bare: 'Try at sea', of: (what) => `Try at sea: ${what}` },
  'as-built': { bare: 'Note what was really done' },
  leaving: { bare: 'Ready the old kit to leave', of: (what) => `Ready to leave: ${what}` },
};

/** What stands behind the kind in the name of a job, such as a slice of the boat; a bare number is its phase. */
const partOf = ({ id }: Pick<Job, 'id'>): string | undefined => {
  const part = id.split(':')[1];
  return part === undefined || /^\d+$/.test(part) ? undefined : part;
};

/** Parts of the boat that are switched on, brought up to date and tested together. */
const slices: Readonly<Record<string, string>> = {
  power: 'the feeds',
  backbone: 'the backbone',
  sensors: 'the sensors',
  radio: 'radio and AIS',
  displays: 'the displays',
  pilot: 'the pilot',
  radar: 'the radar',
  hull: 'what is in the hull',
};

const sliceWords = (part: string): string => slices[part] ?? part.replaceAll('-', ' ');

type Named = Pick<Job, 'kind' | 'about' | 'name' | 'id' | 'place'>;

const pullWords = (names: WorkNames, { kind, about }: Named): string => {
  const lines = about.filter((id) => names.lines.has(id));
  const ways = about.filter((id) => names.boat.ways.some((way) => way.id === id)).map((id) => thingName(names, id));
  const what = printCount(lines.length, 'cable');
  return `Pull ${what}${kind === 'mast-pull' ? ' in the mast' : ''}${ways.length === 0 ? '' : `, ${fewInWords(ways)}`}`;
};

/** Cables and lines, and places beside what is done there, are told of in the steps of a job, not in its name. */
const mainThings = ({ boat, index, lines }: WorkNames, about: readonly string[]): readonly string[] => {
  const cables = new Set(boat.cables.map(({ id }) => id));
  const main = about.filter((id) => !cables.has(id) && !lines.has(id) && !index.places.has(id));
  return main.length > 0 ? main : about;
};

/** What is switched on: a part of the boat, and of one that stands at several places the one it is. */
const switchedOn = (names: WorkNames, { place }: Named, part: string): string =>
  place === undefined ? sliceWords(part) : `${sliceWords(part)} at ${thingName(names, place)}`;

const aboutWords = (names: WorkNames, job: Named): string | undefined => {
  const part = partOf(job);
  const main = mainThings(names, job.about);
  switch (job.kind) {
    case 'connect':
    case 'panel':
      return main[0] === undefined ? undefined : thingName(names, main[0]);
    case 'cut':
      return job.place === undefined ? undefined : thingName(names, job.place);
    case 'power-up':
      return part === undefined ? undefined : switchedOn(names, job, part);
    case 'update':
    case 'dock-test':
      return part === undefined ? undefined : sliceWords(part);
    case 'sea-trial':
      return part === undefined ? undefined : trialName(part);
    default:
      return main.length === 0 ? undefined : fewInWords([...new Set(main.map((id) => thingName(names, id)))]);
  }
};

/**
 * A job in a few words.
 *
 * @example jobWords(names, job) // 'Take out Old chart plotter'
 */
export const jobWords = (names: WorkNames, job: Named): string => {
  if (job.name !== undefined) return job.name;
  if (job.kind === 'own') return job.id;
  if (job.kind === 'pull' || job.kind === 'mast-pull') return pullWords(names, job);
  const { bare, of } = kindWords[job.kind];
  const what = aboutWords(names, job);
  return of === undefined || what === undefined ? bare : of(what);
};

/** Kinds of job in a word or two, to stand on a bar. */
export const briefKind: Readonly<Record<JobKind, string>> = {
  paper: 'papers',
  survey: 'look round',
  label: 'label',
  'save-settings': 'save',
  'open-way': 'open way',
  'temporary-feed': 'temporary feed',
  'take-out': 'take out',
  'haul-out': 'haul out',
  'mast-down': 'mast down',
  pull: 'pull',
  'mast-pull': 'pull in mast',
  cut: 'cut',
  mount: 'mount',
  'mount-aloft': 'mount aloft',
  underwater: 'below water',
  seal: 'seal',
  connect: 'plug in',
  panel: 'panel',
  'power-up': 'power up',
  update: 'update',
  'mast-up': 'mast up',
  launch: 'launch',
  'watch-for-water': 'look for water',
  'take-temporary-feed-out': 'feed out',
  'dock-test': 'dock test',
  'drive-check': 'try drive',
  'sea-trial': 'sea trial',
  'as-built': 'as built',
  leaving: 'leaving',
  own: 'own',
};
