import { type ReactNode, useMemo } from 'react';
import { polarPicture } from '../../../../../papers/antennas/polar-picture.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { DrawingView } from '../../../../drawing/drawing-view.tsx';
import type { StepMarginProps } from '../../step.ts';
import { words } from './words.ts';

/** As wide as the margin is, at the size the drawing is made for. */
const widthMm = 80;

/** What one radar does not see, from above. */
export const PolarFigure = ({ boat, plan, hand, unit }: StepMarginProps & { unit: string }): ReactNode => {
  const picture = useMemo(() => polarPicture({ boat, plan, names: cardBoat(boat), unit, widthMm }), [boat, plan, unit]);
  return picture === undefined ? null : (
    <svg
      className="polar-figure"
      viewBox={`0 0 ${picture.widthMm} ${picture.heightMm}`}
      role="img"
      aria-label={words.picture(picture.title ?? '')}
    >
      <DrawingView drawing={picture} lights={hand.lights} onPick={hand.onShow} />
    </svg>
  );
};
