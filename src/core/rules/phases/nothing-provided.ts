import { typicalPrices } from '../../facts/prices.ts';
import type { Provide } from '../../phases-shape.ts';
import type { Observation, Rule, RuleInput } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

const moneyWords = ({ index }: RuleInput, entries: readonly Provide[]): string => {
  const currency = index.boat.prices?.currency ?? typicalPrices.currency;
  const sum = (of: (entry: Provide) => number | undefined): number | undefined => {
    const known = entries.flatMap((entry) => of(entry) ?? []);
    return known.length < entries.length ? undefined : known.reduce((all, cost) => all + cost, 0);
  };
  const [now, later] = [sum((entry) => entry.now), sum((entry) => entry.later)];
  if (now === undefined || later === undefined) return '';
  return ` It costs ${(now / 100).toFixed(2)} ${currency} now, about ${(later / 100).toFixed(2)} ${currency} in parts and hours later.`;
};

/** Tees that later units want on one bus where no tee stands free. */
const teesOf = (input: RuleInput, provide: readonly Provide[]): Observation[] => {
  const { index, plan } = input;
  const tees = provide.filter(({ does }) => does === 'tee');
  return [...new Set(tees.flatMap(({ bus }) => bus ?? []))].flatMap((bus) => {
    const own = tees.filter((entry) => entry.bus === bus);
    const count = own.reduce((sum, entry) => sum + (entry.count ?? 1), 0);
    const places = [...new Set(own.map(({ at }) => index.places.get(at)?.name ?? at))];
    const laid = plan.buses.find(({ id }) => id === bus);
    const says = `Lay the trunk of ${busName(index, bus)} from the start as it will be in the end, each later tee capped.`;
    const pin = laid && { edit: 'pin-layout', params: { bus, grade: laid.grade, walk: laid.walk, state: 'fixed' } };
    return [
      {
        about: [bus],
        says: `${count === 1 ? 'One tee' : `${count} tees`} of later units will stand on ${busName(index, bus)} where none is left free before: at ${places.join('; ')}. The trunk would be opened again for each.`,
        cure: `${says}${moneyWords(input, own)}`,
        ...(pin === undefined ? {} : { cures: [{ says, edits: [pin] }] }),
      },
    ];
  });
};

const wayWords = ({ index }: RuleInput, id: string): string => {
  const [one = '', other = ''] = index.ways.get(id)?.ends ?? [];
  return `${index.places.get(one)?.name ?? one} to ${index.places.get(other)?.name ?? other}`;
};

const lineWords = ({ index, plan }: RuleInput, id: string): string => {
  const line = plan.lines.find((entry) => entry.id === id);
  const unit = [line?.from, line?.to].find((end) => index.kit.has(end?.split('.')[0] ?? ''));
  return unit === undefined ? id : unitName(index, unit);
};

/** Ways that are opened for hours, or are a mast, and that a later line takes. */
const waysOf = (input: RuleInput, provide: readonly Provide[]): Observation[] =>
  provide
    .filter(({ does, closed }) => does === 'messenger' && closed === true)
    .map((entry) => ({
      about: [entry.at],
      apart: [entry.until],
      says: `${entry.for.length === 1 ? 'A line' : `${entry.for.length} lines`} of phase ${entry.until} will go through the way from ${wayWords(input, entry.at)}, which is closed up again after phase ${entry.phase}: the line of ${lineWords(input, entry.for[0] ?? '')}.`,
      cure: `Leave a messenger line in it in phase ${entry.phase}, tied off at both ends and labelled; or draw the later cable now.${moneyWords(input, [entry])}`,
    }));

/** A later line or tee for which the earlier phase leaves nothing: it is opened twice. */
export const nothingProvided: Rule = {
  id: 'phases/nothing-provided',
  level: 'advice',
  title: 'A later phase opens again what an earlier one closes: no messenger line, no tee left free.',
  sources: ['choice-phases', 'practice-labour'],
  check: (input) => {
    const provide = input.plan.phases?.provide ?? [];
    return [...teesOf(input, provide), ...waysOf(input, provide)];
  },
};
