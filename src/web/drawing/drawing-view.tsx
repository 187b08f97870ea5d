// biome-ignore-all lint/a11y/useSemanticElements: an SVG has no button element
// biome-ignore-all lint/a11y/noAriaHiddenOnFocusable: an SVG text takes no focus
import { memo, type ReactNode } from 'react';
import type {
  CircleShape,
  Drawing,
  GroupShape,
  Ink,
  PathShape,
  Shape,
  Stroke,
  TextShape,
} from '../../papers/drawing/shapes.ts';
import { type LightStore, useIsLit } from './light-store.ts';

/** What a drawing needs to answer a person: the lights, and what to do when a balloon is picked. */
interface Hand {
  readonly lights: LightStore;
  readonly onPick: (about: readonly string[]) => void;
}

const inkColour = (ink: Ink): string => (ink === 'none' ? 'none' : `var(--${ink})`);

const strokeProps = (stroke: Stroke | undefined) =>
  stroke === undefined
    ? {}
    : {
        stroke: inkColour(stroke.ink),
        strokeWidth: stroke.widthMm,
        ...(stroke.dashMm === undefined ? {} : { strokeDasharray: stroke.dashMm.join(' ') }),
      };

const PathView = ({ shape }: { shape: PathShape }): ReactNode => (
  <path d={shape.d} fill={inkColour(shape.fill ?? 'none')} {...strokeProps(shape.stroke)} />
);

const CircleView = ({ shape }: { shape: CircleShape }): ReactNode => (
  <circle
    cx={shape.xMm}
    cy={shape.yMm}
    r={shape.radiusMm}
    fill={inkColour(shape.fill ?? 'none')}
    {...strokeProps(shape.stroke)}
  />
);

const TextView = ({ shape, isRead }: { shape: TextShape; isRead: boolean | undefined }): ReactNode => (
  <text
    x={shape.xMm}
    y={shape.yMm}
    fontSize={shape.sizeMm}
    className={`${shape.face} ${shape.weight ?? 'regular'}`}
    textAnchor={shape.anchor ?? 'start'}
    fill={inkColour(shape.ink)}
    aria-hidden={isRead === true ? undefined : 'true'}
  >
    {shape.text}
  </text>
);

const nothing: readonly string[] = [];

/** The ring round a balloon that is lit or has the keyboard, so that it shows without colour too; a finger may land on it. */
const Halo = ({ shapes }: { shapes: readonly Shape[] }): ReactNode => {
  const circle = shapes.find((shape) => shape.kind === 'circle');
  if (circle === undefined) {
    const outline = shapes.find((shape) => shape.kind === 'path');
    return outline === undefined ? null : <path className="halo" d={outline.d} fill="transparent" />;
  }
  return <circle className="halo" cx={circle.xMm} cy={circle.yMm} r={circle.radiusMm + 0.7} fill="transparent" />;
};

const holdsBalloon = (shape: Shape): boolean =>
  shape.kind === 'group' && (shape.focusable === true || shape.shapes.some(holdsBalloon));

/** A named group is one picture, unless a balloon in it wants the keyboard. */
const nameProps = (shape: GroupShape) =>
  shape.label === undefined ? {} : { role: holdsBalloon(shape) ? 'group' : 'img', 'aria-label': shape.label };

const GroupView = ({ shape, hand }: { shape: GroupShape; hand: Hand }): ReactNode => {
  const about = shape.about ?? nothing;
  const lit = useIsLit(hand.lights, about);
  if (shape.focusable !== true) {
    return (
      <g
        className={lit ? 'lit' : undefined}
        data-about={about.join(' ') || undefined}
        {...nameProps(shape)}
        {...hoverProps(hand, about)}
      >
        {shape.shapes.map((one, at) => (
          <ShapeView key={keyOf(one, at)} shape={one} hand={hand} />
        ))}
      </g>
    );
  }
  return (
    <g
      className={lit ? 'balloon lit' : 'balloon'}
      data-about={about.join(' ')}
      role="button"
      tabIndex={-1}
      aria-label={shape.label}
      onFocus={() => hand.lights.rest(about)}
      onBlur={() => hand.lights.rest([])}
      onClick={() => hand.onPick(about)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        hand.onPick(about);
      }}
      {...hoverProps(hand, about)}
    >
      {flat(shape.shapes).map((one, at) => (
        <PlainView key={keyOf(one, at)} shape={one} />
      ))}
      <Halo shapes={shape.shapes} />
    </g>
  );
};

export type LeafShape = Exclude<Shape, GroupShape>;

/** A balloon is lit as one thing, so what is in it needs no lights of its own. */
export const flat = (shapes: readonly Shape[]): readonly LeafShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flat(shape.shapes) : [shape]));

const hoverProps = (hand: Hand, about: readonly string[]) =>
  about.length === 0
    ? {}
    : { onPointerEnter: () => hand.lights.rest(about), onPointerLeave: () => hand.lights.rest([]) };

/** A broad band under a line that is lit, so that it shows without colour too. */
const Glow = ({ shape }: { shape: LeafShape }): ReactNode =>
  shape.kind === 'path' && shape.stroke !== undefined ? (
    <path className="glow" d={shape.d} fill="none" stroke="var(--accent)" strokeWidth={shape.stroke.widthMm + 1.6} />
  ) : null;

/** A lone shape that stands for something lights up as a group of one would. */
const LeafView = ({ shape, hand }: { shape: LeafShape; hand: Hand }): ReactNode => {
  const about = shape.about ?? nothing;
  const lit = useIsLit(hand.lights, about);
  return (
    <g className={lit ? 'lit' : undefined} data-about={about.join(' ')} {...hoverProps(hand, about)}>
      {lit ? <Glow shape={shape} /> : null}
      <PlainView shape={shape} />
    </g>
  );
};

/** A shape that answers nobody; `isRead` where its words are for screen readers too. */
export const PlainView = ({ shape, isRead }: { shape: LeafShape; isRead?: boolean }): ReactNode => {
  switch (shape.kind) {
    case 'path':
      return <PathView shape={shape} />;
    case 'circle':
      return <CircleView shape={shape} />;
    case 'text':
      return <TextView shape={shape} isRead={isRead} />;
  }
};

const ShapeView = ({ shape, hand }: { shape: Shape; hand: Hand }): ReactNode => {
  if (shape.kind === 'group') return <GroupView shape={shape} hand={hand} />;
  return shape.about === undefined || shape.about.length === 0 ? (
    <PlainView shape={shape} />
  ) : (
    <LeafView shape={shape} hand={hand} />
  );
};

/** Shapes have no id of their own; kind and place in the list keep them apart while the drawing stands. */
export const keyOf = (shape: Shape, at: number): string => `${shape.kind}${at}`;

/**
 * A drawing as SVG elements inside an `<svg>` measured in millimetres. It knows no boats: it lights what the lights say
 * and tells which ids a balloon stands for when one is picked. Words on it are hidden from screen readers, which get
 * each group's label and the list beside the drawing instead.
 */
export const DrawingView = memo(({ drawing, lights, onPick }: { drawing: Drawing } & Hand): ReactNode => {
  const hand = { lights, onPick };
  return drawing.shapes.map((shape, at) => <ShapeView key={keyOf(shape, at)} shape={shape} hand={hand} />);
});
