import type { JobKind } from './job-kinds.ts';
import type { QuoteTask } from './quote-figures.ts';
import type { SourceKey } from './sources.ts';

type Shares = Readonly<Partial<Record<JobKind, number>>>;

/**
 * How the hours of one task are shared among the jobs it is done in, in hundredths. A share of a job that a boat has not (a
 * cable that takes no way, a gland that is none) goes to the other jobs of the task.
 */
export const jobShares: { readonly source: SourceKey; readonly byTask: Readonly<Record<QuoteTask, Shares>> } = {
  source: 'choice-job-shares',
  byTask: {
    survey: { survey: 100 },
    'remove-display': { label: 20, 'save-settings': 10, 'take-out': 60, leaving: 10 },
    'remove-radar-mast-up': { label: 10, 'save-settings': 5, 'take-out': 80, leaving: 5 },
    'remove-radar-mast-down': { label: 10, 'save-settings': 5, 'take-out': 80, leaving: 5 },
    'cover-plate': { cut: 60, mount: 40 },
    'flush-mount': { cut: 60, mount: 40 },
    'fit-unit': { mount: 70, connect: 30 },
    'fit-aloft': { 'mount-aloft': 80, connect: 20 },
    'radar-mast': { mount: 45, pull: 35, connect: 20 },
    transducer: { mount: 80, connect: 20 },
    vhf: { mount: 60, connect: 40 },
    'pilot-sensors': { mount: 60, connect: 40 },
    'pilot-drive': { mount: 60, connect: 40 },
    'open-way': { 'open-way': 100 },
    'widen-hole': { 'open-way': 100 },
    'pull-10m': { pull: 75, seal: 10, connect: 15 },
    'pull-full': { pull: 80, seal: 5, connect: 15 },
    'mast-cable-down': { 'mast-pull': 70, pull: 15, connect: 15 },
    'mast-cable-up': { 'mast-pull': 70, pull: 15, connect: 15 },
    'backbone-10': { pull: 40, seal: 10, connect: 50 },
    'power-feed': { pull: 35, seal: 5, panel: 30, connect: 30 },
    'fit-plug': { connect: 100 },
    commission: { 'power-up': 25, update: 25, 'dock-test': 40, 'drive-check': 5, 'sea-trial': 5 },
    'sea-trial': { 'sea-trial': 100 },
    'as-built': { 'as-built': 100 },
  },
};
