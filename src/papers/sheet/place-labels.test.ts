import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, grown, insideMm, overlaps } from '../drawing/box.ts';
import type { Point } from '../drawing/point.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { type Cluster, labelMm } from './label-form.ts';
import type { LabelRoom } from './label-room.ts';
import type { Run } from './lines-on-view.ts';
import { type PlacedCluster, placeLabels } from './place-labels.ts';

const within: Box = { leftMm: 0, topMm: 0, rightMm: 160, bottomMm: 90 };
const radiusMm = 2.6;
const room = (parts: Partial<LabelRoom> = {}): LabelRoom => ({
  within,
  taken: [],
  runs: [],
  soft: [],
  points: [],
  radiusMm,
  words: true,
  ...parts,
});

/** The boxes of all balloons and words of a placed cluster. */
const boxesOf = (placed: PlacedCluster): Box[] => [
  ...(placed.range === undefined ? [] : [placed.range.box]),
  ...placed.rows.flatMap(({ centre: [x, y], label }) => {
    const circle = { leftMm: x - radiusMm, rightMm: x + radiusMm, topMm: y - radiusMm, bottomMm: y + radiusMm };
    if (label === undefined) return [circle];
    const wide = textWidthMm(label.text, { sizeMm: labelMm, face: 'words' });
    const leftMm = label.anchor === 'start' ? label.xMm : label.xMm - wide;
    return [circle, { ...circle, leftMm, rightMm: leftMm + wide }];
  }),
];

test('a lone balloon stands close to its unit, its words on the side away from it', () => {
  const at: Point = [80, 45];
  const [placed] = placeLabels(
    [{ id: 'radar', at, rows: [{ number: 8, label: 'radar 24 in' }] }],
    room({ points: [at] }),
  );
  const [row] = placed?.rows ?? [];
  const away = row === undefined ? Number.NaN : Math.hypot(row.centre[0] - 80, row.centre[1] - 45);
  expect(away).toBeLessThan(6);
  expect(row?.label?.text).toBe('radar 24 in');
});

test('where there is no room for each, all units of a place share one long balloon with the first and last number', () => {
  const rows = Array.from({ length: 9 }, (_, row) => ({ number: row + 41, label: 'power control' }));
  const tight: Box = { leftMm: 60, rightMm: 82, topMm: 38, bottomMm: 52 };
  const at: Point = [71, 42];
  const [placed] = placeLabels([{ id: 'panel', at, rows }], room({ within: tight, points: [at] }));
  expect(placed?.range?.text).toBe('41–49');
  expect(placed?.rows).toEqual([]);
});

const pointArbitrary: fc.Arbitrary<Point> = fc.tuple(fc.integer({ min: 5, max: 155 }), fc.integer({ min: 5, max: 85 }));
const clustersArbitrary = fc
  .uniqueArray(fc.tuple(pointArbitrary, fc.integer({ min: 1, max: 4 })), {
    minLength: 1,
    maxLength: 14,
    selector: ([point]) => point.join(),
  })
  .map((list): Cluster[] =>
    list.map(([at, count], place) => ({
      id: `place-${place}`,
      at,
      rows: Array.from({ length: count }, (_, row) => ({ number: place * 4 + row + 1, label: `unit ${place} ${row}` })),
    })),
  );
const runsArbitrary = fc.array(
  fc.tuple(pointArbitrary, pointArbitrary).map(([from, to]): Run => ({ from, to, halfMm: 1 })),
  { maxLength: 5 },
);

test('however the units lie, no balloon or word touches another, a line, or the edge', () => {
  fc.assert(
    fc.property(clustersArbitrary, runsArbitrary, (clusters, runs) => {
      const placed = placeLabels(clusters, room({ runs, points: clusters.map((cluster) => cluster.at) }));
      const boxes = placed.flatMap(boxesOf);
      for (const [at, box] of boxes.entries()) {
        expect(boxes.slice(at + 1).some((other) => overlaps(box, other))).toBe(false);
        expect(runs.some((run) => insideMm(box, run.from, run.to) > 0)).toBe(false);
        expect(overlaps(box, grown(within, 0)) && box.leftMm >= 0 && box.rightMm <= 160).toBe(true);
        expect(box.topMm >= 0 && box.bottomMm <= 90).toBe(true);
      }
    }),
    { numRuns: 40 },
  );
});

test('the order in which the units come changes nothing', () => {
  fc.assert(
    fc.property(clustersArbitrary, (clusters) => {
      const byId = (placed: readonly PlacedCluster[]): PlacedCluster[] =>
        [...placed].sort((a, b) => (a.id < b.id ? -1 : 1));
      expect(byId(placeLabels([...clusters].reverse(), room()))).toEqual(byId(placeLabels(clusters, room())));
    }),
    { numRuns: 15 },
  );
});
