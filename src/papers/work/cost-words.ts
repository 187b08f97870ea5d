import type { OrderCost, PhaseWork, WorkOrder } from '../../core/work-shape.ts';
import { printCount } from '../lists/print-figure.ts';
import { dayOfPhase, hoursWords } from './day-words.ts';

/** How far an order is known to be from the best. */
const boundWords = ({ status, cost, bound }: WorkOrder): string => {
  const isBest = bound.darkH >= cost.darkH - 1e-6;
  switch (status) {
    case 'proven':
      return 'proven: no order has fewer, and of those with as few none ends sooner';
    case 'quick':
      return 'a first order, made in haste; a better one is looked for';
    case 'gap':
    case 'stopped':
      return isBest
        ? 'no order has fewer; whether one ends sooner is not proven'
        : `no order has fewer than ${hoursWords(bound.darkH)}${status === 'stopped' ? '; the search was stopped' : ''}`;
  }
};

const darkWords = (hoursH: number): string =>
  hoursH <= 0 ? 'nothing goes dark when it matters' : `${hoursWords(hoursH)} dark when it matters`;

/** What one order costs, in a few words. */
export const costWords = (phase: Pick<PhaseWork, 'days'>, { darkH, lastDay, ascents }: OrderCost): string =>
  [
    darkWords(darkH),
    `done ${dayOfPhase(phase, lastDay)}`,
    ...(ascents === 0 ? [] : [printCount(ascents, 'ascent')]),
  ].join(', ');

/** What the order found comes to, how sure that is, and what doing the same jobs one after another would come to. */
export const orderSays = (phase: PhaseWork): string[] => {
  const { order } = phase;
  if (order === undefined) return [];
  const { cost, plain } = order;
  const saved = plain === undefined ? 0 : plain.darkH - cost.darkH;
  const beside =
    plain === undefined
      ? []
      : [
          `One after another as listed: ${costWords(phase, plain)}${saved > 0.05 ? `; this order keeps ${hoursWords(saved)} lit that would be dark` : ''}.`,
        ];
  const says = costWords(phase, cost);
  return [`${says[0]?.toUpperCase() ?? ''}${says.slice(1)} (${boundWords(order)}).`, ...beside];
};
