import type { ReactNode } from 'react';
import '../../power/power-block.css';
import type { StepMarginProps } from '../../step.ts';
import { MeasuresBlock } from './measures-block.tsx';
import { PapersBlock } from './papers-block.tsx';
import './settings.css';
import { TypedBlock } from './typed-block.tsx';

/** Settings by measure: the papers that go first, the measures they are computed from, and what to type into each unit. */
export const SettingsBlock = (given: StepMarginProps): ReactNode => (
  <>
    <PapersBlock {...given} />
    <MeasuresBlock {...given} />
    <TypedBlock {...given} />
  </>
);
