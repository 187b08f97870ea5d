import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { AntennasBlock } from './antennas/antennas-block.tsx';
import { OpeningsBlock } from './openings/openings-block.tsx';
import { SeaBlock } from './sea/sea-block.tsx';
import { SensingBlocks } from './sensing/sensing-blocks.tsx';
import { SettingsBlock } from './settings/settings-block.tsx';
import { TypedTable } from './settings/typed-table.tsx';
import { words as settingsWords } from './settings/words.ts';
import { SitesBlock } from './sites-block.tsx';

const FitMargin = (given: StepMarginProps): ReactNode => (
  <>
    <SitesBlock {...given} />
    <AntennasBlock {...given} />
    <SensingBlocks {...given} />
    <SettingsBlock {...given} />
    <SeaBlock {...given} />
  </>
);

/** The step Fit: units over old holes, and antennas, radar, compass and sensors where they work, and what is set by her own measures, at the dock and at sea. */
export const fitStep: Step = {
  Begin: OpeningsBlock,
  Margin: FitMargin,
  tables: [{ words: settingsWords.table, Table: TypedTable }],
};
