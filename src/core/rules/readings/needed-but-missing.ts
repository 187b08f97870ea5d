import { readingName } from '../../facts/reading-words.ts';
import type { BrokenLink, Level } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';

/** Two generations of one maker's language may well understand each other: one manual page decides. */
const levelOf = ({ broken }: BrokenLink): Level => (broken === 'generation-unknown' ? 'doubt' : 'fault');

/** A reading somebody asked for does not reach the screen that should show it; the plan says at which link it breaks. */
export const neededButMissing: Rule = {
  id: 'readings/needed-but-missing',
  level: 'fault',
  title: 'A reading that is needed does not arrive.',
  sources: ['project-readings'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.readings.flatMap(({ reading, instance, at, must, whyNot }) => {
      if (whyNot === undefined) return [];
      const [cure] = whyNot.cures;
      const screen = index.kit.get(at)?.name ?? at;
      const which = readingName({ reading, instance });
      return [
        {
          about: [at, ...[whyNot.link.from, whyNot.link.to].flatMap((port) => (port === undefined ? [] : [port]))],
          apart: [reading, ...(instance === undefined ? [] : [instance])],
          level: must ? levelOf(whyNot.link) : ('advice' as const),
          says: `${which} does not arrive at ${screen}. ${whyNot.says}`,
          ...(cure === undefined ? {} : { cure: cure.says, cures: [...whyNot.cures] }),
        },
      ];
    }),
};
