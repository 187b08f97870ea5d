import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Charger } from '../../boat/supply.ts';
import { batteryFigures } from '../../facts/battery-figures.ts';
import type { EnergyDay } from '../../plan-shape.ts';
import { rechargeAh } from '../../power/bank-ah.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { ampHours, dayWords } from './day-words.ts';

type Given = EnergyDay['banks'][number];

/** Hours of a day in which a charger gives what it is rated for at the most. */
const chargingHours = (kind: Charger['kind'], { parts }: EnergyDay): number => {
  if (kind === 'alternator') return parts.motoring;
  return kind === 'mains' ? parts.alongside : parts.motoring + parts.alongside;
};

/** What all chargers of a bank give at the most in a day, Ah; undefined where nobody can say: sun, wind, an unknown rating. */
const mostGivenAh = (index: BoatIndex, bank: string, day: EnergyDay): number | undefined => {
  const its = (index.boat.supply.chargers ?? []).filter(({ charges }) => charges.includes(bank));
  if (its.some(({ kind, ratedA }) => kind === 'solar' || kind === 'wind' || ratedA === undefined)) return undefined;
  return its.reduce((ah, { kind, ratedA = 0 }) => ah + ratedA * chargingHours(kind, day), 0);
};

const observed = (index: BoatIndex, day: EnergyDay, given: Given): readonly Observation[] => {
  const bank = index.banks.get(given.bank);
  const givenAh = mostGivenAh(index, given.bank, day);
  if (bank === undefined || givenAh === undefined || givenAh === 0) return [];
  const { coulombic, source } = bank.chemistry === 'lifepo4' ? batteryFigures.lifepo4 : batteryFigures.lead;
  const takenAh = rechargeAh({ takenAh: given.fromBankAh, coulombicShare: coulombic });
  const neededAh = given.ah - given.fromBankAh + takenAh;
  if (neededAh <= givenAh) return [];
  return [
    {
      about: day.like === undefined ? [bank.id] : [bank.id, day.when],
      apart: [day.when],
      level: day.like === undefined ? 'doubt' : 'fault',
      says: `In ${dayWords(index.boat, day)} the bank ${bank.id} wants ${ampHours(neededAh)} put in, and its chargers give ${ampHours(givenAh)} at the most: it is never full again.`,
      measured: { value: neededAh, unit: 'Ah' },
      limit: figurePart({ value: givenAh, unit: 'Ah', source }),
      cure: 'Charge longer, fit a larger charger, or switch off what is not needed.',
    },
  ];
};

/** Even with every charger at its rating all the while, less goes in than comes out. */
export const chargedTooLittle: Rule = {
  id: 'energy/charged-too-little',
  level: 'fault',
  title: 'A day takes more than its chargers can put back.',
  sources: ['practice-battery', 'memory-battery', 'practice-duty'],
  check: ({ index, plan }) =>
    plan.energy.flatMap((day) => {
      const last = Math.max(...day.phases.map(({ phase }) => phase));
      return day.banks.filter(({ phase }) => phase === last).flatMap((given) => observed(index, day, given));
    }),
};
