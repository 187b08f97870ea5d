import { join } from 'node:path';
import { expect, test } from 'vitest';
import { paperFolders } from './paper-folders.ts';

test('boats of one name get folders of their own, on every disk', () => {
  const files = ['a/tern.boat.json', 'b/Tern.boat.json', 'b/tern-2.boat.json', 'skua.json'];
  expect([...paperFolders(files, 'out').values()]).toEqual(
    ['tern', 'Tern-2', 'tern-2-2', 'skua'].map((name) => join('out', name)),
  );
});
