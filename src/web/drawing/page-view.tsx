import { memo, type ReactNode } from 'react';
import type { Shape } from '../../papers/drawing/shapes.ts';
import type { Page } from '../../papers/pages/page-shape.ts';
import { flat, keyOf, PlainView } from './drawing-view.tsx';

const Shapes = ({ shapes }: { shapes: readonly Shape[] }): ReactNode =>
  flat(shapes).map((shape, at) => <PlainView key={keyOf(shape, at)} shape={shape} isRead={true} />);

/** A page of papers as SVG elements inside an `<svg>` measured in millimetres: its words are read, nothing on it lights. */
export const PageView = memo(
  ({ page }: { page: Page }): ReactNode => (
    <>
      {page.insets.map(({ drawing, xMm, yMm, scale }) => (
        <g key={`${xMm} ${yMm} ${drawing.title}`} transform={`translate(${xMm} ${yMm}) scale(${scale})`}>
          <Shapes shapes={drawing.shapes} />
        </g>
      ))}
      <Shapes shapes={page.shapes} />
    </>
  ),
);
