import { freeId } from './every-id.ts';

/**
 * A name made into an id: small letters and digits joined by hyphens, beginning with a letter; empty where the name has none.
 *
 * @example idOfName('Möwe am Heck') // 'mowe-am-heck'
 */
export const idOfName = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\p{M}’']/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+/, '')
    .slice(0, 48)
    .replace(/-+$/, '');

/** An id for something new, from its name, that nothing in the boat has; `otherwise` where the name gives none. */
export const idForName = (boat: Parameters<typeof freeId>[0], name: string, otherwise: string): string => {
  const id = idOfName(name);
  return freeId(boat, id === '' ? otherwise : id);
};
