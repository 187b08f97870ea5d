// biome-ignore-all lint/a11y/useSemanticElements: a fieldset cannot hold a drawing
// biome-ignore-all lint/a11y/noNoninteractiveTabindex: the arrow keys move the drawing, so it must take the keyboard
// biome-ignore-all lint/a11y/noStaticElementInteractions: keys pressed on the balloons inside come up to the layer
import {
  type ReactNode,
  type Ref,
  type RefObject,
  useEffect,
  useImperativeHandle,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Drawing, PathShape } from '../../papers/drawing/shapes.ts';
import { DrawingView } from './drawing-view.tsx';
import type { LightStore } from './light-store.ts';
import { MiniMap, type MiniMapHandle } from './mini-map.tsx';
import { type PanZoom, panZoom } from './pan-zoom.ts';
import { setTabStop } from './roving-focus.ts';
import { onBalloonKey, onSheetKey, zoomStep } from './sheet-keys.ts';
import { showOnSheet } from './show-on-sheet.ts';
import { smallestTextMm } from './smallest-text.ts';
import { firstFrame, frameAt, middleOf, type SheetSize, type Sight, seenBox, sightOf } from './view-frame.ts';

/** What others may ask of the sheet. */
export interface SheetHandle {
  /** brings what the ids stand for into sight; false when the sheet shows none of it */
  readonly show: (ids: readonly string[]) => boolean;
  readonly larger: () => void;
  readonly smaller: () => void;
  readonly fit: () => void;
}

interface SheetViewProps {
  readonly drawing: Drawing;
  /** the few lines of it that the small map shows */
  readonly overview: readonly PathShape[];
  readonly label: string;
  readonly lights: LightStore;
  readonly onPick: (about: readonly string[]) => void;
  readonly ref?: Ref<SheetHandle>;
}

interface SheetHand {
  /** the window one sees the sheet through; it stays where it is while the sheet moves */
  readonly pane: RefObject<HTMLDivElement | null>;
  readonly picture: RefObject<HTMLDivElement | null>;
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly layer: RefObject<SVGGElement | null>;
  readonly over: RefObject<SVGGElement | null>;
  readonly hand: RefObject<PanZoom | undefined>;
  readonly map: RefObject<MiniMapHandle | null>;
  /** true while the sheet is larger than its window */
  readonly isClose: boolean;
}

/** One CSS pixel is 1/96 inch by definition: so many go into a millimetre as the sheet was drawn. */
const pxPerMm = 96 / 25.4;

const sightThrough = (pane: HTMLElement, sheet: SheetSize): Sight =>
  sightOf({ sheet, window: pane.getBoundingClientRect() });

/** The same, but no more of it than is on the screen: on a phone the page scrolls past a tall sheet. */
const sightOnScreen = (pane: HTMLElement, sheet: SheetSize): Sight => {
  const { top, bottom, height } = pane.getBoundingClientRect();
  const { window: whole } = sightThrough(pane, sheet);
  // while another picture stands in its place
  if (height === 0) return { sheet, window: whole };
  const mmPerPx = whole.heightMm / height;
  const fromPx = Math.max(0, -top);
  const toPx = Math.min(bottom, window.innerHeight) - top;
  return { sheet, window: { ...whole, yMm: whole.yMm + fromPx * mmPerPx, heightMm: (toPx - fromPx) * mmPerPx } };
};

/** Puts the hand on a sheet of this size; a sheet of another size is taken up anew. */
const useSheetHand = ({ widthMm, heightMm }: Drawing): SheetHand => {
  const pane = useRef<HTMLDivElement>(null);
  const picture = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const layer = useRef<SVGGElement>(null);
  const over = useRef<SVGGElement>(null);
  const hand = useRef<PanZoom>(undefined);
  const map = useRef<MiniMapHandle | null>(null);
  const [isClose, setIsClose] = useState(false);
  useEffect(() => {
    const element = pane.current;
    if (
      element === null ||
      picture.current === null ||
      svg.current === null ||
      layer.current === null ||
      over.current === null
    )
      return;
    const sheet = { widthMm, heightMm };
    // measured once for many moves: asking for a size while drawing moves makes the page lay itself out anew
    let sight = sightOnScreen(element, sheet);
    const made = panZoom({
      pane: element,
      picture: picture.current,
      svg: svg.current,
      layer: layer.current,
      over: over.current,
      sheet,
      middle: () => middleOf(sight.window),
      onMove: (frame) => {
        setIsClose(frame.scale > 1);
        map.current?.lay(seenBox(sight, frame));
      },
    });
    hand.current = made;
    let isLaid = false;
    const layFirst = (): void => {
      const { width } = element.getBoundingClientRect();
      if (isLaid || width === 0) return;
      isLaid = true;
      const whole = sightThrough(element, sheet);
      made.followTo(firstFrame(whole, (pxPerMm * whole.window.widthMm) / width));
      made.settle();
    };
    layFirst();
    const measure = (): void => {
      // while the list stands in its place the drawing has no measures
      if (element.getBoundingClientRect().height === 0) return;
      sight = sightOnScreen(element, sheet);
      made.measure();
      layFirst();
      map.current?.lay(seenBox(sight, made.frame()));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    window.addEventListener('scroll', measure, { passive: true });
    return () => {
      observer.disconnect();
      window.removeEventListener('scroll', measure);
      made.release();
    };
  }, [widthMm, heightMm]);
  return { pane, picture, svg, layer, over, hand, map, isClose };
};

/** The sheet under the hand: wheel, pinch, drag and keys move it; its balloons are one stop for Tab. */
export const SheetView = ({ drawing, overview, label, lights, onPick, ref }: SheetViewProps): ReactNode => {
  const { pane, picture, svg, layer, over, hand, map, isClose } = useSheetHand(drawing);
  const leastMm = useMemo(() => smallestTextMm(drawing.shapes), [drawing]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new balloons
  useEffect(() => {
    if (layer.current !== null) setTabStop([...layer.current.querySelectorAll('.balloon')], 0);
  }, [drawing, layer]);

  const show = (ids: readonly string[]): boolean => {
    if (pane.current === null || svg.current === null || layer.current === null || hand.current === undefined)
      return false;
    const on = { pane: pane.current, svg: svg.current, layer: layer.current, hand: hand.current };
    return showOnSheet({ ...on, sheet: drawing, smallestTextMm: leastMm, ids });
  };
  useImperativeHandle(ref, () => ({
    show,
    larger: () => hand.current?.zoomBy(zoomStep),
    smaller: () => hand.current?.zoomBy(1 / zoomStep),
    fit: () => hand.current?.fit(),
  }));

  const goTo = (point: { xMm: number; yMm: number }): void => {
    if (pane.current === null || hand.current === undefined) return;
    hand.current.followTo(frameAt(point, sightOnScreen(pane.current, drawing), hand.current.frame()));
  };
  // a map that appears learns at once where the window lies
  useLayoutEffect(() => {
    if (!isClose || pane.current === null || hand.current === undefined) return;
    map.current?.lay(seenBox(sightOnScreen(pane.current, drawing), hand.current.frame()));
  }, [isClose, drawing, pane, hand, map]);

  return (
    <div className="sheet-hold">
      <div ref={pane} className="sheet-pane">
        <div ref={picture} className="sheet-picture">
          <svg
            ref={svg}
            className={isClose ? 'sheet-svg close' : 'sheet-svg'}
            viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`}
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
          {/* what is in the hand lies on a sheet of its own: with every move only that is laid out and drawn anew */}
          <svg className="sheet-over" viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`} aria-hidden="true">
            <g ref={over} className="sheet-over-layer" />
          </svg>
        </div>
        <div className="sheet-shield" />
      </div>
      {isClose ? <MiniMap ref={map} sheet={drawing} shapes={overview} onGo={goTo} /> : null}
    </div>
  );
};
