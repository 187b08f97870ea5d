import type { KeyboardEvent } from 'react';
import type { PanZoom } from './pan-zoom.ts';
import { nextInRow, setTabStop } from './roving-focus.ts';
import type { SheetSize } from './view-frame.ts';

/** One press of a key or a button makes the drawing so much larger or smaller. */
export const zoomStep = 1.4;
const panShare = 0.08;

const panKeys: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['ArrowLeft', [1, 0]],
  ['ArrowRight', [-1, 0]],
  ['ArrowUp', [0, 1]],
  ['ArrowDown', [0, -1]],
]);

/** Moves the drawing by the arrow keys, plus, minus and 0; any other key is left to the page. */
export const onSheetKey = (event: KeyboardEvent, hand: PanZoom, sheet: SheetSize): void => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const pan = panKeys.get(event.key);
  if (pan !== undefined) {
    const [right, down] = pan;
    hand.panBy({ xMm: right * panShare * sheet.widthMm, yMm: down * panShare * sheet.heightMm });
  } else if (event.key === '+' || event.key === '=') hand.zoomBy(zoomStep);
  else if (event.key === '-') hand.zoomBy(1 / zoomStep);
  else if (event.key === '0') hand.fit();
  else return;
  event.preventDefault();
};

/** Steps from balloon to balloon; the page shows each as it gets the keyboard. */
export const onBalloonKey = (event: KeyboardEvent, layer: SVGGElement): void => {
  const balloons = [...layer.querySelectorAll<SVGGElement>('.balloon')];
  const at = balloons.indexOf(event.target as SVGGElement); // an event inside the layer comes from an SVG element
  const next = nextInRow({ key: event.key, at, count: balloons.length });
  if (next === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  setTabStop(balloons, next);
  balloons[next]?.focus();
};
