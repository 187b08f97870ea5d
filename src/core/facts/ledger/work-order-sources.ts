import type { Source } from './source.ts';

/** Sources of the days of work and their order. */
export const workOrderSources = {
  'choice-work-day': {
    standing: 'project choice',
    text: 'Six hours of work a day from nine o’clock, for people who do it beside everything else; hours and rest days entered replace them.',
  },
  'choice-work-light': {
    standing: 'project choice',
    text: 'Light outside from 8 to 18 h, as in spring and autumn at middle latitudes, since no latitude is asked for; hours entered replace it.',
  },
  'choice-work-windows': {
    standing: 'project choice',
    text: 'Where jobs want her ashore or her mast down and no days are entered, as many days in a row are taken as these jobs need and one to spare, once the jobs before them can be done and their parts are there.',
  },
} as const satisfies Record<string, Source>;
