import type { SourceKey } from './sources.ts';

/** Who may type what makes a set this ship’s, said to the owner; where nothing is said, anyone. */
export const enteredBy = {
  'radio-installer': {
    brief: 'an installer only',
    says: 'Not by the owner: under this flag only the set’s vendor, or one who installs marine radios for a living, may enter it.',
    source: 'cfr-80-231',
  },
  once: {
    brief: 'the owner, once',
    says: 'By the owner, in most states and sets once: a change needs the maker or a dealer.',
    source: 'memory-ais-entry',
  },
  'ask-flag': {
    brief: 'say the flag first',
    says: 'It hangs on the flag she sails under: say which.',
    source: 'cfr-80-231',
  },
} as const satisfies Readonly<
  Record<string, { readonly brief: string; readonly says: string; readonly source: SourceKey }>
>;
