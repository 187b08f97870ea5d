import type { Source } from './source.ts';

/** Sources of the jobs of a refit: their steps, tools, shares of hours, waits, and what is at hand meanwhile. */
export const workSources = {
  'practice-work-order': {
    standing: 'common practice',
    text: 'The order of a refit: survey, label before unplugging, save old settings; old cable out and dead; a bench build; then slices that each end in a working boat: power, backbone, fixed sensors, VHF and AIS, displays, pilot, radar; nothing updated at sea; dock, then sea.',
  },
  'choice-job-shares': {
    standing: 'project choice',
    text: 'How the planning hours of one task are shared among the jobs it is done in. Nothing printed was found; the shares of a task add up to the whole, so that all jobs together take the hours of the quote.',
  },
  'choice-job-hours': {
    standing: 'project choice',
    text: 'Hours of what a quote leaves out: letters to offices, a lift out and in, a mast down and up, a temporary feed. Each is to be set to what the yard says.',
  },
  'memory-cure-times': {
    standing: 'from memory',
    text: 'How long a one-part sealant cures in mild weather before it meets rain, and before it lies under water; the tube decides, and cold or dry air makes it longer.',
  },
  'practice-watch-for-water': {
    standing: 'common practice',
    text: 'A new fitting below the waterline is looked at when she is lowered, and again after 24 hours afloat.',
  },
  'practice-job-steps': {
    standing: 'common practice',
    text: 'What is done within each job, in order; trade habit, no standard found.',
  },
  'practice-job-tools': {
    standing: 'common practice',
    text: 'What is brought to each kind of job; trade habit.',
  },
  'practice-leaving-kit': {
    standing: 'common practice',
    text: 'Before a set leaves the boat its waypoints are saved, its accounts unlinked, and home, ship’s number and call sign wiped; a number that was typed in once is taken out by the maker or an authorised dealer only. It is kept until the sea trial has passed.',
  },
  'practice-drive-check': {
    standing: 'common practice',
    text: 'After work on a steering drive, before she leaves the berth: hard over both ways by hand, the stops of the gear reached before the limits of the pilot, disengaged at every helm.',
  },
  'practice-fallbacks': {
    standing: 'common practice',
    text: 'What stands in for an essential function while it is out of use, on a small boat at a berth or in sheltered water.',
  },
  'choice-watched-functions': {
    standing: 'project choice',
    text: 'Which functions are watched through the work, what counts as a way of each, and that a pump and its alarm may never be dark afloat. A handheld or a steering compass is a fallback and no way.',
  },
  'choice-dark-limit': {
    standing: 'project choice',
    text: 'How long an essential function may be dark while she lies afloat and must be able to move before it is told as a fault: three days, a weekend and a day beside it. A pump and its alarm have no such time.',
  },
  'choice-work-rules': {
    standing: 'project choice',
    text: 'Days that a person settled are held against what comes first by the plan, and against the days the calendar has.',
  },
} as const satisfies Record<string, Source>;
