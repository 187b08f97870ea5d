import type { Plan, TapeEntry } from '../../core/plan-shape.ts';
import { inUnits, type LengthUnits } from './in-units.ts';
import { type OrderNames, printMoney, wayWords, whatFor } from './order-words.ts';

/** One thing to tape or to prove before buying, in words. */
export interface TapeRow {
  readonly id: string;
  /** what to do: "Tape the way from locker to helm" */
  readonly todo: string;
  /** what the answer does to the order */
  readonly answer: string;
  /** the lines it is about, in words */
  readonly lines: readonly string[];
  readonly lights: readonly string[];
  /** hundredths of the currency */
  readonly atStake: number;
}

const howWords: Readonly<Record<TapeEntry['how'][number], string>> = {
  'tape-it': 'tape it',
  'pull-a-messenger': 'pull a messenger line through',
  'measure-the-bore': 'measure its bore',
  'count-what-is-in': 'count what is in it',
};

const todoOf = (names: OrderNames, { does, about, how }: TapeEntry): string => {
  const what = names.ways.has(about) ? wayWords(names, about) : `tail of ${names.kit.get(about)?.name ?? about}`;
  if (does === 'tape') return `Tape the ${what}`;
  const steps = how.map((step) => howWords[step]);
  return `Prove the ${what}: ${steps.join(', ')}`;
};

const metres = (valueM: number): string => `${valueM.toFixed(2)} m`;

const blockedWords = (
  nameOf: (id: string) => string,
  { blocked, all }: { readonly blocked: NonNullable<TapeEntry['blocked']>; readonly all: number },
  currency: string,
): string => {
  const { cost, noOtherWay, breaks } = blocked;
  const round = cost === 0 ? [] : [`cable for what can be led round it costs ${printMoney(cost)} ${currency}`];
  const whom = noOtherWay.length === all ? 'any of its lines' : noOtherWay.map(nameOf).join('; ');
  const lost = noOtherWay.length === 0 ? [] : [`no other way leads there for ${whom}`];
  const broken = breaks.length === 0 ? [] : [`the bus has to be laid out anew: ${breaks.join(' ')}`];
  const words = [...round, ...lost, ...broken].join('; ');
  return words === '' ? 'Shut, it changes nothing.' : `Shut: ${words.replace(/\.$/, '')}.`;
};

const answerOf = (nameOf: (id: string) => string, entry: TapeEntry, currency: string): string => {
  const { shortest, longest, blocked } = entry;
  if (blocked !== undefined) return blockedWords(nameOf, { blocked, all: entry.lines.length }, currency);
  if (shortest === undefined || longest === undefined) return '';
  return `At ${metres(shortest.lengthM)} cable for its lines costs ${printMoney(shortest.cost)} ${currency}, at ${metres(longest.lengthM)} ${printMoney(longest.cost)}.`;
};

/** The tape list in words, most money at stake first, lengths in the units asked. */
export const tapeRows = (
  names: OrderNames,
  plan: Pick<Plan, 'tape' | 'lines'>,
  { currency, units = 'metres' }: { readonly currency: string; readonly units?: LengthUnits },
): TapeRow[] => {
  const nameOf = whatFor(names, plan);
  return plan.tape.map((entry) => ({
    id: entry.id,
    todo: todoOf(names, entry),
    answer: inUnits(answerOf(nameOf, entry, currency), units),
    lines: entry.lines.map(nameOf),
    lights: [entry.about, ...entry.lines],
    atStake: entry.atStake,
  }));
};
