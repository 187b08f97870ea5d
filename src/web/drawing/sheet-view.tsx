// biome-ignore-all lint/a11y/useSemanticElements: a fieldset cannot hold a drawing
// biome-ignore-all lint/a11y/noNoninteractiveTabindex: the arrow keys move the drawing, so it must take the keyboard
// biome-ignore-all lint/a11y/noStaticElementInteractions: keys pressed on the balloons inside come up to the layer
import {
  type ReactNode,
  type Ref,
  type RefObject,
  useEffect,
  useImperativeHandle,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Drawing } from '../../papers/drawing/shapes.ts';
import { DrawingView } from './drawing-view.tsx';
import type { LightStore } from './light-store.ts';
import { type PanZoom, panZoom } from './pan-zoom.ts';
import { setTabStop } from './roving-focus.ts';
import { onBalloonKey, onSheetKey, zoomStep } from './sheet-keys.ts';
import { showOnSheet } from './show-on-sheet.ts';
import { smallestTextMm } from './smallest-text.ts';
import { firstFrame, sightOf } from './view-frame.ts';

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
  readonly label: string;
  readonly lights: LightStore;
  readonly onPick: (about: readonly string[]) => void;
  readonly ref?: Ref<SheetHandle>;
}

interface SheetHand {
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly layer: RefObject<SVGGElement | null>;
  readonly hand: RefObject<PanZoom | undefined>;
  /** true while the sheet is larger than its window */
  readonly isClose: boolean;
}

/** Puts the hand on a sheet of this size; a sheet of another size is taken up anew. */
const useSheetHand = ({ widthMm, heightMm }: Drawing): SheetHand => {
  const svg = useRef<SVGSVGElement>(null);
  const layer = useRef<SVGGElement>(null);
  const hand = useRef<PanZoom>(undefined);
  const [isClose, setIsClose] = useState(false);
  useEffect(() => {
    if (svg.current === null || layer.current === null) return;
    const sheet = { widthMm, heightMm };
    const made = panZoom({
      svg: svg.current,
      layer: layer.current,
      sheet,
      onMove: ({ scale }) => setIsClose(scale > 1),
    });
    hand.current = made;
    made.moveTo(firstFrame(sightOf({ sheet, window: svg.current.getBoundingClientRect() })));
    return made.release;
  }, [widthMm, heightMm]);
  return { svg, layer, hand, isClose };
};

/** The sheet under the hand: wheel, pinch, drag and keys move it; its balloons are one stop for Tab. */
export const SheetView = ({ drawing, label, lights, onPick, ref }: SheetViewProps): ReactNode => {
  const { svg, layer, hand, isClose } = useSheetHand(drawing);
  const leastMm = useMemo(() => smallestTextMm(drawing.shapes), [drawing]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new balloons
  useEffect(() => {
    if (layer.current !== null) setTabStop([...layer.current.querySelectorAll('.balloon')], 0);
  }, [drawing, layer]);

  const show = (ids: readonly string[]): boolean => {
    if (svg.current === null || layer.current === null || hand.current === undefined) return false;
    const on = { svg: svg.current, layer: layer.current, hand: hand.current };
    return showOnSheet({ ...on, sheet: drawing, smallestTextMm: leastMm, ids });
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
  );
};
