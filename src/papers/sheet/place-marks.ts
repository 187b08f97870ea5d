import type { Kit, Place } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { converterSquare, endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import { isConverter } from './languages-of.ts';
import type { SheetFrame } from './sheet-frame.ts';
import type { UnitMark } from './unit-marks.ts';
import type { View } from './view.ts';

/** Smaller than this on the sheet, a unit's true outline says nothing and a dot stands for it. */
const leastOutlineMm = 1.1;

/** Side of a tee on the trunk; on a phone the places lie closer. */
const wideSquareMm = 2.2;
const narrowSquareMm = 1.6;

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

interface Body extends Size {
  readonly mark: UnitMark;
}

/** The outline of a unit in one view, in true proportion; undefined while its size is not known or too small to see. */
const sizeOf = (unit: Kit, index: DrawnBoat, view: View, mmPerM: number): Size | undefined => {
  const body = index.sheetOf.get(unit.id)?.body;
  if (body === undefined) return undefined;
  const scale = mmPerM / 1000;
  const depthMm = body.depthMm ?? 0.5 * body.widthMm;
  const widthMm = (view.name === 'astern' ? body.widthMm : depthMm) * scale;
  const heightMm = (view.name === 'top' ? body.widthMm : body.heightMm) * scale;
  return Math.max(widthMm, heightMm) < leastOutlineMm ? undefined : { widthMm, heightMm };
};

/** Outlines of several units at one place stand in a row, one over the other on the sheet. */
const bodyShapes = (bodies: readonly Body[], at: readonly [number, number]): Shape[] => {
  const total = bodies.reduce((sum, body) => sum + body.heightMm + 0.4, -0.4);
  let topMm = at[1] - total / 2;
  return bodies.map((body) => {
    const shape = pathShape(
      rectangle({ leftMm: at[0] - body.widthMm / 2, topMm, widthMm: body.widthMm, heightMm: body.heightMm }),
      {
        stroke: { ink: 'ink', widthMm: 0.25 },
        fill: 'paper',
        about: body.mark.about,
      },
    );
    topMm += body.heightMm + 0.4;
    return shape;
  });
};

const dot = ([xMm, yMm]: readonly [number, number], about: readonly string[]): Shape => ({
  kind: 'circle',
  xMm,
  yMm,
  radiusMm: 0.75,
  fill: 'data',
  about,
});

const leavingStroke = { ink: 'quiet', widthMm: 0.2, dashMm: [0.7, 0.6] } as const;

/** Hollow and faint: an old unit that leaves, in true proportion where its size is known, else a ring. */
const leavingShape = (
  unit: Kit,
  at: Point,
  { index, view, mmPerM }: { index: DrawnBoat; view: View; mmPerM: number },
): Shape => {
  const size = sizeOf(unit, index, view, mmPerM);
  const shape: Shape =
    size === undefined
      ? { kind: 'circle', xMm: at[0], yMm: at[1], radiusMm: 1.9, stroke: leavingStroke, about: [unit.id] }
      : pathShape(rectangle({ leftMm: at[0] - size.widthMm / 2, topMm: at[1] - size.heightMm / 2, ...size }), {
          stroke: leavingStroke,
          about: [unit.id],
        });
  return { kind: 'group', label: `leaves: ${unit.name}`, about: [unit.id], shapes: [shape] };
};

/** Bus places: where the trunk has tees, and where it ends. */
const busPlaces = (plan: Plan): { tees: ReadonlyMap<string, string[]>; ends: ReadonlyMap<string, string[]> } => {
  const tees = new Map<string, string[]>();
  const ends = new Map<string, string[]>();
  for (const bus of plan.buses) {
    for (const step of bus.walk)
      if (step.tees.length > 0) tees.set(step.place, [...(tees.get(step.place) ?? []), bus.id]);
    for (const end of bus.ends) ends.set(end, [...(ends.get(end) ?? []), bus.id]);
  }
  return { tees, ends };
};

const groupByPlace = <Entry extends { readonly kit: Kit }>(entries: readonly Entry[]): ReadonlyMap<string, Entry[]> => {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) groups.set(entry.kit.place, [...(groups.get(entry.kit.place) ?? []), entry]);
  return groups;
};

/** Units, tees and ends at their places in one view. */
export const placeMarks = ({
  view,
  frame,
  index,
  plan,
  marks,
}: {
  view: View;
  frame: Pick<SheetFrame, 'narrow' | 'mmPerM'>;
  index: DrawnBoat;
  plan: Plan;
  marks: readonly UnitMark[];
}): Shape[] => {
  const { tees, ends } = busPlaces(plan);
  const squareMm = frame.narrow ? narrowSquareMm : wideSquareMm;
  const units = groupByPlace(marks);
  const leaving = groupByPlace(index.boat.kit.filter((kit) => kit.fate === 'goes').map((kit) => ({ kit })));
  const shapesAt = (place: Place): Shape[] => {
    const at = view.at(place);
    const here = units.get(place.id) ?? [];
    const bodies = here.flatMap((mark): Body[] => {
      const size = sizeOf(mark.kit, index, view, frame.mmPerM);
      return size === undefined ? [] : [{ mark, ...size }];
    });
    const about = here.flatMap((mark) => mark.about);
    const gone = [...(leaving.get(place.id) ?? [])].sort((a, b) => byCodeUnit(a.kit.id, b.kit.id));
    const end = ends.get(place.id);
    const tee = tees.get(place.id);
    const onTrunk = end !== undefined || tee !== undefined;
    const converters = here.filter((mark) => isConverter(index.sheetOf.get(mark.kit.id)));
    // beside the square of the trunk, in its stead where there is none
    const converterAt: Point = onTrunk ? [at[0] + squareMm + 0.3, at[1]] : at;
    return [
      ...gone.map(({ kit }) => leavingShape(kit, at, { index, view, mmPerM: frame.mmPerM })),
      ...bodyShapes(bodies, at),
      ...(end !== undefined ? endSquare(at, { sideMm: squareMm + 0.4, about: [...end, place.id] }) : []),
      ...(end === undefined && tee !== undefined
        ? [teeSquare(at, { sideMm: squareMm, about: [...tee, place.id] })]
        : []),
      ...(converters.length > 0
        ? converterSquare(converterAt, { sideMm: squareMm + 0.2, about: converters.flatMap((mark) => mark.about) })
        : []),
      ...(!onTrunk && bodies.length + converters.length === 0 && here.length > 0 ? [dot(at, about)] : []),
    ];
  };
  return [...index.places.values()].sort((a, b) => a.xM - b.xM || byCodeUnit(a.id, b.id)).flatMap(shapesAt);
};
