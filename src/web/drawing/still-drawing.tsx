import type { ReactNode } from 'react';
import type { Drawing } from '../../papers/drawing/shapes.ts';
import { DrawingView } from './drawing-view.tsx';
import { lightStore } from './light-store.ts';

const unlit = lightStore();
const ignore = (): void => undefined;

/** A drawing that only shows: nothing on it is lit or picked. Without a label it says nothing that does not stand beside it. */
export const StillDrawing = ({ drawing, label }: { drawing: Drawing; label?: string }): ReactNode => {
  const viewBox = `0 0 ${drawing.widthMm} ${drawing.heightMm}`;
  const shapes = <DrawingView drawing={drawing} lights={unlit} onPick={ignore} />;
  if (label === undefined) {
    return (
      <svg viewBox={viewBox} aria-hidden="true">
        {shapes}
      </svg>
    );
  }
  return (
    <svg viewBox={viewBox} role="img" aria-label={label}>
      {shapes}
    </svg>
  );
};
