import type { Check } from '../check.ts';
import { listed, unitName } from '../say.ts';

/** A sender that may be a planned unit, or another. */
export const unitDoubtful: Check = {
  id: 'unit-doubtful',
  title: 'Which planned unit a sender is cannot be told.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, units }) =>
    units
      .filter(({ state }) => state === 'doubtful')
      .map(({ unit, addresses, orElse }) => {
        const names = listed(
          [unit, ...orElse].map((id) => unitName(planned, id)),
          'or',
        );
        return {
          about: [unit],
          says: `The sender at address ${addresses.at(-1) ?? 'unknown'} may be ${names}; it is not sure which.`,
          device: unitName(planned, unit),
          cure: 'Switch it off alone and see which address falls silent; then take its NAME over into the boat file.',
        };
      }),
};
