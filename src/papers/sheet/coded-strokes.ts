import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { parallel, polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import type { LineCode } from './line-code.ts';

/** A line in its code: one stroke or two, dashed as it should be, wavering while its length is guessed. */
export const codedStrokes = (
  line: readonly Point[],
  { code, guessed, about }: { code: LineCode; guessed: boolean; about: readonly string[] },
): Shape[] => {
  const sides = code.doubleMm === undefined ? [0] : [-code.doubleMm / 2, code.doubleMm / 2];
  const stroke = {
    ink: code.ink,
    widthMm: code.widthMm,
    ...(code.dashMm === undefined ? {} : { dashMm: code.dashMm }),
  };
  return sides.map((acrossMm) => {
    const own = acrossMm === 0 ? line : parallel(line, acrossMm);
    return pathShape(guessed ? wavyLine(own) : polyline(own), { stroke, ...(about.length === 0 ? {} : { about }) });
  });
};
