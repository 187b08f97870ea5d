import { typicalPrices } from '../../facts/prices.ts';
import type { Provide } from '../../phases-shape.ts';
import type { Cure } from '../../plan-shape.ts';
import type { Observation, Rule, RuleInput } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** How many ids a finding names, ways first: its own id grows with them. */
const mostAbout = 5;

const moneyWords = ({ index }: RuleInput, entries: readonly Provide[]): string[] => {
  const currency = index.boat.prices?.currency ?? typicalPrices.currency;
  const sum = (of: (entry: Provide) => number | undefined): number | undefined => {
    const known = entries.flatMap((entry) => of(entry) ?? []);
    return known.length < entries.length ? undefined : known.reduce((all, cost) => all + cost, 0);
  };
  const [now, later] = [sum((entry) => entry.now), sum((entry) => entry.later)];
  if (now === undefined || later === undefined) return [];
  return [
    `It costs ${(now / 100).toFixed(2)} ${currency} now, about ${(later / 100).toFixed(2)} ${currency} in parts and hours later.`,
  ];
};

const wayWords = ({ index }: RuleInput, id: string): string => {
  const [one = '', other = ''] = index.ways.get(id)?.ends ?? [];
  return `from ${index.places.get(one)?.name ?? one} to ${index.places.get(other)?.name ?? other}`;
};

const teeWords = ({ index }: RuleInput, tees: readonly Provide[]): string => {
  const count = tees.reduce((sum, entry) => sum + (entry.count ?? 1), 0);
  const buses = [...new Set(tees.flatMap(({ bus }) => bus ?? []))].map((bus) => busName(index, bus));
  return `${count === 1 ? 'One tee' : `${count} tees`} on ${buses.join(' and ')} will stand where none is left free before, and the trunk is opened again for each.`;
};

/** The trunks of these tees laid from the start as they will be in the end. */
const pinCure = ({ index, plan }: RuleInput, tees: readonly Provide[]): Cure[] => {
  const laid = plan.buses.filter(({ id }) => tees.some(({ bus }) => bus === id));
  if (laid.length === 0) return [];
  return [
    {
      says: `Lay the trunk of ${laid.map(({ id }) => busName(index, id)).join(' and of ')} from the start as it will be in the end, each later tee capped.`,
      edits: laid.map(({ id, grade, walk }) => ({
        edit: 'pin-layout',
        params: { bus: id, grade, walk, state: 'fixed' },
      })),
    },
  ];
};

const observationOf = (input: RuleInput, until: number, own: readonly Provide[]): Observation => {
  const [ways, tees] = [own.filter(({ does }) => does === 'messenger'), own.filter(({ does }) => does === 'tee')];
  const buses = new Set(tees.flatMap(({ bus }) => bus ?? []));
  const [cures, closed] = [pinCure(input, tees), ways.map(({ at }) => wayWords(input, at)).join('; ')];
  const way = ways.length === 1 ? 'the way' : 'ways';
  const advice = [
    ...(ways.length === 0 ? [] : ['Leave a messenger line in each closed way, tied off at both ends and labelled.']),
    ...cures.map(({ says }) => says),
    ...moneyWords(input, own),
  ];
  return {
    about: [...ways.map(({ at }) => at), ...buses].slice(0, mostAbout),
    apart: [until],
    says: [
      ...(ways.length === 0
        ? []
        : [`Lines of phase ${until} will go through ${way} ${closed}, closed up again after an earlier phase.`]),
      ...(tees.length === 0 ? [] : [teeWords(input, tees)]),
    ].join(' '),
    cure: advice.join(' '),
    ...(cures.length === 0 ? {} : { cures }),
  };
};

/** A later line or tee for which the earlier phases leave nothing: something is opened twice. */
export const nothingProvided: Rule = {
  id: 'phases/nothing-provided',
  level: 'advice',
  title: 'A later phase opens again what an earlier one closes: no messenger line, no tee left free.',
  sources: ['choice-phases', 'practice-labour'],
  looksAt: 'whole-plan',
  check: (input) => {
    const missing = (input.plan.phases?.provide ?? []).filter(
      ({ does, closed }) => does === 'tee' || (does === 'messenger' && closed === true),
    );
    const phases = [...new Set(missing.map(({ until }) => until))];
    return phases.map((until) =>
      observationOf(
        input,
        until,
        missing.filter((entry) => entry.until === until),
      ),
    );
  },
};
