// biome-ignore-all lint/a11y/noStaticElementInteractions: a second way to what keys, wheel and drag already do
import { memo, type PointerEvent, type ReactNode, type Ref, useImperativeHandle, useRef } from 'react';
import type { PathShape } from '../../papers/drawing/shapes.ts';
import type { BoxMm, SheetSize } from './view-frame.ts';

/** What tells the map where the window lies, many times a second and so past the page's state. */
export interface MiniMapHandle {
  readonly lay: (seen: BoxMm) => void;
}

interface MiniMapProps {
  readonly sheet: SheetSize;
  readonly shapes: readonly PathShape[];
  readonly onGo: (point: { xMm: number; yMm: number }) => void;
  readonly ref?: Ref<MiniMapHandle>;
}

/** The largest the map may be. */
const mostPx = { width: 190, height: 150 };

/** Of a sheet for a phone only the views of the boat are on the map: the strip below them has the page's own scroll. */
const tallest = 1.6;

const Lines = memo(
  ({ shapes }: { shapes: readonly PathShape[] }): ReactNode =>
    shapes.map((shape, at) => (
      <path
        // biome-ignore lint/suspicious/noArrayIndexKey: the map is drawn anew with its sheet
        key={at}
        d={shape.d}
        fill="none"
        stroke={`var(--${shape.stroke?.ink ?? 'ink'})`}
        vectorEffect="non-scaling-stroke"
      />
    )),
);

/** The whole sheet in little, with the window on it: press or drag to go somewhere. */
export const MiniMap = ({ sheet, shapes, onGo, ref }: MiniMapProps): ReactNode => {
  const map = useRef<SVGSVGElement>(null);
  const window = useRef<SVGRectElement>(null);
  useImperativeHandle(ref, () => ({
    lay: ({ xMm, yMm, widthMm, heightMm }) => {
      const rect = window.current;
      rect?.setAttribute('x', String(xMm));
      rect?.setAttribute('y', String(yMm));
      rect?.setAttribute('width', String(widthMm));
      rect?.setAttribute('height', String(heightMm));
    },
  }));
  const heightMm = Math.min(sheet.heightMm, tallest * sheet.widthMm);
  const perMm = Math.min(mostPx.width / sheet.widthMm, mostPx.height / heightMm);
  const go = (event: PointerEvent): void => {
    if (event.buttons === 0) return;
    const inverse = map.current?.getScreenCTM()?.inverse();
    if (inverse === undefined) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(inverse);
    onGo({ xMm: x, yMm: y });
  };
  return (
    <svg
      ref={map}
      className="mini-map"
      width={perMm * sheet.widthMm}
      height={perMm * heightMm}
      viewBox={`0 0 ${sheet.widthMm} ${heightMm}`}
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        go(event);
      }}
      onPointerMove={go}
    >
      <Lines shapes={shapes} />
      <rect ref={window} className="mini-window" vectorEffect="non-scaling-stroke" />
    </svg>
  );
};
