import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { plan } from '../../core/plan.ts';
import { wiresWords, wireWords } from './wire-words.ts';

test('the wires of a pair stand in one line, by the marks of both ends', () => {
  const { boat } = aBoat();
  const line = plan(boat, new Map()).lines.find(({ kind }) => kind === 'pair');
  expect(line === undefined ? '' : wiresWords(indexBoat(boat), line)).toBe(
    'from Converter for the old radio (wires): A (white) to A (white); B (green) to B (green)',
  );
});

test('a wire that stays open says so, and a mark nobody entered is to be looked up', () => {
  const from = { end: 'a.x', port: 'out', role: 'A' } as const;
  expect(wireWords({ from: { ...from, role: 'B', label: 'TX-', colour: 'brown' } })).toBe(
    'TX- (brown) stays open, insulated',
  );
  expect(wireWords({ from, to: { end: 'b.y', port: 'in', role: 'A', label: 'in A', colour: 'as marked' } })).toBe(
    'A (look up its mark) to in A',
  );
  expect(wireWords({ from: { ...from, role: 'common' }, to: { end: 'b.y', port: 'in', role: 'B' } })).toBe(
    'common (look up its mark) to B (look up its mark)',
  );
});
