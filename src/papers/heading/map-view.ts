import type { Place } from '../../core/boat/boat-schema.ts';
import type { HeadingMap, HeadingMapView } from '../../core/fitting/heading/heading-map.ts';
import { type Box, textBox, textsOf } from '../drawing/box.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { unitsNote } from '../framed/antennas/antenna-notes.ts';
import { hullUnder, softLines } from '../framed/boat/hull-under.ts';
import { type DrawnNote, notesDrawn } from '../framed/boat/window-notes.ts';
import { reachIn } from '../framed/boat/window-plan.ts';
import { windowView } from '../framed/boat/window-view.ts';
import { type KnownBoat, lengthText } from '../framed/known-boat.ts';
import { placeNotes } from '../framed/place-notes.ts';
import { sheetText } from '../framed/sheet-text.ts';
import type { UnitMark } from '../sheet/unit-marks.ts';
import { mapShapes } from './map-shapes.ts';
import { neighbourName } from './near-words.ts';

/** As many neighbours are named on a view; all of them stand in the table. */
const mostNamed = 10;

/** What is drawn of the map: the boat, the map, and who is a heading sensor. */
interface Drawn {
  readonly known: KnownBoat;
  readonly map: HeadingMap;
  readonly mapView: HeadingMapView;
  readonly box: Box;
  readonly mmPerM: number;
  /** numbers alone, where words would be too small to read */
  readonly bare?: boolean;
}

/** The units at one place that are named there. */
interface Here {
  readonly place: UnitMark['place'];
  readonly marks: readonly UnitMark[];
}

const isSensor = ({ plan }: KnownBoat, { kit }: UnitMark): boolean =>
  plan.sites.some(({ unit, heading }) => unit === kit.id && heading?.magnetic === true);

/** The sensors, and the neighbours that limit a view, what limits most of it first. */
const named = ({ known, map, mapView }: Drawn): Here[] => {
  const limiting = new Set(mapView.runs.flatMap(({ by }) => by ?? []));
  const limits = map.limits.filter(({ id }) => limiting.has(id)).slice(0, mostNamed);
  const marks = [
    ...known.marks.filter((mark) => isSensor(known, mark)),
    ...limits.flatMap(({ id }) => known.marks.find((mark) => mark.kit.id === id && !isSensor(known, mark)) ?? []),
  ];
  const places = new Map<string, Here>();
  for (const mark of marks) {
    const { place } = mark;
    places.set(place.id, { place, marks: [...(places.get(place.id)?.marks ?? []), mark] });
  }
  return [...places.values()];
};

const wordsOf = ({ known, map, bare = false }: Drawn, mark: UnitMark): string[] => {
  if (bare) return [''];
  const found = map.limits.find(({ id }) => id === mark.kit.id);
  const name = mark.kit.name.split(',')[0] ?? mark.kit.name;
  return found === undefined ? [name] : [name, `${lengthText(known, found.leastM)} off`];
};

/** What limits a view and is no unit with a number: an engine space, a battery. */
const spacesIn = ({ known, map, mapView: { runs } }: Drawn): { id: string; place: Place; text: string }[] => {
  const limiting = new Set(runs.flatMap(({ by }) => by ?? []));
  return map.limits.slice(0, mostNamed).flatMap((limit) => {
    const place = known.index.places.get(known.index.banks.get(limit.id)?.place ?? limit.id);
    if (place === undefined || !limiting.has(limit.id)) return [];
    const name = neighbourName(known.index, limit).split(',')[0] ?? '';
    return [{ id: limit.id, place, text: `${name}, ${lengthText(known, limit.leastM)} off` }];
  });
};

/** Its name as a note; where there is no room for it the dot stands alone, and the table has the rest. */
const spaceNote = ({ id, text, at }: { id: string; text: string; at: Point }): DrawnNote => ({
  note: { id, anchors: [at], forms: [{ widthMm: textWidthMm(text, sheetText.small) + 0.8, heightMm: 3.2, costMm: 0 }] },
  about: [id],
  draw: ({ box }) => [
    pathShape(rectangle({ leftMm: box.leftMm, topMm: box.topMm, widthMm: box.rightMm - box.leftMm, heightMm: 3.2 }), {
      fill: 'paper',
    }),
    { kind: 'text', xMm: box.leftMm + 0.4, yMm: box.topMm + 2.4, text, ...sheetText.small, ink: 'ink', about: [id] },
  ],
});

/** One view: the boat, the hatching, the sensors, and the neighbours that limit most of it with how far they keep one off. */
export const mapView = (drawn: Drawn): Shape[] => {
  const { known, box, mmPerM } = drawn;
  const reach = reachIn(drawn.mapView.view, known.boat);
  const view = windowView({ reach, fromM: reach.fromM, toM: reach.toM, at: 0, of: 1 }, box, mmPerM);
  const whole = hullUnder(known, view, box, []);
  const under = drawn.bare === true ? whole.filter(({ kind }) => kind !== 'text') : whole;
  const places = named(drawn);
  const spaces = spacesIn(drawn).map((space) => ({ ...space, at: view.at(space.place) }));
  const notes = [
    ...places.map(({ place, marks }) =>
      unitsNote(
        place.id,
        marks.map((mark) => ({ mark, lines: wordsOf(drawn, mark) })),
        view.at(place),
      ),
    ),
    ...(drawn.bare === true ? [] : spaces.map(spaceNote)),
  ];
  const { placed } = placeNotes(
    notes.map(({ note }) => note),
    {
      within: box,
      taken: textsOf(under).map(textBox),
      runs: [],
      soft: softLines(known, view),
      points: [...places.map(({ place }) => view.at(place)), ...spaces.map(({ at }) => at)],
    },
  );
  const dots = places.map(({ place, marks }): Shape => {
    const [xMm, yMm] = view.at(place);
    const own = marks.some((mark) => isSensor(known, mark));
    const about = marks.flatMap((mark) => mark.about);
    return { kind: 'circle', xMm, yMm, radiusMm: own ? 1.2 : 0.7, fill: own ? 'accent' : 'ink', about };
  });
  const spaceDots = spaces.map(
    ({ id, at: [xMm, yMm] }): Shape => ({ kind: 'circle', xMm, yMm, radiusMm: 0.7, fill: 'ink', about: [id] }),
  );
  return [...under, ...mapShapes(drawn.mapView, view), ...dots, ...spaceDots, ...notesDrawn(notes, placed)];
};
