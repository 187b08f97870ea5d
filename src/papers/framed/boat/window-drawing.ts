import type { Place } from '../../../core/boat/boat-schema.ts';
import { hullPattern } from '../../../core/facts/hull-patterns.ts';
import { type Box, contains, grown, insideMm, textBox, textsOf } from '../../drawing/box.ts';
import { clipPiece, clipShapes } from '../../drawing/clip-shapes.ts';
import { flattenPath } from '../../drawing/flatten-path.ts';
import { pathShape } from '../../drawing/marks.ts';
import { around, type Piece } from '../../drawing/piece.ts';
import { between, distanceMm, type Point } from '../../drawing/point.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape, TextShape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { wavyLine } from '../../drawing/wavy-line.ts';
import { hullOnView } from '../../sheet/hull-on-view.ts';
import { linesOnView, type Run } from '../../sheet/lines-on-view.ts';
import type { SoftLine } from '../../sheet/place-labels.ts';
import { placeMarks } from '../../sheet/place-marks.ts';
import { onView } from '../../sheet/view.ts';
import type { WayBundle } from '../../sheet/way-bundles.ts';
import type { KnownBoat } from '../known-boat.ts';
import { type NoteRoom, placeNotes } from '../place-notes.ts';
import { sheetText } from '../sheet-text.ts';
import { hiddenRing, partedDiamond, passageBars } from './sheet-symbols.ts';
import { type DrawnNote, notesDrawn, placeNote, wayNote } from './window-notes.ts';
import { drawnBox, type WindowView } from './window-view.ts';

/** A window drawn: its shapes, and how well its notes stand. */
export interface WindowDrawing {
  readonly shapes: readonly Shape[];
  readonly bundles: readonly WayBundle[];
  /** how many notes it has, how ill they stand together, and those that found no place */
  readonly notes: number;
  readonly strain: number;
  readonly lost: readonly string[];
}

const endsOf = (known: KnownBoat, { way }: WayBundle): readonly [Place, Place] | undefined => {
  const [first, last] = way.ends.map((end) => known.index.places.get(end));
  return first === undefined || last === undefined ? undefined : [first, last];
};

/** The part of a way that a window shows. */
const pieceIn = (known: KnownBoat, view: WindowView, bundle: WayBundle, box: Box): Piece | undefined => {
  const ends = endsOf(known, bundle);
  return ends === undefined ? undefined : clipPiece([view.at(ends[0]), view.at(ends[1])], box);
};

/** Whether a way is longer as seen the other way, and so has its name there; a name in each view would be too much. */
const isLongerElsewhere = ([a, b]: readonly [Place, Place], view: WindowView): boolean => {
  const upM = Math.abs(a.zM - b.zM);
  const acrossM = Math.abs(a.yM - b.yM);
  return view.name === 'side' ? acrossM > upM : upM >= acrossM;
};

const shares = [0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86];

const wayNotes = (known: KnownBoat, view: WindowView, bundles: readonly WayBundle[], box: Box): DrawnNote[] =>
  bundles.flatMap((bundle) => {
    const ends = endsOf(known, bundle);
    const piece = pieceIn(known, view, bundle, box);
    if (ends === undefined || piece === undefined || (known.linesIn.get(bundle.way.id) ?? []).length === 0) return [];
    const isCut = distanceMm(...piece) < distanceMm(view.at(ends[0]), view.at(ends[1])) - 0.5;
    if (isLongerElsewhere(ends, view) && !isCut) return [];
    return [
      wayNote(
        known,
        bundle.way,
        shares.map((share) => between(piece[0], piece[1], share)),
      ),
    ];
  });

/** Places of the window that have a unit, a tee or a line in them. */
const placesIn = (known: KnownBoat, view: WindowView, bundles: readonly WayBundle[], box: Box): Place[] => {
  const met = new Set(bundles.flatMap(({ way }) => way.ends));
  return [...known.codes.keys()]
    .flatMap((id) => known.index.places.get(id) ?? [])
    .filter((place) => (met.has(place.id) || known.marksAt.has(place.id)) && contains(box, around(view.at(place), 0)));
};

/** Places with a tee or an end of a trunk. */
const jointPlaces = ({ plan }: KnownBoat): ReadonlySet<string> =>
  new Set(
    plan.buses.flatMap(({ walk, ends }) => [
      ...ends,
      ...walk.filter(({ tees }) => tees.length > 0).map(({ place }) => place),
    ]),
  );

const placeSymbols = (known: KnownBoat, view: WindowView, places: readonly Place[]): Shape[] => {
  const joints = jointPlaces(known);
  const parted = new Set(known.plan.masts.flatMap(({ breakAt }) => breakAt ?? []));
  return places.flatMap((place) => [
    ...(joints.has(place.id) && place.reach !== 'open' ? [hiddenRing(view.at(place), { about: [place.id] })] : []),
    ...(parted.has(place.id) ? [partedDiamond(view.at(place), { about: [place.id] })] : []),
  ]);
};

const leastBarredMm = 4;

const passages = (known: KnownBoat, view: WindowView, bundles: readonly WayBundle[], box: Box): Shape[] =>
  bundles.flatMap((bundle) => {
    const { way } = bundle;
    const piece = pieceIn(known, view, bundle, box);
    if (piece === undefined || way.through === undefined || way.through === 'plain') return [];
    return distanceMm(...piece) < leastBarredMm ? [] : [passageBars(piece[0], piece[1], { about: [way.id] })];
  });

/** A word on a level across the view, where it meets no line; at its left end where it meets some everywhere. */
const levelWord = (text: string, yMm: number, { box, runs }: { box: Box; runs: readonly Run[] }): TextShape => {
  const widthMm = textWidthMm(text, sheetText.small);
  const free = box.rightMm - box.leftMm - widthMm - 2;
  const at = (share: number): TextShape => ({
    kind: 'text',
    xMm: box.leftMm + 1 + share * free,
    yMm,
    text,
    ...sheetText.small,
    ink: 'quiet',
  });
  const isClear = (shape: TextShape): boolean =>
    runs.every(({ from, to, halfMm }) => insideMm(grown(textBox(shape), halfMm + 0.6), from, to) === 0);
  return [0, 1, 0.5, 0.25, 0.75].map(at).find(isClear) ?? at(0);
};

/** The waterline, and where masts are drawn shortened. */
const levels = (view: WindowView, box: Box, runs: readonly Run[]): Shape[] => {
  if (view.name === 'top') return [];
  const across = (yMm: number): Point[] => [
    [box.leftMm, yMm],
    [box.rightMm, yMm],
  ];
  const [, waterMm] = view.point(0, 0);
  const water = [
    pathShape(polyline(across(waterMm)), { stroke: { ink: 'quiet', widthMm: 0.18, dashMm: [4, 1, 0.6, 1] } }),
    levelWord('waterline', waterMm - 0.9, { box, runs }),
  ];
  const { shortening } = view;
  if (shortening === 1) return water;
  const [, breakMm] = view.point(0, view.span.reach.breakM);
  const text = `heights above this line are drawn at ${Math.round(shortening * 100)} % of the scale`;
  const shown = textWidthMm(text, sheetText.small) < box.rightMm - box.leftMm - 4 ? text : 'shortened above';
  return [
    ...water,
    pathShape(wavyLine(across(breakMm)), { stroke: { ink: 'quiet', widthMm: 0.18 } }),
    levelWord(shown, breakMm - 1.2, { box, runs }),
  ];
};

/** What a millimetre of each of the boat's own lines under a note costs: words read badly over them. */
const softLines = (known: KnownBoat, view: WindowView): SoftLine[] =>
  hullPattern(known.boat.hull)
    [view.name === 'astern' ? 'side' : view.name].filter(({ role }) => role === 'hull' || role === 'house')
    .flatMap((part) =>
      flattenPath(part.steps.map((step) => onView(view, step))).map(
        ([from, to]): SoftLine => ({ from, to, costPerMm: 0.5 }),
      ),
    );

const clippedRuns = (runs: readonly Run[], box: Box): Run[] =>
  runs.flatMap((run) => {
    const piece = clipPiece([run.from, run.to], box);
    return piece === undefined ? [] : [{ ...run, from: piece[0], to: piece[1] }];
  });

/** Everything of a window but its match lines and its key. */
export const windowDrawing = (known: KnownBoat, view: WindowView, all: readonly WayBundle[]): WindowDrawing => {
  const { index, plan, marks, boat } = known;
  const box = drawnBox(view);
  const bundles = all.filter((bundle) => pieceIn(known, view, bundle, box) !== undefined);
  const lines = linesOnView({ view, bundles, index });
  const runs = clippedRuns(lines.runs, box);
  const places = placesIn(known, view, bundles, box);
  const hull = hullPattern(boat.hull)[view.name === 'astern' ? 'side' : view.name];
  const under = [
    ...clipShapes(hullOnView(view, hull), box),
    ...levels(view, box, runs),
    ...clipShapes(lines.shapes, box),
    ...passages(known, view, bundles, box),
    ...clipShapes(placeMarks({ view, frame: { narrow: false, mmPerM: view.mmPerM }, index, plan, marks }), box),
    ...placeSymbols(known, view, places),
  ];
  const points: Point[] = places.map(view.at);
  const notes = [
    ...places.map((place) => placeNote(known, place, view.at(place))),
    ...wayNotes(known, view, bundles, box),
  ];
  const room: NoteRoom = {
    within: { leftMm: box.leftMm + 0.8, rightMm: box.rightMm - 0.8, topMm: box.topMm, bottomMm: box.bottomMm },
    taken: textsOf(under).map(textBox),
    runs,
    soft: softLines(known, view),
    points,
  };
  const { placed, strain, lost } = placeNotes(
    notes.map(({ note }) => note),
    room,
  );
  return {
    shapes: [...under, ...notesDrawn(notes, placed)],
    bundles,
    notes: notes.length,
    strain,
    lost,
  };
};
