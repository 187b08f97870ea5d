import type { FeedEntry } from '../../plan-shape.ts';
import type { LoadEntry } from '../../power-shape.ts';

/** A sound feed of the display of the small boat: 3 A over 5 m of 2.5 mm² behind a breaker of 5 A. */
export const aFeed = (over: Partial<FeedEntry> = {}): FeedEntry => ({
  line: 'feed:display.supply~main-panel',
  to: 'display.dc',
  panel: 'main-panel',
  circuit: 'helm-circuit',
  nominalV: 12,
  typicalA: 2,
  loadA: 3,
  lengthM: 5,
  allowedV: 0.36,
  allowedBy: 'percent',
  wire: 'aboard',
  areaMm2: 2.5,
  dropV: 0.2,
  dropPct: 1.64,
  realDropV: 0.23,
  realDropPct: 1.9,
  ampacityA: 30,
  engineSpace: false,
  carrying: 2,
  circuitA: 5,
  fuseA: 5,
  fuseBy: 'circuit',
  atEndV: 11.5,
  lostPct: 2.5,
  leastV: 10,
  ...over,
});

/** What the display of the small boat draws. */
export const aLoad = (over: Partial<LoadEntry> = {}): LoadEntry => ({
  port: 'display.dc',
  source: { by: 'circuit', panel: 'main-panel', circuit: 'helm-circuit' },
  from: 'house',
  nominalV: 12,
  behaves: 'power',
  typicalA: 2,
  mostA: 3,
  minV: 10,
  maxV: 32,
  ...over,
});
