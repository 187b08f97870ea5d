import type { Problem } from './problem.ts';

/** A tee of the layout, found again on the walk. */
export interface PlacedTee {
  readonly tee: string;
  readonly step: number;
  readonly place: string;
}

/** A device with the length of its drop: nominal, and as bought for its longest length. */
export interface MeasuredDrop extends PlacedTee {
  readonly len: number;
  readonly minMv: number;
  readonly mm: number;
  readonly boughtMm: number;
}

/** Every device that has a tee, with its drop; infinite where no way for drops leads there. */
export const measureDrops = (problem: Problem, tees: readonly PlacedTee[]): MeasuredDrop[] =>
  tees.flatMap((placed) => {
    const device = problem.devices.find(({ id }) => id === placed.tee);
    if (device === undefined) return [];
    const route = dropRoute({ problem, from: placed.place, to: device.place });
    const longestMm = route.longestMm + device.maxTailMm;
    const boughtMm = pieceFor(problem, longestMm);
    return [{ ...placed, len: device.len, minMv: device.minMv, mm: route.mm + device.tailMm, boughtMm }];
  });

const pieceFor = (problem: Problem, longestMm: number): number => {
  const covering = problem.pieces.filter((piece) => piece >= longestMm);
  return covering.length === 0 ? longestMm : Math.min(...covering);
};

/** Least nominal length over ways that take drops, of those the least longest length; found by relaxing until nothing gets shorter. */
const dropRoute = ({
  problem,
  from,
  to,
}: {
  readonly problem: Problem;
  readonly from: string;
  readonly to: string;
}): { mm: number; longestMm: number } => {
  const known = new Map([[from, { mm: 0, longestMm: 0 }]]);
  for (let changed = true; changed; ) {
    changed = false;
    for (const way of problem.ways.filter(({ drop }) => drop)) {
      for (const [here, there] of [
        [way.a, way.b],
        [way.b, way.a],
      ] as const) {
        const at = known.get(here);
        const now = known.get(there);
        if (at === undefined) continue;
        const next = { mm: at.mm + way.mm, longestMm: at.longestMm + way.maxMm };
        const better = now === undefined || next.mm < now.mm || (next.mm === now.mm && next.longestMm < now.longestMm);
        if (better) known.set(there, next);
        changed ||= better;
      }
    }
  }
  return known.get(to) ?? { mm: Number.POSITIVE_INFINITY, longestMm: Number.POSITIVE_INFINITY };
};

/** The limits of single drops and of all together that a layout breaks, in words. */
export const brokenDrops = (problem: Problem, drops: readonly MeasuredDrop[]): string[] => {
  const { dropMm, dropsMm } = problem.limits;
  const broken: string[] = [];
  for (const { tee, place, boughtMm } of drops) {
    if (boughtMm === Number.POSITIVE_INFINITY) broken.push(`No way for a drop leads from ${place} to ${tee}.`);
    else if (boughtMm > dropMm) {
      broken.push(`The drop to ${tee} is ${boughtMm / 1000} m as bought; the limit is ${dropMm / 1000} m.`);
    }
  }
  const allMm = drops.reduce((sum, { boughtMm }) => sum + boughtMm, 0);
  if (Number.isFinite(allMm) && allMm > dropsMm) {
    broken.push(`All drops are ${allMm / 1000} m as bought; the limit is ${dropsMm / 1000} m.`);
  }
  return broken;
};
