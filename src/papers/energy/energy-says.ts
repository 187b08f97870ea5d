import type { Boat } from '../../core/boat/boat-schema.ts';
import { satelliteTerminalW } from '../../core/facts/day-duty.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { ampHours } from '../../core/rules/energy/day-words.ts';
import { wattHours } from './day-name.ts';

const namesOf = (boat: Boat, kit: readonly string[]): string =>
  kit.map((id) => boat.kit.find((unit) => unit.id === id)?.name ?? id).join(', ');

/** What a satellite terminal aboard takes of a day at anchor, and what it is. */
const internetWords = (boat: Boat, plan: Pick<Plan, 'energy'>): string[] => {
  const { least, most } = satelliteTerminalW;
  const day = plan.energy.find(({ when }) => when === 'anchor');
  return (day?.byKit ?? []).flatMap(({ kit, internet, after }) =>
    internet === true && after !== undefined && day !== undefined
      ? [
          `Satellite internet (${namesOf(boat, [kit])}): left on it takes ${wattHours(after.wh)} a day, ${ampHours(after.ah)}, ${((100 * after.wh) / day.whPerDayAfter).toFixed(0)} % of a day at anchor. Such terminals draw ${least} to ${most} W for as long as they are on, used or not, up to ${wattHours(24 * most)} a day; its maker’s sheet wins. It is not fed over a standard network socket, and wants a supply, a fuse and a switch of its own.`,
        ]
      : [],
  );
};

const unknownWords = (boat: Boat, { unknownDraws }: Pick<Plan, 'unknownDraws'>): string[] => {
  const unknown = unknownDraws.filter(({ after }) => after).map(({ kit }) => kit);
  return unknown.length === 0 ? [] : [`What these draw nobody says, so they are in no sum: ${namesOf(boat, unknown)}.`];
};

/** What is to be said of the whole: the satellite terminal for what it is, and what is in no sum. */
export const energySays = (boat: Boat, plan: Pick<Plan, 'energy' | 'unknownDraws'>): string[] => [
  ...internetWords(boat, plan),
  ...unknownWords(boat, plan),
];
