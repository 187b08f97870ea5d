import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { idForName, idOfName } from './id-of-name.ts';
import { idSchema } from './ids.ts';

const tern = aBoat().boat;

test('a name becomes small letters, digits and hyphens', () => {
  expect(idOfName('Möwe am Heck')).toBe('mowe-am-heck');
  expect(idOfName('2 m aft')).toBe('m-aft');
  expect(idOfName('skipper’s berth')).toBe('skippers-berth');
});

test('a name without a letter gives what stands in for it, and one that is taken a number', () => {
  expect(idForName(tern, '—', 'place')).toBe('place');
  expect(idForName(tern, 'helm', 'place')).toBe('helm-2');
});

test('whatever the name, the id is one', () => {
  fc.assert(
    fc.property(fc.string(), (name) => {
      expect(idSchema.safeParse(idForName(tern, name, 'new')).success).toBe(true);
    }),
  );
});
