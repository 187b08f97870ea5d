import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { JoinsBlock } from './joins/joins-block.tsx';
import { NeedsBlock } from './needs-block.tsx';
import { NeedsTable } from './needs-table.tsx';
import { NeedsOffers } from './offers/needs-offers.tsx';
import { SourcesBlock } from './sources/sources-block.tsx';
import { words } from './words.ts';

const NeedsMargin = (given: StepMarginProps): ReactNode => (
  <>
    <StepPart id="needs-asked">
      <NeedsBlock {...given} />
    </StepPart>
    <StepPart id="needs-old">
      <JoinsBlock {...given} />
    </StepPart>
    <StepPart id="needs-sources">
      <SourcesBlock {...given} />
    </StepPart>
  </>
);

const NeedsBegin = (given: StepMarginProps): ReactNode => (
  <>
    {given.plan.readings.length === 0 ? null : (
      <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
    )}
    <NeedsOffers {...given} />
  </>
);

/** The step Needs: what must be seen where. */
export const needsStep: Step = {
  Begin: NeedsBegin,
  Margin: NeedsMargin,
  tables: [{ words: words.table, Table: NeedsTable }],
};
