import { describe, expect, it } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { checkedPlan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { overlaps, textBox, textsOf } from '../drawing/box.ts';
import { radarSays } from './aerial-words.ts';
import { antennaList } from './antenna-list.ts';
import { antennaRows } from './antenna-rows.ts';
import { antennasText } from './antennas-text.ts';
import { coaxList } from './coax-list.ts';
import { arcPoints, sectorSpan } from './polar-arc.ts';
import { polarPicture } from './polar-picture.ts';

const boat = anExample('bonxie');
const plan = checkedPlan(boat, new Map());
const names = cardBoat(boat);

describe('what is said of antennas', () => {
  it('tells both sums of a run, the watts that arrive and how far that reaches', () => {
    const row = antennaRows(names, plan).find(({ key }) => key === 'vhf-1-ant');
    const says = row?.more.join(' ');
    expect(row?.fact).toMatch(/^Its tip is [\d.]+ m over the water, its horizon [\d.]+ nm off\.$/);
    expect(says).toMatch(/Low-loss foam 15 mm \(as the plan picks it\), up to 44\.15 m with 4 joints/);
    expect(says).toMatch(/of 25 W [\d.]+ W arrive with sound joints \([\d.]+ dB\), [\d.]+ W with weathered ones/);
    expect(says).toMatch(/By geometry at best [\d.]+ nm to a small boat/);
    expect(row?.lights).toContain('coax:vhf-1-ant.coax~vhf-1.antenna');
  });

  it('tells of a radar what it does not see and what to blank', () => {
    const says = radarSays(names, plan, 'radar-x').join(' ');
    expect(says).toMatch(/sees nothing nearer than 65\.\d+ m/);
    expect(says).toMatch(/shadows \d+° to \d+°; blank \d+° to \d+°/);
    expect(says).toMatch(/heeled 20° the horizon is out of its beam from 38° to 142°/);
  });

  it('keeps to eighty columns at the terminal', () => {
    const lines = antennasText(boat, plan);
    expect(lines[0]).toBe('ANTENNAS AND COAX');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('lists every run and every antenna once', () => {
    expect(coaxList(boat, plan).rows).toHaveLength(plan.coax.length);
    const listed = antennaList(boat, plan).rows.length;
    expect(listed).toBe(plan.sites.filter(({ aerial, radar }) => aerial !== undefined || radar !== undefined).length);
  });
});

describe('the picture of a radar', () => {
  it.each(['radar-x', 'radar-2'])('keeps every word of %s on the sheet and off every other', (unit) => {
    const picture = polarPicture({ boat, plan, names, unit, widthMm: 80 });
    const boxes = textsOf(picture?.shapes ?? []).map(textBox);
    expect(boxes.length).toBeGreaterThan(12);
    for (const [at, box] of boxes.entries()) {
      expect(box.leftMm).toBeGreaterThanOrEqual(-0.01);
      expect(box.rightMm).toBeLessThanOrEqual(80.01);
      expect(box.bottomMm).toBeLessThanOrEqual(picture?.heightMm ?? 0);
      expect(boxes.slice(at + 1).filter((other) => overlaps(box, other))).toEqual([]);
    }
  });

  it('is there for radars only', () => {
    expect(polarPicture({ boat, plan, names, unit: 'vhf-1-ant', widthMm: 80 })).toBeUndefined();
  });

  it('draws an arc over the bow the short way', () => {
    const points = arcPoints([0, 0], 10, { fromDeg: 350, toDeg: 10 });
    expect(sectorSpan({ fromDeg: 350, toDeg: 10 })).toBe(20);
    expect(Math.max(...points.map(([, yMm]) => yMm))).toBeLessThan(-9.8);
  });
});
