import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { BuyBlock } from './buy-block.tsx';
import { PhasesBlock } from './phases-block.tsx';
import { HeldUpBlock } from './quote/held-up-block.tsx';
import { OrderTables } from './quote/order-tables.tsx';
import { QuoteBlock } from './quote/quote-block.tsx';
import { words } from './quote/words.ts';

const BuyMargin = (given: StepMarginProps): ReactNode => (
  <>
    <QuoteBlock {...given} />
    <HeldUpBlock {...given} />
    {given.plan.phases === undefined ? null : <PhasesBlock {...given} />}
    <BuyBlock {...given} />
  </>
);

/** The step Buy: what the refit comes to, and everything to buy with its reason and its price. */
export const buyStep: Step = { Margin: BuyMargin, tables: [{ words: words.table, Table: OrderTables }] };
