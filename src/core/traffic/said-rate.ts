import type { Kit } from '../boat/boat-schema.ts';
import { ratePath } from '../boat/rate-path.ts';
import type { Sends } from '../boat/sheet.ts';

/**
 * Who says how often a message comes: the usual interval of the message, the unit's sheet, a change for this one unit, the
 * traffic of other ships, or whoever sends it on the bus it is passed on from.
 */
export const saidRates = ['usual', 'sheet', 'changed', 'waters', 'passed'] as const;
export type SaidRate = (typeof saidRates)[number];

/** Who says how often one entry of a port's `sends` comes. */
export const rateOf = ({ unit, port, sent }: { unit: Kit | undefined; port: string; sent: Sends }): SaidRate => {
  if (sent.everyMs === undefined) return 'usual';
  const path = ratePath(port, sent.pgn ?? sent.sentence ?? sent.reading ?? '');
  const isChanged = (unit?.changes ?? []).some((change) => path === change.path || path.startsWith(`${change.path}.`));
  return isChanged ? 'changed' : 'sheet';
};
