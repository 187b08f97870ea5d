import { type ReactNode, useMemo } from 'react';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { siteRows } from '../../../../papers/lists/site-rows.ts';
import { LitRows } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { words } from './words.ts';

/** Antennas, radars and sensors with where they stand, folded away: each is told of above. */
export const SitesBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => siteRows(cardBoat(boat), plan), [boat, plan]);
  return rows.length === 0 ? null : (
    <details className="block form-part">
      <summary>{words.sites(rows.length)}</summary>
      <LitRows heading={words.siteRows} rows={rows} empty="" hand={hand} />
    </details>
  );
};
