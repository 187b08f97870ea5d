import { fewInWords } from '../../core/boat/edits/few-in-words.ts';
import type { JobKind } from '../../core/facts/job-kinds.ts';
import type { Job } from '../../core/work-shape.ts';
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
  cut: { bare: 'Cut and bore', of: (what) => `Cut and bore for ${what}` },
  mount: { bare: 'Mount', of: (what) => `Mount ${what}` },
  'mount-aloft': { bare: 'Mount aloft', of: (what) => `Mount aloft: ${what}` },
  underwater: { bare: 'Work below the waterline', of: (what) => `Fit below the waterline: ${what}` },
  seal: { bare: 'Seal, and let it cure', of: (what) => `Seal, and let it cure: ${what}` },
  connect: { bare: 'Make up ends and plug in', of: (what) => `Make up ends and plug in ${what}` },
  panel: { bare: 'Feed and fuse', of: (what) => `Feed and fuse at ${what}` },
  'power-up': { bare: 'Power up', of: (what) => `Power up ${what}` },
  update: { bare: 'Bring the software up to date', of: (what) => `Bring the software up to date: ${what}` },
  'mast-up': { bare: 'Mast up' },
  launch: { bare: 'Launch her' },
  'watch-for-water': { bare: 'Look for water once she is afloat', of: (what) => `Look for water at ${what}` },
  'take-temporary-feed-out': {
    bare: 'Take the temporary feed out',
    of: (what) => `Take out the temporary feed: ${what}`,
  },
  'dock-test': { bare: 'Test at the dock', of: (what) => `Test at the dock: ${what}` },
  'drive-check': { bare: 'Try the drive at the berth', of: (what) => `Try the drive at the berth: ${what}` },
  'sea-trial': { bare: 'Try at sea' },
  'as-built': { bare: 'Note what was really done' },
  leaving: { bare: 'Ready the old kit to leave', of: (what) => `Ready to leave: ${what}` },
};

/** Cables that leave with a unit, and places beside what is done there, are told of in its steps, not in its name. */
const namedThings = ({ boat, index }: WorkNames, { about }: Pick<Job, 'about'>): readonly string[] => {
  const cables = new Set(boat.cables.map(({ id }) => id));
  const main = about.filter((id) => !cables.has(id) && !index.places.has(id));
  return main.length > 0 ? main : about;
};

/** What a job is about, by name. */
export const jobThings = (names: WorkNames, job: Pick<Job, 'about'>): string[] => [
  ...new Set(namedThings(names, job).map((id) => thingName(names, id))),
];

/**
 * A job in a few words.
 *
 * @example jobWords(names, job) // 'Take out Old chart plotter'
 */
export const jobWords = (names: WorkNames, job: Pick<Job, 'kind' | 'about' | 'name' | 'id'>): string => {
  if (job.name !== undefined) return job.name;
  if (job.kind === 'own') return job.id;
  const { bare, of } = kindWords[job.kind];
  const things = jobThings(names, job);
  return of === undefined || things.length === 0 ? bare : of(fewInWords(things));
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
