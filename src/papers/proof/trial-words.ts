import { seaTrials } from '../../core/facts/trial-tests.ts';
import type { TrialState, TrialStep } from '../../core/proof/trial/sea-trial.ts';

/** What a trial at sea is called where others wait for it. */
const briefly: Readonly<Record<string, string>> = {
  heading: 'the heading sensor',
  compass: 'the steering compass',
  depth: 'the depth',
  log: 'the log',
  wind: 'the wind',
  'pilot-free': 'letting go of the pilot',
  'pilot-tuned': 'the pilot’s turns',
  radar: 'the radar',
  range: 'the range of VHF and AIS',
  'pull-a-breaker': 'pulling a breaker',
  'heading-again': 'the second swing',
};

export const trialName = (id: string): string =>
  briefly[id] ?? seaTrials.find((trial) => trial.id === id)?.does ?? id.replaceAll('-', ' ');

/** How a trial stands, with a sign of its own so that no colour is needed to read it. */
export const trialSigns: Readonly<Record<TrialState, string>> = {
  done: '✓',
  again: '↻',
  'not-right': '✗',
  ready: '○',
  waits: '…',
};

const dayBy = ({ on, by }: TrialStep): string => [on, by].filter((part) => part !== undefined).join(', ');

/** How a trial stands, in a few words. */
export const trialStateWords = (step: TrialStep): string => {
  switch (step.state) {
    case 'done':
      return `done ${dayBy(step)}`;
    case 'again':
      return `done ${dayBy(step)}, to be done again: one it builds on was done later`;
    case 'not-right':
      return `not as it should be, ${dayBy(step)}`;
    case 'ready':
      return 'ready';
    case 'waits':
      return `waits for ${step.waitsFor.map(trialName).join(' and ')}`;
  }
};
