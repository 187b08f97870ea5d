import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { bankCautions, wiringCautions } from './caution-words.ts';
import { whatIsMissing } from './what-is-missing.ts';

const idsOf = (cautions: readonly { readonly id: string }[]): string[] => cautions.map(({ id }) => id);
const withBank = (chemistry: 'agm' | 'lifepo4') =>
  aBoat().change((draft) => {
    for (const bank of draft.supply.banks) bank.chemistry = chemistry;
  }).boat;

test('at a bank: disconnecting and insulating, the energy of a short circuit, and lithium only where it is aboard', () => {
  const agm = bankCautions(plan(withBank('agm'), new Map()));
  expect(idsOf(agm)).toEqual(['battery-short', 'short-energy', 'stray']);
  expect(agm[0]).toMatchObject({ title: 'Battery short circuit', decides: expect.stringContaining('33 CFR') });
  expect(idsOf(bankCautions(plan(withBank('lifepo4'), new Map())))).toContain('lithium');
});

test('a boat without a bank has nothing to caution of at it', () => {
  expect(bankCautions({ banks: [] })).toEqual([]);
});

test('where wires are joined: petrol vapour, who may do the work, and what a plan is not', () => {
  expect(idsOf(wiringCautions())).toEqual(['petrol', 'licence', 'limits']);
  expect(wiringCautions()[0]?.says).toContain('ignition protected');
});

test('what is missing is told one thing at a time: bank, panel, circuit, nothing', () => {
  const { supply } = aBoat().boat;
  expect(whatIsMissing({ supply: { ...supply, banks: [] } })).toContain('No battery bank');
  expect(whatIsMissing({ supply: { ...supply, panels: [] } })).toContain('No panel');
  const bare = { ...supply, panels: supply.panels.map((panel) => ({ ...panel, circuits: [] })) };
  expect(whatIsMissing({ supply: bare })).toContain('no circuit yet');
  expect(whatIsMissing({ supply })).toBeUndefined();
});
