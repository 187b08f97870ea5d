import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { loadRows, loadSumRows } from './load-rows.ts';

const { boat } = aBoat().unit('radio', { fate: 'goes' }).unit('display', { fate: 'comes', phase: 1 });
const planned = plan(boat, new Map());
const rows = loadRows(cardBoat(boat), planned);
const rowOf = (port: string) => rows.find(({ key }) => key === port);

test('every port that draws before or after is a row once, in the order of the kit', () => {
  const ports = new Set([...planned.loads, ...planned.loadsBefore].map(({ port }) => port));
  expect(rows).toHaveLength(ports.size);
  expect(new Set(rows.map(({ key }) => key))).toEqual(ports);
  const order = rows.map(({ key }) => boat.kit.findIndex(({ id }) => key.startsWith(`${id}.`)));
  expect(order).toEqual([...order].sort((one, other) => one - other));
});

test('what goes has a draw before and none after, what comes the other way round', () => {
  expect(rowOf('radio.dc')).toMatchObject({ before: { mostA: 6 }, after: undefined, lowest: '' });
  expect(rowOf('radio.dc')?.fact).toContain('before 0.6 A typical, 6 A at most; goes ashore');
  expect(rowOf('display.dc')).toMatchObject({
    before: undefined,
    fedBy: 'panel main-panel, helm-circuit',
    needs: '10.8 V',
  });
});

test('the lowest volts are those of the plan’s solve, and too few of them are said to be short', () => {
  const volts = planned.supplies.flatMap(({ at }) => at).find(({ node }) => node === 'display.dc')?.volts;
  expect(rowOf('display.dc')?.lowest).toBe(`${volts?.toFixed(2)} V`);
  expect(rowOf('display.dc')?.isShort).toBe(false);
  const needy = aBoat().sheet('small-display', (sheet) => {
    for (const power of sheet.power ?? []) if (power.port === 'dc') power.minV = 11.79;
  }).boat;
  const short = loadRows(cardBoat(needy), plan(needy, new Map())).filter(({ isShort }) => isShort);
  expect(short.map(({ key }) => key)).toEqual(['display.dc']);
});

test('the sums stand by bank, before and after', () => {
  const sums = loadSumRows(cardBoat(boat), planned);
  expect(sums.map(({ source, phase }) => `${source} ${phase}`)).toEqual(['bank house before', 'bank house after']);
  const after = planned.loads.reduce((sum, { mostA }) => sum + mostA, 0);
  expect(Number.parseFloat(sums[1]?.most ?? '')).toBeCloseTo(after, 1);
});

test('with more phases than one each has its own sum', () => {
  const staged = aBoat().unit('display', { fate: 'comes', phase: 2 }).boat;
  const phases = loadSumRows(cardBoat(staged), plan(staged, new Map())).map(({ phase }) => phase);
  expect(phases).toEqual(['before', 'after phase 1', 'after phase 2']);
});
