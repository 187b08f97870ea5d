import { select } from 'd3-selection';
import { type D3ZoomEvent, type ZoomBehavior, type ZoomTransform, zoom, zoomIdentity } from 'd3-zoom';
import { frameOfMove, moveBetween, moveOfFrame, type PictureMove, type SheetLie } from './carried-sheet.ts';
import { type SheetSize, type ViewFrame, wholeFrame } from './view-frame.ts';

/** The hand on a drawing: wheel, pinch, drag and keys move a layer of it; the SVG's viewBox is in millimetres. */
export interface PanZoom {
  readonly frame: () => ViewFrame;
  readonly moveTo: (frame: ViewFrame) => void;
  /** the same at once: under a hand that is already moving nothing lags behind */
  readonly followTo: (frame: ViewFrame) => void;
  readonly zoomBy: (factor: number) => void;
  readonly panBy: (step: { readonly xMm: number; readonly yMm: number }) => void;
  readonly fit: () => void;
  /** draws the sheet where it is seen, before its parts are measured */
  readonly settle: () => void;
  /** takes in a window of another size */
  readonly measure: () => void;
  readonly release: () => void;
}

const largestScale = 16;

/** How far past the sheet's edge one may pull it, as a share of its size. */
const slack = 0.25;

/** A hand that has not moved for so long rests; then the sheet is drawn anew, sharp. */
const restMs = 150;

/** A picture this much larger or smaller than it was drawn is drawn anew under the hand: now and then, or at once. */
const stretches = { now: 5, sometimes: 3, everyMs: 1500 } as const;

/** At the fitted scale one finger scrolls the page; two fingers, or a closer view, move the drawing. */
const mayStart = (event: Event & { readonly ctrlKey?: boolean; readonly button?: number }, scale: number): boolean => {
  if ('touches' in event) return scale > 1 || (event as TouchEvent).touches.length > 1;
  if (event.type === 'wheel') return true;
  return event.ctrlKey !== true && (event.button ?? 0) === 0;
};

const cssOf = ({ scale, shiftXPx, shiftYPx }: PictureMove): string =>
  `translate3d(${shiftXPx}px, ${shiftYPx}px, 0) scale(${scale})`;

const lieOf = (svg: SVGSVGElement, pane: HTMLElement): SheetLie | undefined => {
  const matrix = svg.getScreenCTM();
  const { left, top, height } = pane.getBoundingClientRect();
  return matrix === null || height === 0
    ? undefined
    : { pxPerMm: matrix.a, leftPx: matrix.e - left, topPx: matrix.f - top };
};

/**
 * Lets a person move `layer` under `svg`, whose window is `pane`. While the hand makes it larger or smaller, the picture
 * of the drawing is stretched as it is, for to set thousands of words anew takes longer than a frame; where the hand
 * rests it is drawn anew. A move that the person did not make with the hand glides for 150 ms, unless reduced motion
 * is asked for (the style sheet says for how long).
 */
export const panZoom = ({
  pane,
  picture,
  svg,
  layer,
  over,
  sheet,
  middle,
  onMove,
}: {
  pane: HTMLElement;
  /** what is stretched: round the SVG, for a transform on that itself sets its words anew */
  picture: HTMLElement;
  svg: SVGSVGElement;
  layer: SVGGElement;
  /** what lies over the drawing and moves with it */
  over: SVGGElement;
  sheet: SheetSize;
  /** what stays where it is when the drawing grows by a key or a button: the middle of what is on the screen */
  middle: () => readonly [xMm: number, yMm: number];
  onMove: (frame: ViewFrame) => void;
}): PanZoom => {
  let lie: SheetLie = lieOf(svg, pane) ?? { pxPerMm: 1, leftPx: 0, topPx: 0 };
  let frame: ViewFrame = wholeFrame;
  /** the frame in which the drawing is drawn now */
  let drawn: ViewFrame = wholeFrame;
  /** how a move that is not of the hand is shown */
  let how: 'glides' | 'follows' | 'stands' = 'glides';
  let drawnAtMs = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;

  const transformOf = (of: ViewFrame): ZoomTransform => {
    const { scale, shiftXPx, shiftYPx } = moveOfFrame(of, lie);
    return zoomIdentity.translate(shiftXPx, shiftYPx).scale(scale);
  };
  const stretch = (transform: string): void => {
    picture.style.transform = transform;
  };
  const lay = (): void => {
    if (drawn === frame) return;
    drawn = frame;
    drawnAtMs = performance.now();
    const laid = `translate(${frame.shiftXMm}px, ${frame.shiftYMm}px) scale(${frame.scale})`;
    layer.style.transform = laid;
    over.style.transform = laid;
  };
  const draw = (): void => {
    clearTimeout(rest);
    stretch('');
    pane.classList.remove('moving');
    lay();
  };
  const isStretched = (): boolean => {
    const times = Math.max(frame.scale / drawn.scale, drawn.scale / frame.scale);
    const isTime = performance.now() - drawnAtMs > stretches.everyMs;
    return times > stretches.now || (times > stretches.sometimes && isTime);
  };
  const carry = (): void => {
    layer.classList.remove('gliding');
    pane.classList.add('moving');
    // words that keep their size are not set anew, so that a sheet that is only shifted is drawn within a frame
    if (frame.scale === drawn.scale || isStretched()) lay();
    stretch(drawn === frame ? '' : cssOf(moveBetween(moveOfFrame(drawn, lie), moveOfFrame(frame, lie))));
    clearTimeout(rest);
    rest = setTimeout(draw, restMs);
  };
  const glide = (): void => {
    layer.classList.add('gliding');
    draw();
  };

  const behaviour: ZoomBehavior<HTMLElement, unknown> = zoom<HTMLElement, unknown>()
    .scaleExtent([1, largestScale])
    .filter((event: Event) => mayStart(event, frame.scale))
    .on('zoom', ({ transform: { k, x, y }, sourceEvent }: D3ZoomEvent<HTMLElement, unknown>) => {
      if (how === 'stands') return;
      frame = frameOfMove({ scale: k, shiftXPx: x, shiftYPx: y }, lie);
      if (sourceEvent === null && how === 'glides') glide();
      else carry();
      onMove(frame);
    })
    .on('end', ({ sourceEvent }: D3ZoomEvent<HTMLElement, unknown>) => {
      if (sourceEvent !== null) draw();
    });
  const takeLie = (): void => {
    const { pxPerMm, leftPx, topPx } = lie;
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
  };
  takeLie();
  const selection = select(pane).call(behaviour).on('dblclick.zoom', null);
  // what is taken hold of on the sheet is measured where it is drawn
  window.addEventListener('pointerdown', draw, { capture: true });
  const moveTo = (to: ViewFrame): void => {
    selection.call(behaviour.transform, transformOf(to));
  };
  const moveSo = (to: ViewFrame, as: typeof how): void => {
    how = as;
    moveTo(to);
    how = 'glides';
  };
  return {
    frame: () => frame,
    moveTo,
    followTo: (to) => moveSo(to, 'follows'),
    zoomBy: (factor) => {
      const [xMm, yMm] = middle();
      const { pxPerMm, leftPx, topPx } = lie;
      selection.call(behaviour.scaleBy, factor, [leftPx + pxPerMm * xMm, topPx + pxPerMm * yMm]);
    },
    panBy: ({ xMm, yMm }) =>
      selection.call(behaviour.translateBy, (lie.pxPerMm * xMm) / frame.scale, (lie.pxPerMm * yMm) / frame.scale),
    fit: () => selection.call(behaviour.transform, transformOf(wholeFrame)),
    settle: draw,
    measure: () => {
      draw();
      lie = lieOf(svg, pane) ?? lie;
      takeLie();
      // the frame is the same, only its pixels are others
      moveSo(frame, 'stands');
    },
    release: () => {
      draw();
      window.removeEventListener('pointerdown', draw, { capture: true });
      selection.on('.zoom', null);
    },
  };
};
