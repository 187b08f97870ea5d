import { type ReactNode, useMemo, useState } from 'react';
import { mapDrawing } from '../../../../../papers/heading/map-drawing.ts';
import { DrawingView } from '../../../../drawing/drawing-view.tsx';
import { LitRows } from '../../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../../step.ts';
import { words } from './words.ts';

/** As wide as the margin is, at the size the drawing is made for. */
const widthMm = 80;

/** What limits the most of it; the binder names them all. */
const mostLimits = 8;

interface MapProps extends Pick<StepMarginProps, 'boat' | 'plan' | 'hand'> {
  readonly unit: string | undefined;
}

const Picture = ({ boat, plan, hand, unit }: MapProps): ReactNode => {
  const { drawing, limits } = useMemo(
    () => mapDrawing({ boat, plan, widthMm, ...(unit === undefined ? {} : { unit }) }),
    [boat, plan, unit],
  );
  return (
    <>
      <svg
        className="heading-map"
        viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`}
        role="img"
        aria-label={words.mapIs}
      >
        <DrawingView drawing={drawing} lights={hand.lights} onPick={hand.onShow} />
      </svg>
      <p className="quiet">{words.mapKey}</p>
      <LitRows heading={words.limits} rows={limits.slice(0, mostLimits)} empty={words.noLimit} hand={hand} />
    </>
  );
};

/** The map of where a heading sensor may go, worked out when somebody opens it. */
export const HeadingMap = (given: MapProps): ReactNode => {
  const [open, setOpen] = useState(false);
  return (
    <details className="form-part" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.showMap}</summary>
      {open ? <Picture {...given} /> : null}
    </details>
  );
};
