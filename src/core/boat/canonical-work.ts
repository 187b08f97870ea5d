import { byCodeUnit } from './ids.ts';
import { sortedBy } from './sorted-by.ts';
import { type DaysSpan, type Work, weekdays } from './work.ts';

const words = <Word extends string>(list: readonly Word[]): Word[] => [...new Set(list)].sort(byCodeUnit);
const spans = (list: readonly DaysSpan[]): DaysSpan[] => sortedBy(list, ({ from, to }) => [from, to]);

/** The same work with its lists in order. */
export const canonicalWork = ({ starts, restDays, hands, essentials, jobs, own, leaving, ...others }: Work): Work => ({
  ...others,
  ...(others.ashore === undefined ? {} : { ashore: spans(others.ashore) }),
  ...(others.mastDown === undefined ? {} : { mastDown: spans(others.mastDown) }),
  ...(others.foul === undefined ? {} : { foul: spans(others.foul) }),
  ...(others.moves === undefined ? {} : { moves: spans(others.moves) }),
  ...(others.left === undefined ? {} : { left: spans(others.left) }),
  ...(starts === undefined ? {} : { starts: sortedBy(starts, ({ phase }) => [phase]) }),
  ...(restDays === undefined ? {} : { restDays: weekdays.filter((day) => restDays.includes(day)) }),
  ...(hands === undefined
    ? {}
    : {
        hands: sortedBy(
          hands.map(({ can, away, ...hand }) => ({
            ...hand,
            ...(can === undefined ? {} : { can: words(can) }),
            ...(away === undefined ? {} : { away: spans(away) }),
          })),
          ({ id }) => [id],
        ),
      }),
  ...(essentials === undefined
    ? {}
    : {
        essentials: sortedBy(
          essentials.map(({ on, ...one }) => ({ ...one, ...(on === undefined ? {} : { on: words(on) }) })),
          (one) => [one.function],
        ),
      }),
  ...(jobs === undefined
    ? {}
    : {
        jobs: sortedBy(
          jobs.map(({ after, ...one }) => ({ ...one, ...(after === undefined ? {} : { after: words(after) }) })),
          ({ job }) => [job],
        ),
      }),
  ...(own === undefined
    ? {}
    : {
        own: sortedBy(
          own.map(({ after, takes, ...one }) => ({
            ...one,
            ...(after === undefined ? {} : { after: words(after) }),
            ...(takes === undefined ? {} : { takes: words(takes) }),
          })),
          ({ id }) => [id],
        ),
      }),
  ...(leaving === undefined
    ? {}
    : {
        leaving: sortedBy(
          leaving.map(({ with: cables, ...one }) => ({
            ...one,
            ...(cables === undefined ? {} : { with: words(cables) }),
          })),
          ({ unit }) => [unit],
        ),
      }),
});
