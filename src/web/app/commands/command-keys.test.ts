import { describe, expect, test } from 'vitest';
import type { Command } from './command.ts';
import { commandOfPress, isPressOf } from './command-keys.ts';

const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
const ctrl = { ...none, ctrlKey: true };
const command = { ...none, metaKey: true };

test.each([
  ['Ctrl+Z', 'Mod+Z', { ...ctrl, key: 'z' }, true],
  ['the command key and Z', 'Mod+Z', { ...command, key: 'z' }, true],
  ['both keys and Z', 'Mod+Z', { ...ctrl, metaKey: true, key: 'z' }, false],
  ['Ctrl+Shift+Z', 'Mod+Shift+Z', { ...ctrl, shiftKey: true, key: 'Z' }, true],
  ['Ctrl+Shift+Z, where Z without Shift is meant', 'Mod+Z', { ...ctrl, shiftKey: true, key: 'Z' }, false],
  ['Z alone', 'Mod+Z', { ...none, key: 'z' }, false],
  ['Ctrl+Alt+Z', 'Mod+Z', { ...ctrl, altKey: true, key: 'z' }, false],
  ['the command key and Y, which opens a list in some browsers', 'Ctrl+Y', { ...command, key: 'y' }, false],
  ['a question mark, with Shift or without', '?', { ...none, shiftKey: true, key: '?' }, true],
])('%s', (_, keys, press, isIt) => {
  expect(isPressOf(keys, press)).toBe(isIt);
});

describe('a press', () => {
  const undo: Command = { id: 'undo', group: 'change', says: 'undo', keys: ['Mod+Z'], run: () => undefined };

  test('is the command that has those keys', () => {
    expect(commandOfPress([undo], { ...ctrl, key: 'z' }, { closest: () => null })).toBe(undo);
    expect(commandOfPress([undo], { ...ctrl, key: 'x' }, { closest: () => null })).toBeUndefined();
  });

  test('belongs to what is being typed', () => {
    expect(commandOfPress([undo], { ...ctrl, key: 'z' }, { closest: () => ({}) })).toBeUndefined();
  });
});
