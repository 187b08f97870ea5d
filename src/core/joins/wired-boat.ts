import { proposalEntry } from './proposal-entry.ts';
import { proposeJoins, withJoins } from './proposing/propose-joins.ts';
import { wiredWith } from './wired-with.ts';

/**
 * A boat with the joins proposed for what is needed and does not arrive by those of her file. Everything that looks at joins
 * asks here first, so that all speak of the same ones.
 */
export const wiredBoat = wiredWith((index, reaches) => {
  const proposal = proposeJoins(index, reaches);
  if (proposal === undefined) return undefined;
  return { boat: withJoins(index.boat, proposal.joins), proposal: proposalEntry(index, proposal) };
});
