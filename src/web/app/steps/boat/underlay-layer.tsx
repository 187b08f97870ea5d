// biome-ignore-all lint/a11y/useSemanticElements: an SVG has no button element
import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef } from 'react';
import type { Underlay } from '../../../../core/boat/underlay.ts';
import { movedFixes, underlayPlacement } from '../../../../core/boat/underlay-placement.ts';
import type { ScaledView } from '../../../../papers/sheet/view.ts';
import { useEdit } from '../../edit-context.ts';
import { usePicture } from '../../pictures/picture-keeper.ts';
import './underlay-layer.css';
import { holdInHand, usePlaceHand } from './place-hand.ts';
import { pointAboard, viewOf } from './underlay-hand.ts';
import { downOf } from './view-axes.ts';
import { words } from './words.ts';

/** Presses that follow each other within this are one step of undo. */
const runMs = 700;
const markMm = 2;

/** From pixels of the picture to millimetres of the sheet. */
const transformOf = (underlay: Underlay, view: ScaledView): string => {
  const { a, b, alongM, downM, flip } = underlayPlacement(underlay);
  const [originX, originY] = view.point(0, 0);
  const mmPerM = view.point(1, 0)[0] - originX;
  const matrix = [
    a * flip * mmPerM,
    b * flip * mmPerM,
    -b * mmPerM,
    a * mmPerM,
    originX + alongM * mmPerM,
    originY + downM * mmPerM,
  ];
  return `matrix(${matrix.join(' ')})`;
};

/** The part of a view that is drawn to scale: not above where a tall mast is shortened. */
const clipOf = ({ box, breakMm }: ScaledView) => {
  const topMm = Math.max(box.topMm, breakMm ?? box.topMm);
  return { x: box.leftMm, y: topMm, width: box.rightMm - box.leftMm, height: Math.max(0, box.bottomMm - topMm) };
};

const arrows: Readonly<Record<string, readonly [right: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The marks of a picture answer to the arrow keys as they do to the hand; a run of presses is one edit. */
const useMarkKeys = (underlay: Underlay, stepM: number) => {
  const edit = useEdit();
  const run = useRef<{ now: Underlay; timer: ReturnType<typeof setTimeout> } | undefined>(undefined);
  const latest = useRef({ underlay, edit });
  latest.current = { underlay, edit };
  const put = (): void => {
    const { current } = run;
    if (current === undefined) return;
    clearTimeout(current.timer);
    run.current = undefined;
    latest.current.edit([{ edit: 'set-underlay', params: current.now }]);
  };
  useEffect(
    () => () => {
      if (run.current !== undefined) clearTimeout(run.current.timer);
    },
    [],
  );
  const press = (event: KeyboardEvent, fix: 'from' | 'to'): void => {
    const arrow = arrows[event.key];
    if (arrow === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const far = event.shiftKey ? 10 * stepM : stepM;
    const by = { alongM: arrow[0] * far, acrossM: arrow[1] * downOf(underlay.view) * far };
    if (run.current !== undefined) clearTimeout(run.current.timer);
    const before = run.current?.now ?? latest.current.underlay;
    const now = { ...before, ...movedFixes(before, { fix, by }) };
    run.current = { now, timer: setTimeout(put, runMs) };
    holdInHand({ kind: 'underlay', underlay: now });
  };
  return { press, put };
};

const Mark = ({
  at,
  label,
  onKey,
  onBlur,
}: {
  at: readonly [number, number];
  label: string;
  onKey: (event: KeyboardEvent) => void;
  onBlur: () => void;
}): ReactNode => {
  const [x, y] = at;
  return (
    <g className="underlay-mark" role="button" tabIndex={0} aria-label={label} onKeyDown={onKey} onBlur={onBlur}>
      <circle cx={x} cy={y} r={markMm} />
      <path d={`M${x - markMm} ${y}H${x + markMm}M${x} ${y - markMm}V${y + markMm}`} />
    </g>
  );
};

const UnderlayView = ({
  underlay,
  view,
  stepM,
  first,
}: {
  underlay: Underlay;
  view: ScaledView;
  stepM: number;
  first: readonly [number, number] | undefined;
}): ReactNode => {
  const picture = usePicture(underlay.picture.hash);
  const keys = useMarkKeys(underlay, stepM);
  const clip = useId();
  if (picture.kind !== 'here') return null;
  const { widthPx, heightPx } = underlay.picture;
  return (
    <>
      <clipPath id={clip}>
        <rect {...clipOf(view)} />
      </clipPath>
      <g clipPath={`url(#${clip})`} className="underlay">
        <image
          className="underlay-image"
          href={picture.url}
          width={widthPx}
          height={heightPx}
          transform={transformOf(underlay, view)}
          preserveAspectRatio="none"
        />
        <rect className="underlay-tint" width={widthPx} height={heightPx} transform={transformOf(underlay, view)} />
      </g>
      {(['from', 'to'] as const).map((fix) => (
        <Mark
          key={fix}
          at={view.point(underlay[fix].alongM, underlay[fix].acrossM)}
          label={fix === 'from' ? words.firstMark : words.secondMark}
          onKey={(event) => keys.press(event, fix)}
          onBlur={keys.put}
        />
      ))}
      {first === undefined ? null : <circle className="underlay-first" cx={first[0]} cy={first[1]} r={markMm} />}
    </>
  );
};

/** The pictures under the drawing, faint, each in its view, with the two marks by which it is laid out. */
export const UnderlayLayer = ({
  underlays,
  views,
  stepM,
}: {
  underlays: readonly Underlay[];
  views: readonly ScaledView[];
  stepM: number;
}): ReactNode => {
  const { inHand } = usePlaceHand();
  return underlays
    .filter(({ hidden }) => hidden !== true)
    .map((kept) => {
      const underlay = inHand?.kind === 'underlay' && inHand.underlay.view === kept.view ? inHand.underlay : kept;
      const view = viewOf(views, underlay);
      if (view === undefined) return null;
      const isFirst = inHand?.kind === 'point' && inHand.view === underlay.view;
      const at = isFirst ? pointAboard(underlay, inHand.point) : undefined;
      const first = at === undefined ? undefined : view.point(at.alongM, at.acrossM);
      return <UnderlayView key={underlay.view} underlay={underlay} view={view} stepM={stepM} first={first} />;
    });
};
