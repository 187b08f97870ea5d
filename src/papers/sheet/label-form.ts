import type { Box } from '../drawing/box.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import { textWidthMm } from '../drawing/text-width.ts';

/** One balloon that wants a place near a point of a view, with the words that may stand beside it. */
export interface Row {
  readonly number: number;
  readonly label: string;
}

/** All balloons of one place: they stay together and share a leader. */
export interface Cluster {
  readonly id: string;
  readonly at: Point;
  readonly rows: readonly Row[];
}

/**
 * One way to set a cluster down: `column` has the balloons under each other with their words,
 * `numbers` has them side by side without, `range` has one long balloon for all of them ("12–16"), where there is room
 * for no more. `first` is the centre of the first balloon, or of the long one.
 */
export interface Setting {
  readonly form: 'column' | 'numbers' | 'range';
  readonly right: boolean;
  readonly first: Point;
  readonly box: Box;
  readonly leader: readonly [Point, Point];
}

export interface PlacedRow {
  readonly number: number;
  readonly centre: Point;
  readonly label?: {
    readonly text: string;
    readonly xMm: number;
    readonly yMm: number;
    readonly anchor: 'start' | 'end';
  };
}

/** Type size of the words beside balloons: 12 px on screen. */
export const labelMm = 3.175;

const gapMm = 1.1;

const pitchMm = (radiusMm: number): number => radiusMm * 2 + 0.4;

/** How many balloons without words stand in one row: up to five, more only where there are very many. */
const rowLength = ({ rows }: Cluster): number =>
  rows.length <= 5 ? rows.length : Math.max(5, Math.ceil(Math.sqrt(rows.length * 2)));

/** Room the words of a cluster take beside its balloons. */
export const wordsMm = (cluster: Cluster): number =>
  gapMm + Math.max(...cluster.rows.map((row) => textWidthMm(row.label, { sizeMm: labelMm, face: 'words' })));

const leaderTo = (at: Point, centre: Point, radiusMm: number): readonly [Point, Point] => {
  const lengthMm = distanceMm(at, centre);
  const share = lengthMm <= radiusMm ? 0 : (lengthMm - radiusMm) / lengthMm;
  return [at, [at[0] + (centre[0] - at[0]) * share, at[1] + (centre[1] - at[1]) * share]];
};

/** Balloons under each other; the one nearest to the point stands at `key`, the words on the side away from it. */
export const columnAt = (
  cluster: Cluster,
  key: Point,
  { radiusMm, wideMm }: { radiusMm: number; wideMm: number },
): Setting => {
  const right = key[0] >= cluster.at[0];
  const last = cluster.rows.length - 1;
  const belowMm = key[1] - cluster.at[1];
  const keyRow = belowMm > 2 ? 0 : belowMm < -2 ? last : Math.floor(last / 2);
  const first: Point = [key[0], key[1] - keyRow * pitchMm(radiusMm)];
  return {
    form: 'column',
    right,
    first,
    box: {
      leftMm: key[0] - radiusMm - (right ? 0 : wideMm),
      rightMm: key[0] + radiusMm + (right ? wideMm : 0),
      topMm: first[1] - radiusMm,
      bottomMm: first[1] + last * pitchMm(radiusMm) + radiusMm,
    },
    leader: leaderTo(cluster.at, key, radiusMm),
  };
};

/** Balloons side by side without words, in several rows where there are many; the nearest at `key`. */
export const numbersAt = (cluster: Cluster, key: Point, radiusMm: number): Setting => {
  const right = key[0] >= cluster.at[0];
  const spanMm = (rowLength(cluster) - 1) * pitchMm(radiusMm);
  const downMm = (Math.ceil(cluster.rows.length / rowLength(cluster)) - 1) * pitchMm(radiusMm);
  const above = key[1] < cluster.at[1];
  const first: Point = [right ? key[0] : key[0] - spanMm, above ? key[1] - downMm : key[1]];
  return {
    form: 'numbers',
    right,
    first,
    box: {
      leftMm: first[0] - radiusMm,
      rightMm: first[0] + spanMm + radiusMm,
      topMm: first[1] - radiusMm,
      bottomMm: first[1] + downMm + radiusMm,
    },
    leader: leaderTo(cluster.at, key, radiusMm),
  };
};

/** Type of the numbers in a long balloon. */
export const rangeStyle = { sizeMm: 2.95, face: 'words', weight: 'semibold' } as const;

/** Air beside the numbers in a long balloon. */
const rangeAirMm = 1.2;

/** The first and the last number of a cluster: those between belong to it, as numbers are given place by place. */
export const rangeText = ({ rows }: Cluster): string => `${rows[0]?.number ?? ''}–${rows.at(-1)?.number ?? ''}`;

/** One long balloon for all units of a place. */
export const rangeAt = (cluster: Cluster, key: Point, radiusMm: number): Setting => {
  const halfMm = Math.max(radiusMm, textWidthMm(rangeText(cluster), rangeStyle) / 2 + rangeAirMm);
  const right = key[0] >= cluster.at[0];
  const first: Point = [key[0] + (right ? halfMm - radiusMm : radiusMm - halfMm), key[1]];
  return {
    form: 'range',
    right,
    first,
    box: {
      leftMm: first[0] - halfMm,
      rightMm: first[0] + halfMm,
      topMm: first[1] - radiusMm,
      bottomMm: first[1] + radiusMm,
    },
    leader: leaderTo(cluster.at, key, radiusMm),
  };
};

/** The balloons and words of a cluster where it was set down. */
export const rowsOf = (cluster: Cluster, { form, right, first }: Setting, radiusMm: number): PlacedRow[] =>
  cluster.rows.map((row, order) => {
    const pitch = pitchMm(radiusMm);
    if (form === 'numbers') {
      const [column, line] = [order % rowLength(cluster), Math.floor(order / rowLength(cluster))];
      return { number: row.number, centre: [first[0] + column * pitch, first[1] + line * pitch] };
    }
    const centre: Point = [first[0], first[1] + order * pitch];
    return {
      number: row.number,
      centre,
      label: {
        text: row.label,
        xMm: right ? centre[0] + radiusMm + gapMm : centre[0] - radiusMm - gapMm,
        yMm: centre[1] + labelMm * 0.34,
        anchor: right ? 'start' : 'end',
      },
    };
  });
