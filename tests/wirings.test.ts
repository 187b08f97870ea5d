import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { wiringCount, wiringsOf } from '../src/core/joins/proposing/wirings.ts';
import { wiringsText } from '../src/papers/lists/wirings-text.ts';

const sandpiper = readBoat(
  readFileSync(resolve(import.meta.dirname, '../examples/sandpiper/sandpiper.boat.json'), 'utf8'),
);
const wirings = [...wiringsOf(sandpiper)];
const byId = new Map(wirings.map((wiring) => [wiring.id, wiring]));

test('keeping the old heads of the Sandpiper takes one multiplexer, and loses nothing', () => {
  const keep = byId.get('keep');
  expect(keep?.buys.map(({ sheet }) => sheet)).toEqual(['multiplexer-bus']);
  expect(keep).toMatchObject({ proven: true, misses: [] });
});

test('replacing them costs more, and says what it leaves out', () => {
  const [keep, replace] = [byId.get('keep'), byId.get('replace')];
  expect(replace?.cost ?? 0).toBeGreaterThan(keep?.cost ?? 0);
  expect(replace?.replaces.map(({ kit }) => kit)).toEqual(['log-depth', 'vhf', 'wind-display']);
  expect(replace?.misses.map(({ reading, at }) => `${reading} ${at}`)).toEqual(['wind-apparent pilot']);
});

test('each way counts every unit it buys, and is proved', () => {
  expect(wirings).toHaveLength(wiringCount(sandpiper));
  for (const { cost, bound, buys, replaces, proven } of wirings) {
    const units = [...buys, ...replaces].reduce((sum, one) => sum + one.cost, 0);
    expect(cost).toBeGreaterThanOrEqual(units);
    expect(bound).toBe(cost);
    expect(proven).toBe(true);
  }
});

test('the terminal is told the one that loses least for least money first', () => {
  const text = wiringsText(sandpiper, wirings);
  expect(text.split('\n').every((line) => line.length <= 80)).toBe(true);
  expect(text.indexOf('294.14 EUR')).toBeGreaterThan(0);
  expect(text.indexOf('294.14 EUR')).toBeLessThan(text.indexOf('Replace'));
});

test('a boat without old kit has nothing to compare', () => {
  const none = { ...aBoat().boat, kit: aBoat().boat.kit.filter(({ fate }) => fate !== 'stays'), needs: [], joins: [] };
  expect([...wiringsOf(none)]).toEqual([]);
  expect(wiringCount(none)).toBe(0);
  expect(wiringsText(none, [])).toContain('nothing to compare');
});
