import type { Boat } from '../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { testedOf } from '../../core/proof/dock/tested.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { testRows } from './test-rows.ts';

const width = 80;

/** The tests at the dock in working order for a terminal, each with its number, what is expected, what was found, and the id by which that is written down. */
export const testsText = (boat: Boat, plan: Plan, log: BoatLog): string => {
  if (plan.tests.length === 0) return 'Nothing is to be tested.\n';
  const { total, tried, wrong } = testedOf(plan.tests, log);
  const rows = testRows(cardBoat(boat), plan.tests, log).flatMap(({ test, what, expect, result }, at) => {
    const lead = `${String(at + 1).padStart(3)} ${result === undefined ? '[ ]' : '[x]'} `;
    const under = ' '.repeat(lead.length);
    return [
      ...textLines(keepUnits(`${what}; power ${test.power}.`), { width, lead }),
      ...textLines(keepUnits(`Expected: ${expect}.`), { width, lead: under }),
      ...(result === undefined
        ? []
        : textLines(keepUnits(`Found on ${result.day}: ${result.found}.`), { width, lead: under })),
      `${under}[${test.id}]`,
    ];
  });
  return `${[`${tried} of ${printCount(total, 'test')} tried, ${wrong} wrong.`, '', ...rows].join('\n')}\n`;
};
