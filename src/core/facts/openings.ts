import type { SourceKey } from './sources.ts';

interface Opening {
  readonly through: string;
  readonly closedBy: string;
  readonly source: SourceKey;
}

/** How what a cable passes is called and closed, by what the way is through; the yard and whoever certifies the boat decide. */
export const openings = {
  deck: {
    through: 'deck or cabin side',
    closedBy: 'gland or side entry, sealed, drip loop inside',
    source: 'practice-openings',
  },
  watertight: { through: 'watertight bulkhead', closedBy: 'transit rated for it', source: 'choice-rated-transit' },
  fire: { through: 'fire bulkhead', closedBy: 'transit rated for it', source: 'choice-rated-transit' },
  plain: { through: 'bulkhead', closedBy: 'bush against chafe', source: 'cfr-33-183-445' },
} as const satisfies Record<string, Opening>;

/** A unit that goes through the hull: the hole it leaves, and the one it wants. */
export const hullOpenings = {
  kinds: ['depth-sensor', 'speed-sensor', 'transducer'],
  left: { hole: 'its hole is left: close it', closedBy: 'plug or laminate, by the yard' },
  wanted: {
    hole: 'old housing or a new hole, as its manual says',
    closedBy: 'bedded as its maker says; watch it for a day afloat',
  },
  source: 'practice-openings',
} as const satisfies {
  readonly kinds: readonly string[];
  readonly left: { readonly hole: string; readonly closedBy: string };
  readonly wanted: { readonly hole: string; readonly closedBy: string };
  readonly source: SourceKey;
};
