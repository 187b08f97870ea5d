import type { BoatIndex } from '../../boat/boat-index.ts';
import type { JobKind } from '../../facts/job-kinds.ts';
import type { Job } from '../../work-shape.ts';

const verbs: Readonly<Record<JobKind, string>> = {
  paper: 'asking for',
  survey: 'the survey',
  label: 'labelling',
  'save-settings': 'saving the old settings',
  'open-way': 'opening way',
  'temporary-feed': 'the temporary feed of the pumps',
  'take-out': 'taking out',
  'haul-out': 'the lift out',
  'mast-down': 'the mast down',
  pull: 'pulling through way',
  'mast-pull': 'pulling in the mast at',
  cut: 'cutting at',
  mount: 'fitting',
  'mount-aloft': 'fitting aloft',
  underwater: 'fitting below the waterline',
  seal: 'sealing way',
  connect: 'connecting',
  panel: 'the work on panel',
  'power-up': 'first power for',
  update: 'new versions for',
  'mast-up': 'the mast up',
  launch: 'the launch',
  'watch-for-water': 'the watch for water',
  'take-temporary-feed-out': 'taking the temporary feed out',
  'dock-test': 'the dock tests of',
  'drive-check': 'the check of the drive',
  'sea-trial': 'the sea trial',
  'as-built': 'the papers as built',
  leaving: 'what leaves',
  own: '',
};

const thing = ({ kit, places }: BoatIndex, id: string): string => kit.get(id)?.name ?? places.get(id)?.name ?? id;

/** A job in a few words, for the middle of a sentence. */
export const jobName = (index: BoatIndex, { kind, id, name, phase }: Job): string => {
  if (kind === 'own') return name ?? id;
  const parts = id.split(':').slice(1);
  const about = phase > 1 ? parts.slice(0, -1) : parts;
  const things = about.map((part) => thing(index, part)).join(' ');
  const words = [verbs[kind], ...(things === '' ? [] : [kind === 'sea-trial' ? `(${things})` : things])].join(' ');
  return phase > 1 ? `${words} in phase ${phase}` : words;
};
