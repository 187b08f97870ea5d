import type { Point } from '../drawing/point.ts';

interface Arc {
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** A point at a bearing from ahead, which is up, clockwise. */
export const polarPoint = ([xMm, yMm]: Point, radiusMm: number, deg: number): Point => {
  const angle = (deg * Math.PI) / 180;
  return [xMm + radiusMm * Math.sin(angle), yMm - radiusMm * Math.cos(angle)];
};

/** How wide an arc is, one over the bow included. */
export const sectorSpan = ({ fromDeg, toDeg }: Arc): number => (toDeg - fromDeg + 360) % 360;

/** The longest piece of an arc that is drawn straight. */
const stepDeg = 4;

/** An arc as points, clockwise. */
export const arcPoints = (centre: Point, radiusMm: number, arc: Arc): Point[] => {
  const spanDeg = sectorSpan(arc);
  const steps = Math.max(1, Math.ceil(spanDeg / stepDeg));
  return Array.from({ length: steps + 1 }, (_, at) =>
    polarPoint(centre, radiusMm, arc.fromDeg + (spanDeg * at) / steps),
  );
};
