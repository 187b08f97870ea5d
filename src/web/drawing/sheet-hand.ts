import { select } from 'd3-selection';
import { type D3ZoomEvent, type ZoomBehavior, zoom, zoomIdentity } from 'd3-zoom';
import type { PictureMove, SheetLie } from './carried-sheet.ts';
import { largestScale, slack } from './moved-frame.ts';
import type { SheetSize } from './view-frame.ts';

/** What the hand on a sheet must be told: it reckons its next move from there. */
export interface SheetHand {
  /** how the sheet lies in its window, and where it is now */
  readonly take: (move: PictureMove, lie: SheetLie) => void;
  readonly release: () => void;
}

/** At the fitted scale one finger scrolls the page; two fingers, or a closer view, move the drawing. */
const mayStart = (event: Event & { readonly ctrlKey?: boolean; readonly button?: number }, scale: number): boolean => {
  if ('touches' in event) return scale > 1 || (event as TouchEvent).touches.length > 1;
  if (event.type === 'wheel') return true;
  return event.ctrlKey !== true && (event.button ?? 0) === 0;
};

/** Wheel, pinch and drag on a sheet: nobody has a hand on it before it is there, so it is no part of the way to the first picture. */
export const sheetHand = ({
  pane,
  sheet,
  scaleNow,
  onMove,
  onRest,
}: {
  pane: HTMLElement;
  sheet: SheetSize;
  scaleNow: () => number;
  onMove: (move: PictureMove) => void;
  /** called when the hand lets go */
  onRest: () => void;
}): SheetHand => {
  // what it is told comes back as an event, under a hand that is moving even as one of the hand
  let isTold = false;
  const behaviour: ZoomBehavior<HTMLElement, unknown> = zoom<HTMLElement, unknown>()
    .scaleExtent([1, largestScale])
    .filter((event: Event) => mayStart(event, scaleNow()))
    .on('zoom', ({ transform: { k, x, y } }: D3ZoomEvent<HTMLElement, unknown>) => {
      if (!isTold) onMove({ scale: k, shiftXPx: x, shiftYPx: y });
    })
    .on('end', () => {
      if (!isTold) onRest();
    });
  const selection = select(pane).call(behaviour).on('dblclick.zoom', null);
  return {
    take: ({ scale, shiftXPx, shiftYPx }, { pxPerMm, leftPx, topPx }) => {
      const [widthPx, heightPx] = [pxPerMm * sheet.widthMm, pxPerMm * sheet.heightMm];
      behaviour
        .extent([
          [leftPx, topPx],
          [leftPx + widthPx, topPx + heightPx],
        ])
        .translateExtent([
          [leftPx - slack * widthPx, topPx - slack * heightPx],
          [leftPx + (1 + slack) * widthPx, topPx + (1 + slack) * heightPx],
        ]);
      isTold = true;
      selection.call(behaviour.transform, zoomIdentity.translate(shiftXPx, shiftYPx).scale(scale));
      isTold = false;
    },
    release: () => {
      selection.on('.zoom', null);
    },
  };
};
