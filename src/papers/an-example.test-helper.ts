import { readFileSync } from 'node:fs';
import type { Boat } from '../core/boat/boat-schema.ts';
import { readBoat } from '../core/boat/read-boat.ts';

/** A demo boat by its name, as its file stands. */
export const anExample = (name: string): Boat =>
  readBoat(readFileSync(new URL(`../../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8'));
