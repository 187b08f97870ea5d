import { describe, expect, it } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { checkedPlan } from '../../core/plan.ts';
import { overlaps, textBox, textsOf } from '../drawing/box.ts';
import { patterned } from '../drawing/fill-pattern.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { chartKeys } from './chart-keys.ts';
import { energyChart } from './energy-chart.ts';

const longNamed: Boat = aBoat()
  .unit('radio', { name: 'Old radio with a name that somebody wrote out in full, with its handset and its cradle' })
  .with({
    days: [
      {
        id: 'long',
        name: 'A day of which the name takes more room than one line has, at whatever width it is drawn',
        like: 'anchor',
        hours: [{ unit: 'radio', hours: 20 }],
      },
    ],
  }).boat;

const chartOf = (boat: Boat, widthMm: number) => energyChart({ boat, plan: checkedPlan(boat, new Map()), widthMm });

describe('the chart of a day', () => {
  it.each([80, 170])('keeps every word on the sheet and off every other, %d mm wide', (widthMm) => {
    const chart = chartOf(longNamed, widthMm);
    const boxes = textsOf(chart.shapes).map(textBox);
    for (const [at, box] of boxes.entries()) {
      expect(box.leftMm).toBeGreaterThanOrEqual(-0.01);
      expect(box.rightMm).toBeLessThanOrEqual(widthMm + 0.01);
      expect(box.bottomMm).toBeLessThanOrEqual(chart.heightMm);
      expect(boxes.slice(at + 1).filter((other) => overlaps(box, other))).toEqual([]);
    }
  });

  it('draws to one scale: the bar of a unit is as long as what it takes', () => {
    const boat = aBoat().boat;
    const plan = checkedPlan(boat, new Map());
    const day = plan.energy.find(({ when }) => when === 'under-way-night');
    const mostWh = Math.max(...plan.energy.map(({ whPerDayAfter }) => whPerDayAfter));
    const display = day?.byKit.find(({ kit }) => kit === 'display')?.after?.wh ?? 0;
    const widthMm = ((80 - 10.5 - 15.5) * display) / mostWh;
    const widths = energyChart({ boat, plan, widthMm: 80 }).shapes.flatMap((shape) => {
      const [first] = shape.kind === 'group' && shape.about?.includes('display') === true ? shape.shapes : [];
      const xs = first?.kind === 'path' ? [...first.d.matchAll(/[ML]([\d.]+)/g)].map(([, x]) => Number(x)) : [];
      return xs.length === 0 ? [] : [Math.max(...xs) - Math.min(...xs)];
    });
    expect(widths.some((each) => Math.abs(each - widthMm) < 0.02)).toBe(true);
  });

  it('tells units apart by number and pattern, not by colour', () => {
    const boat = aBoat().boat;
    const keys = chartKeys(boat, checkedPlan(boat, new Map()));
    expect(keys.map(({ number }) => number)).toEqual(keys.map((_, at) => at + 1));
    const area = { leftMm: 0, topMm: 0, widthMm: 9, heightMm: 4 };
    const looks = keys.map(({ look }) => JSON.stringify(patterned(area, { ...look, ink: 'ink' })));
    expect(new Set(looks).size).toBe(keys.length);
    expect(keys.slice(0, 2).map(({ kit }) => kit)).toEqual(['radio', 'display']);
  });

  it('numbers a satellite terminal first, and says what it is', () => {
    const { boat } = aBoat().sheet('fixed-radio', (sheet) => {
      sheet.kind = 'satellite-terminal';
    });
    const plan = checkedPlan(boat, new Map());
    expect(chartKeys(boat, plan)[0]).toMatchObject({ kit: 'radio', number: 1, internet: true });
    const said = textsOf(energyChart({ boat, plan, widthMm: 80 }).shapes).map(({ text }) => text);
    expect(said).toContain('Old radio: satellite internet');
  });

  it('is the same file for the same boat', () => {
    expect(toSvg(chartOf(longNamed, 170), 'paper')).toBe(toSvg(chartOf(longNamed, 170), 'paper'));
    expect(toSvg(chartOf(longNamed, 170), 'night')).not.toBe(toSvg(chartOf(longNamed, 170), 'paper'));
  });
});
