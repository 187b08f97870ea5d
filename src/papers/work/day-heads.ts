import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import { dayOfPhase, dayWords } from './day-words.ts';
import type { DrawnWork } from './picture-input.ts';
import type { WorkColumn } from './work-axis.ts';
import { workSizes } from './work-sizes.ts';

const { smallMm, nameMm, headMm } = workSizes;
const waterMm = 9;

const words = (text: string, xMm: number, yMm: number, more: Partial<TextShape> = {}): TextShape => ({
  kind: 'text',
  text,
  xMm,
  yMm,
  sizeMm: smallMm,
  face: 'words',
  ink: 'quiet',
  ...more,
});

const hair = (
  points: readonly (readonly [number, number])[],
  widthMm = 0.15,
  ink: 'rule' | 'quiet' | 'ink' = 'quiet',
): Shape => pathShape(polyline(points), { stroke: { ink, widthMm } });

/** How she lies on a day, in words: afloat or ashore, and what more there is to say of it. */
const stateOf = ({ calendar }: WorkColumn): string =>
  [
    calendar?.afloat === false ? 'ashore' : 'afloat',
    ...(calendar?.mast === 'down' ? ['mast down'] : []),
    ...(calendar?.left === true ? ['nobody aboard'] : []),
  ].join(', ');

/** A stand under a keel, again and again. */
const ashoreLine = (fromMm: number, toMm: number): Shape => {
  const stands: (readonly [number, number])[][] = [];
  for (let xMm = fromMm + 2; xMm + 1 < toMm; xMm += 3) {
    stands.push([
      [xMm - 0.8, waterMm + 1.7],
      [xMm, waterMm],
      [xMm + 0.8, waterMm + 1.7],
    ]);
  }
  const all = [[[fromMm, waterMm] as const, [toMm, waterMm] as const], ...stands];
  return pathShape(
    all.flatMap((points) => polyline(points)),
    { stroke: { ink: 'ink', widthMm: 0.2 } },
  );
};

interface Run {
  readonly columns: readonly WorkColumn[];
  readonly says: string;
}

const runsOf = (columns: readonly WorkColumn[]): Run[] => {
  const runs: { columns: WorkColumn[]; says: string }[] = [];
  for (const column of columns) {
    const says = stateOf(column);
    const last = runs.at(-1);
    if (last?.says === says) last.columns.push(column);
    else runs.push({ columns: [column], says });
  }
  return runs;
};

const runShapes = ({ columns, says }: Run): Shape[] => {
  const fromMm = (columns[0]?.leftMm ?? 0) + 0.6;
  const toMm = (columns.at(-1)?.rightMm ?? 0) - 0.6;
  const textMm = textWidthMm(says, { sizeMm: smallMm, face: 'words' });
  const hasRoom = textMm + 8 < toMm - fromMm;
  const lineFromMm = hasRoom ? fromMm + textMm + 1.6 : fromMm;
  return [
    ...(hasRoom ? [words(says, fromMm, waterMm + 1, { ink: 'ink' })] : []),
    says.startsWith('afloat')
      ? pathShape(
          wavyLine([
            [lineFromMm, waterMm],
            [toMm, waterMm],
          ]),
          { stroke: { ink: 'ink', widthMm: 0.2 } },
        )
      : ashoreLine(lineFromMm, toMm),
  ];
};

/** Slanting strokes over a day on which nobody works outside. */
const rain = ({ leftMm, nightMm, rightMm }: WorkColumn): Shape => {
  const strokes: (readonly [number, number])[][] = [];
  for (let xMm = leftMm + 2; xMm < Math.min(nightMm, rightMm) - 1; xMm += 2.2) {
    strokes.push([
      [xMm, headMm - 0.9],
      [xMm - 0.7, headMm + 0.6],
    ]);
  }
  return pathShape(
    strokes.flatMap((points) => polyline(points)),
    { stroke: { ink: 'quiet', widthMm: 0.2 } },
  );
};

const dayName = (column: WorkColumn): string => {
  const { day, lastDay, calendar, isRest } = column;
  if (lastDay > day) return `${lastDay - day + 1} d`;
  const says = dayWords(calendar ?? { day });
  return isRest ? says.replace(/^(?:day |\w+ )(\d+).*$/, '$1') : says;
};

const columnShapes = ({ phases }: DrawnWork, column: WorkColumn, heightMm: number): Shape[] => {
  const { leftMm, rightMm, nightMm, isRest, isFirst, phase, calendar } = column;
  const night =
    isRest || nightMm >= rightMm
      ? []
      : [
          hair(
            [
              [nightMm, headMm],
              [nightMm, heightMm],
            ],
            0.12,
            'rule',
          ),
        ];
  const named =
    phases.length > 1 && isFirst
      ? [words(`phase ${phase}`, leftMm + 0.8, 1.9, { weight: 'semibold', ink: 'ink' })]
      : [];
  return [
    hair(
      [
        [leftMm, isFirst ? 0 : 3],
        [leftMm, heightMm],
      ],
      isFirst ? 0.4 : 0.18,
      isFirst ? 'ink' : 'quiet',
    ),
    ...named,
    words(dayName(column), (leftMm + rightMm) / 2, 5.6, {
      anchor: 'middle',
      sizeMm: isRest ? smallMm : nameMm,
      ...(isRest ? {} : { ink: 'ink', weight: 'semibold' }),
    }),
    ...night,
    ...(calendar?.foul === true ? [rain(column)] : []),
  ];
};

/** The heads of the days with the hair lines under them, and whether she lies in the water: a wave, or stands ashore. */
export const dayHeads = (work: DrawnWork, heightMm: number): Shape[] => {
  const { axis, today, phases } = work;
  const now = axis.columns.find(({ calendar }) => today !== undefined && calendar?.date === today);
  return [
    ...axis.columns.flatMap((column) => columnShapes(work, column, heightMm)),
    hair(
      [
        [axis.widthMm, 3],
        [axis.widthMm, heightMm],
      ],
      0.18,
    ),
    ...runsOf(axis.columns).flatMap(runShapes),
    ...(now === undefined
      ? []
      : [
          pathShape(
            polyline([
              [now.leftMm + 0.7, 3],
              [now.leftMm + 0.7, heightMm],
            ]),
            { stroke: { ink: 'accent', widthMm: 0.35, dashMm: [1.2, 1] } },
          ),
        ]),
    ...(axis.columns.length === 0 && phases[0] !== undefined ? [words(dayOfPhase(phases[0], 0), 0, 5.6)] : []),
  ];
};
