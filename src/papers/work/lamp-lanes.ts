import { essentialFunctions } from '../../core/facts/essential-functions.ts';
import { mattersOn } from '../../core/work/matters-on.ts';
import type { Dark, Watched } from '../../core/work-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { dayOfPhase, hoursWords } from './day-words.ts';
import { briefFunction, functionWords } from './function-words.ts';
import type { DrawnWork } from './picture-input.ts';
import { workSizes } from './work-sizes.ts';

const { smallMm, laneMm } = workSizes;
const halfMm = 0.75;

/** One essential function through all days: two hair lines while it is lit, filled while it is dark. */
export interface Lane {
  readonly id: Watched['function'];
  readonly name: string;
  readonly shapes: readonly Shape[];
}

interface DarkStretch {
  readonly dark: Dark;
  readonly fromMm: number;
  readonly toMm: number;
  readonly says: string;
}

const darkOf = ({ phases, axis }: DrawnWork, id: Watched['function']): DarkStretch[] =>
  phases
    .flatMap((phase) =>
      (phase.order?.dark ?? [])
        .filter((dark) => dark.function === id)
        .map((dark): DarkStretch => {
          const spot = (of: Dark['from']): number => axis.xOf({ phase: phase.phase, ...of });
          const days = [dark.from, dark.to].map(({ day }) => dayOfPhase(phase, day));
          const when = days[0] === days[1] ? `on ${days[0]}` : `from ${days[0]} to ${days[1]}`;
          return {
            dark,
            fromMm: spot(dark.from),
            toMm: spot(dark.to),
            says: `dark ${when}${dark.hoursH > 0 ? `, ${hoursWords(dark.hoursH)}` : ', when it does not matter'}`,
          };
        }),
    )
    .filter(({ fromMm, toMm }) => toMm > fromMm)
    .sort((one, other) => one.fromMm - other.fromMm);

const line = (fromMm: number, toMm: number, yMm: number, dashMm?: readonly number[]): Shape =>
  pathShape(
    polyline([
      [fromMm, yMm],
      [toMm, yMm],
    ]),
    { stroke: { ink: 'quiet', widthMm: 0.2, ...(dashMm === undefined ? {} : { dashMm }) } },
  );

const lit = (fromMm: number, toMm: number, yMm: number, isSure: boolean): Shape[] => {
  const dashMm = isSure ? undefined : [0.6, 0.9];
  return toMm - fromMm < 0.05
    ? []
    : [line(fromMm, toMm, yMm - halfMm, dashMm), line(fromMm, toMm, yMm + halfMm, dashMm)];
};

/** What matters is filled and says its hours; what does not is a row of points. */
const darkShapes = (
  { axis }: DrawnWork,
  { dark, fromMm, toMm }: DarkStretch,
  { watched, yMm, roomMm }: { watched: Watched; yMm: number; roomMm: number },
): Shape[] => {
  const parts = axis.columns.flatMap((column): Shape[] => {
    const [leftMm, rightMm] = [Math.max(fromMm, column.leftMm), Math.min(toMm, column.rightMm)];
    if (rightMm - leftMm < 0.02) return [];
    if (dark.hoursH <= 0 || !(column.calendar === undefined || mattersOn(watched, column.calendar)))
      return [line(leftMm, rightMm, yMm, [0.5, 0.7])];
    const area = { leftMm, topMm: yMm - 1.15, widthMm: Math.max(0.5, rightMm - leftMm), heightMm: 2.3 };
    return [pathShape(rectangle(area), { fill: 'accent' })];
  });
  const text = hoursWords(dark.hoursH);
  const style = { sizeMm: smallMm, face: 'words' } as const;
  const widthMm = textWidthMm(text, style);
  if (dark.hoursH <= 0 || widthMm + 1.6 >= roomMm - toMm) return parts;
  return [
    ...parts,
    pathShape(rectangle({ leftMm: toMm + 0.4, topMm: yMm - 1.3, widthMm: widthMm + 0.8, heightMm: 2.6 }), {
      fill: 'paper',
    }),
    { kind: 'text', text, xMm: toMm + 0.8, yMm: yMm + 1, ...style, ink: 'ink' },
  ];
};

const laneShapes = (work: DrawnWork, watched: Watched, isSure: boolean): Shape[] => {
  const id = watched.function;
  const stretches = darkOf(work, id);
  const yMm = laneMm / 2;
  let atMm = 0;
  const parts: Shape[] = [];
  for (const { fromMm, toMm } of stretches) {
    parts.push(...lit(atMm, fromMm, yMm, isSure));
    atMm = Math.max(atMm, toMm);
  }
  parts.push(...lit(atMm, work.axis.widthMm, yMm, isSure));
  const says = stretches.length === 0 ? 'lit throughout' : stretches.map((one) => one.says).join('; ');
  return [
    {
      kind: 'group',
      about: [id],
      label: `${functionWords[id]}: ${says}`,
      shapes: [
        ...parts,
        ...stretches.flatMap((one, at) =>
          darkShapes(work, one, { watched, yMm, roomMm: stretches[at + 1]?.fromMm ?? work.axis.widthMm }),
        ),
      ],
    },
  ];
};

/** The essential functions of all phases, a lane each, in their order. Points instead of hair lines: nobody said what gives it. */
export const lampLanes = (work: DrawnWork): Lane[] =>
  essentialFunctions.flatMap((id): Lane[] => {
    const watched = work.phases.flatMap(({ functions }) => functions.filter((one) => one.function === id));
    const [first] = watched;
    if (first === undefined) return [];
    const isSure = watched.every(({ unknown }) => unknown !== true);
    return [{ id, name: `${briefFunction[id]}${isSure ? '' : ' ?'}`, shapes: laneShapes(work, first, isSure) }];
  });
