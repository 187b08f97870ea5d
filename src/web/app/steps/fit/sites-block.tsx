import { type ReactNode, useMemo } from 'react';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { siteRows } from '../../../../papers/lists/site-rows.ts';
import { LitRows } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { words } from './words.ts';

/** Antennas, radars and sensors with where they stand. */
export const SitesBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => siteRows(cardBoat(boat), plan), [boat, plan]);
  return <LitRows heading={words.sites} rows={rows} empty={words.noSite} hand={hand} />;
};
