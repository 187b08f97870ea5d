import { pathShape } from '../drawing/marks.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Drawing, Ink, Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { dayOfPhase } from './day-words.ts';
import type { PictureInput } from './picture-input.ts';
import { type WorkColumn, workAxes } from './work-axis.ts';

/** All days of the work in one look, and which of them lies under a point of it. */
export interface WorkGlance {
  readonly drawing: Drawing;
  /** left and right edge of a day, mm; absent where it is on none */
  readonly edgesOf: (phase: number, day: number) => readonly [number, number] | undefined;
  /** the day under a place from the left, mm */
  readonly dayAt: (xMm: number) => { readonly phase: number; readonly day: number } | undefined;
}

const widthMm = 230;
const letterMm = 2.9;
const rowsMm = { words: 3, done: 5.4, dark: 8.2, ashore: 10.2, foot: 11 } as const;
/** between the words of one day and of another */
const gapMm = 4;

const bar = (leftMm: number, rightMm: number, yMm: number, heightMm: number, ink: Ink): Shape =>
  pathShape(
    rectangle({ leftMm, topMm: yMm - heightMm / 2, widthMm: Math.max(0.4, rightMm - leftMm), heightMm }),
    ink === 'paper' ? { fill: ink, stroke: { ink: 'ink', widthMm: 0.2 } } : { fill: ink },
  );

/** Words under as many days as have room for them, the first of each phase always. */
const dayNames = ({ phases }: PictureInput, columns: readonly WorkColumn[], scale: number): Shape[] => {
  let freeMm = 0;
  return columns.flatMap((column): Shape[] => {
    const phase = phases.find((one) => one.phase === column.phase);
    const xMm = column.leftMm * scale;
    if (phase === undefined || column.isRest || xMm < freeMm) return [];
    const text = dayOfPhase(phase, column.day);
    const style = { sizeMm: letterMm, face: 'words' } as const;
    freeMm = xMm + textWidthMm(text, style) + gapMm;
    return freeMm - gapMm > widthMm ? [] : [{ kind: 'text', text, xMm, yMm: rowsMm.words, ...style, ink: 'quiet' }];
  });
};

/** The whole of the work in small: when somebody works, hollow where it is done; when anything is dark; when she is ashore. */
export const workGlance = (input: PictureInput): WorkGlance | undefined => {
  const [axis] = workAxes(input.phases, { dayMm: 30, widthMm: Number.POSITIVE_INFINITY });
  if (axis === undefined) return undefined;
  const scale = widthMm / axis.widthMm;
  const spans = input.phases.flatMap(({ phase, order }) => {
    const xOf = (day: number, slot: number): number => axis.xOf({ phase, day, slot }) * scale;
    return {
      work: (order?.starts ?? [])
        .filter(({ hands, job }) => hands.length > 0 || input.done.has(job))
        .map(({ job, day, slot, lastDay, lastSlot }) => ({
          isDone: input.done.has(job),
          leftMm: xOf(day, slot),
          rightMm: xOf(lastDay, lastSlot),
        })),
      dark: (order?.dark ?? [])
        .filter(({ hoursH }) => hoursH > 0)
        .map(({ from, to }) => ({ leftMm: xOf(from.day, from.slot), rightMm: xOf(to.day, to.slot) })),
    };
  });
  const edgesOf: WorkGlance['edgesOf'] = (phase, day) => {
    const column = axis.columns.find((one) => one.phase === phase && one.day <= day && day <= one.lastDay);
    return column === undefined ? undefined : [column.leftMm * scale, column.rightMm * scale];
  };
  const line = polyline([
    [0, rowsMm.done],
    [widthMm, rowsMm.done],
  ]);
  return {
    drawing: {
      title: 'All days of the work',
      widthMm,
      heightMm: rowsMm.foot,
      shapes: [
        ...dayNames(input, axis.columns, scale),
        pathShape(line, { stroke: { ink: 'quiet', widthMm: 0.2 } }),
        ...spans.flatMap(({ work }) =>
          work.map(({ isDone, leftMm, rightMm }) => bar(leftMm, rightMm, rowsMm.done, 1.5, isDone ? 'paper' : 'data')),
        ),
        ...spans.flatMap(({ dark }) =>
          dark.map(({ leftMm, rightMm }) => bar(leftMm, rightMm, rowsMm.dark, 1.5, 'accent')),
        ),
        ...axis.columns
          .filter(({ calendar }) => calendar?.afloat === false)
          .map(({ leftMm, rightMm }) => bar(leftMm * scale, rightMm * scale, rowsMm.ashore, 0.5, 'ink')),
      ],
    },
    edgesOf,
    dayAt: (xMm) => {
      const column = axis.columns.find(({ rightMm }) => xMm < rightMm * scale);
      return column === undefined ? undefined : { phase: column.phase, day: column.day };
    },
  };
};
