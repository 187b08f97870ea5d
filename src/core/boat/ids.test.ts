import { expect, test } from 'vitest';
import { aFullBoat } from './full-boat.test-helper.ts';
import type { EditCall } from './history.ts';
import { applyEdits } from './history.ts';
import { startHistory } from './start-history.ts';

const line = '__proto__';
const asLine: readonly EditCall[] = [
  { edit: 'give-labels', params: { lines: ['a-line', line] } },
  { edit: 'pin-route', params: { line, ways: [], state: 'fixed' } },
  { edit: 'pin-wire', params: { line, areaMm2: 4, state: 'fixed' } },
  { edit: 'pin-coax', params: { line, as: { kind: 'rg-58c-u', state: 'fixed' } } },
  { edit: 'pin-pieces', params: { line, pieces: [{ mm: 1000 }], state: 'fixed' } },
];

test.each(asLine)('what a boat file refuses to be read with is no line for $edit either', (call) => {
  expect(() => applyEdits(startHistory(aFullBoat()), [call])).toThrow('Nothing in a boat file is called "__proto__".');
});
