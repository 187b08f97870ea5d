import type { ReactNode } from 'react';
import { PhonesBlock } from '../../phones/phones-block.tsx';
import { BackboneBlock } from '../lines/backbone-block.tsx';
import type { Step, StepMarginProps } from '../step.ts';

const RestMargin = ({ boat, plan }: StepMarginProps): ReactNode => (
  <>
    <BackboneBlock boat={boat} plan={plan} />
    <PhonesBlock />
  </>
);

/** A step that has nothing of its own yet. */
export const restStep: Step = { Margin: RestMargin };
