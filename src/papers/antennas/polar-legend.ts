import type { Radar } from '../../core/radar-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { arcWords, type SiteNames } from './aerial-words.ts';
import { polarText, polarTextMm } from './polar-text.ts';

const legendStepMm = 4.6;

/** A mark of no letters is the thick rim itself. */
const legendOf = (names: SiteNames, radar: Radar, unit: string): { mark: string; says: string; about: string[] }[] => {
  const lost = radar.heel?.find(({ lostFromDeg }) => lostFromDeg !== undefined);
  return [
    { mark: '·····', says: `sees nothing nearer than ${radar.blindM.toFixed(0)} m from the scanner`, about: [unit] },
    ...radar.shadows.map((shadow, at) => ({
      mark: String(at + 1),
      says: `${shadow.kind === 'mast' ? `mast at ${names.places.get(shadow.by)?.name ?? shadow.by}` : (names.kit.get(shadow.by)?.name ?? shadow.by)}: shadow ${arcWords(shadow)}, blank ${arcWords({ fromDeg: shadow.blankFromDeg, toDeg: shadow.blankToDeg })} (dashed)`,
      about: [shadow.by],
    })),
    ...(lost === undefined
      ? []
      : [{ mark: '||||', says: `horizon lost on either side at ${lost.heelDeg}° of heel`, about: [unit] }]),
    { mark: '', says: 'thick rim: a ship’s radar is to see freely here', about: [] },
  ];
};

/** What marks and patterns of the picture stand for, below it. */
export const polarLegend = (
  names: SiteNames,
  { radar, unit, topMm, widthMm }: { radar: Radar; unit: string; topMm: number; widthMm: number },
): { shapes: Shape[]; heightMm: number } => {
  let yMm = topMm;
  const shapes = legendOf(names, radar, unit).flatMap(({ mark, says, about }): Shape[] => {
    const lines = wrapText(says, { sizeMm: polarTextMm, face: 'words' }, widthMm - 9) ?? [says];
    const atMm = yMm + polarTextMm;
    yMm += legendStepMm + (lines.length - 1) * polarTextMm * 1.25;
    return [
      ...(mark === ''
        ? [
            pathShape(
              polyline([
                [1, atMm - 1],
                [6, atMm - 1],
              ]),
              { stroke: { ink: 'ink', widthMm: 0.7 } },
            ),
          ]
        : [polarText(mark, [3.5, atMm], { anchor: 'middle', about })]),
      ...lines.map((line, row) => polarText(line, [9, atMm + row * polarTextMm * 1.25], { about })),
    ];
  });
  return { shapes, heightMm: yMm - topMm };
};
