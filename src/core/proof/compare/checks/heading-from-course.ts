import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { atTime, bytesOf } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, valuesOf } from '../value-words.ts';

/** Whole degrees a heading must have passed through: one that stands still beside a course that does proves nothing. */
const fewestHeadings = 4;

/** A heading that is the course over ground, always: there is no compass behind it. */
export const headingFromCourse: Check = {
  id: 'heading-from-course',
  title: 'A heading is only the course over ground.',
  level: 'fault',
  sources: ['practice-log-headings', 'choice-proof'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book
        .sources()
        .filter(
          ({ kind, besideCourse, sameAsCourse, headings }) =>
            kind === 'heading' &&
            besideCourse >= proofLimits.comparisons.value &&
            sameAsCourse >= besideCourse * proofLimits.courseShare.value &&
            headings.size >= fewestHeadings,
        )
        .map((source) => ({
          about: aboutSources(values, [source]),
          apart: sourceKey(source),
          says: `The heading of ${sourceWords(seen, values, source)} was the course over ground in ${source.sameAsCourse} of ${source.besideCourse} values: no compass is behind it.`,
          device: sourceWords(seen, values, source),
          message: source.message,
          ...atTime(source.lastUs),
          ...bytesOf(source.message, source.bytes),
          cure: 'Switch its heading off; pilot, radar and AIS must take heading from a compass.',
        })),
    ),
};
