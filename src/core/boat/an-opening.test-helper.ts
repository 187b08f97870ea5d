import type { Opening } from './opening.ts';

/** A rectangular hole in the dash of the small boat, but for what is said of it. */
export const anOpening = (own: Partial<Opening> = {}): Opening => ({
  id: 'hole',
  name: 'hole of the old plotter',
  place: 'helm',
  hole: { shape: 'rectangle', widthMm: 200, heightMm: 120 },
  panel: { material: 'grp', thicknessMm: 6 },
  how: 'taped',
  ...own,
});
