import type { Box } from '../drawing/box.ts';
import { balloon, pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { type Cluster, labelMm } from './label-form.ts';
import type { Run } from './lines-on-view.ts';
import { type PlacedCluster, placeLabels, type SoftLine } from './place-labels.ts';
import type { UnitMark } from './unit-marks.ts';
import type { View } from './view.ts';

const clustersOf = (marks: readonly UnitMark[], view: View): Cluster[] => {
  const byPlace = new Map<string, UnitMark[]>();
  for (const mark of marks) byPlace.set(mark.place.id, [...(byPlace.get(mark.place.id) ?? []), mark]);
  return [...byPlace.entries()].flatMap(([id, here]) => {
    const first = here[0];
    if (first === undefined) return [];
    const rows = here.map((mark) => ({ number: mark.number, label: mark.label }));
    return [{ id, at: view.at(first.place), rows }];
  });
};

const clusterShapes = (placed: PlacedCluster, byNumber: ReadonlyMap<number, UnitMark>, radiusMm: number): Shape[] => {
  const marks = placed.rows.flatMap((row) => byNumber.get(row.number) ?? []);
  const leader = pathShape(polyline(placed.leader), {
    stroke: { ink: 'quiet', widthMm: 0.18 },
    about: marks.flatMap((mark) => mark.about),
  });
  return [
    leader,
    ...placed.rows.flatMap((row): Shape[] => {
      const mark = byNumber.get(row.number);
      return mark === undefined ? [] : [balloonGroup(mark, row, radiusMm)];
    }),
  ];
};

const balloonGroup = (mark: UnitMark, row: PlacedCluster['rows'][number], radiusMm: number): Shape => {
  const filled = mark.findings.length > 0;
  const words: Shape[] =
    row.label === undefined
      ? []
      : [
          {
            kind: 'text',
            xMm: row.label.xMm,
            yMm: row.label.yMm,
            text: row.label.text,
            sizeMm: labelMm,
            face: 'words',
            anchor: row.label.anchor,
            ink: 'ink',
            about: mark.about,
          },
        ];
  return {
    kind: 'group',
    label: `${mark.number}, ${mark.kit.name}`,
    focusable: true,
    about: mark.about,
    shapes: [...balloon(row.centre, { number: mark.number, radiusMm, filled, about: mark.about }), ...words],
  };
};

/** The balloons of one view, each near its unit, none over a line or a text. */
export const balloonsOnView = ({
  view,
  marks,
  runs,
  soft,
  points,
  taken,
  radiusMm,
  words,
}: {
  view: View;
  marks: readonly UnitMark[];
  runs: readonly Run[];
  soft: readonly SoftLine[];
  points: readonly Point[];
  taken: readonly Box[];
  radiusMm: number;
  words: boolean;
}): { shapes: Shape[]; named: number[] } => {
  const placed = placeLabels(clustersOf(marks, view), { within: view.box, taken, runs, soft, points, radiusMm, words });
  const byNumber = new Map(marks.map((mark) => [mark.number, mark]));
  return {
    shapes: placed.flatMap((cluster) => clusterShapes(cluster, byNumber, radiusMm)),
    named: placed.flatMap(({ rows }) => rows.filter((row) => row.label !== undefined).map((row) => row.number)),
  };
};
