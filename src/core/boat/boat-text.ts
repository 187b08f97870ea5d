import type { Boat } from './boat-schema.ts';
import { keptFor } from './kept-for.ts';

const textOf = keptFor((part: object) => JSON.stringify(part));

/**
 * All of a boat, or of some of her parts, as text to know her by: equal texts mean equal boats. Each part is written once, so
 * after an edit only what it changed is.
 *
 * @example boatText({ name: 'Tern', needs: [] }) // 'name:"Tern"\nneeds:[]'
 */
export const boatText = (boat: Partial<Boat>): string =>
  Object.entries(boat)
    .map(([name, part]) => `${name}:${typeof part === 'object' ? textOf(part) : JSON.stringify(part)}`)
    .join('\n');
