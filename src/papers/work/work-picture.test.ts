import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { aPhase, aWork } from '../../core/work/a-work.test-helper.ts';
import type { PhaseWork } from '../../core/work-shape.ts';
import { overlaps, textBox, textsOf } from '../drawing/box.ts';
import type { GroupShape, Shape } from '../drawing/shapes.ts';
import { jobNumbers } from './job-numbers.ts';
import type { PictureInput } from './picture-input.ts';
import { workAxes } from './work-axis.ts';
import { workNames } from './work-names.ts';
import { workPicture, workStrips } from './work-picture.ts';

const inputOf = (phases: readonly PhaseWork[] = aWork().phases): PictureInput => ({
  names: workNames(aBoat().boat, emptyPlan),
  phases,
  numbers: jobNumbers({ phases: [...phases] }),
  done: new Set(['survey']),
});

const groupsOf = (shapes: readonly Shape[]): GroupShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...groupsOf(shape.shapes)] : []));

const labelsOf = (input: PictureInput): string[] =>
  groupsOf(workPicture(input).days.shapes).flatMap(({ label }) => label ?? []);

test('every job that is done by somebody stands on the rope of each who does it, and says when and by whom', () => {
  const labels = labelsOf(inputOf());
  expect(labels).toContain('2. Look at what is aboard, and photograph it, Mon 5 Apr 09:00, 3 h, the owner, done');
  expect(labels.filter((label) => label.startsWith('6. Mount'))).toHaveLength(2);
  expect(labels.some((label) => label.includes('Note what was really done'))).toBe(false);
});

test('a lane tells when its function is dark, and that another is lit throughout', () => {
  const labels = labelsOf(inputOf());
  expect(labels).toContain('depth: dark from Mon 5 Apr to Tue 6 Apr, 21.5 h');
  expect(labels).toContain('VHF with its antenna: lit throughout');
});

test('where there is no order nothing is said to be lit', () => {
  const { order: _, ...bare } = aPhase();
  const stuck = { why: 'too-few-days' as const, jobs: [], functions: [], relax: [] };
  expect(labelsOf(inputOf([{ ...bare, stuck }])).filter((label) => label.includes('lit'))).toEqual([]);
});

test('what is to be ordered stands at its last day, and what should have been ordered before the first day stands there', () => {
  const phase = aPhase();
  const job = phase.jobs[0]?.id ?? '';
  const ordered = (item: string, day: number) => ({ item, job, wantedOn: 4, leadDays: 4 - day, day });
  const orderBy = [ordered('plotter', 2), ordered('screws', 2), ordered('cable', -3)];
  const labels = labelsOf(inputOf([{ ...phase, orderBy }]));
  expect(labels.filter((label) => label.startsWith('to order'))).toEqual([
    'to order by Wed 7 Apr: plotter, screws',
    'to order before Mon 5 Apr: cable',
  ]);
  expect(labelsOf(inputOf([{ ...phase, orderBy: [] }])).some((label) => label.startsWith('to order'))).toBe(false);
});

test('an hour later lies further right, through nights, days of rest and phases', () => {
  const later = { ...aPhase(), phase: 2 };
  const [axis] = workAxes([aPhase(), later], { dayMm: 30, widthMm: Number.POSITIVE_INFINITY });
  const spots = [1, 2].flatMap((phase) =>
    [0, 1, 2, 3, 4].flatMap((day) => [0, 8, 16, 40].map((slot) => axis?.xOf({ phase, day, slot }) ?? Number.NaN)),
  );
  for (const [at, xMm] of spots.slice(1).entries()) expect(xMm).toBeGreaterThan(spots[at] ?? Number.NaN);
});

test('many days in a row on which nothing is done take the room of one', () => {
  const phase = aPhase();
  const days = Array.from({ length: 30 }, (_, day) => ({ ...(phase.days[0] ?? { day }), day })) as PhaseWork['days'];
  const [order] = phase.order === undefined ? [] : [phase.order];
  const starts = (order?.starts ?? []).map((start) => (start.day === 4 ? { ...start, day: 25, lastDay: 25 } : start));
  const spread = {
    ...phase,
    days,
    order: order === undefined ? undefined : { ...order, starts, cost: { ...order.cost, lastDay: 25 } },
  };
  const [axis] = workAxes([spread as PhaseWork], { dayMm: 30, widthMm: Number.POSITIVE_INFINITY });
  expect(axis?.columns.map(({ day, lastDay }) => [day, lastDay])).toEqual([
    [0, 0],
    [1, 1],
    [2, 2],
    [3, 24],
    [25, 25],
  ]);
});

test('strips of a page show every day once, and no words on them overlap', () => {
  const strips = workStrips(inputOf(), 100);
  expect(strips.length).toBeGreaterThan(1);
  const all = strips.flatMap(({ shapes }) => textsOf(shapes).map(({ text }) => text));
  for (const day of ['Mon 5 Apr', 'Tue 6 Apr', 'Wed 7 Apr', 'Fri 9 Apr'])
    expect(all.filter((text) => text === day)).toHaveLength(1);
  for (const { shapes } of strips) {
    const boxes = textsOf(shapes).map(textBox);
    for (const [at, one] of boxes.entries())
      expect(boxes.slice(at + 1).some((other) => overlaps(one, other))).toBe(false);
  }
});
