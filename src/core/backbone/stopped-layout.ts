import type { Layout } from './problem.ts';

/** A layout as it stands when its search is cut short: `stopped` where more work could still have found a cheaper one. */
export const stoppedLayout = (layout: Layout): Layout =>
  layout.status === 'gap' ? { ...layout, status: 'stopped' } : layout;
