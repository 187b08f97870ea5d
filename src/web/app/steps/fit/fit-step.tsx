import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { AntennasBlock } from './antennas/antennas-block.tsx';
import { FitPart, FitParts } from './fit-part.tsx';
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

const FitBegin = (given: StepMarginProps): ReactNode => (
  <>
    <FitParts />
    <FitPart part="openings">
      <OpeningsBlock {...given} />
    </FitPart>
  </>
);

const FitMargin = (given: StepMarginProps): ReactNode => (
  <>
    <FitPart part="antennas">
      <AntennasBlock {...given} />
    </FitPart>
    <FitPart part="compass">
      <CompassBlocks {...given} />
    </FitPart>
    <FitPart part="sensors">
      <SensorBlock {...given} />
      <SitesBlock {...given} />
    </FitPart>
    <FitPart part="papers">
      <PapersBlock {...given} />
    </FitPart>
    <FitPart part="settings">
      <MeasuresBlock {...given} />
      <TypedBlock {...given} />
    </FitPart>
    <FitPart part="sea">
      <SeaBlock {...given} />
    </FitPart>
  </>
);

/** The step Fit: units over old holes, and antennas, radar, compass and sensors where they work, and what is set by her own measures, at the dock and at sea. */
export const fitStep: Step = {
  Begin: FitBegin,
  Margin: FitMargin,
  tables: [{ words: settingsWords.table, Table: TypedTable }],
};
