import type { ReactNode } from 'react';
import { PhonesBlock } from '../../phones/phones-block.tsx';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { CalendarBlock } from './calendar-block.tsx';
import { DayPages } from './day-pages.tsx';
import { EssentialsBlock } from './essentials-block.tsx';
import { HandsBlock } from './hands-block.tsx';
import { JobsBlock } from './jobs-block.tsx';
import { LeavingBlock } from './leaving-block.tsx';
import { MattersBlock } from './matters-block.tsx';
import { OrderDatesBlock } from './order-dates-block.tsx';
import { words } from './words.ts';
import { WorkRoom } from './work-room.tsx';
import './work.css';
import './day-paper.css';
import './job-row.css';

/** What is looked at every day of the work comes before the notes of the plan. */
const WorkBegin = (given: StepMarginProps): ReactNode => (
  <>
    <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
    <StepPart id="work-matters">
      <MattersBlock {...given} />
    </StepPart>
    <StepPart id="work-jobs">
      <JobsBlock {...given} />
    </StepPart>
    <StepPart id="work-people">
      <HandsBlock {...given} />
    </StepPart>
    <StepPart id="work-calendar">
      <CalendarBlock {...given} />
    </StepPart>
    <StepPart id="work-essentials">
      <EssentialsBlock {...given} />
    </StepPart>
  </>
);

const WorkMargin = (given: StepMarginProps): ReactNode => (
  <>
    <StepPart id="work-orders">
      <OrderDatesBlock {...given} />
    </StepPart>
    <StepPart id="work-leaving">
      <LeavingBlock {...given} />
    </StepPart>
    <StepPart id="work-phones">
      <PhonesBlock />
    </StepPart>
  </>
);

/** The step Work: the jobs in their order by day, who does them, what is dark meanwhile, and what is done. */
export const workStep: Step = { Begin: WorkBegin, Margin: WorkMargin, Instead: WorkRoom, Pages: DayPages };
