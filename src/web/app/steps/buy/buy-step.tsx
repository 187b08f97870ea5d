import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { BuyBlock, OrderSum } from './buy-block.tsx';
import { PhasesBlock } from './phases-block.tsx';
import { HeldUpBlock } from './quote/held-up-block.tsx';
import { OrderTables } from './quote/order-tables.tsx';
import { QuoteBlock } from './quote/quote-block.tsx';
import { words as quoteWords } from './quote/words.ts';
import { words } from './words.ts';

/** Nothing comes of an empty list: no sum, no quote, only what makes it longer. */
const isEmpty = ({ plan }: Pick<StepMarginProps, 'plan'>): boolean => plan.shopping.length === 0;

const BuyBegin = (given: StepMarginProps): ReactNode =>
  isEmpty(given) ? (
    <section className="block">
      <h2>{words.order}</h2>
      <p>{words.nothingToOrder}</p>
    </section>
  ) : (
    <>
      <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
      <OrderSum {...given} />
    </>
  );

const BuyMargin = (given: StepMarginProps): ReactNode =>
  isEmpty(given) ? null : (
    <>
      <BuyBlock {...given} />
      {given.plan.phases === undefined ? null : <PhasesBlock {...given} />}
      <StepPart id="buy-quote">
        <QuoteBlock {...given} />
        <HeldUpBlock {...given} />
      </StepPart>
    </>
  );

/** The step Buy: everything to buy with its reason and its price, and what the refit comes to. */
export const buyStep: Step = {
  Begin: BuyBegin,
  Margin: BuyMargin,
  tables: [{ words: quoteWords.table, Table: OrderTables }],
};
