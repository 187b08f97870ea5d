import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { compassRows } from '../../../../papers/lists/compass-rows.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { isolationRows } from '../../../../papers/lists/isolation-rows.ts';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';
import { words } from './words.ts';

/** Where the minus meets metal, how shields are earthed, and what turns the compasses. */
export const StrayBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const names = useMemo(() => cardBoat(boat), [boat]);
  const metal = useMemo(() => isolationRows(names, plan, currencyOf(boat)), [names, plan, boat]);
  const compasses = useMemo(() => compassRows(names, plan), [names, plan]);
  return (
    <>
      <LitRows heading={words.metal} rows={metal} empty={words.noMetal} hand={hand} />
      <LitRows heading={words.compasses} rows={compasses} empty={words.noCompass} hand={hand} />
    </>
  );
};
