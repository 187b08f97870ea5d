import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { OpeningsBlock } from './openings/openings-block.tsx';
import { SitesBlock } from './sites-block.tsx';

const FitMargin = (given: StepMarginProps): ReactNode => <SitesBlock {...given} />;

/** The step Fit: units over old holes, and antennas, radar, compass and sensors where they work. */
export const fitStep: Step = { Begin: OpeningsBlock, Margin: FitMargin };
