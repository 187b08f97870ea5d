import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../../papers/cards/card-boat.ts';
import { compassRows } from '../../papers/lists/compass-rows.ts';
import { LitRows, type RowHand } from './lit-rows.tsx';

/** What turns the compasses. */
export const StrayBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const compasses = useMemo(() => compassRows(cardBoat(boat), plan), [boat, plan]);
  return <LitRows heading="Compasses" rows={compasses} empty="No magnetic compass is aboard." hand={hand} />;
};
