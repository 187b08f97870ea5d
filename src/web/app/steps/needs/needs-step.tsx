import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { JoinsBlock } from './joins/joins-block.tsx';
import { NeedsBlock } from './needs-block.tsx';
import { NeedsTable } from './needs-table.tsx';
import { NeedsOffers } from './offers/needs-offers.tsx';
import { SourcesBlock } from './sources/sources-block.tsx';
import { words } from './words.ts';

const NeedsMargin = (given: StepMarginProps): ReactNode => (
  <>
    <NeedsBlock {...given} />
    <JoinsBlock {...given} />
    <SourcesBlock {...given} />
  </>
);

/** The step Needs: what must be seen where. */
export const needsStep: Step = {
  Begin: NeedsOffers,
  Margin: NeedsMargin,
  tables: [{ words: words.table, Table: NeedsTable }],
};
