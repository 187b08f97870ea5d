import { printCount } from '../../../../papers/lists/print-figure.ts';

/** What the step Buy says round the order, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: { 'buy-tape': 'tape first', 'buy-order': 'everything to buy', 'buy-quote': 'quote' },
  goTo: (part: string) => `go to ${part}`,
  nothingToOrder:
    'There is nothing to order yet. At the step Kit put aboard what comes, and press “wire her so”: units, cable, plugs and fuses then stand here, each with its reason and its price.',
  priceToAsk: 'price to be asked',
  order: 'The order',
  orderSays: (items: number, sum: string) =>
    `${printCount(items, 'item')}, ${sum} for those that have a price. Cable covers the longest each line could be.`,
  tapeFirst: 'To tape or to prove first',
  atStake: (todo: string, sum: string) => `${todo}: ${sum} at stake`,
  nothingToTape: 'Nothing more to tape: the order is sure.',
  group: (title: string, sum: string) => `${title}, ${sum}`,
  state: { order: 'to be ordered', have: 'at hand', ordered: 'ordered', arrived: 'arrived', returned: 'sent back' },
  whereItStands: (item: string) => `Where it stands with ${item}`,
  stands: (item: string, state: string) => `${item}: ${state}.`,
  phases: 'Phases',
  phase: (phase: number, says: string) => `Phase ${phase}: ${says}`,
  becauseOfPhases: 'Bought because of the phases',
  toProvide: (count: number) => `To provide early: ${count}`,
} as const;
