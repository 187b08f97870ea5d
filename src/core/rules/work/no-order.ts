import { functionNames } from '../../facts/function-names.ts';
import type { Stuck } from '../../work-shape.ts';
import { aloftWithLiveRadar } from './aloft-with-live-radar.ts';
import { headingLineTooEarly } from './heading-line-too-early.ts';
import { holeAfloat } from './hole-afloat.ts';
import { jobName } from './job-name.ts';
import { jobsInACircle } from './jobs-in-a-circle.ts';
import { leavesBeforeTrial } from './leaves-before-trial.ts';
import { papersTooLate } from './papers-too-late.ts';
import { type PhaseCase, type PhaseRule, phaseRule } from './phase-rule.ts';
import { pinnedOutOfTurn } from './pinned-out-of-turn.ts';
import { pluggedBeforeCured } from './plugged-before-cured.ts';
import { pumpWithoutFeed } from './pump-without-feed.ts';

/** Rules that say why there is no order in words of their own. */
const reasons: readonly PhaseRule[] = [
  aloftWithLiveRadar,
  headingLineTooEarly,
  holeAfloat,
  jobsInACircle,
  leavesBeforeTrial,
  papersTooLate,
  pinnedOutOfTurn,
  pluggedBeforeCured,
  pumpWithoutFeed,
];

const whyWords: Readonly<Record<Stuck['why'], string>> = {
  circle: 'jobs wait for each other',
  'nobody-can': 'nobody there may do some of them',
  'never-ashore': 'some want her ashore, and she never is on a day of work',
  'never-afloat': 'some want her afloat, and she never is on a day of work',
  'mast-never-down': 'some want the mast down, and it never is on a day of work',
  'mast-never-up': 'some want the mast up, and it never is on a day of work',
  'comes-too-late': 'a part or a paper comes after the day on which it must be there',
  'dark-though-never': 'something would be dark that may never be',
  'pins-clash': 'days that were settled contradict each other',
  'done-by-too-early': 'it is to be done by a day that comes too early',
  'no-daylight': 'some are done in the open, and there is too little daylight',
  'too-few-days': 'there are too few days',
};

const relaxWords = ({ what, days }: Stuck['relax'][number]): string => {
  switch (what) {
    case 'days':
      return `${days ?? 1} days more`;
    case 'haul-out-days':
      return `${days ?? 1} days more ashore`;
    case 'mast-days':
      return `${days ?? 1} days more with the mast down`;
    case 'hand':
      return 'somebody more who can';
    case 'unpin':
      return 'a settled day or wait let go';
    case 'temporary-feed':
      return 'a temporary feed';
    case 'earlier':
      return `it here ${days ?? 1} days earlier`;
    case 'leave-out':
      return 'a job left out';
  }
};

const saysOf = ({ index, phase }: PhaseCase, { why, jobs, functions }: Stuck): string => {
  const named = jobs.slice(0, 3).flatMap((id) => phase.jobs.filter((job) => job.id === id));
  const about = [...named.map((job) => jobName(index, job)), ...functions.map((one) => functionNames.byFunction[one])];
  const list =
    about.length === 0 || why === 'too-few-days' ? '' : `: ${about.join(', ')}${jobs.length > 3 ? ' …' : ''}`;
  return `The jobs of phase ${phase.phase} have no order, for ${whyWords[why]}${list}.`;
};

/** More jobs than these point at nothing. */
const mostNamed = 4;

/** The jobs of a phase have no order by day. */
export const noOrder = phaseRule({
  id: 'work/no-order',
  level: 'fault',
  title: 'The jobs of a phase have no order.',
  sources: ['choice-work-rules'],
  find: (input) => {
    const { stuck, phase } = input.phase;
    if (stuck === undefined || reasons.some((rule) => rule.find(input).length > 0)) return [];
    const relax = [...new Set(stuck.relax.map(relaxWords))];
    return [
      {
        about: stuck.jobs.length > mostNamed ? [] : stuck.jobs,
        apart: [phase],
        says: saysOf(input, stuck),
        cure:
          relax.length === 0
            ? 'Let go of settled days, or give it more days and hands.'
            : `Any one of these is enough: ${relax.join('; ')}.`,
      },
    ];
  },
});
