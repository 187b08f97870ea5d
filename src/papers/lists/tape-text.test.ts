import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { tapeText } from './tape-text.ts';

const { boat } = aBoat();
const planned = plan(boat, new Map());
const withLayout = (layout: Partial<Plan['buses'][number]['layout']>): Plan => ({
  ...planned,
  buses: planned.buses.map((bus) => ({ ...bus, layout: { ...bus.layout, ...layout } })),
});
const said = (layout: Partial<Plan['buses'][number]['layout']>): string =>
  tapeText(boat, withLayout(layout)).replaceAll(/\s+/g, ' ');

test('what another layout could have saved is a sum: 12.50 where the bound lies that much lower', () => {
  const told = said({ status: 'pinned', cost: 20_000_000, bound: 18_750_000 });
  expect(told).toContain('Another layout could have saved 12.50 EUR at most by the lengths as entered.');
});

test('a proven layout could not have been bettered; one that was never compared says so in place of a sum', () => {
  expect(said({ status: 'proven', cost: 5, bound: 5 })).toContain('No other layout is cheaper');
  const unknown = said({ status: 'pinned', cost: 20_000_000, bound: 0 });
  expect(unknown).toContain('Not compared with others: the layout of');
  expect(unknown).not.toContain('could have saved');
});
