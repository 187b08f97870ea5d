import type { PhasesPart } from '../../phases-shape.ts';

/** Two phases in which nothing comes, goes, waits or costs anything; a case changes what it is about. */
export const twoPhases = (own: Partial<PhasesPart> = {}): PhasesPart => ({
  phases: [1, 2].map((phase) => ({
    phase,
    comes: [],
    goes: [],
    arrives: [],
    missing: [],
    buses: [],
    loads: [],
    feeds: [],
    converters: [],
    buy: [],
    cost: 0,
    unpriced: 0,
  })),
  atOnce: { cost: 0, unpriced: 0 },
  costs: { cost: 0, unpriced: 0, more: [], cures: [] },
  between: [],
  moved: [],
  provide: [],
  ...own,
});
