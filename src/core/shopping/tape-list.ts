import type { Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { TapeEntry } from '../plan-shape.ts';
import { blockedWay } from './blocked-way.ts';
import type { CutLine } from './cut-lines.ts';
import { cutLine, type OrderInput } from './line-cutter.ts';
import { type LinePart, type LineParts, lengthWith } from './line-parts.ts';
import type { LaidBus } from './trunk-as-bought.ts';

/** A line whose cable is to be bought, with the lengths it is made up of. */
export interface OpenLine {
  readonly cut: CutLine;
  readonly parts: LineParts;
}

/** What the cable of lines costs with one length as told and every other guess at its shortest or its longest. */
const costWith = (
  input: OrderInput,
  lines: readonly OpenLine[],
  told: { readonly about: string; readonly mm: number; readonly others: 'shortestMm' | 'longestMm' },
): number =>
  lines.reduce((sum, { cut: { line }, parts }) => {
    const lengthOf = (part: LinePart): number => {
      if (part.about === told.about) return told.mm;
      return part.how === 'guessed' ? part[told.others] : part.longestMm;
    };
    return sum + (cutLine(input, line, lengthWith(parts, lengthOf))?.cost ?? 0);
  }, 0);

const toTape = (input: OrderInput, open: readonly OpenLine[]): TapeEntry[] => {
  const guessed = new Map<string, LinePart>();
  for (const { parts } of open) {
    for (const part of parts.parts) if (part.how === 'guessed') guessed.set(part.about, part);
  }
  return [...guessed.values()].flatMap((part): TapeEntry[] => {
    const { about, shortestMm, longestMm } = part;
    const lines = open.filter(({ parts }) => parts.parts.some((entry) => entry.about === about));
    // The others may be long or short: a length counts by the case in which it matters more.
    const cases = (['longestMm', 'shortestMm'] as const).map((others) => ({
      short: costWith(input, lines, { about, mm: shortestMm, others }),
      long: costWith(input, lines, { about, mm: longestMm, others }),
    }));
    const [most] = cases.sort((one, other) => other.long - other.short - (one.long - one.short));
    if (most === undefined || most.long === most.short) return [];
    return [
      {
        id: `tape:${about}`,
        does: 'tape',
        about,
        lines: lines.map(({ cut }) => cut.line.id).sort(byCodeUnit),
        how: ['tape-it'],
        atStake: most.long - most.short,
        shortest: { lengthM: shortestMm / 1000, cost: most.short },
        longest: { lengthM: longestMm / 1000, cost: most.long },
      },
    ];
  });
};

/** How a way is proved before cable is bought for it; nothing where a line was pulled or the way was seen and its bore is known. */
const proofsOf = (way: Way): TapeEntry['how'] => {
  const isPipe = way.kind === 'conduit' || way.kind === 'mast' || way.kind === 'gland';
  const boreOpen = isPipe && (way.bore === undefined || way.bore.how === 'guessed');
  return [
    ...(way.known === 'assumed' ? (['pull-a-messenger'] as const) : []),
    ...(boreOpen ? (['measure-the-bore', 'count-what-is-in'] as const) : []),
  ];
};

const toProve = (input: OrderInput, open: readonly OpenLine[], laid: readonly LaidBus[]): TapeEntry[] =>
  input.index.boat.ways.flatMap((way): TapeEntry[] => {
    const how = proofsOf(way);
    const cuts = open.map(({ cut }) => cut).filter(({ line }) => line.ways.includes(way.id));
    if (how.length === 0 || cuts.length === 0) return [];
    const blocked = blockedWay(input, { way: way.id, cuts, laid });
    const costNow = cuts.reduce((sum, { cut }) => sum + (cut?.cost ?? 0), 0);
    const lost = cuts.filter(({ line }) => blocked.noOtherWay.includes(line.id));
    const lostCost = lost.reduce((sum, { cut }) => sum + (cut?.cost ?? 0), 0);
    // Cable for a line that has no other way is bought for nothing; the others are bought anew where they get longer.
    const atStake = Math.max(0, blocked.cost + lostCost - costNow) + lostCost;
    return [
      {
        id: `prove:${way.id}`,
        does: 'prove',
        about: way.id,
        lines: cuts.map(({ line }) => line.id),
        how,
        atStake,
        blocked,
      },
    ];
  });

/**
 * The lengths to tape and the ways to prove that could still change the order, those with most money at stake first. A guess
 * that changes nothing is left out.
 */
export const tapeList = (input: OrderInput, open: readonly OpenLine[], laid: readonly LaidBus[]): TapeEntry[] =>
  [...toTape(input, open), ...toProve(input, open, laid)].sort(
    (one, other) => other.atStake - one.atStake || byCodeUnit(one.id, other.id),
  );
