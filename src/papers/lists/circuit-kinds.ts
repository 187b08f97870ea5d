import type { Circuit } from '../../core/boat/supply.ts';

/** What protects a circuit, in words. */
export const circuitKinds: Readonly<Record<Circuit['kind'], string>> = {
  breaker: 'breaker',
  'slow-breaker': 'slow breaker',
  fuse: 'fuse',
  'live-fuse': 'live fuse',
};
