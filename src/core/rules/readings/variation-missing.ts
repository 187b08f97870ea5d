import type { Need } from '../../boat/boat-schema.ts';
import { metNeeds } from '../../readings/met-needs.ts';
import { stepsOf } from '../../readings/reach.ts';
import type { Reaches } from '../../readings/reaches.ts';
import type { Signal } from '../../readings/signal.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Ports that send variation to a unit, each with the message it begins in: a converter passes an empty field on as it came. */
const variationAt = (
  reaches: Reaches,
  unit: string,
): { readonly from: string; readonly message: Signal['message'] }[] => [
  ...reaches.ownOf(unit, 'variation').map(({ node, signal }) => ({ from: node.id, message: signal.message })),
  ...(reaches.of('variation').heard.get(unit) ?? []).map(({ step }) => ({
    from: step.source.id,
    message: stepsOf(step)[0]?.signal.message,
  })),
];

/** What a heading at a unit needs variation for: to be true where it comes magnetic, or to lie beside a course over ground. */
const purpose = (need: Need, needs: readonly Need[]): string | undefined => {
  if (need.reference === 'true') return 'to make true heading';
  const hasCourse = needs.some(({ at, reading }) => at === need.at && reading === 'course-speed-ground');
  return need.reference === undefined && hasCourse ? 'to lay heading beside course over ground' : undefined;
};

/** Heading comes magnetic, and the variation that goes with it is not there, or is a field that is often empty. */
export const variationMissing: Rule = {
  id: 'readings/variation-missing',
  level: 'doubt',
  title: 'Variation is missing where heading needs it, or may be empty.',
  sources: ['heading-reference', 'practice-empty-variation'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) =>
    metNeeds(reaches, ({ reading }) => reading === 'heading')
      .filter(({ ways }) => ways.every(({ signal }) => signal.reference === 'magnetic'))
      .flatMap(({ need, ways: [{ ports }] }): Observation[] => {
        const why = purpose(need, index.boat.needs);
        if (why === undefined) return [];
        const screen = unitName(index, need.at);
        const variation = variationAt(reaches, need.at);
        if (variation.some(({ message }) => message !== 'RMC' && message !== 'HDG')) return [];
        const from = [...new Set(variation.map((one) => one.from))];
        const lacks =
          from.length === 0
            ? `no variation reaches ${screen} ${why}`
            : `variation comes to ${screen} only in RMC or HDG, whose field for it is often empty, ${why}`;
        return [
          {
            about: [need.at, ports[0] ?? need.at, ...from],
            apart: need.instance === undefined ? [] : [need.instance],
            says: `${unitName(index, ports[0] ?? need.at)} gives heading as magnetic, and ${lacks}. Some take an empty field for zero, and all is off by the variation.`,
            cure: 'Bring variation from a position antenna by message 127258, or enter it on the screen and set it again each season.',
          },
        ];
      }),
};
