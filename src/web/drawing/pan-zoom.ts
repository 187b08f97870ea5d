import { select } from 'd3-selection';
import { type D3ZoomEvent, type ZoomBehavior, zoom, zoomIdentity } from 'd3-zoom';
import type { SheetSize, ViewFrame } from './view-frame.ts';

/** The hand on a drawing: wheel, pinch, drag and keys move a layer of it; the SVG's viewBox is in millimetres. */
export interface PanZoom {
  readonly frame: () => ViewFrame;
  readonly moveTo: (frame: ViewFrame) => void;
  /** the same at once: under a hand that is already moving nothing lags behind */
  readonly followTo: (frame: ViewFrame) => void;
  readonly zoomBy: (factor: number) => void;
  readonly panBy: (step: { readonly xMm: number; readonly yMm: number }) => void;
  readonly fit: () => void;
  readonly release: () => void;
}

const largestScale = 16;

/** How far past the sheet's edge one may pull it, as a share of its size. */
const slack = 0.25;

/** At the fitted scale one finger scrolls the page; two fingers, or a closer view, move the drawing. */
const mayStart = (event: Event & { readonly ctrlKey?: boolean; readonly button?: number }, scale: number): boolean => {
  if ('touches' in event) return scale > 1 || (event as TouchEvent).touches.length > 1;
  if (event.type === 'wheel') return true;
  return event.ctrlKey !== true && (event.button ?? 0) === 0;
};

/**
 * Lets a person move `layer` under `svg`. A move that the person did not make with the hand glides for 150 ms, unless
 * reduced motion is asked for (the style sheet sees to both).
 */
export const panZoom = ({
  svg,
  layer,
  sheet,
  middle,
  onMove,
}: {
  svg: SVGSVGElement;
  layer: SVGGElement;
  sheet: SheetSize;
  /** what stays where it is when the drawing grows by a key or a button: the middle of what is on the screen */
  middle: () => readonly [xMm: number, yMm: number];
  onMove: (frame: ViewFrame) => void;
}): PanZoom => {
  let frame: ViewFrame = { scale: 1, shiftXMm: 0, shiftYMm: 0 };
  let isFollowing = false;
  const behaviour: ZoomBehavior<SVGSVGElement, unknown> = zoom<SVGSVGElement, unknown>()
    .scaleExtent([1, largestScale])
    .translateExtent([
      [-slack * sheet.widthMm, -slack * sheet.heightMm],
      [(1 + slack) * sheet.widthMm, (1 + slack) * sheet.heightMm],
    ])
    .filter((event: Event) => mayStart(event, frame.scale))
    .on('zoom', (event: D3ZoomEvent<SVGSVGElement, unknown>) => {
      const { k, x, y } = event.transform;
      frame = { scale: k, shiftXMm: x, shiftYMm: y };
      layer.classList.toggle('gliding', event.sourceEvent === null && !isFollowing);
      layer.style.transform = `translate(${x}px, ${y}px) scale(${k})`;
      onMove(frame);
    });
  const selection = select(svg).call(behaviour).on('dblclick.zoom', null);
  const moveTo = ({ scale, shiftXMm, shiftYMm }: ViewFrame): void => {
    selection.call(behaviour.transform, zoomIdentity.translate(shiftXMm, shiftYMm).scale(scale));
  };
  return {
    frame: () => frame,
    moveTo,
    followTo: (to) => {
      isFollowing = true;
      moveTo(to);
      isFollowing = false;
    },
    zoomBy: (factor) => selection.call(behaviour.scaleBy, factor, [...middle()]),
    panBy: ({ xMm, yMm }) => selection.call(behaviour.translateBy, xMm / frame.scale, yMm / frame.scale),
    fit: () => selection.call(behaviour.transform, zoomIdentity),
    release: () => {
      selection.on('.zoom', null);
    },
  };
};
