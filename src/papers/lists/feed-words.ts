import { fuseMargin } from '../../core/facts/fuses.ts';
import type { FeedEntry } from '../../core/plan-shape.ts';
import { printPct } from './print-figure.ts';
import { printAmps, printLost, printVolts, printWire } from './print-power.ts';

/** What a sentence about a feed needs beside the feed: the fuse its maker asks for, and the kind of its circuit in words. */
export interface FeedSays {
  readonly makerA?: number | undefined;
  /** "breaker", "slow breaker", "fuse", "live fuse" */
  readonly guard: string;
  /** whether it feeds the trunk of a bus */
  readonly isBus: boolean;
}

const decidedWords = {
  drop: 'the volts it may lose',
  ampacity: 'the current it must carry',
  'least-size': 'the least size allowed',
} as const;

const whyNotWords: Readonly<Record<NonNullable<FeedEntry['whyNot']>, string>> = {
  drop: 'No wire keeps it within that. Shorten the way, feed it from a nearer panel, or raise the volts at the panel.',
  ampacity: 'No wire of the table carries that current laid like this. Part the load, or lead it out of the bundle.',
  insulation: 'The table has no wire of this insulation for an engine space. Lead it another way.',
  'no-rating': 'No fuse is made that fits both the load and what its maker asks for. Ask the maker.',
  maker: 'It draws more for long than the fuse its maker states. Check both on its sheet.',
  conductor: 'The fuse it needs is more than the wire carries. Take a thicker wire.',
};

const allowedWords = ({ allowedBy, allowedV, leastV }: FeedEntry): string =>
  allowedBy === 'percent' || leastV === undefined
    ? `It may lose ${printVolts(allowedV)}.`
    : `It may lose ${printVolts(allowedV)}: with more lost it would have less than the ${Number(leastV.toFixed(2))} V it needs.`;

const askedWords = ({ asked, decidedBy, areaMm2, awg }: FeedEntry): string[] => {
  if (asked === undefined || decidedBy === undefined || areaMm2 === undefined) return [];
  const least = asked.least === undefined ? '' : ` and the least size allowed is ${asked.least} mm²`;
  return [
    `That asks for ${asked.drop} mm²; the current, its fuse counted, for ${asked.ampacity} mm²${least}. So it is ${printWire({ areaMm2, awg })}, for ${decidedWords[decidedBy]}.`,
  ];
};

const standingWords = {
  aboard: 'The cable that lies aboard stays',
  settled: 'You settled its wire',
  'bus-cable': 'The power lead of the backbone is as its cable is made',
} as const;

const wireWords = (feed: FeedEntry): string[] => {
  const { wire, areaMm2, awg } = feed;
  if (wire === undefined) return [allowedWords(feed)];
  if (wire === 'picked') return [allowedWords(feed), ...askedWords(feed)];
  if (areaMm2 === undefined) {
    return [
      'It lies aboard, and nobody has said how thick it is: read its jacket or measure the copper, and enter it.',
    ];
  }
  return [`${standingWords[wire]}: ${printWire({ areaMm2, awg })}.`, allowedWords(feed)];
};

const dropWords = ({ loadA, lengthM, dropV, dropPct = 0, realDropV, realDropPct = 0 }: FeedEntry): string[] =>
  dropV === undefined || realDropV === undefined
    ? []
    : [
        `${printAmps(loadA)} over ${lengthM.toFixed(2)} m and back lose ${printLost({ lostV: dropV, lostPct: dropPct })} by the published rule, ${printLost({ lostV: realDropV, lostPct: realDropPct })} in the cable itself, warm from its work.`,
      ];

const layingWords = ({ engineSpace, carrying, ampacityA }: FeedEntry): string[] => {
  const hot = [
    ...(engineSpace ? ['in an engine space'] : []),
    ...(carrying > 2 ? [`beside others, ${carrying} conductors under load together`] : []),
  ];
  return ampacityA === undefined || hot.length === 0
    ? []
    : [`Laid ${hot.join(' and ')}, it carries ${printAmps(ampacityA)}.`];
};

const boundsWords = ({ loadA, ampacityA }: FeedEntry, { makerA, isBus }: FeedSays): string => {
  const most = ampacityA === undefined || isBus ? '' : ` and at most ${printAmps(ampacityA)}, what the wire carries`;
  const maker = makerA === undefined ? '' : `; its maker asks for ${printAmps(makerA)}`;
  return `It must be at least ${fuseMargin.value} × the ${printAmps(loadA)} it draws${most}${maker}.`;
};

const fuseWords = (feed: FeedEntry, says: FeedSays): string[] => {
  const { fuseA, fuseBy, fuseSlow, circuit, circuitA } = feed;
  if (fuseA === undefined) return [];
  if (fuseBy !== 'in-line') {
    return [`The ${printAmps(fuseA)} ${says.guard} ${circuit} guards it. ${boundsWords(feed, says)}`];
  }
  const why = says.isBus ? 'its cable bears less' : 'its maker asks for less';
  return [
    `A ${fuseSlow === true ? 'slow ' : ''}fuse of its own, ${printAmps(fuseA)}, where it leaves the panel: circuit ${circuit} has ${printAmps(circuitA)}, and ${why}. ${boundsWords(feed, says)}`,
  ];
};

const voltsWords = ({ atEndV, leastV, lostPct }: FeedEntry): string[] =>
  atEndV === undefined
    ? []
    : [
        `With the bank at its lowest and everything drawing, ${printVolts(atEndV)} arrive${leastV === undefined ? '' : `; it needs ${Number(leastV.toFixed(2))} V`}.${lostPct === undefined ? '' : ` On the whole way from the bank ${printPct(lostPct)} are lost.`}`,
      ];

/**
 * Why a feed has this wire and this fuse, in sentences: what may be lost, what drop, current and least size ask for, what
 * is lost by the rule and in the cable, the bounds of its fuse, and the volts that arrive.
 */
export const feedWords = (feed: FeedEntry, says: FeedSays): string[] => [
  ...wireWords(feed),
  ...dropWords(feed),
  ...layingWords(feed),
  ...fuseWords(feed, says),
  ...voltsWords(feed),
  ...(feed.whyNot === undefined ? [] : [whyNotWords[feed.whyNot]]),
];
