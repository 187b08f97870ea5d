import { failureWords } from '../../blackouts/failure-words.ts';
import type { Failure, FailureKind, SinglePoint, VitalEntry } from '../../blackouts-shape.ts';
import { splitDotted } from '../../boat/ids.ts';
import { lastPhase } from '../../boat/phase.ts';
import { cheapReserve } from '../../facts/fallback-kit.ts';
import type { Observation, Rule, RuleInput } from '../rule.ts';

/** Pieces that fail in an ordinary year; a bank, a main panel or a whole way cut takes most of a boat whatever is done. */
const small: ReadonlySet<FailureKind> = new Set(['converter', 'fuse', 'unit', 'tee', 'short', 'line']);

/** Failures that are named; the others stand in the table. */
const named = 3;

const goneWords = {
  depth: 'depth goes off every screen',
  heading: 'heading goes off every screen',
  position: 'position goes off every screen',
  radio: 'nobody aboard can talk to anyone',
} as const;

const isCheap = ({ cures }: VitalEntry, { cure }: SinglePoint): boolean => {
  const cost = cure === undefined ? undefined : cures[cure]?.cost;
  return cost !== undefined && cost <= cheapReserve.value;
};

/** The points there is something to say of: the crew is left with nothing, or the cure is cheap. The last radio counts whatever takes it. */
const tellingOf = (vital: VitalEntry): SinglePoint[] =>
  vital.points.filter(
    (point) =>
      point.perhaps === undefined &&
      (vital.of === 'radio' || small.has(point.how)) &&
      (vital.leftWith.length === 0 || isCheap(vital, point)),
  );

/** What of a failure has an id aboard. */
const aboutOf = ({ index }: RuleInput, { fails, how }: Failure): string => {
  if (how === 'fuse') return splitDotted(fails).part;
  const [kit] = fails.split(/[:~/.]/).filter((part) => index.kit.has(part));
  return kit ?? fails;
};

const observe = (input: RuleInput, vital: VitalEntry): Observation[] => {
  const points = tellingOf(vital);
  const [first] = points;
  if (first === undefined) return [];
  const words = points.slice(0, named).map((point) => failureWords(input.index, point));
  const more = points.length > named ? ` or ${points.length - named} more` : '';
  const cured = points.find(({ cure }) => cure !== undefined)?.cure;
  const cure = cured === undefined ? undefined : vital.cures[cured];
  return [
    {
      about: [aboutOf(input, first)],
      apart: [vital.of],
      says: `With one thing out (${words.join('; ')}${more}) ${goneWords[vital.of]}. At hand then: ${vital.carry}.`,
      measured: { value: points.length, unit: 'single points' },
      ...(cure === undefined ? {} : { cure: cure.says, cures: [cure] }),
    },
  ];
};

/** One small piece must not take the last depth, heading or position, nor anything the last radio, where that is cheaply helped. */
export const oneFailureTakesTheLast: Rule = {
  id: 'blackouts/one-failure-takes-the-last',
  level: 'advice',
  title: 'One failure takes the last of depth, heading, position or radio.',
  sources: ['practice-fallback-kit', 'choice-cheap-reserve'],
  // on the way there the table tells it; what is bought is chosen for the boat as she is when all is done
  looksAt: 'whole-plan',
  check: (input) =>
    input.plan.phase < lastPhase(input.index.boat) ? [] : input.plan.vitals.flatMap((vital) => observe(input, vital)),
};
