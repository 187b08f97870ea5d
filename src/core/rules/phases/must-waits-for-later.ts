import { splitDotted } from '../../boat/ids.ts';
import { readingName } from '../../facts/reading-words.ts';
import type { PhaseMissing } from '../../phases-shape.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import type { Observation, Rule, RuleInput } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** A must that waits, and the phase from which its screen is aboard without it. */
interface Waiting {
  readonly phase: number;
  readonly until: number;
  readonly needs: readonly PhaseMissing[];
}

/** Musts that she had before and a later phase brings again, by screen and by that phase, each from the first phase that lacks it. */
const waitingOf = ({ phases }: PlanDraft): Waiting[] => {
  const groups = new Map<string, Waiting>();
  const seen = new Set<string>();
  for (const { phase, missing } of phases?.phases ?? [])
    for (const need of missing) {
      const { must, from, at, seenBefore } = need;
      const key = `${need.reading} ${need.instance ?? ''} ${at}`;
      if (!must || !seenBefore || from === undefined || seen.has(key)) continue;
      seen.add(key);
      const group = groups.get(`${at} ${from}`) ?? { phase, until: from, needs: [] };
      groups.set(`${at} ${from}`, { ...group, needs: [...group.needs, need] });
    }
  return [...groups.values()];
};

/** The units that bring needs in a phase: those on their way in the end that come in it. */
const bringers = ({ index, plan }: RuleInput, { until, needs }: Waiting): string[] => {
  const ways = plan.readings.filter((entry) =>
    needs.some(
      ({ reading, instance, at }) => entry.reading === reading && entry.instance === instance && entry.at === at,
    ),
  );
  const units = ways.flatMap(({ by }) => by.map((port) => splitDotted(port).kit));
  return [...new Set(units)].filter((unit) => {
    const own = index.kit.get(unit);
    return own?.fate === 'comes' && own.phase === until;
  });
};

const observationOf = (input: RuleInput, waiting: Waiting): Observation[] => {
  const [first] = waiting.needs;
  if (first === undefined) return [];
  const { index } = input;
  const { phase, until, needs } = waiting;
  const units = bringers(input, waiting).map((unit) => unitName(index, unit));
  const names = [...new Set(needs.map(readingName))].join(' and ');
  const bring = units.length === 0 ? 'what brings it' : units.join(' and ');
  return [
    {
      about: [first.at],
      apart: [until],
      says: `${unitName(index, first.at)} is aboard from phase ${phase} on and must show ${names}, which she had before and which arrives again in phase ${until} only.`,
      cure: `Fit ${bring} in phase ${phase} already, or write down what serves until phase ${until}.`,
    },
  ];
};

/** A must that she had, and that the refit meets again only in a later phase: she sails a season without it. */
export const mustWaitsForLater: Rule = {
  id: 'phases/must-waits-for-later',
  level: 'doubt',
  title: 'A reading that must be seen, and was before, arrives again in a later phase only.',
  sources: ['choice-phases'],
  looksAt: 'whole-plan',
  check: (input) => waitingOf(input.plan).flatMap((waiting) => observationOf(input, waiting)),
};
