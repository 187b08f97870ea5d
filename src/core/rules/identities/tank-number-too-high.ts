import { limitOf } from '../../boat/limit-of.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingName } from '../../facts/reading-words.ts';
import type { Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';

const tanks: ReadonlySet<ReadingId> = new Set(['fuel-level', 'water-level']);

/** Some displays show tanks 0 to 5 only. */
export const tankNumberTooHigh: Rule = {
  id: 'identities/tank-number-too-high',
  level: 'advice',
  title: 'A tank has a number that some displays refuse.',
  sources: ['practice-tank-numbers'],
  check: ({ index: { boat } }) => {
    const limit = limitOf(boat, 'tank-number-most');
    return boat.kit
      .filter(({ fate }) => fate !== 'goes')
      .flatMap((unit) =>
        (unit.instances ?? [])
          .filter(({ reading, instance }) => tanks.has(reading) && instance > limit.value)
          .map(({ reading, instance }) => ({
            about: [unit.id],
            apart: [reading, instance],
            says: `${unit.name} sends ${readingName({ reading, instance })}; some displays show tanks 0 to ${limit.value} only.`,
            measured: { value: instance, unit: 'number' },
            limit: limitPart(limit),
            cure: 'Give it a lower number, if one is free.',
          })),
      );
  },
};
