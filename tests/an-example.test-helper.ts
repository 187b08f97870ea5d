import { readFileSync } from 'node:fs';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { frozen } from '../src/core/boat/frozen.test-helper.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';

const known = new Map<string, Boat>();

const asInFile = (name: string): Boat =>
  readBoat(readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8'));

/** A demo boat by its name, as its file stands; the very same one for all tests of a worker, so that none can be changed in place. */
export const anExample = (name: string): Boat => {
  const boat = known.get(name) ?? frozen(asInFile(name));
  known.set(name, boat);
  return boat;
};
