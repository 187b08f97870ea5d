import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { plan } from '../../core/plan.ts';
import { pullChoices, pulledOut } from './pull-out.ts';

const { boat } = aBoat();
const index = indexBoat(boat);
const planned = plan(boat, new Map());

describe('what is pulled out', () => {
  test('takes readings off each screen, and names the vital ones with what is at hand', () => {
    const out = pulledOut(index, planned, { fails: 'gnss', how: 'unit' });
    expect(out?.what).toBe('GNSS on the stern rail');
    expect(out?.screens).toEqual([
      { at: 'display', name: 'Helm display', sure: ['position'], perhaps: [] },
      { at: 'radio', name: 'Old radio', sure: ['position'], perhaps: [] },
    ]);
    expect(out?.vitals.map(({ of, perhaps }) => [of, perhaps])).toEqual([['position', false]]);
    expect(out?.vitals[0]?.carry).toContain('chart');
    expect(out?.dark).toEqual([]);
  });

  test('that only may go is said to, with its bus', () => {
    const [end] = planned.blackouts
      .flatMap((entry) => [entry, ...(entry.also ?? [])])
      .filter(({ how }) => how === 'terminator');
    const out = pulledOut(index, planned, { fails: end?.fails ?? '', how: 'terminator' });
    expect(out?.doubtful).toEqual(['Navigation bus']);
    expect(out?.screens.every(({ sure, perhaps }) => sure.length === 0 && perhaps.length > 0)).toBe(true);
  });

  test('that the plan does not know is nothing', () => {
    expect(pulledOut(index, planned, { fails: 'nobody', how: 'unit' })).toBeUndefined();
  });
});

describe('what can be pulled out', () => {
  const choices = (...ids: string[]): string[] =>
    pullChoices(index, planned, ids).map(({ how, fails }) => `${how} ${fails}`);

  test('of a unit is the unit first, then its fuse, its tee and its cables', () => {
    const [first, ...others] = choices('display');
    expect(first).toBe('unit display');
    expect(others).toEqual(
      expect.arrayContaining(['fuse main-panel.helm-circuit', 'tee nav/display.n2k', 'line drop:display.bus~nav']),
    );
  });

  test('of a cable is the cable, and the way it lies in where that is picked with it', () => {
    expect(new Set(choices('drop:gnss.bus~nav', 'locker-stern').slice(0, 2))).toEqual(
      new Set(['line drop:gnss.bus~nav', 'way locker-stern']),
    );
  });

  test('of a circuit is its fuse; of the empty sheet nothing', () => {
    expect(choices('helm-circuit')[0]).toBe('fuse main-panel.helm-circuit');
    expect(choices()).toEqual([]);
  });
});
