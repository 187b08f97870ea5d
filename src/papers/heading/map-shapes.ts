import type { HeadingMapView, HeadingRun } from '../../core/fitting/heading/heading-map.ts';
import { type Area, type FillPattern, hatching } from '../drawing/fill-pattern.ts';
import { pathShape } from '../drawing/marks.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Shape } from '../drawing/shapes.ts';
import type { KeyEntry } from '../sheet/line-key.ts';
import type { View } from '../sheet/view.ts';

type Verdict = HeadingRun['verdict'];

/** How each verdict is hatched: told apart without colour, the good left white. */
const patterns: Readonly<Record<Verdict, FillPattern>> = { good: 'empty', doubtful: 'rising', not: 'crossed' };

const words: Readonly<Record<Verdict, string>> = {
  good: 'a heading sensor may go here',
  doubtful: 'doubtful',
  not: 'not here',
};

const stroke = { ink: 'quiet', widthMm: 0.16 } as const;

const areaOf = ({ fromM, toM, lowM, highM }: HeadingRun, view: View): Area => {
  const [ax, ay] = view.point(fromM, lowM);
  const [bx, by] = view.point(toM, highM);
  return { leftMm: ax, topMm: Math.min(ay, by), widthMm: bx - ax, heightMm: Math.abs(by - ay) };
};

/** Apart enough that it stays white to the eye, and near enough that it is told from where the map says nothing. */
const dashEveryMm = 5;

const multiplesIn = (from: number, to: number): number[] => {
  const first = Math.ceil(from / dashEveryMm);
  return Array.from(
    { length: Math.max(0, Math.ceil(to / dashEveryMm) - first) },
    (_, at) => (first + at) * dashEveryMm,
  );
};

/** Hatching; where a sensor may go single short dashes, so that it is told from what lies outside the boat. */
const strokesIn = (area: Area, verdict: Verdict): PathStep[] => {
  if (verdict !== 'good') return hatching(area, patterns[verdict]);
  const { leftMm, topMm, widthMm, heightMm } = area;
  return multiplesIn(topMm, topMm + heightMm).flatMap((yMm) =>
    multiplesIn(leftMm, leftMm + widthMm).flatMap((xMm): PathStep[] => [
      ['M', xMm, yMm],
      ['L', Math.min(xMm + 1.2, leftMm + widthMm), yMm],
    ]),
  );
};

/** One view of the map as hatching over the boat's own lines. */
export const mapShapes = ({ runs }: HeadingMapView, view: View): Shape[] =>
  (['good', 'doubtful', 'not'] as const).flatMap((verdict): Shape[] => {
    const own = runs.filter((run) => run.verdict === verdict);
    const steps: PathStep[] = own.flatMap((run) => strokesIn(areaOf(run, view), verdict));
    return steps.length === 0 ? [] : [{ kind: 'group', label: words[verdict], shapes: [pathShape(steps, { stroke })] }];
  });

/** What the hatching means, for the key of a sheet. */
export const mapKey: readonly KeyEntry[] = (['good', 'doubtful', 'not'] as const).map((verdict) => ({
  words: words[verdict],
  draw: ([from, to]) => {
    if (from === undefined || to === undefined) return [];
    const area = { leftMm: from[0] + 1, topMm: from[1] - 1.4, widthMm: to[0] - from[0] - 2, heightMm: 2.8 };
    const frame: PathStep[] = [
      ['M', area.leftMm, area.topMm],
      ['L', area.leftMm + area.widthMm, area.topMm],
      ['L', area.leftMm + area.widthMm, area.topMm + area.heightMm],
      ['L', area.leftMm, area.topMm + area.heightMm],
      ['Z'],
    ];
    const middleMm = area.topMm + area.heightMm / 2;
    const dash: PathStep[] = [
      ['M', area.leftMm + area.widthMm / 2 - 0.6, middleMm],
      ['L', area.leftMm + area.widthMm / 2 + 0.6, middleMm],
    ];
    return [pathShape([...frame, ...(verdict === 'good' ? dash : hatching(area, patterns[verdict]))], { stroke })];
  },
}));
