import {
  type KeyboardEvent,
  type ReactNode,
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Job, PhaseWork } from '../../../../core/work-shape.ts';
import { dateWords } from '../../../../papers/work/day-words.ts';
import { jobWords } from '../../../../papers/work/job-words.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import type { WorkAxis } from '../../../../papers/work/work-axis.ts';
import { workPicture } from '../../../../papers/work/work-picture.ts';
import { dragOnDrawing, type Hand } from '../../../drawing/drag-on-drawing.ts';
import { DrawingView } from '../../../drawing/drawing-view.tsx';
import type { LightStore } from '../../../drawing/light-store.ts';
import { nextInRow, setTabStop } from '../../../drawing/roving-focus.ts';
import { dateAt, datePast } from './pin-days.ts';
import { words } from './words.ts';
import type { DayAt } from './work-view.ts';

/** Holds a job to a day, or lets it go where none is given. */
export type PinJob = (job: string, date: string | undefined) => void;

interface WorkDrawingProps {
  readonly input: PictureInput;
  readonly lights: LightStore;
  readonly onPin: PinJob;
  /** the day that is looked at, to be brought into sight */
  readonly at: DayAt | undefined;
}

const balloonsIn = (svg: SVGSVGElement | null): SVGGElement[] => [
  ...(svg?.querySelectorAll<SVGGElement>('.balloon') ?? []),
];

const jobOf = (element: Element | null | undefined): string | undefined =>
  element?.closest('.balloon')?.getAttribute('data-about') ?? undefined;

/** Where a point of the window lies on the picture, in millimetres from its left. */
const xOn = (svg: SVGSVGElement, clientX: number, widthMm: number): number => {
  const { left, width } = svg.getBoundingClientRect();
  return ((clientX - left) / width) * widthMm;
};

interface Held {
  readonly job: string;
  readonly date: string | undefined;
  readonly xMm: number;
}

/** Lets balloons be dragged to another day; what is held now comes back, to be said and shown. */
const useDayDrag = (
  frame: React.RefObject<HTMLDivElement | null>,
  svg: React.RefObject<SVGSVGElement | null>,
  {
    axis,
    widthMm,
    canMove,
    onPin,
  }: { axis: WorkAxis; widthMm: number; canMove: (job: string) => boolean; onPin: PinJob },
): Held | undefined => {
  const [held, setHeld] = useState<Held | undefined>(undefined);
  useEffect(() => {
    if (frame.current === null) return undefined;
    const heldBy = ({ from, at }: Hand): Held | undefined => {
      const job = jobOf(document.elementFromPoint(from.x, from.y)) ?? lastJob;
      if (job === undefined || svg.current === null) return undefined;
      lastJob = job;
      const xMm = xOn(svg.current, at.x, widthMm);
      return { job, xMm, date: dateAt(axis, xMm) };
    };
    let lastJob: string | undefined;
    return dragOnDrawing(frame.current, [
      {
        grips: () => 'anywhere',
        reachPx: 24,
        byBalloon: true,
        isFor: ({ from }) => {
          const job = jobOf(document.elementFromPoint(from.x, from.y));
          return job !== undefined && canMove(job);
        },
        onMove: (hand) => setHeld(heldBy(hand)),
        onPut: (hand) => {
          const put = heldBy(hand);
          lastJob = undefined;
          if (put !== undefined) onPin(put.job, put.date);
        },
        onLeave: () => setHeld(undefined),
      },
    ]);
  }, [frame, svg, axis, widthMm, canMove, onPin]);
  return held;
};

interface Found {
  readonly phase: PhaseWork;
  readonly job: Job;
}

const findJob = ({ phases }: PictureInput, id: string | undefined): Found | undefined => {
  for (const phase of phases) {
    const job = phase.jobs.find((one) => one.id === id);
    if (job !== undefined) return { phase, job };
  }
  return undefined;
};

/** Arrows go from job to job; with Shift they hold it a day earlier or later, and Delete lets it go. */
const onJobKey = (
  event: KeyboardEvent,
  svg: SVGSVGElement | null,
  { input, onPin }: Pick<WorkDrawingProps, 'input' | 'onPin'>,
): void => {
  const balloons = balloonsIn(svg);
  const id = event.target instanceof Element ? jobOf(event.target) : undefined;
  const found = findJob(input, id);
  if (found === undefined || id === undefined) return;
  const isDone = input.done.has(id);
  if (event.shiftKey && (event.key === 'ArrowRight' || event.key === 'ArrowLeft')) {
    event.preventDefault();
    const date = datePast(found.phase, id, event.key === 'ArrowRight' ? 1 : -1);
    const on = date ?? found.phase.days[0]?.date;
    // where days are only counted there is none to hold it to before the first is said
    if (on === undefined) document.querySelector<HTMLElement>('.work-start input')?.focus();
    else if (!isDone) onPin(id, on);
    return;
  }
  if (event.key === 'Delete' || event.key === 'Backspace') {
    event.preventDefault();
    if (found.job.day !== undefined) onPin(id, undefined);
    return;
  }
  const next = nextInRow({
    key: event.key,
    at: event.target instanceof SVGGElement ? balloons.indexOf(event.target) : -1,
    count: balloons.length,
  });
  if (next === undefined) return;
  event.preventDefault();
  setTabStop(balloons, next);
  balloons[next]?.focus();
};

/** After the order has changed the keyboard stays with the job it was on. */
const useKeptFocus = (
  svg: React.RefObject<SVGSVGElement | null>,
  drawing: unknown,
): ((job: string | undefined) => void) => {
  const job = useRef<string | undefined>(undefined);
  // before anything is painted: a key pressed in between would go to nobody
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new balloons
  useLayoutEffect(() => {
    const balloons = balloonsIn(svg.current);
    const at = balloons.findIndex((one) => one.getAttribute('data-about') === job.current);
    setTabStop(balloons, Math.max(0, at));
    if (at >= 0 && (document.activeElement === document.body || document.activeElement === null)) balloons[at]?.focus();
  }, [svg, drawing]);
  return useCallback((id) => {
    job.current = id;
  }, []);
};

/** Scrolls a place of the picture beside the names; the person may go elsewhere until another day is looked at. */
const useInSight = (svg: React.RefObject<SVGSVGElement | null>, leftMm: number | undefined, widthMm: number): void => {
  // biome-ignore lint/correctness/useExhaustiveDependencies: a picture that has become wider is no reason to move
  useEffect(() => {
    const scroll = svg.current?.closest('.work-scroll');
    if (svg.current === null || scroll === null || scroll === undefined || leftMm === undefined) return;
    scroll.scrollLeft = (leftMm / widthMm) * svg.current.getBoundingClientRect().width;
  }, [svg, leftMm]);
};

const HeldLine = ({ held, axis, heightMm }: { held: Held; axis: WorkAxis; heightMm: number }): ReactNode => {
  const column = axis.columns.find(({ rightMm }) => held.xMm < rightMm) ?? axis.columns.at(-1);
  return column === undefined ? null : (
    <rect className="work-held" x={column.leftMm} y={3} width={column.rightMm - column.leftMm} height={heightMm - 4} />
  );
};

/** The days of the work under the hand: names stand still, days pass beside them, a job is dragged or moved by keys to another day. */
export const WorkDrawing = ({ input, lights, onPin, at }: WorkDrawingProps): ReactNode => {
  const frame = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const { axis, names, days } = useMemo(() => workPicture(input), [input]);
  const canMove = useCallback((job: string) => !input.done.has(job), [input]);
  const here = axis.columns.find(
    ({ phase, day, lastDay }) => phase === at?.phase && day <= at.day && at.day <= lastDay,
  );
  useInSight(svg, here?.leftMm, days.widthMm);
  const held = useDayDrag(frame, svg, { axis, widthMm: days.widthMm, canMove, onPin });
  const keepFocus = useKeptFocus(svg, days);
  const job = findJob(input, held?.job)?.job;
  const pick = useCallback((about: readonly string[]) => lights.pick(about), [lights]);
  return (
    <div className="work-drawing" ref={frame}>
      <svg
        className="work-names"
        viewBox={`0 0 ${names.widthMm} ${names.heightMm}`}
        width={`${names.widthMm}mm`}
        height={`${names.heightMm}mm`}
        aria-hidden="true"
      >
        <DrawingView drawing={names} lights={lights} onPick={pick} />
      </svg>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot hold a drawing */}
      <svg
        ref={svg}
        className="work-days"
        viewBox={`0 0 ${days.widthMm} ${days.heightMm}`}
        width={`${days.widthMm}mm`}
        height={`${days.heightMm}mm`}
        role="group"
        aria-label={words.pictureKeys}
        onKeyDown={(event) => onJobKey(event, svg.current, { input, onPin })}
        onFocus={(event) => keepFocus(jobOf(event.target))}
      >
        {here === undefined ? null : (
          <rect
            className="work-here"
            x={here.leftMm}
            y={3}
            width={here.rightMm - here.leftMm}
            height={days.heightMm - 4}
          />
        )}
        {held === undefined ? null : <HeldLine held={held} axis={axis} heightMm={days.heightMm} />}
        <DrawingView drawing={days} lights={lights} onPick={pick} />
      </svg>
      <p className="work-held-says" role="status">
        {held === undefined || job === undefined
          ? ''
          : words.holding(jobWords(input.names, job), held.date === undefined ? undefined : dateWords(held.date))}
      </p>
    </div>
  );
};
