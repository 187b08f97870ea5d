import type { Boat, Join, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Earthing } from '../../../src/core/boat/earthing.ts';
import { withFedUnit } from './fed-unit.ts';

interface MetalUnit {
  readonly kit: Omit<Kit, 'sheet' | 'fate'>;
  readonly kind: string;
  readonly earthing: Earthing;
}

/** The Wreck as if she were of steel, with one more unit whose case is of metal. */
export const withMetalUnit = (boat: Boat, { kit, kind, earthing }: MetalUnit): Boat =>
  withFedUnit(
    { ...boat, hull: { ...boat.hull, material: 'steel' } },
    {
      kit,
      maxA: 0.5,
      sheet: { kind, earthing: { body: 'metal', ...earthing }, compassSafe: { valueM: 0.1, how: 'papers' } },
    },
  );

/** The boat with a join more. */
export const withJoin = (boat: Boat, join: Omit<Join, 'hold'>): Boat => ({
  ...boat,
  joins: [...boat.joins, { ...join, hold: 'fixed' }],
});
