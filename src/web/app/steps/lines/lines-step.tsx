import type { ReactNode } from 'react';
import { BlackoutBlock } from '../../pull-out/blackout-block.tsx';
import { SourcePages } from '../needs/sources/source-pages.tsx';
import { SourceTables } from '../needs/sources/source-tables.tsx';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { BackboneBlock } from './backbone-block.tsx';
import { LinesBlock } from './lines-block.tsx';
import { TrafficBlock } from './traffic-block.tsx';
import { words } from './words.ts';

const hasLines = ({ plan }: StepMarginProps): boolean => plan.lines.length > 0 || plan.buses.length > 0;

const LinesBegin = (given: StepMarginProps): ReactNode =>
  hasLines(given) ? (
    <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
  ) : (
    <section className="block">
      <h2>{words.noLines}</h2>
      <p>{words.noLinesYet}</p>
    </section>
  );

const LinesMargin = (given: StepMarginProps): ReactNode =>
  hasLines(given) ? (
    <>
      <StepPart id="lines-backbone">
        <BackboneBlock boat={given.boat} plan={given.plan} />
      </StepPart>
      <StepPart id="lines-routes">
        <LinesBlock {...given} />
      </StepPart>
      <StepPart id="lines-traffic">
        <TrafficBlock {...given} />
      </StepPart>
      <StepPart id="lines-dark">
        <BlackoutBlock {...given} />
      </StepPart>
    </>
  ) : null;

/** The step Lines: every cable, and what is set at its ends. */
export const linesStep: Step = {
  Begin: LinesBegin,
  Margin: LinesMargin,
  tables: [{ words: words.settingsTable, Table: SourceTables }],
  Pages: SourcePages,
};
