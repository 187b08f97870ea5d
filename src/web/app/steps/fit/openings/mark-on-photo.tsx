import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from 'react';
import type { Picture } from '../../../../../core/boat/picture.ts';
import { words } from './words.ts';

/** A point of the picture, pixels. */
export type Mark = readonly [x: number, y: number];

/** What is marked so far: the two points of the scale, and then the outline. */
export interface Marks {
  readonly scale: readonly Mark[];
  readonly outline: readonly Mark[];
}

const steps: Readonly<Record<string, Mark>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const nameOf = (at: number): string => (at < 2 ? words.pointOf[at === 0 ? 'from' : 'to'] : words.outlinePoint(at - 1));

const parted = (all: readonly Mark[]): Marks => ({ scale: all.slice(0, 2), outline: all.slice(2) });

/** Where on the picture a pointer is, whatever its size on the screen. */
const markAt = (svg: SVGSVGElement, { clientX, clientY }: PointerEvent): Mark | undefined => {
  const matrix = svg.getScreenCTM()?.inverse();
  if (matrix === undefined) return undefined;
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix);
  return [Math.round(x * 10) / 10, Math.round(y * 10) / 10];
};

/** A photo on which points are marked one after the other; each can be moved and taken out by the keyboard. */
export const MarkOnPhoto = ({
  picture: { widthPx, heightPx },
  url,
  marks: { scale, outline },
  onMarks,
}: {
  picture: Picture;
  url: string;
  marks: Marks;
  onMarks: (marks: Marks) => void;
}): ReactNode => {
  const svg = useRef<SVGSVGElement>(null);
  const all = [...scale, ...outline];
  const dotPx = Math.max(widthPx, heightPx) / 90;
  const press = (event: PointerEvent): void => {
    const mark = svg.current === null ? undefined : markAt(svg.current, event);
    if (mark !== undefined) onMarks(parted([...all, mark]));
  };
  const key = (event: KeyboardEvent, at: number): void => {
    const step = steps[event.key];
    const by = event.shiftKey ? 10 : 1;
    if (step !== undefined) {
      onMarks(parted(all.map((mark, i): Mark => (i === at ? [mark[0] + step[0] * by, mark[1] + step[1] * by] : mark))));
    } else if (event.key === 'Delete' || event.key === 'Backspace') onMarks(parted(all.filter((_, i) => i !== at)));
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const line = (points: readonly Mark[]): string => points.map(([x, y]) => `${x},${y}`).join(' ');
  return (
    <svg
      ref={svg}
      className="trace-photo"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      onPointerDown={press}
    >
      <title>{words.photo}</title>
      <image href={url} width={widthPx} height={heightPx} />
      <rect className="trace-tint" width={widthPx} height={heightPx} />
      <polyline className="trace-scale" points={line(scale)} />
      <polygon className="trace-outline" points={line(outline)} />
      {all.map(([x, y], at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a mark is its number
        <g key={at} className={at < 2 ? 'trace-mark of-scale' : 'trace-mark'}>
          {/* biome-ignore lint/a11y/useSemanticElements: a button cannot stand on a drawing */}
          <circle
            cx={x}
            cy={y}
            r={dotPx}
            tabIndex={0}
            role="button"
            aria-label={nameOf(at)}
            onPointerDown={(event) => event.stopPropagation()}
            onKeyDown={(event) => key(event, at)}
          />
        </g>
      ))}
    </svg>
  );
};
