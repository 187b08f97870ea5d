import { type ReactNode, useMemo } from 'react';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { sensorRows } from '../../../../../papers/lists/sensor-rows.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../../step.ts';
import { SiteForm } from './site-form.tsx';
import { UnderwaterForm } from './underwater-form.tsx';
import { words } from './words.ts';

/** What feels water and wind, how each sits, and what is under the water round it. */
export const SensorBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => sensorRows(cardBoat(boat), plan), [boat, plan]);
  const inHull = new Set(plan.sites.flatMap(({ unit, is }) => (is === 'depth' || is === 'speed' ? [unit] : [])));
  return (
    <>
      <LitRows
        heading={words.sensors}
        rows={rows.map((row) =>
          inHull.has(row.key) ? { ...row, control: <SiteForm boat={boat} unit={row.key} of="hull" /> } : row,
        )}
        empty={words.noSensor}
        hand={hand}
      />
      <div className="block">
        <UnderwaterForm boat={boat} />
      </div>
    </>
  );
};
