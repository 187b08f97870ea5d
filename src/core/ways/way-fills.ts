import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { cableGrades } from '../facts/cable-grades.ts';
import { cableSizes, longCoax } from '../facts/cable-sizes.ts';
import { conduitBores, conduitFill, fillVerdict } from '../facts/cable-work.ts';
import { coaxKinds } from '../facts/coax.ts';
import type { BusEntry, LineEntry, WayEntry } from '../plan-shape.ts';
import { circleRound, fillVerdictOf } from './fill-verdict.ts';

type BusGrade = Pick<BusEntry, 'id' | 'grade'>;

/** What one new cable takes of a pipe, mm; `plugMm` where a plug is moulded on it. */
export interface DrawnCable {
  readonly id: string;
  readonly outsideMm: number;
  readonly plugMm?: number;
}

/** The size of a new line: that of its grade for a bus, else that of its kind. */
export const drawnCable = (line: LineEntry, buses: readonly BusGrade[]): DrawnCable => {
  const { id, kind, longestM, coax } = line;
  if (coax !== undefined) return { id, outsideMm: coaxKinds[coax].outsideMm };
  if (kind === 'coax' && longestM > longCoax.beyondM.value) return { id, outsideMm: longCoax.outsideMm.value };
  if (kind !== 'trunk' && kind !== 'drop') {
    const { outsideMm, plugMm } = cableSizes[kind];
    return { id, outsideMm: outsideMm.value, ...(plugMm === undefined ? {} : { plugMm: plugMm.value }) };
  }
  const bus = busOf(line, buses);
  const { outsideMostMm, plugHoleMm } = cableGrades[bus?.grade ?? 'light'];
  return { id, outsideMm: outsideMostMm.value, plugMm: plugHoleMm.value };
};

const busOf = ({ from, to }: LineEntry, buses: readonly BusGrade[]): BusGrade | undefined =>
  buses.find(({ id }) => [from, to].some((end) => end === id || end.startsWith(`${id}/`)));

/**
 * What lies in each way with a bore when the work is done, sorted by id: cables that stay, new lines, how full that makes
 * it, and what that means. The largest plug goes first, beside the cables that stay.
 */
export const wayFills = ({
  index,
  lines,
  buses,
}: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly BusGrade[];
}): WayEntry[] => {
  const keptIn = keptByWay(index);
  const addedIn = addedByWay({ index, lines, buses });
  return index.boat.ways
    .flatMap((way) =>
      way.bore === undefined
        ? []
        : wayFill({
            id: way.id,
            boreMm: way.bore.mm,
            kept: keptIn.get(way.id) ?? [],
            added: addedIn.get(way.id) ?? [],
          }),
    )
    .sort((one, other) => byCodeUnit(one.id, other.id));
};

interface KeptCable {
  readonly id: string;
  readonly diameterMm: number;
}

const wayFill = ({
  id,
  boreMm,
  kept,
  added,
}: {
  readonly id: string;
  readonly boreMm: number;
  readonly kept: readonly KeptCable[];
  readonly added: readonly DrawnCable[];
}): WayEntry => {
  const inPlaceMm = kept.map(({ diameterMm }) => diameterMm);
  const addedMm = added.map(({ outsideMm }) => outsideMm);
  const plugs = added.flatMap(({ plugMm }) => plugMm ?? []);
  const plugMm = plugs.length === 0 ? undefined : Math.max(...plugs);
  const { leastBoreMm, ...found } = fillVerdictOf({
    boreMm,
    inPlaceMm,
    addedMm,
    ...(plugMm === undefined ? {} : { plugMm }),
  });
  const isTight = found.verdict === 'doubt' || found.verdict === 'refused';
  return {
    id,
    boreMm,
    kept: kept.map((cable) => cable.id).sort(byCodeUnit),
    lines: added.map((line) => line.id).sort(byCodeUnit),
    ...found,
    reasons: [...found.reasons],
    leastBoreMm,
    ...(addedMm.length === 0 ? {} : { largestMm: Math.max(...addedMm, ...plugs) }),
    ...(isTight ? { fitsAtMm: boreThatFits({ inPlaceMm, addedMm, plugMm: plugMm ?? 0 }) } : {}),
  };
};

/** The next bore sold that takes all of it without a doubt; beyond the widest one sold, the least whole millimetre. */
const boreThatFits = ({
  inPlaceMm,
  addedMm,
  plugMm,
}: {
  readonly inPlaceMm: readonly number[];
  readonly addedMm: readonly number[];
  readonly plugMm: number;
}): number => {
  const squares = [...inPlaceMm, ...addedMm].reduce((sum, mm) => sum + mm ** 2, 0);
  const sharePct = Math.min(fillVerdict.doubtAbovePct, conduitFill.morePct);
  const leastMm = Math.max(Math.sqrt((100 * squares) / sharePct), circleRound(inPlaceMm) + plugMm);
  return conduitBores.boresMm.find((boreMm) => boreMm >= leastMm) ?? Math.ceil(leastMm);
};

/** The cables that stay, by the ways they lie in. */
export const keptByWay = (index: BoatIndex): ReadonlyMap<string, readonly KeptCable[]> => {
  const found = new Map<string, KeptCable[]>();
  for (const cable of index.boat.cables) {
    if (cable.fate === 'stays') for (const way of cable.ways) push(found, way, cable);
  }
  return found;
};

/** The new lines by the ways they are led through, each as often as it passes. */
export const addedByWay = ({
  index,
  lines,
  buses,
}: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly BusGrade[];
}): ReadonlyMap<string, readonly DrawnCable[]> => {
  const spoken = heldTrunk(index, new Set(lines.flatMap(({ kept = [] }) => kept)));
  const found = new Map<string, DrawnCable[]>();
  for (const line of lines) {
    if (line.kept !== undefined) continue;
    const cable = drawnCable(line, buses);
    const bus = line.kind === 'trunk' ? busOf(line, buses)?.id : undefined;
    for (const way of line.ways) {
      const held = bus === undefined ? 0 : (spoken.get(`${bus} ${way}`) ?? 0);
      if (held > 0) spoken.set(`${bus} ${way}`, held - 1);
      else push(found, way, cable);
    }
  }
  return found;
};

/**
 * How often a trunk that stays, and that no whole stretch runs on (`used`), lies in a way: there the trunk of the plan is
 * that cable and no new one.
 */
const heldTrunk = (index: BoatIndex, used: ReadonlySet<string>): Map<string, number> => {
  const held = new Map<string, number>();
  for (const { id, fate, kind, serves, ways } of index.boat.cables) {
    if (used.has(id) || fate !== 'stays' || kind !== 'trunk' || serves === undefined) continue;
    for (const way of ways) held.set(`${serves} ${way}`, (held.get(`${serves} ${way}`) ?? 0) + 1);
  }
  return held;
};

const push = <Entry>(map: Map<string, Entry[]>, key: string, entry: Entry): void => {
  const known = map.get(key);
  if (known === undefined) map.set(key, [entry]);
  else known.push(entry);
};
