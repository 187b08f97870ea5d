import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { KitBlock } from './kit-block.tsx';
import { SecurityBlock } from './security-block.tsx';

const KitMargin = (given: StepMarginProps): ReactNode => (
  <>
    <KitBlock {...given} />
    <SecurityBlock {...given} />
  </>
);

/** The step Kit: what stays, goes and comes. */
export const kitStep: Step = { Margin: KitMargin };
