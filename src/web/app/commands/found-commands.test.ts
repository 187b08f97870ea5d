import { expect, test } from 'vitest';
import type { Command } from './command.ts';
import { commandStore } from './command-store.ts';
import { foundCommands } from './found-commands.ts';

const command = (id: string, given: Partial<Command> = {}): Command => ({
  id,
  group: 'change',
  says: id.replaceAll('-', ' '),
  run: () => undefined,
  ...given,
});
const all = [
  command('add-a-place'),
  command('undo', { foundBy: ['take back'] }),
  command('show-the-mast-place', { group: 'show' }),
  command('go-to-kit', { group: 'go' }),
];
const ids = (text: string) => foundCommands(all, text).map(({ id }) => id);

test('with nothing typed everything is there, by group', () => {
  expect(ids('')).toEqual(['go-to-kit', 'add-a-place', 'undo', 'show-the-mast-place']);
});

test('every word typed must begin a word of the command', () => {
  expect(ids('pla add')).toEqual(['add-a-place']);
  expect(ids('lace')).toEqual([]);
});

test('what begins with the word comes first, other words find it too', () => {
  expect(ids('place')).toEqual(['add-a-place', 'show-the-mast-place']);
  expect(ids('take')).toEqual(['undo']);
});

test('what is offered last of one name is the one there is, until it is withdrawn', () => {
  const store = commandStore();
  store.offer([command('undo', { says: 'first' })]);
  const withdraw = store.offer([command('undo', { says: 'second' })]);
  expect(store.all().map(({ says }) => says)).toEqual(['second']);
  withdraw();
  expect(store.all().map(({ says }) => says)).toEqual(['first']);
});
