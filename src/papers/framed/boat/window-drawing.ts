import type { Place } from '../../../core/boat/boat-schema.ts';
import { type Box, contains, textBox, textsOf } from '../../drawing/box.ts';
import { clipPiece, clipShapes } from '../../drawing/clip-shapes.ts';
import { around, type Piece } from '../../drawing/piece.ts';
import { between, distanceMm, type Point } from '../../drawing/point.ts';
import type { Shape } from '../../drawing/shapes.ts';
import type { Room } from '../../sheet/label-room.ts';
import { linesOnView, type Run } from '../../sheet/lines-on-view.ts';
import { placeMarks } from '../../sheet/place-marks.ts';
import type { WayBundle } from '../../sheet/way-bundles.ts';
import type { KnownBoat } from '../known-boat.ts';
import { placeNotes } from '../place-notes.ts';
import { hullUnder, softLines } from './hull-under.ts';
import { partedHere } from './parted-here.ts';
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
  return places.flatMap((place) => [
    ...(joints.has(place.id) && place.reach !== 'open' ? [hiddenRing(view.at(place), { about: [place.id] })] : []),
    ...(partedHere(known, place.id).length > 0 ? [partedDiamond(view.at(place), { about: [place.id] })] : []),
  ]);
};

const leastBarredMm = 4;
/** On a way longer than this the bars stand off its middle, where the letters of its lines are. */
const letteredMm = 12;
const barsMm = 2.5;

/** Where the bars of a passage stand on the ways of a window that lead through a deck or a bulkhead. */
const passageSpots = (
  known: KnownBoat,
  view: WindowView,
  bundles: readonly WayBundle[],
  box: Box,
): { readonly way: string; readonly piece: Piece }[] =>
  bundles.flatMap((bundle) => {
    const { way } = bundle;
    const piece = pieceIn(known, view, bundle, box);
    if (piece === undefined || way.through === undefined || way.through === 'plain') return [];
    const lengthMm = distanceMm(...piece);
    if (lengthMm < leastBarredMm) return [];
    const share = lengthMm < letteredMm ? 0.5 : 0.22;
    const half = 1 / lengthMm;
    return [{ way: way.id, piece: [between(...piece, share - half), between(...piece, share + half)] }];
  });

const clippedRuns = (runs: readonly Run[], box: Box): Run[] =>
  runs.flatMap((run) => {
    const piece = clipPiece([run.from, run.to], box);
    return piece === undefined ? [] : [{ ...run, from: piece[0], to: piece[1] }];
  });

/** Everything of a window but its match lines and its key. */
export const windowDrawing = (known: KnownBoat, view: WindowView, all: readonly WayBundle[]): WindowDrawing => {
  const { index, plan, marks } = known;
  const box = drawnBox(view);
  const bundles = all.filter((bundle) => pieceIn(known, view, bundle, box) !== undefined);
  const lines = linesOnView({ view, bundles, index });
  const runs = clippedRuns(lines.runs, box);
  const spots = passageSpots(known, view, bundles, box);
  const places = placesIn(known, view, bundles, box);
  const under = [
    ...hullUnder(known, view, box, runs),
    ...clipShapes(lines.shapes, box),
    ...spots.map(({ way, piece }) => passageBars(piece[0], piece[1], { about: [way] })),
    ...clipShapes(placeMarks({ view, frame: { narrow: false, mmPerM: view.mmPerM }, index, plan, marks }), box),
    ...placeSymbols(known, view, places),
  ];
  const points: Point[] = places.map(view.at);
  const notes = [
    ...places.map((place) => placeNote(known, place, view.at(place))),
    ...wayNotes(known, view, bundles, box),
  ];
  const room: Room = {
    within: { leftMm: box.leftMm + 0.8, rightMm: box.rightMm - 0.8, topMm: box.topMm, bottomMm: box.bottomMm },
    taken: [...textsOf(under).map(textBox), ...spots.map(({ piece }) => around(between(...piece, 0.5), barsMm))],
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
