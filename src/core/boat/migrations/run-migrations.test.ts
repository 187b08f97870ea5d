import { expect, test } from 'vitest';
import { UserError } from '../user-error.ts';
import { type Migration, runMigrations } from './run-migrations.ts';

const made: Migration[] = [
  {
    from: 2,
    title: 'A unit says its colour.',
    migrate: (data) => ({ ...data, colour: data.hue }),
  },
  {
    from: 1,
    title: 'Hue came in.',
    migrate: (data) => ({ ...data, hue: 'grey' }),
  },
];

test('an older file goes through every version to the newest, in order', () => {
  const data = runMigrations({ version: 1, name: 'Tern' }, { from: 1, to: 3, migrations: made });
  expect(data).toEqual({ version: 3, name: 'Tern', hue: 'grey', colour: 'grey' });
});

test('a file of the newest version stays as it is', () => {
  const data = { version: 3 };
  expect(runMigrations(data, { from: 3, to: 3, migrations: made })).toBe(data);
});

test('a version that never was is refused', () => {
  expect(() => runMigrations({ version: 0 }, { from: 0, to: 3, migrations: made })).toThrow(UserError);
});
