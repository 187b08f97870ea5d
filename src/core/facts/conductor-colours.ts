import type { SourceKey } from './sources.ts';

/** What the cables hold whose wires no table of a standard names, in words. */
export const cableHolds = {
  source: 'practice-cable-holds',
  ethernet: 'four twisted pairs, screened',
  pair: 'twisted pair and shield, by the marks of both makers',
  'single-wire': 'signal and common, by the marks of both makers',
  coax: 'centre and screen',
} as const satisfies { readonly source: SourceKey } & Readonly<Record<string, string>>;

/** Colours of the conductors of direct current on a boat: the minus is yellow where black is the live wire of the mains aboard. */
export const dcColours = {
  source: 'memory-dc-colours',
  plus: 'red',
  minus: 'black or yellow',
} as const satisfies { readonly source: SourceKey; readonly plus: string; readonly minus: string };
