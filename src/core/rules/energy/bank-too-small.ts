import { limitOf } from '../../boat/limit-of.ts';
import type { Bank } from '../../boat/supply.ts';
import { bankFigures } from '../../facts/day-duty.ts';
import type { EnergyDay, LaidPlan } from '../../plan-shape.ts';
import { bankAh } from '../../power/bank-ah.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { ampHours, dayWords, lasting } from './day-words.ts';

type Given = EnergyDay['banks'][number];

/** Days after which a bank is charged again: one at anchor, and the person's own, which say so themselves. */
const betweenCharges = ({ energy }: LaidPlan): readonly EnergyDay[] =>
  energy.filter(({ when, like }) => when === 'anchor' || like !== undefined);

/** The largest draws on the bank that day, as somebody who wants to switch off needs them. */
const largest = ({ index }: LaidInput, day: EnergyDay, bank: string): string =>
  day.byKit
    .flatMap(({ kit, after }) => (after?.bank === bank ? [{ kit, ah: after.ah }] : []))
    .sort((one, other) => other.ah - one.ah)
    .slice(0, 2)
    .map(({ kit, ah }) => `${index.kit.get(kit)?.name ?? kit} ${ampHours(ah)}`)
    .join(', ');

const observed = (input: LaidInput, day: EnergyDay, bank: Bank, given: Given): Observation => {
  const { boat } = input.index;
  const limit = limitOf(boat, bankFigures[bank.chemistry].usable);
  const takenAh = given.fromBankAh * day.chargedAfter;
  const neededAh = Math.max(
    bankAh({ dailyAh: given.fromBankAh, days: day.chargedAfter, usableShare: limit.value / 100 }),
    (bank.capacityAh * takenAh) / given.usableAh,
  );
  const times = day.chargedAfter === 1 ? '' : ` (${day.chargedAfter} times)`;
  return {
    about: day.like === undefined ? [bank.id] : [bank.id, day.when],
    apart: [day.when],
    level: day.like === undefined ? 'doubt' : 'fault',
    says: `In ${dayWords(boat, day)}${times} the bank ${bank.id} gives ${ampHours(takenAh)} before it is charged again, and ${ampHours(given.usableAh)} of its ${bank.capacityAh} Ah are for use; it lasts ${lasting(given.enduranceH ?? 0)}.`,
    measured: { value: (100 * takenAh) / bank.capacityAh, unit: '% of its capacity' },
    limit: limitPart({ ...limit, value: (100 * given.usableAh) / bank.capacityAh }),
    cure: `Switch off what is not needed (most goes to: ${largest(input, day, bank.id)}), charge more often, or fit at least ${ampHours(neededAh)}.`,
  };
};

/** A bank drawn below what it stands dies early, and the screens with it at the end of the night. */
export const bankTooSmall: Rule = {
  id: 'energy/bank-too-small',
  level: 'fault',
  title: 'A bank is too small for the days between two charges.',
  sources: ['practice-battery', 'memory-battery', 'practice-duty'],
  check: (input) =>
    betweenCharges(input.plan).flatMap((day) => {
      const last = Math.max(...day.phases.map(({ phase }) => phase));
      return day.banks
        .filter(({ phase, fromBankAh, usableAh }) => phase === last && fromBankAh * day.chargedAfter > usableAh)
        .flatMap((given) => {
          const bank = input.index.banks.get(given.bank);
          return bank === undefined ? [] : [observed(input, day, bank, given)];
        });
    }),
};
