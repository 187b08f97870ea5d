import { type BoatIndex, indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { wrapLengthMm } from '../../core/facts/label-figures.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { cableOutsideMm } from '../../core/ways/cable-outside.ts';
import { type LabelSpot, labelSpots } from '../../core/ways/label-spots.ts';
import { briefBoat } from '../binder/brief-boat.ts';
import { endWords } from '../lists/end-words.ts';
import { labelOf } from '../lists/label-of.ts';
import { shortLabels } from '../sheet/short-label.ts';
import { spotSide, spotWhere } from './spot-words.ts';

/** How labels are wanted: of what day, and the address of her page where her boats are served. */
export interface LabelWish {
  readonly dateIso?: string;
  /** the address of the boat in the app, without a slash at its end: "http://192.168.1.20:4610/#/boat/gannet" */
  readonly boatAddress?: string;
}

/** One label of one cable: what is printed on it, and where it goes. */
export interface CableLabel {
  /** the id of the cable, the same on all its labels: "C07" */
  readonly id: string;
  /** the line it is on */
  readonly line: string;
  readonly spot: LabelSpot;
  /** which end, side or half it is, in few words: "end 1", "near side", "mast side" */
  readonly side: string;
  /** where it goes, in a sentence */
  readonly where: string;
  /** the far end in words, both ends between two bulkheads, the longest wording first; what has room is printed */
  readonly far: readonly string[];
  /** "fuse 10 A" on the feed of a circuit */
  readonly fuse?: string;
  /** "mast side" or "boat side", printed where a cable is parted */
  readonly half?: string;
  readonly dateIso?: string;
  /** outside diameter of its cable, and the length of a label that wraps round it */
  readonly outsideMm: number;
  readonly wrapMm: number;
  /** what its code says: the address of the page of the cable, else its id */
  readonly code: string;
  /** false where the id is only the next one in turn and not handed out yet */
  readonly isGiven: boolean;
}

/** The ends a label names: the other one, the one beyond the bulkhead, both between two of them, at a joint the one its half goes to. */
const farEnds = (spot: LabelSpot, { from, to }: LineEntry): string[] => {
  if (spot.at === 'end') return [spot.far];
  if (spot.at === 'barrier') return spot.side === 'between' ? [from, to] : [spot.side === 'near' ? to : from];
  return [spot.end];
};

/** The far end in words, the longest first: "to radar"; between two bulkheads both ends, "radar to screen". */
const farWords = (names: readonly string[][]): string[] => {
  const [first = [], second] = names;
  if (second === undefined) return first.map((name) => `to ${name}`);
  const steps = Math.max(first.length, second.length);
  const nameAt = (own: readonly string[], at: number): string => own[Math.min(at, own.length - 1)] ?? '';
  return Array.from({ length: steps }, (_, at) => `${nameAt(first, at)} to ${nameAt(second, at)}`);
};

/** Names for one end, each shorter than the one before. */
type NamesOf = (end: string) => string[];

/** A tee of a trunk in a word or two. */
const teeNames = (end: string, short: ReadonlyMap<string, string>): string[] => {
  const tee = end.split('/')[1];
  if (tee === undefined) return [];
  if (tee.startsWith('spare@')) return ['spare tee', 'tee'];
  if (tee.startsWith('end@')) return ['end of the trunk', 'end'];
  const unit = short.get(tee.split('.')[0] ?? '');
  return [...(unit === undefined ? [] : [`tee of ${unit}`]), 'tee'];
};

const namesIn = (boat: Boat, index: BoatIndex): NamesOf => {
  const brief = indexBoat(briefBoat(boat));
  const short = shortLabels(boat.kit, index.sheetOf);
  return (end) => {
    const [unit = ''] = end.split(/[.#/]/);
    const plugless = index.kit.has(unit) ? [endWords(brief, unit), short.get(unit) ?? unit, unit] : [];
    const all = [endWords(index, end), endWords(brief, end), ...plugless, ...teeNames(end, short)];
    return all.filter((words, at) => all.slice(0, at).every((longer) => words.length < longer.length));
  };
};

const fuseWords = (plan: Plan, line: string): string | undefined => {
  const fuseA = plan.feeds.find((feed) => feed.line === line)?.fuseA;
  return fuseA === undefined ? undefined : `fuse ${fuseA} A`;
};

/**
 * Every label of a boat, cable after cable in the order of their ids, each cable from its first end to its second: one at each
 * end, one on each side of a bulkhead or deck, one on each half where the cables of a mast are parted.
 *
 * @example cableLabels(boat, plan, {}).filter(({ id }) => id === 'C07').length // 2
 */
export const cableLabels = (boat: Boat, plan: Plan, { dateIso, boatAddress }: LabelWish = {}): CableLabel[] => {
  const index = indexBoat(boat);
  const namesOf = namesIn(boat, index);
  const ofLine = (line: LineEntry): CableLabel[] => {
    const id = labelOf(line);
    const outsideMm = cableOutsideMm(index, line, plan.buses);
    const fuse = fuseWords(plan, line.id);
    const spots = labelSpots(index, line, plan.masts);
    return spots.map((spot, at) => ({
      id,
      line: line.id,
      spot,
      side: spotSide(spot, at === 0),
      where: spotWhere(index, spot),
      far: farWords(farEnds(spot, line).map(namesOf)),
      ...(fuse === undefined ? {} : { fuse }),
      ...(spot.at === 'break' ? { half: `${spot.half} side` } : {}),
      ...(dateIso === undefined ? {} : { dateIso }),
      outsideMm,
      wrapMm: wrapLengthMm({ outsideMm }),
      code: boatAddress === undefined ? id : `${boatAddress}/cable/${id}`,
      isGiven: line.label !== undefined,
    }));
  };
  const inOrder = plan.lines.toSorted((one, other) => byLabel(labelOf(one), labelOf(other)));
  return inOrder.flatMap(ofLine);
};

/** Labels in the order of their numbers, not of their letters: C9 before C10. */
const byLabel = (one: string, other: string): number => {
  const [a, b] = [one, other].map((label) => /^(\D*)(\d*)(.*)$/.exec(label) ?? []);
  const pairs = [
    [a?.[1] ?? '', b?.[1] ?? ''],
    [Number(a?.[2] ?? 0), Number(b?.[2] ?? 0)],
    [a?.[3] ?? '', b?.[3] ?? ''],
  ] as const;
  for (const [first, second] of pairs) {
    if (first < second) return -1;
    if (first > second) return 1;
  }
  return 0;
};
