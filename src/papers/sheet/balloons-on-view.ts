import type { Box } from '../drawing/box.ts';
import { balloon, pathShape } from '../drawing/marks.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { type Cluster, labelMm, rangeStyle } from './label-form.ts';
import type { SoftLine } from './label-room.ts';
import type { Run } from './lines-on-view.ts';
import { type PlacedCluster, placeLabels } from './place-labels.ts';
import type { UnitMark } from './unit-marks.ts';
import type { View } from './view.ts';

const clustersOf = (marks: readonly UnitMark[], view: View): Cluster[] => {
  const byPlace = new Map<string, UnitMark[]>();
  for (const mark of marks) byPlace.set(mark.place.id, [...(byPlace.get(mark.place.id) ?? []), mark]);
  return [...byPlace.entries()].flatMap(([id, here]) => {
    const first = here[0];
    if (first === undefined) return [];
    const rows = here.map((mark) => ({ number: mark.number, label: mark.told }));
    return [{ id, at: view.at(first.place), rows }];
  });
};

/** A box with round ends. */
const pill = ({ leftMm, rightMm, topMm, bottomMm }: Box): PathStep[] => {
  const radiusMm = (bottomMm - topMm) / 2;
  const middleMm = (topMm + bottomMm) / 2;
  const bendMm = radiusMm * 0.5523; // a quarter circle as a cubic curve
  const [fromMm, toMm] = [leftMm + radiusMm, rightMm - radiusMm];
  return [
    ['M', fromMm, topMm],
    ['L', toMm, topMm],
    ['C', toMm + bendMm, topMm, rightMm, middleMm - bendMm, rightMm, middleMm],
    ['C', rightMm, middleMm + bendMm, toMm + bendMm, bottomMm, toMm, bottomMm],
    ['L', fromMm, bottomMm],
    ['C', fromMm - bendMm, bottomMm, leftMm, middleMm + bendMm, leftMm, middleMm],
    ['C', leftMm, middleMm - bendMm, fromMm - bendMm, topMm, fromMm, topMm],
    ['Z'],
  ];
};

const rangeGroup = (marks: readonly UnitMark[], { box, text }: NonNullable<PlacedCluster['range']>): Shape => {
  const filled = marks.some((mark) => mark.findings.length > 0);
  const about = marks.flatMap((mark) => mark.about);
  return {
    kind: 'group',
    label: marks.map((mark) => `${mark.number}, ${mark.kit.name}`).join('; '),
    focusable: true,
    about,
    shapes: [
      pathShape(pill(box), {
        stroke: { ink: filled ? 'accent' : 'ink', widthMm: 0.3 },
        fill: filled ? 'accent' : 'paper',
        about,
      }),
      {
        kind: 'text',
        xMm: (box.leftMm + box.rightMm) / 2,
        yMm: (box.topMm + box.bottomMm) / 2 + rangeStyle.sizeMm * 0.335,
        text,
        ...rangeStyle,
        anchor: 'middle',
        ink: filled ? 'paper' : 'ink',
        about,
      },
    ],
  };
};

const clusterShapes = (
  placed: PlacedCluster,
  { own, byNumber, radiusMm }: { own: readonly UnitMark[]; byNumber: ReadonlyMap<number, UnitMark>; radiusMm: number },
): Shape[] => {
  const marks =
    placed.range === undefined
      ? placed.rows.flatMap((row) => byNumber.get(row.number) ?? [])
      : own.filter((mark) => mark.place.id === placed.id);
  const leader = pathShape(polyline(placed.leader), {
    stroke: { ink: 'quiet', widthMm: 0.18 },
    about: marks.flatMap((mark) => mark.about),
  });
  return [
    leader,
    ...(placed.range === undefined ? [] : [rangeGroup(marks, placed.range)]),
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
    shapes: placed.flatMap((cluster) => clusterShapes(cluster, { own: marks, byNumber, radiusMm })),
    named: placed.flatMap(({ rows }) => rows.filter((row) => row.label !== undefined).map((row) => row.number)),
  };
};
