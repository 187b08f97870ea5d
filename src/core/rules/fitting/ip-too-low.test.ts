import { describe, expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aHoledBoat, fitFindings, soundFit } from './fit-case.test-helper.ts';
import { ipTooLow } from './ip-too-low.ts';

const need = ['IPX6', 'IPX7'];

test('a dry place asks nothing, and a code that is enough passes', () => {
  expect(fitFindings(ipTooLow)).toEqual([]);
  expect(fitFindings(ipTooLow, { water: { need, has: 'IPX6/IPX7', enough: true } })).toEqual([]);
});

const byManual = (boat: Boat): Boat => ({
  ...boat,
  sheets: boat.sheets.map((sheet) => (sheet.id === 'small-display' ? { ...sheet, source: 'manual' } : sheet)),
});
const low = { water: { need, has: 'IP54', enough: false } };

test('a code that is too low is a fault that names both', () => {
  const [finding] = fitFindings(ipTooLow, low, { boat: byManual(aHoledBoat()) });
  expect(finding).toMatchObject({ level: 'fault', about: ['display', 'hole'] });
  expect(finding?.says).toMatch(/is IP54.*IPX6 and IPX7/);
});

test('what is usual for its kind is a doubt of what comes, and none of what hangs there', () => {
  const usual = (fate: 'comes' | 'stays') =>
    fitFindings(ipTooLow, low, {
      boat: aBoat()
        .with({ openings: aHoledBoat().openings ?? [] })
        .unit('display', { fate }).boat,
    });
  expect(usual('comes')).toMatchObject([{ level: 'doubt' }]);
  expect(usual('comes')[0]?.says).toContain('is usually IP54');
  expect(usual('stays')).toEqual([]);
});

test('a code nobody knows is a doubt of what comes, none of what hangs there', () => {
  const comes = aBoat()
    .with({ openings: aHoledBoat().openings ?? [] })
    .unit('display', { fate: 'comes' }).boat;
  const stays = aBoat()
    .with({ openings: aHoledBoat().openings ?? [] })
    .unit('display', { fate: 'stays' }).boat;
  expect(fitFindings(ipTooLow, { water: { need } }, { boat: comes })).toMatchObject([{ level: 'doubt' }]);
  expect(fitFindings(ipTooLow, { water: { need } }, { boat: stays })).toEqual([]);
});

describe('a unit in a housing of its own', () => {
  const found = (exposure: 'weather' | 'spray' | 'dry', sheet: Partial<Sheet>, boat = aBoat()) =>
    findingsOf(ipTooLow, {
      boat: boat
        .sheet('small-display', (own) => Object.assign(own, { source: 'manual', ...sheet }))
        .change(({ places }) => {
          for (const place of places) if (place.id === 'helm') place.exposure = exposure;
        }).boat,
      plan: { fits: [] },
    });

  test('is asked for jets in weather and in spray, for nothing below', () => {
    expect(found('weather', { ipCode: 'IP54' })).toMatchObject([{ level: 'fault', about: ['display'] }]);
    expect(found('spray', { ipCode: 'IPX7' })).toMatchObject([{ level: 'fault' }]);
    expect(found('weather', { ipCode: 'IPX6' })).toEqual([]);
    expect(found('dry', { ipCode: 'IP20' })).toEqual([]);
  });

  test('says nothing where nobody knows its code', () => {
    expect(found('weather', {})).toEqual([]);
  });

  test('is not spoken of twice, nor once it has gone', () => {
    const boat = aBoat().sheet('small-display', (own) => Object.assign(own, { source: 'manual', ipCode: 'IP54' }));
    const wet = boat.change(({ places }) => {
      for (const place of places) place.exposure = 'weather';
    });
    expect(findingsOf(ipTooLow, { boat: wet.boat, plan: { fits: [soundFit] } })).toEqual([]);
    expect(findingsOf(ipTooLow, { boat: wet.unit('display', { fate: 'goes' }).boat, plan: { fits: [] } })).toEqual([]);
  });
});
