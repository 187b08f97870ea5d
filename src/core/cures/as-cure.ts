import type { Cure } from '../plan-shape.ts';
import type { Candidate } from './candidate.ts';

/** Something that closes a gap as the plan tells it: with its price, or that one of its parts has none that is known. */
export const asCure = ({ says, edits, cost }: Pick<Candidate, 'says' | 'edits' | 'cost'>): Cure => ({
  says,
  edits: edits.map(({ edit, params }) => ({ edit, params: { ...params } })),
  ...(cost === undefined ? { unpriced: true } : { cost }),
});
