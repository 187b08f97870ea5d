import type { ReactNode } from 'react';
import { BlackoutBlock } from '../../pull-out/blackout-block.tsx';
import { SourcePages } from '../needs/sources/source-pages.tsx';
import { SourceTables } from '../needs/sources/source-tables.tsx';
import type { Step, StepMarginProps } from '../step.ts';
import { BackboneBlock } from './backbone-block.tsx';
import { LinesBlock } from './lines-block.tsx';
import { TrafficBlock } from './traffic-block.tsx';
import { words } from './words.ts';

const LinesMargin = (given: StepMarginProps): ReactNode => (
  <>
    <BackboneBlock boat={given.boat} plan={given.plan} />
    <LinesBlock {...given} />
    <TrafficBlock {...given} />
    <BlackoutBlock {...given} />
  </>
);

/** The step Lines: every cable, and what is set at its ends. */
export const linesStep: Step = {
  Margin: LinesMargin,
  tables: [{ words: words.settingsTable, Table: SourceTables }],
  Pages: SourcePages,
};
