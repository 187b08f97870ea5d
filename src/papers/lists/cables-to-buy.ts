import type { LineEntry, Plan } from '../../core/plan-shape.ts';

/** The lines for which cable is to be bought, those with a guessed length first; the plan's own order otherwise. */
export const cablesToBuy = ({ lines }: Pick<Plan, 'lines'>): LineEntry[] =>
  lines.filter(({ kept }) => kept === undefined).sort((a, b) => Number(b.guessed) - Number(a.guessed));
