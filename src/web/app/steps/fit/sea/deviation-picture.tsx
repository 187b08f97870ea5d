import { type ReactNode, useMemo } from 'react';
import { deviationCard } from '../../../../../core/fitting/sea/deviation-card.ts';
import type { DeviationCurve, DeviationPoint } from '../../../../../core/fitting/sea/deviation-curve.ts';
import { deviationDrawing } from '../../../../../papers/heading/deviation-drawing.ts';
import { StillDrawing } from '../../../../drawing/still-drawing.tsx';
import { words } from './words.ts';

/** As wide as the margin is, at the size the drawing is made for. */
const widthMm = 80;

/** The points of a swing and the curve through them, as the card of the binder shows them. */
export const DeviationPicture = ({
  points,
  curve,
}: {
  points: readonly DeviationPoint[];
  curve: DeviationCurve | undefined;
}): ReactNode => {
  const title = words.swing.picture;
  const drawing = useMemo(
    () => deviationDrawing({ title, points, card: curve === undefined ? [] : deviationCard(curve), widthMm }),
    [title, points, curve],
  );
  return (
    <div className="sea-curve">
      <StillDrawing drawing={drawing} label={title} />
    </div>
  );
};
