import { type MouseEvent, type ReactNode, useMemo } from 'react';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import { workGlance } from '../../../../papers/work/work-glance.ts';
import { DrawingView } from '../../../drawing/drawing-view.tsx';
import type { LightStore } from '../../../drawing/light-store.ts';
import { words } from './words.ts';
import { type DayAt, showWork } from './work-view.ts';
import './glance-line.css';

/** All days in one look over the picture: a press goes to a day, which the keyboard does by the list of days. */
export const GlanceLine = ({
  input,
  lights,
  at,
}: {
  input: PictureInput;
  lights: LightStore;
  at: DayAt | undefined;
}): ReactNode => {
  const glance = useMemo(() => workGlance(input), [input]);
  if (glance === undefined) return null;
  const { drawing, edgesOf, dayAt } = glance;
  const edges = at === undefined ? undefined : edgesOf(at.phase, at.day);
  const go = ({ currentTarget, clientX }: MouseEvent<SVGSVGElement>): void => {
    const { left, width } = currentTarget.getBoundingClientRect();
    const day = dayAt(((clientX - left) / width) * drawing.widthMm);
    if (day !== undefined) showWork({ shows: 'days', at: day });
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list of days below does the same by keys
    <svg
      className="work-glance"
      viewBox={`0 0 ${drawing.widthMm} ${drawing.heightMm}`}
      role="img"
      aria-label={words.glance}
      onClick={go}
    >
      {edges === undefined ? null : (
        <rect className="work-here" x={edges[0]} y={0} width={edges[1] - edges[0]} height={drawing.heightMm} />
      )}
      <DrawingView drawing={drawing} lights={lights} onPick={(about) => lights.pick(about)} />
    </svg>
  );
};
