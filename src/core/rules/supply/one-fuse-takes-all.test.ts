import { expect, test } from 'vitest';
import { oneFuseTakesAll } from './one-fuse-takes-all.ts';
import { converter, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

/** The Tern with her display, radio and bus on circuits as given. */
const fed = (...circuits: string[][]) =>
  withSupply((_, panel) => {
    panel.circuits = circuits.map((feeds, at) => ({ id: `c${at}`, ratingA: 10, kind: 'fuse', feeds }));
  });

test('each on its own circuit passes, though each is the last of its kind', () => {
  expect(supplyFindings(oneFuseTakesAll, fed(['display.dc'], ['radio.dc'], ['nav']))).toEqual([]);
});

test('radio, position and screen on one fuse is a fault, two of the three a doubt', () => {
  expect(supplyFindings(oneFuseTakesAll, fed(['display.dc', 'radio.dc', 'nav']))).toMatchObject([
    { level: 'fault', about: ['c0', 'main-panel'], measured: { value: 3 } },
  ]);
  expect(supplyFindings(oneFuseTakesAll, fed(['display.dc', 'radio.dc'], ['nav']))).toMatchObject([
    { level: 'doubt', measured: { value: 2 } },
  ]);
});

test('a second screen elsewhere mends two of the three', () => {
  const second = withSupply((_, panel, boat) => {
    const display = boat.kit.find(({ id }) => id === 'display');
    if (display !== undefined) boat.kit.push({ ...display, id: 'second', name: 'Second display' });
    panel.circuits = [
      { id: 'c0', ratingA: 10, kind: 'fuse', feeds: ['display.dc', 'radio.dc'] },
      { id: 'c1', ratingA: 10, kind: 'fuse', feeds: ['nav', 'second.dc'] },
    ];
  });
  expect(supplyFindings(oneFuseTakesAll, second)).toEqual([]);
});

test('a circuit counts with the panel and the converter behind it, and a ring ends', () => {
  const behind = withSupply((_, panel, boat) => {
    panel.circuits = [{ id: 'c0', ratingA: 10, kind: 'fuse', feeds: ['conv'] }];
    boat.supply.dcdc.push(converter('conv'));
    boat.supply.panels.push(subPanel('low', 'conv', ['display.dc', 'lower']));
    boat.supply.panels.push(subPanel('lower', 'low', ['radio.dc', 'nav', 'low']));
  });
  expect(supplyFindings(oneFuseTakesAll, behind)).toContainEqual(
    expect.objectContaining({ level: 'fault', about: ['c0', 'main-panel'] }),
  );
});
