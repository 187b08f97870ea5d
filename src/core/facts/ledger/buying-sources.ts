import type { Source } from './source.ts';

/** Sources of what is bought: lengths on the shelf, prices of small parts, spares. */
export const buyingSources = {
  'practice-trunk-pieces': {
    standing: 'common practice',
    text: 'Lengths in which moulded trunk cables are commonly sold, 10 m for trunk only; the owner’s own price list replaces them.',
  },
  'choice-small-parts': {
    standing: 'project choice',
    text: 'Round prices of plugs, adapters, fuses, glands, clips and messenger line in euro, so that orders can be compared; the owner’s own price list replaces them.',
  },
  'choice-passage-hours': {
    standing: 'project choice',
    text: 'Hours to fit one plug on the spot, and to bore one hole wider and seal it.',
  },
  'choice-orders': {
    standing: 'project choice',
    text: 'What is ordered is held against what the plan needs as the boat file stands; a doubt, since only the owner knows what a part was bought for.',
  },
  'choice-isolation-parts': {
    standing: 'project choice',
    text: 'Round prices in euro of what parts metal from metal: pads and sleeves, isolators, couplers, isolated poles; only to put cures in order.',
  },
  'choice-phases': {
    standing: 'project choice',
    text: 'Each phase is bought for as a whole boat less what was bought before; the hours of a tee put in later are its share of a backbone of ten; whether a must can wait only the owner knows.',
  },
  'choice-quote-hours': {
    standing: 'project choice',
    text: 'Hours of a quote that the usual table has not: a box or sensor fitted, a unit fitted aloft; which tasks a unit or a cable counts as; a tee as its share of a backbone of ten; a way opened as the boat file has it.',
  },
  'practice-quote': {
    standing: 'common practice',
    text: 'What quotes for a boat’s electronics usually leave out and for how long they hold: trade habit, no standard found.',
  },
  'choice-spares': {
    standing: 'project choice',
    text: 'What is ordered beyond the plan so that one part that fails does not stop the work, and how much sleeve a label takes.',
  },
} as const satisfies Record<string, Source>;
