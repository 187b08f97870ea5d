import { memo, type ReactNode, useMemo } from 'react';
import type { Page } from '../../../../papers/pages/page-shape.ts';
import { DrawingView } from '../../../drawing/drawing-view.tsx';
import { lightStore } from '../../../drawing/light-store.ts';

const nothingPicked = (): void => undefined;

/** A page as it will be printed: black on white in any light of the screen. Its words are read from the lists and the file. */
export const PageView = memo(({ page, label }: { readonly page: Page; readonly label: string }): ReactNode => {
  const lights = useMemo(() => lightStore(), []);
  const { widthMm, heightMm, shapes, insets } = page;
  return (
    <svg className="binder-page" viewBox={`0 0 ${widthMm} ${heightMm}`} role="img" aria-label={label}>
      <title>{label}</title>
      {insets.map(({ drawing, xMm, yMm, scale }) => (
        <g key={`${xMm} ${yMm}`} transform={`translate(${xMm} ${yMm}) scale(${scale})`}>
          <DrawingView drawing={drawing} lights={lights} onPick={nothingPicked} />
        </g>
      ))}
      <DrawingView drawing={{ widthMm, heightMm, shapes }} lights={lights} onPick={nothingPicked} />
    </svg>
  );
});
