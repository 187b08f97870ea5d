import { expect, test } from 'vitest';
import { spokenIn, type Words } from './spoken.ts';

const en = { close: 'close', left: (count: number) => `${count} left`, head: { of: 'Kit' } } as const;
const fr: Words<typeof en> = { close: 'fermer', left: (count) => `reste ${count}`, head: { of: 'Appareils' } };

test('a part that is written in a language speaks it, with its values', () => {
  const words = spokenIn('fr', { en, fr });
  expect([words.close, words.left(2), words.head.of]).toEqual(['fermer', 'reste 2', 'Appareils']);
});

test('a language of one country is spoken as that language', () => {
  expect(spokenIn('fr-CA', { en, fr }).close).toBe('fermer');
});

test('the types refuse a language that lacks a sentence or a value', () => {
  // @ts-expect-error nothing says `head`
  const short: Words<typeof en> = { close: 'fermer', left: (count) => `reste ${count}` };
  // @ts-expect-error a sentence with a value must stay one
  const flat: Words<typeof en> = { close: 'fermer', left: 'reste', head: { of: 'Appareils' } };
  expect([short.close, flat.close]).toEqual(['fermer', 'fermer']);
});

test('a part that is not written in a language speaks English', () => {
  expect(spokenIn('nl', { en, fr }).left(3)).toBe('3 left');
});
