import { type ReactNode, useMemo } from 'react';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { heldUpRows } from '../../../../../papers/lists/held-up-words.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../../step.ts';
import { words } from './words.ts';

/** Today where the boat is, as year-month-day. */
const today = (): string => {
  const now = new Date();
  const parts = [now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0'));
  return [now.getFullYear(), ...parts].join('-');
};

/** What the work waits for: what takes days to come, longest first, and what is late. */
export const HeldUpBlock = ({ boat, plan, hand }: Omit<StepMarginProps, 'onPull'>): ReactNode => {
  const { says, rows } = useMemo(() => heldUpRows(cardBoat(boat), plan, today()), [boat, plan]);
  if (rows.length === 0) return null;
  return (
    <>
      <LitRows heading={words.held} rows={rows.map(({ id, ...row }) => ({ key: id, ...row }))} empty="" hand={hand} />
      <p className="quote-held quiet">{says}</p>
    </>
  );
};
