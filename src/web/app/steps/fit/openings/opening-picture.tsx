import { type ReactNode, useMemo } from 'react';
import type { FitEntry, PlateEntry } from '../../../../../core/fits-shape.ts';
import { fitPicture } from '../../../../../papers/templates/fit-picture.ts';
import { DrawingView } from '../../../../drawing/drawing-view.tsx';
import type { RowHand } from '../../../margin/lit-rows.tsx';
import { words } from './words.ts';

/** As wide as the margin is, at the size drawings are made for. */
const size = { widthMm: 80, mostHeightMm: 42 };

/** The old hole under what comes there. */
export const OpeningPicture = ({
  name,
  fit,
  plates,
  hand,
}: {
  name: string;
  fit: FitEntry;
  plates: readonly PlateEntry[];
  hand: RowHand;
}): ReactNode => {
  const drawing = useMemo(() => fitPicture(fit, plates, size), [fit, plates]);
  return (
    <svg
      className="opening-picture"
      viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`}
      role="img"
      aria-label={words.pictureOf(name)}
    >
      <DrawingView drawing={drawing} lights={hand.lights} onPick={hand.onShow} />
    </svg>
  );
};
