import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { BuyBlock } from './buy-block.tsx';
import { PhasesBlock } from './phases-block.tsx';

const BuyMargin = (given: StepMarginProps): ReactNode => (
  <>
    {given.plan.phases === undefined ? null : <PhasesBlock {...given} />}
    <BuyBlock {...given} />
  </>
);

/** The step Buy: everything to buy, with its reason and its price. */
export const buyStep: Step = { Margin: BuyMargin };
