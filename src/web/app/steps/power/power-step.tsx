import type { ReactNode } from 'react';
import { BlackoutBlock } from '../../pull-out/blackout-block.tsx';
import { BackboneBlock } from '../lines/backbone-block.tsx';
import type { Step, StepMarginProps } from '../step.ts';
import { StepPart, StepParts } from '../step-parts.tsx';
import { DrivesBlock } from './drives-block.tsx';
import { EnergyBlock } from './energy-block.tsx';
import { PowerBlock } from './power-block.tsx';
import { PowerPages } from './power-pages.tsx';
import { PowerTables } from './power-tables.tsx';
import { StrayBlock } from './stray-block.tsx';
import { SupplyTables } from './supply-tables.tsx';
import { words } from './words.ts';

const PowerBegin = (): ReactNode => <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />;

const PowerMargin = (given: StepMarginProps): ReactNode => (
  <>
    <StepPart id="power-supply">
      <PowerBlock {...given} />
    </StepPart>
    <StepPart id="power-drives">
      <DrivesBlock {...given} />
    </StepPart>
    <StepPart id="power-energy">
      <EnergyBlock {...given} />
    </StepPart>
    <StepPart id="power-metal">
      <StrayBlock {...given} />
    </StepPart>
    <StepPart id="power-dark">
      <BackboneBlock boat={given.boat} plan={given.plan} />
      <BlackoutBlock {...given} />
    </StepPart>
  </>
);

/** The step Power: volts, wires, fuses and the energy of a day. */
export const powerStep: Step = {
  Begin: PowerBegin,
  Margin: PowerMargin,
  tables: [
    { words: words.feedTables, Table: PowerTables },
    { words: words.supply, Table: SupplyTables },
  ],
  Pages: PowerPages,
};
