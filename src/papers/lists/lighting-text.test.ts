import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import type { LightingEntry } from '../../core/lighting-shape.ts';
import { lightingText } from './lighting-text.ts';

const { boat } = aBoat();
const nameOf = (id: string): string => [...boat.kit, ...boat.places].find((entry) => entry.id === id)?.name ?? id;
const told = (...screens: LightingEntry['screens']): string =>
  lightingText(boat, { ...emptyPlan, findings: [], lighting: [{ place: 'helm', screens }] })
    .join(' ')
    .replaceAll(/\s+/g, ' ');

test('screens of one group dim together, and fall silent together where all do', () => {
  const both = `${nameOf('display')} and ${nameOf('radio')}`;
  const screen = (kit: string, quietens: boolean) => ({ kit, dims: 'with-group', group: 'display', quietens }) as const;
  expect(told(screen('display', true), screen('radio', true))).toContain(
    `${both} dim together and fall silent together.`,
  );
  expect(told(screen('display', true), screen('radio', false))).toContain(`${both} dim together.`);
});

test('knobs and groups nobody has named are told apart', () => {
  expect(told({ kit: 'display', dims: 'with-group' }, { kit: 'radio', dims: 'own-knob' })).toBe(
    `SCREENS IN THE DARK - ${nameOf('helm')}: a knob of its own: ${nameOf('radio')}; with others of its maker, not said which: ${nameOf('display')}.`,
  );
});

test('a boat whose sheets say nothing has no such part', () => {
  expect(lightingText(boat, { ...emptyPlan, findings: [] })).toEqual([]);
});
