import { type BlackoutEntry, type SinglePoint, type VitalEntry, type VitalId, vitalIds } from '../blackouts-shape.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { fallbackKit, talkingKinds } from '../facts/fallback-kit.ts';
import type { Effect } from './effect.ts';
import { holdsIn } from './losses.ts';
import type { NeedWays } from './need-ways.ts';
import type { WiredBoat } from './supply-graph.ts';

const aerials: ReadonlySet<string> = new Set(['antenna-tuner', 'radio-antenna']);

/** A radio talks while it has power and, where its antenna is entered, the way to that holds. */
const talks = (wired: WiredBoat, ways: NeedWays, effect: Effect, radio: string): boolean => {
  if (effect.dark.has(radio)) return false;
  const leads = ways
    .presence(radio, 'audio')
    .filter(({ units: [source = ''] }) => aerials.has(wired.index.sheetOf.get(source)?.kind ?? ''));
  return leads.length === 0 || leads.some(holdsIn(ways, effect, true));
};

/** The units aboard that can talk. */
const radiosOf = ({ index, aboard }: WiredBoat): string[] =>
  [...aboard].filter((kit) => talkingKinds.has(index.sheetOf.get(kit)?.kind ?? ''));

/** Units that stand in for a screen and need no feed: for heading the compass one steers by. */
const standIns = ({ index, aboard }: WiredBoat, of: VitalId): string[] =>
  of === 'heading' ? [...aboard].filter((kit) => index.sheetOf.get(kit)?.kind === 'steering-compass') : [];

/** One line of the table with what it does to the boat. */
export interface TableLine {
  readonly entry: BlackoutEntry;
  readonly effect: Effect;
}

const readingLost =
  (of: Exclude<VitalId, 'radio'>, screens: number) =>
  ({ entry: { loses } }: TableLine): 'sure' | 'perhaps' | false => {
    if (loses.length < screens) return false;
    const own = loses.filter(({ reading }) => reading === of);
    if (own.length < screens) return false;
    return own.every(({ perhaps }) => perhaps === undefined) ? 'sure' : 'perhaps';
  };

/** A boat with what her failures take. */
interface Failing {
  readonly wired: WiredBoat;
  readonly ways: NeedWays;
  /** readings that are met while nothing fails, with their screens */
  readonly held: readonly { readonly need: { readonly reading: string; readonly at: string } }[];
  readonly lines: readonly TableLine[];
}

/**
 * What takes one vital reading off every screen that has it, or the last radio that can talk; undefined where nothing has it.
 * Needs of other readings may be left out of what is held and of what the lines lose. Pure.
 */
export const vitalOf = (of: VitalId, { wired, ways, held, lines }: Failing): VitalEntry | undefined => {
  const needs = held.filter(({ need }) => need.reading === of);
  const at = of === 'radio' ? radiosOf(wired) : [...new Set(needs.map(({ need }) => need.at))].sort(byCodeUnit);
  if (at.length === 0) return undefined;
  const isLost =
    of === 'radio'
      ? ({ effect }: TableLine) => (at.some((radio) => talks(wired, ways, effect, radio)) ? false : ('sure' as const))
      : readingLost(of, needs.length);
  const taken = lines.flatMap((line) => {
    const lost = isLost(line);
    return lost === false ? [] : [{ line, lost }];
  });
  const points = taken.map(({ line: { entry }, lost }): SinglePoint => {
    const { fails, how } = entry;
    return { fails, how, ...(lost === 'perhaps' ? { perhaps: true } : {}) };
  });
  const dark = new Set(taken.flatMap(({ line }) => line.entry.dark));
  return {
    of,
    at,
    points,
    leftWith: standIns(wired, of).filter((kit) => !dark.has(kit)),
    carry: fallbackKit[of].says,
    cures: [],
  };
};

/**
 * What takes depth, position or heading off every screen that has it, or the last radio that can talk. A vital reading that
 * no screen has is left out. Pure.
 */
export const vitalsOf = (failing: Failing): VitalEntry[] => vitalIds.flatMap((of) => vitalOf(of, failing) ?? []);
