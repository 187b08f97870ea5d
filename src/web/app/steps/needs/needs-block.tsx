import { type ReactNode, useMemo } from 'react';
import { LitRows } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { needsGroups } from './needs-rows.ts';
import { words } from './words.ts';

/** What each screen asks for, and whether it arrives. */
export const NeedsBlock = ({ boat, plan, hand }: Omit<StepMarginProps, 'onPull'>): ReactNode => {
  const groups = useMemo(() => needsGroups({ boat, plan }), [boat, plan]);
  if (groups.length === 0) {
    return <p className="block quiet">{words.nothingAsked}</p>;
  }
  return groups.map(({ unit, name, rows }) => <LitRows key={unit} heading={name} rows={rows} empty="" hand={hand} />);
};
