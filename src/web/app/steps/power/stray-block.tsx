import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { compassRows } from '../../../../papers/lists/compass-rows.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { isolationRows } from '../../../../papers/lists/isolation-rows.ts';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';

/** Where the minus meets metal, how shields are earthed, and what turns the compasses. */
export const StrayBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const names = useMemo(() => cardBoat(boat), [boat]);
  const metal = useMemo(() => isolationRows(names, plan, currencyOf(boat)), [names, plan, boat]);
  const compasses = useMemo(() => compassRows(names, plan), [names, plan]);
  return (
    <>
      <LitRows heading="Metal and shields" rows={metal} empty="Nothing to say of metal and shields." hand={hand} />
      <LitRows heading="Compasses" rows={compasses} empty="No magnetic compass is aboard." hand={hand} />
    </>
  );
};
