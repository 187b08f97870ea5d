import { describe, expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { plan } from '../../plan.ts';
import { roundPlan } from '../../round-plan.ts';
import { boatFromPattern } from '../../starting/boat-from-pattern.ts';
import { aSteelBoat } from '../../steel-boat.test-helper.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { busDiagnosis, readingTestId } from './bus-diagnosis.ts';
import { busModel } from './bus-model.ts';
import { soundRanges } from './sound-ranges.ts';

const { boat } = aBoat();
const whole = plan(boat, new Map());
const { tests } = whole;
const of = (id: string): TestEntry => {
  const found = tests.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The sheet has no ${id}.`);
  return found;
};

describe('the sheet of tests at the dock', () => {
  test('names each test once, and only tests before it as those that come first', () => {
    const ids = tests.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [turn, { id, after = [], under, like }] of tests.entries())
      for (const first of [
        ...after,
        ...(under === undefined ? [] : [under.test]),
        ...(like === undefined ? [] : [like]),
      ])
        expect(ids.slice(0, turn), `${id} after ${first}`).toContain(first);
  });

  test('measures the feed of a converter at the converter itself, by its own id and at its place', () => {
    const workboat = boatFromPattern({ pattern: 'steel-workboat', name: 'Tern' });
    const { id, place } = workboat.supply.dcdc?.[0] ?? { id: '', place: '' };
    const feed = plan(workboat, new Map()).tests.find(
      ({ test: what, about }) => what === 'feed-volts' && about[1] === id,
    );
    expect(feed).toMatchObject({ place, kind: 'number', unit: 'V' });
  });

  test('measures every bus with the power off before anything on it has power', () => {
    const own = tests.filter(({ group }) => group === 'bus');
    const firstOn = own.findIndex(({ power }) => power === 'on');
    expect(own.slice(0, firstOn).map(({ test: what }) => what)).toContain('shield-to-ground');
    expect(own.slice(firstOn).filter(({ power, test: what }) => power === 'off' && what !== 'bus-dead')).toEqual([]);
    expect(own.at(firstOn)?.test).toBe('feed-polarity');
  });

  test('expects of each bus what its own length and devices give, near 60 ohm, and 120 with a terminator lifted', () => {
    const [bus] = whole.buses;
    const end = of(`dock/data-ohm:${bus?.id}:end-1`);
    expect(end.expect).toBeGreaterThan(58);
    expect(end.expect).toBeLessThan(60.5);
    expect(end.right?.least).toBeGreaterThan(54);
    expect(end.right?.most).toBeLessThan(65);
    expect(end.passes).toEqual({ least: 50, most: 70 });
    expect(of(`dock/lifted-ohm:${bus?.id}:end-2`).expect).toBeGreaterThan(115);
    expect(of(`dock/devices:${bus?.id}`).expect).toBe(bus?.devices);
  });

  test('lets the far end lie under the feed by what the solve loses, and by 1.5 V at the most', () => {
    const [bus] = whole.buses;
    const far = of(`dock/bus-volts:${bus?.id}:far`);
    const volts = new Map(whole.supplies.flatMap(({ at }) => at.map((one) => [one.node, one.volts])));
    const lost = (volts.get(bus?.id ?? '') ?? 0) - (volts.get(far.about[1] ?? '') ?? 0);
    expect(far.under?.rightV).toBeCloseTo(lost, 5);
    expect(far.under?.mostV).toBe(1.5);
  });

  test('looks for every reading that arrives, at each screen', () => {
    const shown = tests.filter(({ test: what }) => what === 'shown');
    expect(shown).toHaveLength(whole.readings.filter(({ arrives }) => arrives).length);
    expect(shown.length).toBeGreaterThan(0);
    expect(shown.every(({ place }) => place !== undefined)).toBe(true);
  });

  test('asks of a metal hull what its plus and minus show against it, with all off first, and of no other', () => {
    expect(tests.filter(({ group }) => group === 'hull')).toEqual([]);
    const steel = plan(aSteelBoat().boat, new Map()).tests.filter(({ group }) => group === 'hull');
    expect(steel.slice(0, 3).map(({ id }) => id)).toEqual([
      'dock/anode:before',
      'dock/plus-to-hull:off',
      'dock/minus-to-hull:off',
    ]);
    expect(steel.filter(({ right, passes }) => right !== undefined || passes !== undefined)).toEqual([]);
    expect(steel.filter(({ test: what }) => what === 'anode').map(({ like }) => like)).toEqual([
      undefined,
      'dock/anode:before',
      'dock/anode:after',
    ]);
  });

  test('has no figure finer than a plan shows', () => {
    expect(roundPlan(tests)).toEqual(tests);
  });

  test('is the same however the lists of the file are ordered', () => {
    const turned = { ...boat, kit: boat.kit.toReversed(), needs: boat.needs.toReversed() };
    expect(plan(turned, new Map()).tests).toEqual(tests);
  });
});

describe('a bus of a plan that reads wrong', () => {
  const [bus] = whole.buses;
  if (bus === undefined) throw new Error('The Tern has a bus.');
  const found = (values: Record<string, number | boolean>) => busDiagnosis(bus, (id) => values[id]);

  test('has no cause before anything is read, and a missing terminator once 120 ohm are', () => {
    expect(found({}).causes).toEqual([]);
    const { causes, next } = found({ 'dock/data-ohm:nav:end-1': 117, 'dock/data-ohm:nav:end-2': 117 });
    expect(['term-1', 'open-trunk']).toContain(causes[0]?.fault);
    expect(['lifted-ohm:end-1', 'lifted-ohm:end-2', 'devices']).toContain(next?.key);
  });

  test('is judged by readings that its sheet asks for, but for two that only a search wants', () => {
    const ids = new Set(tests.map(({ id }) => id));
    const keys = soundRanges(busModel(bus)).map(([key]) => key);
    expect(keys.filter((key) => !ids.has(readingTestId('nav', key)))).toEqual(['plug-ohm', 'steady']);
  });
});
