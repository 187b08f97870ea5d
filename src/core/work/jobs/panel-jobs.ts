import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { type EssentialFunction, suppliedFunctions } from '../../facts/essential-functions.ts';
import { connectJobOf } from './connect-jobs.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { endsOf, jobId, kindOf, type PhaseFrame } from './job-frame.ts';
import type { PullGroup } from './pull-groups.ts';

/** Functions that are never dark while afloat: they get a feed of their own where their panel is opened. */
export const hardFunctions = ['bilge-pump', 'high-water-alarm'] as const satisfies readonly EssentialFunction[];

/** Panels that new lines end at, and which are opened for them. */
export const panelsOpened = keptFor((frame: PhaseFrame): string[] => [
  ...new Set(frame.lines.flatMap((line) => endsOf(frame, line)).filter((id) => frame.index.panels.has(id))),
]);

/** A job that takes the supply off something: which panels or banks are dead while it lasts. */
export interface Interrupt {
  readonly job: string;
  readonly off: string;
}

/**
 * Jobs that take supply off, in the order in which they are done: work on a panel, what it hangs on before it, and a battery
 * monitor put into the negative of a bank. One is done with before the next begins, so that no more is dark than must be.
 */
export const interruptsOf = keptFor((frame: PhaseFrame): Interrupt[] => [
  ...upstreamFirst(frame, panelsOpened(frame)).map((panel) => ({
    job: jobId('panel', panel, frame.phase),
    off: panel,
  })),
  ...frame.comes
    .filter(({ id }) => kindOf(frame, id) === 'battery-monitor')
    .flatMap(({ id, place }) =>
      [...frame.index.banks.values()]
        .filter((bank) => bank.place === place)
        .map((bank) => ({ job: connectJobOf(frame, id), off: bank.id })),
    ),
]);

const upstreamFirst = ({ index }: PhaseFrame, panels: readonly string[]): string[] =>
  [...panels].sort(
    (one, other) => upstreamOf(index, one).length - upstreamOf(index, other).length || byCodeUnit(one, other),
  );

/** A panel or bank and everything it hangs on, nearest first. */
export const upstreamOf = ({ boat, panels }: BoatIndex, id: string): string[] => {
  const found: string[] = [];
  const fedFrom = (at: string): string | undefined => {
    const panel = panels.get(at);
    if (panel !== undefined) return panel.from;
    return boat.supply.panels.find(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(at)))?.id;
  };
  for (let at: string | undefined = id; at !== undefined && !found.includes(at); at = fedFrom(at)) found.push(at);
  return found;
};

/** What a circuit, panel or bank that a person named hangs on. */
const sourcesOf = (index: BoatIndex, on: string): string[] => upstreamOf(index, on.split('.')[0] ?? on);

/** The jobs of a phase that take a function away by its supply: all of them where nobody said what it hangs on. */
export const interruptsOfFunction = (frame: PhaseFrame, wanted: EssentialFunction): string[] => {
  const said = frame.index.boat.work?.essentials?.find((one) => one.function === wanted);
  if (said?.none === true) return [];
  const all = interruptsOf(frame);
  if (said?.on === undefined) return all.map(({ job }) => job);
  const sources = new Set(said.on.flatMap((on) => sourcesOf(frame.index, on)));
  return all.filter(({ off }) => sources.has(off)).map(({ job }) => job);
};

/** Pumps and alarms that some job of a phase would take out, with the jobs that do. */
export const fedMeanwhile = (frame: PhaseFrame): { readonly function: EssentialFunction; readonly jobs: string[] }[] =>
  hardFunctions
    .map((one) => ({ function: one, jobs: interruptsOfFunction(frame, one) }))
    .filter(({ jobs }) => jobs.length > 0);

const panelJob = (frame: PhaseFrame, panel: string, groups: readonly PullGroup[]): JobDraft => {
  const { index, phase } = frame;
  const own = new Set(frame.lines.filter((line) => endsOf(frame, line).includes(panel)).map(({ id }) => id));
  const place = index.panels.get(panel)?.place;
  return draftJob(frame, panel, {
    kind: 'panel',
    about: [panel, ...own],
    ...(place === undefined ? {} : { place }),
    after: [
      ...waits(frame.isFirst ? [jobId('survey', '', phase)] : [], 'label-first'),
      ...waits(
        groups.filter(({ lines }) => lines.some((line) => own.has(line))).map(({ job }) => job),
        'cabled-first',
      ),
    ],
    needs:
      frame.index.boat.work?.hands?.some(({ can = [] }) => can.includes('electrics')) === true ? ['electrics'] : [],
  });
};

/** Work on panels, and the temporary feed of pumps and alarms that would be dark meanwhile. */
export const panelJobs = (frame: PhaseFrame, groups: readonly PullGroup[]): JobDraft[] => {
  const jobs = panelsOpened(frame).map((panel) => panelJob(frame, panel, groups));
  const fed = fedMeanwhile(frame);
  if (fed.length === 0) return jobs;
  const about = fed.map((one) => one.function);
  const last = [...new Set(fed.flatMap((one) => one.jobs))];
  const [bank] = frame.index.boat.supply.banks;
  const place = bank === undefined ? {} : { place: bank.place };
  return [
    ...jobs,
    draftJob(frame, '', {
      kind: 'temporary-feed',
      about,
      ...place,
      after: waits(frame.isFirst ? [jobId('survey', '', frame.phase)] : [], 'label-first'),
    }),
    draftJob(frame, '', { kind: 'take-temporary-feed-out', about, ...place, after: waits(last, 'safe-first') }),
  ];
};

/** Functions that each job takes away while it lasts: those it cuts off from their supply and that have no feed of their own. */
export const functionsTaken = keptFor((frame: PhaseFrame): ReadonlyMap<string, readonly EssentialFunction[]> => {
  const found = new Map<string, EssentialFunction[]>();
  for (const one of suppliedFunctions) {
    if (hardFunctions.some((hard) => hard === one)) continue;
    for (const job of interruptsOfFunction(frame, one)) found.set(job, [...(found.get(job) ?? []), one]);
  }
  return found;
});
