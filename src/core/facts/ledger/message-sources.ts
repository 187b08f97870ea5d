import type { Source } from './source.ts';

/** Sources of what a source plan rests on: which sender counts, which sentences to use, which numbers to give. */
export const messageSources = {
  'choice-source-order': {
    standing: 'project choice',
    text: 'Of several sources the one made to measure before one built into something else, then the reference and the offset as wanted, the higher rate, fewer converters, the better sheet, the lower number, the shorter way. Screens choose by sender or take the lowest number.',
  },
  'practice-satellite-sentences': {
    standing: 'common practice',
    text: 'GSV comes in sets of several sentences of up to 70 characters each; with GSA and GBS it takes a good part of a 4800 baud line, and a plotter or radio that is given a position needs none of them.',
  },
  'practice-engine-numbers': {
    standing: 'common practice',
    text: 'Of two engines port is number 0 and starboard number 1; displays label them so. No standard was read.',
  },
  'practice-pilot-sentences': {
    standing: 'common practice',
    text: 'A pilot on NMEA 0183 wants APB and RMB both, and variation; with one of them missing it alarms, or does not follow.',
  },
  'practice-log-headings': {
    standing: 'common practice',
    text: 'VHW has fields for heading; a log without a compass leaves them empty, sends nothing but zero, or fills in its course. They are not to be turned into a heading.',
  },
  'practice-empty-variation': {
    standing: 'common practice',
    text: 'Many receivers leave the variation of RMC empty, and some listeners take an empty field for zero.',
  },
} as const satisfies Record<string, Source>;
