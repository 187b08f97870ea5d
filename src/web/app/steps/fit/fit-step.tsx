import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { AntennasBlock } from './antennas/antennas-block.tsx';
import { OpeningsBlock } from './openings/openings-block.tsx';
import { SeaBlock } from './sea/sea-block.tsx';
import { CompassBlocks } from './sensing/compass-blocks.tsx';
import { SensorBlock } from './sensing/sensor-block.tsx';
import { MeasuresBlock } from './settings/measures-block.tsx';
import { PapersBlock } from './settings/papers-block.tsx';
import './settings/settings.css';
import { TypedBlock } from './settings/typed-block.tsx';
import { TypedTable } from './settings/typed-table.tsx';
import { words as settingsWords } from './settings/words.ts';
import { SitesBlock } from './sites-block.tsx';
import { words } from './words.ts';

const FitBegin = (given: StepMarginProps): ReactNode => (
  <>
    <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
    <StepPart id="fit-openings">
      <OpeningsBlock {...given} />
    </StepPart>
  </>
);

const FitMargin = (given: StepMarginProps): ReactNode => (
  <>
    <StepPart id="fit-antennas">
      <AntennasBlock {...given} />
    </StepPart>
    <StepPart id="fit-compass">
      <CompassBlocks {...given} />
    </StepPart>
    <StepPart id="fit-sensors">
      <SensorBlock {...given} />
      <SitesBlock {...given} />
    </StepPart>
    <StepPart id="fit-papers">
      <PapersBlock {...given} />
    </StepPart>
    <StepPart id="fit-settings">
      <MeasuresBlock {...given} />
      <TypedBlock {...given} />
    </StepPart>
    <StepPart id="fit-sea">
      <SeaBlock {...given} />
    </StepPart>
  </>
);

/** The step Fit: units over old holes, and antennas, radar, compass and sensors where they work, and what is set by her own measures, at the dock and at sea. */
export const fitStep: Step = {
  Begin: FitBegin,
  Margin: FitMargin,
  tables: [{ words: settingsWords.table, Table: TypedTable }],
};
