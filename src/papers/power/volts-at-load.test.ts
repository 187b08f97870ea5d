import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { textsOf } from '../drawing/box.ts';
import { boatSheet } from '../sheet/boat-sheet.ts';
import { unitVolts, voltsAtLoad } from './volts-at-load.ts';

const planOf = (boat: Boat) => plan(boat, new Map());
const { boat } = aBoat();
const planned = planOf(boat);
const saysOf = (step: 'lines' | 'power', of = boat, plans = planned): string =>
  textsOf(boatSheet({ boat: of, plan: plans, widthMm: 420, heightMm: 297, step }).drawing.shapes)
    .map(({ text }) => text)
    .join('\n');

test('every unit that draws has the volts of the one solve at its plug', () => {
  const at = new Map(planned.supplies.flatMap((supply) => supply.at).map(({ node, volts }) => [node, volts]));
  const volts = unitVolts(planned);
  expect(volts.get('display')).toBe(
    `${Math.min(at.get('display.dc') ?? 99, at.get('display.n2k') ?? 99).toFixed(2)} V`,
  );
  for (const load of planned.loads.filter(({ source }) => source.by === 'circuit')) {
    expect(voltsAtLoad(planned, load)).toBe(at.get(load.port));
  }
});

test('a unit of two plugs that is short at one is said to be short, whatever the other has', () => {
  const needy = aBoat().sheet('small-display', (sheet) => {
    for (const power of sheet.power ?? []) if (power.port === 'dc') power.minV = 11.79;
  }).boat;
  expect(unitVolts(planOf(needy)).get('display')).toMatch(/^1\d\.\d\d V, too few$/);
});

test('what nothing feeds has no volts', () => {
  const bare = aBoat().change((draft) => {
    for (const panel of draft.supply.panels) panel.circuits = [];
  }).boat;
  expect(unitVolts(planOf(bare)).size).toBe(0);
});

test('on the boat drawing of the power step each unit has its volts in figures, and what they are is said; at no other', () => {
  const says = saysOf('power');
  for (const volts of new Set(unitVolts(planned).values())) expect(says).toContain(`, ${volts}`);
  expect(says).toContain('Volts at each unit are with everything drawing');
  expect(saysOf('lines')).not.toMatch(/, 1\d\.\d\d V/);
});

test('the strip of the power step shows the same volts as the units on it', () => {
  const at = planned.supplies.flatMap((supply) => supply.at).find(({ node }) => node === 'gnss.n2k');
  expect(saysOf('power').split('\n')).toContain(at?.volts.toFixed(2));
});
