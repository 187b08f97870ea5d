import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Radar } from '../../core/radar-shape.ts';
import { balloon, pathShape } from '../drawing/marks.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import type { SiteNames } from './aerial-words.ts';
import { hullFromAbove } from './hull-from-above.ts';
import { arcPoints, polarPoint, sectorSpan } from './polar-arc.ts';
import { polarLegend } from './polar-legend.ts';
import { polarText, polarTextMm } from './polar-text.ts';

const rimMm = 9;
const bandMm = 2.4;

interface Dial {
  readonly centre: Point;
  readonly radiusMm: number;
  /** so many millimetres stand for a metre from the scanner */
  readonly mmPerM: number;
}

/** Bearings every 30 degrees at the rim, from ahead clockwise. */
const bearings = ({ centre, radiusMm }: Dial): Shape[] =>
  Array.from({ length: 12 }, (_, at) => at * 30).flatMap((deg): Shape[] => {
    // words are wider than high, so those abeam stand farther out
    const outMm = 3.6 + 1.8 * Math.abs(Math.sin((deg * Math.PI) / 180));
    const [xMm, yMm] = polarPoint(centre, radiusMm + outMm, deg);
    return [
      pathShape(polyline([polarPoint(centre, radiusMm, deg), polarPoint(centre, radiusMm + 1.4, deg)]), {
        stroke: { ink: 'ink', widthMm: 0.25 },
      }),
      polarText(String(deg).padStart(3, '0'), [xMm, yMm + polarTextMm * 0.35], {
        anchor: 'middle',
        face: 'figures',
        ink: 'quiet',
      }),
    ];
  });

/** What a ship’s radar keeps clear, ahead and to 22.5 degrees abaft the beam, is the thick part of the rim. */
const rim = ({ centre, radiusMm }: Dial): Shape[] => [
  pathShape(
    polygon([
      ...arcPoints(centre, radiusMm, { fromDeg: 0, toDeg: 180 }),
      ...arcPoints(centre, radiusMm, { fromDeg: 180, toDeg: 0 }),
    ]),
    { stroke: { ink: 'ink', widthMm: 0.25 }, fill: 'paper' },
  ),
  pathShape(polyline(arcPoints(centre, radiusMm, { fromDeg: 247.5, toDeg: 112.5 })), {
    stroke: { ink: 'ink', widthMm: 0.7 },
  }),
];

/** Rings one behind the other from the scanner out: what lies in the shadow of something. */
const hatched = ({ centre, radiusMm }: Dial, arc: { fromDeg: number; toDeg: number }, about: string[]): Shape => {
  const sector = [centre, ...arcPoints(centre, radiusMm, arc)];
  const rings = Array.from({ length: Math.floor(radiusMm / 1.3) }, (_, at) => (at + 1) * 1.3);
  return {
    kind: 'group',
    about,
    shapes: [
      pathShape(polygon(sector), { fill: 'paper', stroke: { ink: 'ink', widthMm: 0.3 } }),
      pathShape(
        rings.flatMap((ringMm): PathStep[] => polyline(arcPoints(centre, ringMm, arc))),
        { stroke: { ink: 'ink', widthMm: 0.3 } },
      ),
    ],
  };
};

/** What to blank, dashed on both sides of a shadow. */
const blanked = ({ centre, radiusMm }: Dial, [fromDeg, toDeg]: readonly [number, number]): Shape =>
  pathShape(
    [fromDeg, toDeg].flatMap((deg): PathStep[] => polyline([centre, polarPoint(centre, radiusMm, deg)])),
    { stroke: { ink: 'quiet', widthMm: 0.25, dashMm: [1.4, 1] } },
  );

const shadowShapes = (dial: Dial, { shadows }: Radar): Shape[] => [
  ...shadows.map((shadow) => hatched(dial, shadow, [shadow.by])),
  ...shadows.map(({ blankFromDeg, blankToDeg }) => blanked(dial, [blankFromDeg, blankToDeg])),
  ...shadows.flatMap(({ by, fromDeg, toDeg }, at) => {
    const middleDeg = fromDeg + sectorSpan({ fromDeg, toDeg }) / 2;
    return balloon(polarPoint(dial.centre, dial.radiusMm * 0.82, middleDeg), {
      number: at + 1,
      radiusMm: 2,
      filled: false,
      about: [by],
    });
  }),
];

/** Strokes across a band outside the rim: bearings at which the horizon is lost on a heel. */
const heelBand = ({ centre, radiusMm }: Dial, { heel = [] }: Radar): Shape[] => {
  const lost = heel.find(({ lostFromDeg }) => lostFromDeg !== undefined);
  if (lost?.lostFromDeg === undefined || lost.lostToDeg === undefined) return [];
  const sides = [
    { fromDeg: lost.lostFromDeg, toDeg: lost.lostToDeg },
    { fromDeg: 360 - lost.lostToDeg, toDeg: 360 - lost.lostFromDeg },
  ];
  return sides.map((side) => {
    const steps = Array.from({ length: Math.floor(sectorSpan(side) / 3) + 1 }, (_, at) => side.fromDeg + at * 3);
    return pathShape(
      steps.flatMap((deg): PathStep[] =>
        polyline([polarPoint(centre, radiusMm - bandMm, deg), polarPoint(centre, radiusMm, deg)]),
      ),
      { stroke: { ink: 'ink', widthMm: 0.3 } },
    );
  });
};

const blindCircle = ({ centre, mmPerM }: Dial, { blindM }: Radar): Shape => ({
  kind: 'circle',
  xMm: centre[0],
  yMm: centre[1],
  radiusMm: blindM * mmPerM,
  stroke: { ink: 'ink', widthMm: 0.3, dashMm: [0.4, 1] },
});

/**
 * What one radar does not see, from above with the bow up: the boat to scale round her scanner, the circle it is blind in, arcs
 * that something shadows, and what a heel loses. Nothing of it is told by colour alone.
 */
export const polarPicture = ({
  boat,
  plan,
  names,
  unit,
  widthMm,
}: {
  readonly boat: Boat;
  readonly plan: Pick<Plan, 'sites'>;
  readonly names: SiteNames;
  readonly unit: string;
  readonly widthMm: number;
}): Drawing | undefined => {
  const site = plan.sites.find((entry) => entry.unit === unit);
  const radar = site?.radar;
  const at = boat.places.find(({ id }) => id === site?.place);
  if (radar === undefined || at === undefined) return undefined;
  const radiusMm = Math.min(widthMm / 2, 46) - rimMm;
  const centre: Point = [Math.min(widthMm / 2, 46), radiusMm + rimMm];
  const farM = Math.max(radar.blindM * 1.15, boat.hull.lengthM * 0.7);
  const dial: Dial = { centre, radiusMm, mmPerM: radiusMm / farM };
  const key = polarLegend(names, { radar, unit, topMm: 2 * (radiusMm + rimMm) + 1, widthMm });
  return {
    title: `What ${names.kit.get(unit)?.name ?? unit} does not see, bow up`,
    widthMm,
    heightMm: 2 * (radiusMm + rimMm) + 1 + key.heightMm,
    shapes: [
      ...rim(dial),
      ...heelBand(dial, radar),
      pathShape(
        polygon(
          hullFromAbove(boat.hull, at).map(([xM, yM]) => [centre[0] + yM * dial.mmPerM, centre[1] - xM * dial.mmPerM]),
        ),
        { stroke: { ink: 'quiet', widthMm: 0.3 }, fill: 'margin' },
      ),
      ...shadowShapes(dial, radar),
      blindCircle(dial, radar),
      { kind: 'circle', xMm: centre[0], yMm: centre[1], radiusMm: 0.9, fill: 'ink', about: [unit] },
      ...bearings(dial),
      ...key.shapes,
    ],
  };
};
