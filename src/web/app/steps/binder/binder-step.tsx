import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { BinderPages } from './binder-pages.tsx';
import { FittedBlock } from './fitted-block.tsx';
import { LabelsBlock } from './labels-block.tsx';
import { RevisionsBlock } from './revisions-block.tsx';
import './binder-block.css';

/** What there is to do with the papers of a boat that has some. */
const BinderBlocks = ({ boat, plan }: StepMarginProps): ReactNode =>
  boat.kit.length === 0 ? null : (
    <>
      <LabelsBlock plan={plan} />
      <RevisionsBlock boat={boat} />
      <FittedBlock boat={boat} plan={plan} />
    </>
  );

/** All stands above the notes, for it is what one comes here for. */
const NothingMore = (): ReactNode => null;

/** The step Binder: the papers before they are printed, what was given out, and what came out otherwise. */
export const binderStep: Step = { Begin: BinderBlocks, Margin: NothingMore, Instead: BinderPages };
