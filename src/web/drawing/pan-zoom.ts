import { frameOfMove, moveBetween, moveOfFrame, type PictureMove, type SheetLie } from './carried-sheet.ts';
import { firstPictureSeen } from './first-picture.ts';
import { scaledFrame, steppedFrame } from './moved-frame.ts';
import type { SheetHand } from './sheet-hand.ts';
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

const bringHand = () => firstPictureSeen.then(() => import('./sheet-hand.ts'));

/** A hand that has not moved for so long rests; then the sheet is drawn anew, sharp. */
const restMs = 150;

/** A picture this much larger or smaller than it was drawn is drawn anew under the hand: now and then, or at once. */
const stretches = { now: 5, sometimes: 3, everyMs: 1500 } as const;

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
  let drawnAtMs = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;

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

  let hand: SheetHand | undefined;
  let isReleased = false;
  const tell = (): void => hand?.take(moveOfFrame(frame, lie), lie);
  const moveSo = (to: ViewFrame, show: () => void): void => {
    frame = to;
    show();
    onMove(frame);
    tell();
  };
  const moveTo = (to: ViewFrame): void => moveSo(to, glide);
  void bringHand().then(({ sheetHand }) => {
    if (isReleased) return;
    hand = sheetHand({
      pane,
      sheet,
      scaleNow: () => frame.scale,
      onMove: (move) => {
        frame = frameOfMove(move, lie);
        carry();
        onMove(frame);
      },
      onRest: draw,
    });
    tell();
  });
  // what is taken hold of on the sheet is measured where it is drawn
  window.addEventListener('pointerdown', draw, { capture: true });
  return {
    frame: () => frame,
    moveTo,
    followTo: (to) => moveSo(to, carry),
    zoomBy: (factor) => moveTo(scaledFrame(frame, { factor, still: middle() }, sheet)),
    panBy: (step) => moveTo(steppedFrame(frame, step, sheet)),
    fit: () => moveTo(wholeFrame),
    settle: draw,
    measure: () => {
      draw();
      lie = lieOf(svg, pane) ?? lie;
      // the frame is the same, only its pixels are others
      tell();
    },
    release: () => {
      draw();
      window.removeEventListener('pointerdown', draw, { capture: true });
      isReleased = true;
      hand?.release();
    },
  };
};
