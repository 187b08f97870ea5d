import { expect, test } from 'vitest';
import { stepOfKey } from './undo-keys.ts';

const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
const ctrl = { ...none, ctrlKey: true };
const command = { ...none, metaKey: true };

test.each([
  ['Ctrl+Z', { ...ctrl, key: 'z' }, 'undo'],
  ['the command key and Z', { ...command, key: 'z' }, 'undo'],
  ['Ctrl+Shift+Z', { ...ctrl, shiftKey: true, key: 'Z' }, 'redo'],
  ['the command key, Shift and Z', { ...command, shiftKey: true, key: 'z' }, 'redo'],
  ['Ctrl+Y', { ...ctrl, key: 'y' }, 'redo'],
  ['Z alone', { ...none, key: 'z' }, undefined],
  ['Ctrl+Alt+Z', { ...ctrl, altKey: true, key: 'z' }, undefined],
  ['the command key and Y, which opens a list in some browsers', { ...command, key: 'y' }, undefined],
  ['Ctrl+S', { ...ctrl, key: 's' }, undefined],
])('%s', (_, event, step) => {
  expect(stepOfKey(event)).toBe(step);
});
