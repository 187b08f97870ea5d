import { logHeadings } from '../../sources/log-headings.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** A converter takes the heading fields of a log that has no compass, and the boat points north, or where she drifts. */
export const headingFromLog: Rule = {
  id: 'converters/heading-from-log',
  level: 'doubt',
  title: 'A converter may make a heading of what a log says.',
  sources: ['practice-log-headings'],
  check: ({ index, reaches }) =>
    logHeadings(reaches.network).map(({ log, input, to }) => ({
      about: [log, input, to],
      says: `${unitName(index, log)} sends VHW and has no compass; ${unitName(index, input)} turns headings that come in there. VHW has fields for heading, and a log fills them with nothing, zero or its course: a screen or pilot then has a second heading that is none.`,
      cure: `Switch heading from VHW off in ${unitName(index, input)}, or let it use VHW for speed only.`,
    })),
};
