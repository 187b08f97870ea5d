import type { Rule } from '../rule.ts';

/** A unit drafted from a recording without a NAME is known by its address, which may be another one after the next start. */
export const knownByAddressOnly: Rule = {
  id: 'identities/known-by-address-only',
  level: 'doubt',
  title: 'Units taken from a recording have no NAME.',
  sources: ['messages-conflicts'],
  check: ({ index: { boat, sheetOf } }) => {
    const nameless = boat.kit.filter(
      ({ id, identity }) => identity === undefined && sheetOf.get(id)?.source === 'recording',
    );
    if (nameless.length === 0) return [];
    const names = nameless.slice(0, 3).map(({ name }) => name);
    const more = nameless.length > 3 ? ` and ${nameless.length - 3} more` : '';
    return [
      {
        about: nameless.map(({ id }) => id),
        says: `${nameless.length === 1 ? 'One unit' : `${nameless.length} units`} taken from a recording made no claim in it, so ${nameless.length === 1 ? 'it is' : 'they are'} known by address only: ${names.join(', ')}${more}. After the next start the address may be another’s.`,
        measured: { value: nameless.length, unit: 'units' },
        cure: 'Record again from the moment the bus is switched on, and let the recorder ask for claims.',
      },
    ];
  },
};
