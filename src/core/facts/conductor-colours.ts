import type { SourceKey } from './sources.ts';

/** Colours of the conductors of direct current on a boat: the minus is yellow where black is the live wire of the mains aboard. */
export const dcColours = {
  source: 'memory-dc-colours',
  plus: 'red',
  minus: 'black or yellow',
} as const satisfies { readonly source: SourceKey; readonly plus: string; readonly minus: string };
