import { type Box, grown, insideMm, overlaps } from '../drawing/box.ts';
import { cheapest } from '../drawing/cheapest.ts';
import { crosses } from '../drawing/piece.ts';
import type { Point } from '../drawing/point.ts';
import { type Cluster, type PlacedRow, rangeText, rowsOf, type Setting } from './label-form.ts';
import { airMm, balloonObstacles, optionsOf } from './label-options.ts';
import type { LabelRoom } from './label-room.ts';

export interface PlacedCluster {
  readonly id: string;
  readonly rows: readonly PlacedRow[];
  /** the one long balloon in place of those of the rows */
  readonly range?: { readonly box: Box; readonly text: string };
  readonly leader: readonly [Point, Point];
}

/** So much leader one would rather draw than have two cross. */
const crossingCost = 14;

/** Cost against the other balloons as they stand now: undefined where the two would touch. */
const costBeside = (setting: Setting, others: readonly Setting[]): number | undefined => {
  const air = grown(setting.box, airMm);
  let sum = 0;
  for (const other of others) {
    if (overlaps(air, other.box)) return undefined;
    if (insideMm(setting.box, ...other.leader) > 0 || insideMm(other.box, ...setting.leader) > 0) return undefined;
    if (crosses(setting.leader, other.leader)) sum += crossingCost;
  }
  return sum;
};

const refinements = 3;

/**
 * Finds a place for every cluster of balloons: none touches another, a text or a line, and leaders are short and cross
 * little. The most crowded choose first; then each in turn moves to the best place left by the others.
 * A cluster that fits nowhere is left out. Equal input gives equal places.
 */
export const placeLabels = (clusters: readonly Cluster[], room: LabelRoom): PlacedCluster[] => {
  const obstacles = balloonObstacles(room);
  const wanting = clusters.map((cluster) => ({ cluster, options: optionsOf(cluster, room, obstacles) }));
  wanting.sort(
    (a, b) =>
      a.options.length / a.cluster.rows.length - b.options.length / b.cluster.rows.length ||
      (a.cluster.id < b.cluster.id ? -1 : 1),
  );
  const placed = new Map<string, Setting>();
  for (let round = 0; round <= refinements; round++) {
    for (const { cluster, options } of wanting) {
      placed.delete(cluster.id);
      const others = [...placed.values()];
      const best = cheapest(options, ({ setting }) => costBeside(setting, others));
      if (best !== undefined) placed.set(cluster.id, best.setting);
    }
  }
  return clusters.flatMap((cluster) => {
    const setting = placed.get(cluster.id);
    if (setting === undefined) return [];
    const { leader, form, box } = setting;
    if (form === 'range') return [{ id: cluster.id, rows: [], range: { box, text: rangeText(cluster) }, leader }];
    return [{ id: cluster.id, rows: rowsOf(cluster, setting, room.radiusMm), leader }];
  });
};
