import { cautions } from '../../facts/cautions.ts';
import type { JobKind } from '../../facts/job-kinds.ts';
import type { JobDraft } from './job-draft.ts';
import { kindOf, type PhaseFrame } from './job-frame.ts';
import { ownJobId } from './own-jobs.ts';

const byKind: Readonly<Partial<Record<JobKind, readonly string[]>>> = {
  'temporary-feed': ['battery-short', 'short-energy'],
  'take-temporary-feed-out': ['battery-short'],
  panel: ['battery-short', 'short-energy', 'licence', 'stray'],
  connect: ['licence'],
  'power-up': ['battery-short'],
  cut: ['panel-cutting', 'laminate-dust'],
  'open-way': ['laminate-dust'],
  underwater: ['hull', 'laminate-dust'],
  seal: ['hull'],
  launch: ['hull'],
  'watch-for-water': ['hull'],
  'mast-pull': ['lightning'],
  'drive-check': ['pilot-drive'],
  'sea-trial': ['navsafe'],
};

const isRadio = (kind: string): boolean => ['ais', 'mfhf-radio', 'radio-antenna', 'vhf-radio'].includes(kind);
const isPilot = (kind: string): boolean =>
  ['pilot', 'pilot-computer', 'steering-drive', 'rudder-sensor'].includes(kind);
const isRadar = (kind: string): boolean => kind === 'radar';

/** What is said at a job because of the units it is about. */
const byUnits = (frame: PhaseFrame, { kind, about }: JobDraft): string[] => {
  const kinds = about.map((id) => kindOf(frame, id));
  const sends = kind === 'power-up' || kind === 'dock-test' || kind === 'mount' || kind === 'connect';
  return [
    ...(kinds.some(isRadar) ? ['radar'] : []),
    ...(sends && kinds.some(isRadio) ? ['vhf-rf'] : []),
    ...(kind !== 'label' && kinds.some(isPilot) ? ['pilot-drive'] : []),
  ];
};

const bySupply = ({ index, plan }: PhaseFrame, { kind, about }: JobDraft): string[] => {
  if (kind !== 'panel' && kind !== 'temporary-feed') return [];
  const banks = plan.panels.find(({ panel }) => about.includes(panel))?.banks ?? [...index.banks.keys()];
  const isLithium = banks.some((bank) => index.banks.get(bank)?.chemistry === 'lifepo4');
  const mainsNear = index.boat.supply.chargers?.some((one) => one.kind === 'mains') === true;
  return [...(isLithium ? ['lithium'] : []), ...(mainsNear && kind === 'panel' ? ['ac'] : [])];
};

const opensHull = ({ index }: PhaseFrame, { id }: JobDraft): boolean =>
  index.boat.work?.own?.some((own) => own.throughHull === true && ownJobId(own) === id) === true;

/** What is said where a job can hurt someone, by id, in the order of the table. */
export const cautionsOf = (frame: PhaseFrame, job: JobDraft): string[] => {
  const said = new Set([
    ...(byKind[job.kind] ?? []),
    ...byUnits(frame, job),
    ...bySupply(frame, job),
    ...(job.aloft ? ['aloft'] : []),
    ...(job.kind === 'own' && opensHull(frame, job) ? ['hull'] : []),
  ]);
  return cautions.map(({ id }) => id).filter((id) => said.has(id));
};
