import type { Check } from '../check.ts';

/** A recording that goes with no wire of the boat, or with several. */
export const wireUnsure: Check = {
  id: 'wire-unsure',
  title: 'Which wire of the boat a recording is of cannot be told.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ buses, lines }) =>
    [...buses, ...lines]
      .filter(({ wire }) => wire.known === 'unsure' && wire.count > 0)
      .map(({ id, wire }) => ({
        about: [id],
        says:
          id === ''
            ? `The plan has no ${wire.kind === 'bus' ? 'bus' : '0183 line'} that this recording could be of.`
            : `It is not sure that this recording is of ${id}: nothing that was heard is planned there, or as much on another.`,
        cure: wire.kind === 'bus' ? 'Say which bus it is: BUS=FILE.' : 'Say whose line it is: KIT.PORT=FILE.',
      })),
};
