import type { Boat } from '../boat-schema.ts';

/** What a photo is of, by its name where it has one. */
export const photographed = ({ kit, places, openings = [] }: Boat, of: string): string =>
  [...kit, ...places, ...openings].find(({ id }) => id === of)?.name ?? of;
