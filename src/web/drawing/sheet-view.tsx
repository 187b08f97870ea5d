// biome-ignore-all lint/a11y/useSemanticElements: a fieldset cannot hold a drawing
// biome-ignore-all lint/a11y/noNoninteractiveTabindex: the arrow keys move the drawing, so it must take the keyboard
// biome-ignore-all lint/a11y/noStaticElementInteractions: keys pressed on the balloons inside come up to the layer
import { type KeyboardEvent, type ReactNode, type Ref, useEffect, useImperativeHandle, useRef, useState } from 'react';
import type { Drawing } from '../../papers/drawing/shapes.ts';
import { DrawingView } from './drawing-view.tsx';
import type { LightStore } from './light-store.ts';
import { type PanZoom, panZoom } from './pan-zoom.ts';
import { nextInRow, setTabStop } from './roving-focus.ts';
import { smallestTextMm } from './smallest-text.ts';
import { boxRound, frameOn, type ViewFrame } from './view-frame.ts';

/** What others may ask of the sheet. */
export interface SheetHandle {
  /** brings what the ids stand for into view; false when the sheet shows none of it */
  readonly show: (ids: readonly string[]) => boolean;
  readonly larger: () => void;
  readonly smaller: () => void;
  readonly fit: () => void;
}

interface SheetViewProps {
  readonly drawing: Drawing;
  readonly label: string;
  readonly lights: LightStore;
  readonly onPick: (about: readonly string[]) => void;
  readonly ref?: Ref<SheetHandle>;
}

const stepShare = 0.08;
const zoomStep = 1.4;

/** Words this high are easily read; the view goes no smaller when it is sent somewhere. */
const readableSizePx = 13;

/** Screen pixels for one millimetre of the sheet when the whole of it is in sight. */
const pxPerMm = (layer: SVGGElement, frame: ViewFrame): number => (layer.getScreenCTM()?.a ?? 1) / frame.scale;

const elementsAbout = (layer: SVGGElement, ids: readonly string[]): SVGGraphicsElement[] => {
  const all = ids.flatMap((id) => [...layer.querySelectorAll<SVGGraphicsElement>(`[data-about~="${CSS.escape(id)}"]`)]);
  const balloons = all.filter((element) => element.classList.contains('balloon'));
  return balloons.length > 0 ? balloons : all;
};

const boxOf = (element: SVGGraphicsElement) => {
  const { x, y, width, height } = element.getBBox();
  return { xMm: x, yMm: y, widthMm: width, heightMm: height };
};

const panKeys: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['ArrowLeft', [1, 0]],
  ['ArrowRight', [-1, 0]],
  ['ArrowUp', [0, 1]],
  ['ArrowDown', [0, -1]],
]);

const onSheetKey = (event: KeyboardEvent, hand: PanZoom, drawing: Drawing): void => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const pan = panKeys.get(event.key);
  if (pan !== undefined) {
    const [right, down] = pan;
    hand.panBy({ xMm: right * stepShare * drawing.widthMm, yMm: down * stepShare * drawing.heightMm });
  } else if (event.key === '+' || event.key === '=') hand.zoomBy(zoomStep);
  else if (event.key === '-') hand.zoomBy(1 / zoomStep);
  else if (event.key === '0') hand.fit();
  else return;
  event.preventDefault();
};

/** Steps from balloon to balloon; each is shown as it gets the keyboard. */
const onBalloonKey = (event: KeyboardEvent, layer: SVGGElement): void => {
  const balloons = [...layer.querySelectorAll<SVGGElement>('.balloon')];
  const at = balloons.indexOf(event.target as SVGGElement); // an event inside the layer comes from an SVG element
  const next = nextInRow({ key: event.key, at, count: balloons.length });
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  setTabStop(balloons, next);
  balloons[next]?.focus();
};

/** The sheet under the hand: wheel, pinch, drag and keys move it; its balloons are one stop for Tab. */
export const SheetView = ({ drawing, label, lights, onPick, ref }: SheetViewProps): ReactNode => {
  const svg = useRef<SVGSVGElement>(null);
  const layer = useRef<SVGGElement>(null);
  const hand = useRef<PanZoom>(undefined);
  const [isClose, setIsClose] = useState(false);
  const { widthMm, heightMm } = drawing;

  useEffect(() => {
    if (svg.current === null || layer.current === null) return;
    const made = panZoom({
      svg: svg.current,
      layer: layer.current,
      sheet: { widthMm, heightMm },
      onMove: ({ scale }) => setIsClose(scale > 1),
    });
    hand.current = made;
    made.fit();
    return made.release;
  }, [widthMm, heightMm]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new balloons
  useEffect(() => {
    if (layer.current !== null) setTabStop([...layer.current.querySelectorAll('.balloon')], 0);
  }, [drawing]);

  const show = (ids: readonly string[]): boolean => {
    if (layer.current === null || hand.current === undefined) return false;
    const box = boxRound(elementsAbout(layer.current, ids).map(boxOf));
    if (box === undefined) return false;
    const readableScale =
      readableSizePx / (smallestTextMm(drawing.shapes) * pxPerMm(layer.current, hand.current.frame()));
    hand.current.moveTo(frameOn({ box, sheet: drawing, now: hand.current.frame(), readableScale }));
    return true;
  };
  useImperativeHandle(ref, () => ({
    show,
    larger: () => hand.current?.zoomBy(zoomStep),
    smaller: () => hand.current?.zoomBy(1 / zoomStep),
    fit: () => hand.current?.fit(),
  }));

  return (
    <svg
      ref={svg}
      className={isClose ? 'sheet-svg close' : 'sheet-svg'}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="group"
      aria-label={label}
      tabIndex={0}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onPick([]);
        if (hand.current !== undefined) onSheetKey(event, hand.current, drawing);
      }}
      onClick={(event) => {
        if (!(event.target as Element).closest('.balloon')) onPick([]); // what is clicked in an SVG is an element
      }}
    >
      <g
        ref={layer}
        className="sheet-layer"
        onKeyDown={(event) => onBalloonKey(event, event.currentTarget)}
        onFocus={(event) => {
          const about = event.target.getAttribute('data-about');
          if (about !== null && event.target.matches(':focus-visible')) show(about.split(' '));
        }}
      >
        <DrawingView drawing={drawing} lights={lights} onPick={onPick} />
      </g>
    </svg>
  );
};
