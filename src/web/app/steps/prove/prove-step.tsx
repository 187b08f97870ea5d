import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { LiveBlock } from './live/live-block.tsx';
import { LiveOnSheet } from './live/live-on-sheet.tsx';
import { LogBlock } from './log/log-block.tsx';
import { RecordingBlock } from './recording/recording-block.tsx';
import { TestsBlock } from './tests/tests-block.tsx';
import { TrialBlock } from './trial/trial-block.tsx';
import { words } from './words.ts';

/** What is done here comes before the notes of the plan: by now they have been lived with, mended or accepted. */
const ProveBegin = (given: StepMarginProps): ReactNode => (
  <>
    <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
    <StepPart id="prove-tests">
      <TestsBlock {...given} />
    </StepPart>
    <StepPart id="prove-live">
      <LiveBlock {...given} />
    </StepPart>
    <StepPart id="prove-recording">
      <RecordingBlock {...given} />
    </StepPart>
    <StepPart id="prove-trial">
      <TrialBlock {...given} />
    </StepPart>
  </>
);

const ProveMargin = (given: StepMarginProps): ReactNode => (
  <StepPart id="prove-log">
    <LogBlock {...given} />
  </StepPart>
);

/** The step Prove: what the boat really does, held against the plan, and what was found kept in her log. */
export const proveStep: Step = { Begin: ProveBegin, Margin: ProveMargin, OnSheet: LiveOnSheet };
