import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { freeId } from '../../../../core/boat/every-id.ts';

/** An id for something new, from its name: small letters, digits and hyphens, and a number where it is taken. */
export const idFor = (boat: Boat, name: string): string => {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 48)
    .replace(/^[^a-z]+|-+$/g, '');
  return freeId(boat, plain === '' ? 'place' : plain);
};
