import type { BusEntry } from '../../core/plan-shape.ts';
import { printPct } from './print-figure.ts';

/** How sure a layout is, in words: short for the course line, full for the margin. */
export interface LayoutWords {
  readonly short: string;
  readonly full: string;
}

const gapPct = ({ cost, bound }: BusEntry['layout']): number => (cost === 0 ? 0 : ((cost - bound) / cost) * 100);

/** Says what the status of a layout means; a layout that breaks a limit says so before anything else. */
export const layoutWords = (layout: BusEntry['layout']): LayoutWords => {
  if (layout.status === 'infeasible') {
    return { short: 'no layout holds', full: 'no layout holds every limit; this one comes nearest' };
  }
  if (layout.broken.length > 0) return { short: 'breaks a limit', full: layout.broken.join(' ') };
  switch (layout.status) {
    case 'proven':
      return { short: 'proven cheapest', full: 'proven, nothing cheaper' };
    case 'pinned':
      return { short: 'as fixed', full: 'as fixed in the boat file' };
    case 'heuristic':
      return { short: 'a quick layout', full: 'quick, not yet compared' };
    case 'gap':
      return {
        short: `within ${printPct(gapPct(layout))} of the cheapest`,
        full: `at most ${printPct(gapPct(layout))} above the cheapest`,
      };
    case 'stopped':
      return { short: 'search stopped', full: `stopped early, at most ${printPct(gapPct(layout))} above the cheapest` };
  }
};
