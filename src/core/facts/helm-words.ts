import type { SourceKey } from './sources.ts';

interface Said {
  readonly says: string;
  readonly source: SourceKey;
}

/** What stands on the page that hangs at a helm, besides what is computed of the boat. */
export const helmWords = {
  switchOn: {
    says: 'Wait until each shows what it should before the next is switched on. At the end look at depth, position and heading on every screen.',
    source: 'practice-helm-page',
  },
  manOverboard: {
    says: 'Shout. Throw what floats. One person does nothing but point at the swimmer.',
    source: 'practice-helm-page',
  },
  distress: {
    says: 'then lift the cover, hold the distress key until it answers, and speak on channel 16. In grave danger only: the key is never a test.',
    source: 'practice-helm-page',
  },
  darkScreen: {
    says: 'Is it only dimmed? Then the breaker or fuse, then its plug. One try: what trips again stays off.',
    source: 'practice-helm-page',
  },
  fallback: {
    says: 'Slow down, write the time and the last position down, and go by what is left.',
    source: 'practice-helm-page',
  },
} as const satisfies Record<string, Said>;

/** How the pilot is made to let go, as an order to the hand. */
export const letGoWords = {
  'hard-wired-switch': 'Pilot off by the hard-wired switch',
  lever: 'Throw the lever',
  breaker: 'Trip the breaker of the pilot',
  'pilot-head': 'Press standby on the pilot head',
  remote: 'Press standby on the remote',
} as const;
