import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EnergyDay, Plan } from '../../core/plan-shape.ts';
import { type Area, patterned } from '../drawing/fill-pattern.ts';
import { balloon } from '../drawing/marks.ts';
import type { Drawing, Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { type ChartKey, chartKeys, otherLook } from './chart-keys.ts';
import { dayName, wattHours } from './day-name.ts';
import { countedAt, orNothing } from './energy-days.ts';

const nameMm = 3.6;
const smallMm = 3;
const gutter = { leftMm: 10.5, rightMm: 15.5 };
const bar = { beforeMm: 4, afterMm: 5, gapMm: 0.9 };
const balloonMm = 1.75;
const legendStepMm = 5.2;

interface Chart {
  readonly widthMm: number;
  readonly mmPerWh: number;
  readonly keys: readonly ChartKey[];
}

type Side = 'before' | 'after';

const words = (text: string, at: { xMm: number; yMm: number }, more: Partial<TextShape> = {}): TextShape => ({
  kind: 'text',
  text,
  ...at,
  sizeMm: smallMm,
  face: 'words',
  ink: 'ink',
  ...more,
});

/** Parts of a bar from left to right: the numbered units, then all others together. */
const partsOf = (day: EnergyDay, side: Side, keys: readonly ChartKey[]): { key?: ChartKey; wh: number }[] => {
  const whOf = new Map<string, number>();
  for (const { kit, [side]: taken } of day.byKit) whOf.set(kit, (whOf.get(kit) ?? 0) + (taken?.wh ?? 0));
  const numbered = keys.map((key) => ({ key, wh: whOf.get(key.kit) ?? 0 }));
  const all = [...whOf.values()].reduce((sum, wh) => sum + wh, 0);
  const rest = all - numbered.reduce((sum, { wh }) => sum + wh, 0);
  return [...numbered, { wh: rest }].filter(({ wh }) => wh > 1e-6);
};

const segment = (area: Area, key: ChartKey | undefined): Shape => {
  const wide = area.widthMm > 2 * balloonMm + 0.8;
  const middle = [area.leftMm + area.widthMm / 2, area.topMm + area.heightMm / 2] as const;
  return {
    kind: 'group',
    ...(key === undefined ? {} : { about: [key.kit] }),
    shapes: [
      ...patterned(area, key?.look ?? otherLook),
      ...(key === undefined || !wide
        ? []
        : balloon(middle, { number: key.number, radiusMm: balloonMm, filled: false, about: [key.kit] })),
    ],
  };
};

const barOf = (chart: Chart, day: EnergyDay, side: Side, topMm: number): Shape[] => {
  const heightMm = side === 'before' ? bar.beforeMm : bar.afterMm;
  const lineMm = topMm + heightMm / 2 + smallMm * 0.33;
  let leftMm = gutter.leftMm;
  const segments = partsOf(day, side, chart.keys).map(({ key, wh }) => {
    const area = { leftMm, topMm, widthMm: wh * chart.mmPerWh, heightMm };
    leftMm += area.widthMm;
    return segment(area, key);
  });
  const sumWh = side === 'before' ? day.whPerDayBefore : day.whPerDayAfter;
  return [
    words(side, { xMm: 0, yMm: lineMm }, { ink: 'quiet' }),
    ...segments,
    words(sumWh > 0 ? wattHours(sumWh) : 'nothing', { xMm: leftMm + 1.2, yMm: lineMm }),
  ];
};

interface Block {
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
}

/** One day: its name, what it takes in Ah, the bar before the refit and the bar after it. */
const dayBlock = (chart: Chart, boat: Boat, day: EnergyDay, topMm: number): Block => {
  const style = { sizeMm: nameMm, face: 'words', weight: 'semibold' } as const;
  const name = dayName(boat, day);
  const takes = `${orNothing(day.ahPerDayBefore)}, then ${orNothing(day.ahPerDayAfter)}${countedAt(day)}`;
  const lines = wrapText(name, style, chart.widthMm) ?? [name];
  const last = lines.at(-1) ?? '';
  const beside = textWidthMm(last, style) + textWidthMm(takes, { sizeMm: smallMm, face: 'words' }) + 3 < chart.widthMm;
  const lineMm = nameMm * 1.2;
  const headMm = lineMm * lines.length + (beside ? 0 : smallMm * 1.3);
  const beforeMm = topMm + headMm + 1.2;
  const afterMm = beforeMm + bar.beforeMm + bar.gapMm;
  return {
    shapes: [
      ...lines.map((text, at) => words(text, { xMm: 0, yMm: topMm + lineMm * (at + 0.8) }, style)),
      words(takes, { xMm: chart.widthMm, yMm: topMm + headMm - nameMm * 0.24 }, { anchor: 'end', ink: 'quiet' }),
      ...barOf(chart, day, 'before', beforeMm),
      ...barOf(chart, day, 'after', afterMm),
    ],
    heightMm: afterMm + bar.afterMm + 4.2 - topMm,
  };
};

/** What the numbers and patterns stand for, in as many columns as there is room. */
const legend = ({ keys, widthMm }: Chart, topMm: number): Block => {
  const columns = Math.max(1, Math.floor(widthMm / 78));
  const columnMm = widthMm / columns;
  const entries = [
    ...keys.map((key) => ({
      key,
      look: key.look,
      says: key.internet ? `${key.name}: satellite internet` : key.name,
    })),
    { key: undefined, look: otherLook, says: 'all others together' },
  ];
  let yMm = topMm;
  const shapes: Shape[] = [];
  for (let row = 0; row < entries.length; row += columns) {
    let lines = 1;
    for (const [at, { key, look, says }] of entries.slice(row, row + columns).entries()) {
      const xMm = at * columnMm;
      const wrapped = wrapText(says, { sizeMm: smallMm, face: 'words' }, columnMm - 17) ?? [says];
      lines = Math.max(lines, wrapped.length);
      const about = key === undefined ? {} : { about: [key.kit] };
      const box = { leftMm: xMm, topMm: yMm, widthMm: 9, heightMm: bar.beforeMm };
      const numbered =
        key === undefined
          ? []
          : balloon([xMm + 12, yMm + bar.beforeMm / 2], {
              number: key.number,
              radiusMm: balloonMm,
              filled: false,
              about: [key.kit],
            });
      const texts = wrapped.map((text, line) =>
        words(text, { xMm: xMm + 15, yMm: yMm + bar.beforeMm / 2 + smallMm * (0.33 + 1.25 * line) }),
      );
      shapes.push({ kind: 'group', ...about, shapes: [...patterned(box, look), ...numbered, ...texts] });
    }
    yMm += legendStepMm + (lines - 1) * smallMm * 1.25;
  }
  return { shapes, heightMm: yMm - topMm };
};

/**
 * What each kind of day takes, as bars to one scale: before the refit and after it, cut by the units that take most. Numbers
 * and patterns tell them apart without colour; in a light where all inks are one the patterns alone do.
 */
export const energyChart = ({
  boat,
  plan,
  widthMm,
  heading,
}: {
  boat: Boat;
  plan: Pick<Plan, 'energy'>;
  widthMm: number;
  /** written above it where it stands alone */
  heading?: string;
}): Drawing => {
  const mostWh = Math.max(
    1,
    ...plan.energy.flatMap(({ whPerDayBefore, whPerDayAfter }) => [whPerDayBefore, whPerDayAfter]),
  );
  const chart = { widthMm, keys: chartKeys(boat, plan), mmPerWh: (widthMm - gutter.leftMm - gutter.rightMm) / mostWh };
  const shapes: Shape[] = [];
  let topMm = 0.5;
  if (heading !== undefined) {
    shapes.push(words(heading, { xMm: 0, yMm: 5 }, { sizeMm: 5, weight: 'semibold' }));
    topMm = 10;
  }
  for (const day of plan.energy) {
    const block = dayBlock(chart, boat, day, topMm);
    shapes.push(...block.shapes);
    topMm += block.heightMm;
  }
  const key = legend(chart, topMm);
  return {
    title: heading ?? 'What each kind of day takes, before the refit and after it',
    widthMm,
    heightMm: topMm + key.heightMm + 0.5,
    shapes: [...shapes, ...key.shapes],
  };
};
