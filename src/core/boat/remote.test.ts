import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holders, kitRemoteSchema } from './remote.ts';

test('what is known of the remote side of a unit is read', () => {
  const said = { writes: 'listen-only', password: 'changed', heldBy: ['owner', 'yard'], guests: 'air' };
  expect(kitRemoteSchema.parse(said)).toEqual(said);
});

test.each([
  { password: 'hunter2' },
  { password: 'changed', passwordIs: 'x' },
  { secret: 'x' },
  { heldBy: ['x9-kettle-41'] },
  { heldBy: [] },
  { writes: 'perhaps' },
])('%j is refused', (said) => {
  expect(kitRemoteSchema.safeParse(said).success).toBe(false);
});

test('no text but the words of the schema gets into the password or who holds it', () => {
  const words = new Set<string>([...holders, 'changed', 'default', 'none', 'unknown']);
  fc.assert(
    fc.property(
      fc.string().filter((text) => !words.has(text)),
      (text) =>
        !kitRemoteSchema.safeParse({ password: text }).success &&
        !kitRemoteSchema.safeParse({ heldBy: [text] }).success,
    ),
  );
});
