import { straightLineM } from '../../../core/boat/straight-line.ts';
import { readingWords } from '../../../core/facts/reading-words.ts';
import type { LineEntry } from '../../../core/plan-shape.ts';
import { reachSays } from '../../antennas/aerial-words.ts';
import { endWords } from '../../lists/end-words.ts';
import { codeOf } from '../../sheet/line-code.ts';
import type { UnitMark } from '../../sheet/unit-marks.ts';
import { type KnownBoat, labelOf, lengthText } from '../known-boat.ts';

/** Kinds of unit that send or receive through the air, beside those that are called antennas. */
const antennaKinds = new Set(['gnss', 'radar', 'satellite-terminal', 'cellular-hub', 'beacon']);

/** Kinds of unit that feel what is around them, beside those that are called sensors or compasses. */
const sensorKinds = new Set(['transducer', 'tank-sender', 'camera']);

/** Whether a unit belongs on the plan of antennas, or on that of sensors. */
export const planOf = ({ index }: KnownBoat, { kit }: UnitMark): 'antenna' | 'sensor' | undefined => {
  const kind = index.sheetOf.get(kit.id)?.kind ?? '';
  if (antennaKinds.has(kind) || kind.endsWith('-antenna')) return 'antenna';
  return sensorKinds.has(kind) || /(^|-)(sensor|compass)$/.test(kind) ? 'sensor' : undefined;
};

/** A height with its sign and its unit: "4.35 m over the water". */
export const heightText = (known: KnownBoat, { place }: UnitMark): string =>
  `${lengthText(known, Math.abs(place.zM))} ${place.zM < 0 ? 'under' : 'over'} the water`;

const unitOf = (end: string): string => end.split(/[.#]/)[0] ?? end;

/** The lines that end at a unit, its feed last. */
const linesOf = ({ plan }: KnownBoat, unit: string): LineEntry[] => {
  const own = plan.lines.filter(({ from, to }) => unitOf(from) === unit || unitOf(to) === unit);
  return [...own.filter(({ kind }) => kind !== 'feed'), ...own.filter(({ kind }) => kind === 'feed')];
};

/** "coax C09, 3.60 m, to 12 AIS". */
export const leadTexts = (known: KnownBoat, { kit }: UnitMark): string[] =>
  linesOf(known, kit.id).map((line) => {
    const far = unitOf(line.from) === kit.id ? line.to : line.from;
    const mark = known.marks.find((one) => one.kit.id === unitOf(far));
    const to = mark === undefined ? endWords(known.index, far) : `${mark.number} ${mark.label}`;
    const length = `${line.guessed ? 'about ' : ''}${lengthText(known, line.lengthM)}`;
    return `${codeOf(line.kind).words} ${labelOf(known, line.id)}, ${length}, to ${to}`;
  });

/** What a unit is the source of, and at which units: "depth at 20, 31". */
export const feedsTexts = (known: KnownBoat, { kit }: UnitMark): string[] => {
  const at = new Map<string, Set<number>>();
  for (const { reading, by, at: screen, arrives } of known.plan.readings) {
    if (!arrives || unitOf(by[0] ?? '') !== kit.id) continue;
    const number = known.marks.find((one) => one.kit.id === screen)?.number;
    if (number !== undefined) at.set(readingWords[reading], (at.get(readingWords[reading]) ?? new Set()).add(number));
  }
  return [...at].map(([words, numbers]) => `${words} at ${[...numbers].sort((a, b) => a - b).join(', ')}`);
};

/** How far an antenna reaches and what arrives at it; of a radar what it does not see stands beside its picture. */
export const siteTexts = (known: KnownBoat, { kit }: UnitMark): string[] =>
  reachSays(known.index, known.plan, kit.id, (lengthM) => lengthText(known, lengthM));

/** Straight distances from a unit to others, nearest first. */
export const distancesFrom = (
  mark: UnitMark,
  others: readonly UnitMark[],
): { readonly mark: UnitMark; readonly distanceM: number }[] =>
  others
    .filter((other) => other !== mark)
    .map((other) => ({ mark: other, distanceM: straightLineM(mark.place, other.place) }))
    .sort((a, b) => a.distanceM - b.distanceM || a.mark.number - b.mark.number);
