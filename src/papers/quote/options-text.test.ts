import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { wiringsOf } from '../../core/joins/proposing/wirings.ts';
import { plan } from '../../core/plan.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import { wiredAs } from '../../core/quote/wired-as.ts';
import { type Option, optionRows, optionsText } from './options-text.ts';

const optionOf = (says: string, boat: Boat): Option => ({
  id: says,
  says,
  quote: quoteOf({ boat, plan: plan(boat, new Map()) }),
});
const tern = aBoat().boat;

test('stand cheapest first, each with its total, in 80 columns', () => {
  const dear = optionOf('dear', { ...tern, quote: { contingencyPct: 200 } });
  const cheap = optionOf('cheap', { ...tern, quote: { by: 'owner' } });
  expect(optionRows([dear, cheap]).map(({ what }) => what)).toEqual(['cheap', 'dear']);
  const text = optionsText([dear, cheap]);
  expect(text).toMatch(/- \d+\.\d\d EUR: cheap/);
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('each way to wire her is a whole boat: what it replaces goes and comes, and what it buys is aboard', () => {
  const wirings = [...wiringsOf(tern)];
  expect(wirings.length).toBeGreaterThan(1);
  for (const wiring of wirings) {
    const boat = wiredAs(tern, wiring);
    const comes = boat.kit.filter(({ fate }) => fate === 'comes').map(({ sheet }) => sheet);
    expect(comes).toEqual(expect.arrayContaining([...wiring.replaces, ...wiring.buys].map(({ sheet }) => sheet)));
    for (const { kit } of wiring.replaces) expect(boat.kit.find(({ id }) => id === kit)?.fate).toBe('goes');
    const { sums } = quoteOf({ boat, plan: plan(boat, new Map()) });
    const units = [...wiring.replaces, ...wiring.buys].reduce((sum, { cost }) => sum + cost, 0);
    expect(sums.parts).toBeGreaterThanOrEqual(units);
  }
});
