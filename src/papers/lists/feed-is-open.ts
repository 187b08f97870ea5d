import type { FeedEntry } from '../../core/plan-shape.ts';

/** Whether somebody has to look at a feed before it is wired: no wire or fuse does it, its copper is not known, or too few volts arrive. */
export const feedIsOpen = ({
  whyNot,
  areaMm2,
  atEndV,
  leastV = 0,
}: Pick<FeedEntry, 'whyNot' | 'areaMm2' | 'atEndV' | 'leastV'>): boolean =>
  whyNot !== undefined || areaMm2 === undefined || atEndV === undefined || atEndV < leastV;
