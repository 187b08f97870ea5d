import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { LeadChoice } from '../../core/leading/lead-choices.ts';
import type { LedLine } from '../../core/led-line.ts';
import type { Finding, LineEntry } from '../../core/plan-shape.ts';
import { lineLength, lineName } from '../cards/line-words.ts';
import { type EndNames, endWords } from './end-words.ts';
import { printMoney } from './order-words.ts';
import { printCount } from './print-figure.ts';

type Names = EndNames & Pick<BoatIndex, 'ways'>;

/** Lengths nearer than this are one length when they are written. */
const writtenM = 0.005;

/** A line with both its ends: "drop C07 from Navigation bus to GNSS (bus)". */
export const lineFromTo = (names: EndNames, line: LineEntry): string =>
  `${lineName(line)} from ${endWords(names, line.from)} to ${endWords(names, line.to)}`;

/** What a line is led through: a place, or a way by both its ends. */
export const throughWords = (names: Names, { through }: Pick<LeadChoice, 'through'>): string => {
  const placeOf = (id: string): string => names.places.get(id)?.name ?? id;
  if ('place' in through) return placeOf(through.place);
  const ends = names.ways.get(through.way)?.ends ?? [];
  return `the way from ${ends.map(placeOf).join(' to ')}`;
};

const lengthOf = ({ lengthM, longestM }: Pick<LeadChoice, 'lengthM' | 'longestM'>): string =>
  lineLength({ lengthM, longestM, guessed: longestM - lengthM >= writtenM });

/** A route through somewhere with its length and its doubt, beside the length as the line is led now. */
export const leadWords = (names: Names, line: LineEntry, choice: LeadChoice): string => {
  const moreM = choice.lengthM - line.lengthM;
  const more =
    Math.abs(moreM) < writtenM
      ? 'as long as now'
      : `${Math.abs(moreM).toFixed(2)} m ${moreM > 0 ? 'longer' : 'shorter'} than now`;
  return `Through ${throughWords(names, choice)}: ${lengthOf(choice)}, ${more}.`;
};

/** What a led line comes to: its price against today’s, and in a sentence each what breaks and what is put right. */
export interface LedWords {
  readonly price: string;
  readonly breaks: readonly string[];
  readonly mends: readonly string[];
}

/** Rules name a line by its id, which nobody reads on a drawing. */
const saysOf = (line: LineEntry, { says }: Finding): string => says.replaceAll(line.id, `the ${lineName(line)}`);

const costWords = (costMore: number, currency: string): string =>
  costMore === 0
    ? 'The order would cost the same'
    : `The order would cost ${printMoney(Math.abs(costMore))} ${currency} ${costMore > 0 ? 'more' : 'less'}`;

/** The price of a led line and the limits it breaks, in words. */
export const ledWords = (line: LineEntry, led: LedLine, currency: string): LedWords => {
  const unpriced = led.unpricedMore > 0 ? `, with ${printCount(led.unpricedMore, 'more item')} to be priced` : '';
  const limits = led.breaks.length === 0 ? '. No limit breaks that holds now.' : ', but not within the limits:';
  return {
    price: `${costWords(led.costMore, currency)}${unpriced}${limits}`,
    breaks: led.breaks.map((finding) => saysOf(line, finding)),
    mends: led.mends.map((finding) => saysOf(line, finding)),
  };
};
