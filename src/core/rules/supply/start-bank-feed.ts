import type { BoatIndex } from '../../boat/boat-index.ts';
import type { LaidPlan } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

/** The units on a bank by circuits of panels, through a converter too; buses have a rule of their own. */
const unitsOn = ({ panels }: LaidPlan, bank: string): string[] =>
  panels
    .filter(({ banks }) => banks.includes(bank))
    .flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds.filter((target) => target.includes('.'))));

const onStart = (index: BoatIndex, bank: string, units: readonly string[]): Observation => ({
  about: [bank, ...aFew(units.map(unitOf))],
  says: `${someNames(units.map((port) => fedName(index, port)))} ${units.length === 1 ? 'is' : 'are'} fed from ${bank}, the bank that starts the engine. That empties what you start with, and each start pulls the volts down.`,
  cure: 'Move the circuit to a panel on the house bank.',
});

const onOneBattery = (bank: string): Observation => ({
  about: [bank],
  level: 'advice',
  says: 'One battery starts the engine and feeds the electronics. A night with them on may leave you unable to start.',
  cure: 'Fit a second battery for the house, parted by a switch, a relay or a converter; until then carry a way to start without it.',
});

const onShared = (bank: string): Observation => ({
  about: [bank],
  level: 'doubt',
  says: `The bank ${bank} starts the engine and feeds electronics too, though there are others aboard.`,
  cure: 'Leave one bank for starting alone.',
});

/** What starts the engine feeds nothing else. */
export const startBankFeed: Rule = {
  id: 'supply/start-bank-feed',
  level: 'fault',
  title: 'Electronics are fed from the bank that starts the engine.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) =>
    plan.banks.flatMap(({ bank }) => {
      const purpose = index.banks.get(bank)?.for;
      const units = unitsOn(plan, bank);
      if (purpose === 'house' || units.length === 0) return [];
      if (purpose === 'start') return [onStart(index, bank, units)];
      return [plan.banks.length === 1 ? onOneBattery(bank) : onShared(bank)];
    }),
};
