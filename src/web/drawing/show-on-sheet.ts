import type { PanZoom } from './pan-zoom.ts';
import { frameOn, type SheetSize, sightOf } from './view-frame.ts';

/** Words this high are easily read; the view goes no smaller when it is sent somewhere. */
const readableSizePx = 13;

/** Balloons if any stands for one of the ids, else whatever does. */
const elementsAbout = (layer: SVGGElement, ids: readonly string[]): SVGGraphicsElement[] => {
  const all = ids.flatMap((id) => [...layer.querySelectorAll<SVGGraphicsElement>(`[data-about~="${CSS.escape(id)}"]`)]);
  const balloons = all.filter((element) => element.classList.contains('balloon'));
  return balloons.length > 0 ? balloons : all;
};

const boxOf = (element: SVGGraphicsElement) => {
  const { x, y, width, height } = element.getBBox();
  return { xMm: x, yMm: y, widthMm: width, heightMm: height };
};

/** Where the page is one column the sheet may be higher than the screen; then the page follows as well. */
const followByPage = (pane: HTMLElement, layer: SVGGElement, element: SVGGraphicsElement): void => {
  const { top, bottom } = pane.getBoundingClientRect();
  if (top >= 0 && bottom <= window.innerHeight) return;
  layer.classList.remove('gliding'); // a gliding element has no place to scroll to yet
  element.scrollIntoView({ block: 'center', behavior: 'instant' });
};

/** Brings what the ids stand for into sight; false when the sheet shows none of it. */
export const showOnSheet = ({
  pane,
  svg,
  layer,
  hand,
  sheet,
  smallestTextMm,
  ids,
}: {
  pane: HTMLElement;
  svg: SVGSVGElement;
  layer: SVGGElement;
  hand: PanZoom;
  sheet: SheetSize;
  smallestTextMm: number;
  ids: readonly string[];
}): boolean => {
  // a sheet that something else stands in place of has no measures to move by
  if (pane.getBoundingClientRect().width === 0) return false;
  const elements = elementsAbout(layer, ids);
  const [first, ...rest] = elements;
  if (first === undefined) return false;
  hand.settle();
  const pxPerMm = svg.getScreenCTM()?.a ?? 1;
  hand.moveTo(
    frameOn({
      boxes: [boxOf(first), ...rest.map(boxOf)],
      sight: sightOf({ sheet, window: pane.getBoundingClientRect() }),
      now: hand.frame(),
      readableScale: readableSizePx / (smallestTextMm * pxPerMm),
    }),
  );
  followByPage(pane, layer, first);
  return true;
};
