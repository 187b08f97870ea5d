import type { EnergyDay } from '../../plan-shape.ts';
import type { LaidInput, Rule } from '../rule.ts';
import { dayWords, lasting } from './day-words.ts';

type DayUnit = EnergyDay['byKit'][number];

/** The unit that takes more than half of a day, which there is one of at the most. */
const greatest = (day: EnergyDay): DayUnit | undefined =>
  day.byKit.find(({ after }) => after !== undefined && after.wh > day.whPerDayAfter / 2);

const terminalWords =
  ' A satellite internet terminal is often the largest draw of a boat, and takes it as long as it is on, used or not.';

const daysOf = (input: LaidInput, days: readonly EnergyDay[]): string =>
  days.map((day) => dayWords(input.index.boat, day)).join(', ');

/** Where one unit takes more than all others together, its switch is worth more than any other saving. */
export const oneUnitTakesMost: Rule = {
  id: 'energy/one-unit-takes-most',
  level: 'advice',
  title: 'One unit takes more of a day than everything else together.',
  sources: ['practice-duty', 'practice-loads', 'choice-day-duty'],
  check: (input) => {
    const byUnit = new Map<string, { day: EnergyDay; unit: DayUnit }[]>();
    // alongside the charger carries it, and little else runs
    for (const day of input.plan.energy.filter(({ when }) => when !== 'alongside')) {
      const unit = greatest(day);
      if (unit !== undefined) byUnit.set(unit.kit, [...(byUnit.get(unit.kit) ?? []), { day, unit }]);
    }
    return [...byUnit].flatMap(([kit, found]) => {
      const [first] = found;
      if (first?.unit.after === undefined) return [];
      const { day, unit } = first;
      const { wh, hours } = first.unit.after;
      const name = input.index.kit.get(kit)?.name ?? kit;
      const saves = unit.savesH === undefined ? '' : ` Without it the bank lasts ${lasting(unit.savesH)} longer.`;
      return [
        {
          about: [kit],
          says: `${name} takes ${wh.toFixed(0)} of the ${day.whPerDayAfter.toFixed(0)} Wh of ${daysOf(
            input,
            found.map((entry) => entry.day),
          )}.${unit.internet === true ? terminalWords : ''}${saves}`,
          measured: { value: (100 * wh) / day.whPerDayAfter, unit: '% of the day' },
          cure: `Give it a switch of its own within reach, and say in \`days\` how many hours it really runs: ${hours.toFixed(1)} are reckoned with.`,
        },
      ];
    });
  },
};
