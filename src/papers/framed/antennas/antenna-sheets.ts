import type { Box } from '../../drawing/box.ts';
import { textBox, textsOf } from '../../drawing/box.ts';
import { pathShape } from '../../drawing/marks.ts';
import type { Point } from '../../drawing/point.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { lineKey } from '../../sheet/line-key.ts';
import type { UnitMark } from '../../sheet/unit-marks.ts';
import { hullUnder, softLines } from '../boat/hull-under.ts';
import { type SheetSymbol, symbolWords } from '../boat/sheet-symbols.ts';
import { notesDrawn } from '../boat/window-notes.ts';
import { reachIn, scaleFor } from '../boat/window-plan.ts';
import { leastHeightMm, windowView } from '../boat/window-view.ts';
import type { SheetContent } from '../framed-sheet.ts';
import { type KnownBoat, lengthText } from '../known-boat.ts';
import { placeNotes } from '../place-notes.ts';
import { type FlowPart, textFlow } from '../text-flow.ts';
import { distancesFrom, feedsTexts, heightText, leadTexts, planOf, siteTexts } from './antenna-facts.ts';
import { unitsNote } from './antenna-notes.ts';
import { headingSheets } from './heading-sheets.ts';
import { radarSheets } from './radar-sheets.ts';

type Kind = 'antenna' | 'sensor';
type ViewName = 'side' | 'top';

/** An antenna in the form of the open standard (IEC 60617, from memory): a V on a line; a sensor is a filled dot. */
const unitSymbol = (kind: Kind, [xMm, yMm]: Point, about: readonly string[]): Shape => ({
  kind: 'group',
  label: symbolWords[kind],
  about,
  shapes:
    kind === 'sensor'
      ? [{ kind: 'circle', xMm, yMm, radiusMm: 0.9, fill: 'ink' }]
      : [
          pathShape(
            [
              ...polyline([
                [xMm, yMm],
                [xMm, yMm - 3.2],
              ]),
              ...polyline([
                [xMm - 1.3, yMm - 3.2],
                [xMm, yMm - 1.4],
                [xMm + 1.3, yMm - 3.2],
              ]),
            ],
            { stroke: { ink: 'ink', widthMm: 0.4 } },
          ),
          { kind: 'circle', xMm, yMm, radiusMm: 0.5, fill: 'ink' },
        ],
});

/** The name of a unit up to its first comma; the whole name stands in the table. */
const briefName = ({ kit }: UnitMark): string => kit.name.split(',')[0] ?? kit.name;

/** "2.33 m from 8". */
const awayText = (known: KnownBoat, { mark, distanceM }: { mark: UnitMark; distanceM: number }): string =>
  distanceM === 0 ? `at one place with ${mark.number}` : `${lengthText(known, distanceM)} from ${mark.number}`;

/** From the side a unit has its height beside it, from above its leads. */
const wordsIn = (known: KnownBoat, view: ViewName, mark: UnitMark, others: readonly UnitMark[]): string[] => {
  if (view === 'side') return [briefName(mark), heightText(known, mark)];
  const [nearest] = distancesFrom(mark, others);
  return [
    briefName(mark),
    ...leadTexts(known, mark),
    ...(nearest === undefined || planOf(known, mark) === 'sensor' ? [] : [awayText(known, nearest)]),
  ];
};

const byPlace = (marks: readonly UnitMark[]): ReadonlyMap<string, UnitMark[]> => {
  const at = new Map<string, UnitMark[]>();
  for (const mark of marks) at.set(mark.place.id, [...(at.get(mark.place.id) ?? []), mark]);
  return at;
};

interface Drawn {
  readonly shapes: readonly Shape[];
  readonly strain: number;
}

const viewShapes = (
  known: KnownBoat,
  kind: Kind,
  marks: readonly UnitMark[],
  { view: name, box, mmPerM }: { view: ViewName; box: Box; mmPerM: number },
): Drawn => {
  const reach = reachIn(name, known.boat);
  const inner = { ...box, topMm: box.topMm + overMm };
  const view = windowView({ reach, fromM: reach.fromM, toM: reach.toM, at: 0, of: 1 }, inner, mmPerM);
  const under = hullUnder(known, view, box, []);
  const places = [...byPlace(marks)];
  const atOf = (here: readonly UnitMark[]): Point[] => here.slice(0, 1).map(({ place }) => view.at(place));
  const symbols = places.flatMap(([, here]) =>
    atOf(here).map((at) =>
      unitSymbol(
        kind,
        at,
        here.flatMap(({ about }) => about),
      ),
    ),
  );
  const notes = places.flatMap(([id, here]) =>
    atOf(here).map((at) =>
      unitsNote(
        id,
        here.map((mark) => ({ mark, lines: wordsIn(known, name, mark, marks) })),
        at,
      ),
    ),
  );
  const points = places.flatMap(([, here]) => atOf(here));
  const { placed, strain, lost } = placeNotes(
    notes.map(({ note }) => note),
    {
      within: box,
      taken: textsOf(under).map(textBox),
      runs: kind === 'sensor' ? [] : points.map((at) => ({ from: at, to: [at[0], at[1] - 3.2], halfMm: 1.4 })),
      soft: softLines(known, view),
      points,
    },
  );
  // balloons without their words are only half of what the sheet is for
  const bare = placed.filter(({ form }) => form === 1).length;
  return { shapes: [...under, ...symbols, ...notesDrawn(notes, placed)], strain: strain + bare + 20 * lost.length };
};

const keyMm = 6;
/** Room over the highest place for the sign of an antenna. */
const overMm = 4;
const keyOf = (kind: Kind, { widthMm, topMm }: { widthMm: number; topMm: number }): Shape => {
  const symbol: SheetSymbol = kind;
  return lineKey({
    contents: {
      codes: [],
      guessed: false,
      trunk: false,
      converters: false,
      more: [
        {
          words: symbolWords[symbol],
          draw: ([from, to]) => (from && to ? [unitSymbol(kind, [(from[0] + to[0]) / 2, from[1] + 1.2], [])] : []),
        },
      ],
    },
    widthMm,
    topMm,
  }).shape;
};

const titles: Readonly<Record<Kind, string>> = { antenna: 'antennas', sensor: 'sensors' };
const viewTitles: Readonly<Record<ViewName, string>> = { side: 'from starboard', top: 'from above' };

/** Smaller than each view on its own, and how ill the notes may stand, for both views to share a sheet. */
const sharesTogether = [1, 0.9, 0.8, 0.7, 0.6, 0.5];
const borne = { each: 0.25, once: 0.5 };

/** Both views on one sheet at one scale where that is not much smaller than each on its own. */
const drawingSheets = (known: KnownBoat, kind: Kind, marks: readonly UnitMark[]): SheetContent[] => {
  const { widthMm, heightMm } = known.area.content;
  const roomMm = heightMm - keyMm;
  const [side, top] = [reachIn('side', known.boat), reachIn('top', known.boat)];
  const whole = { widthMm: widthMm - 4, heightMm: roomMm - overMm };
  const key = keyOf(kind, { widthMm, topMm: roomMm });
  const about = marks.flatMap((mark) => mark.about);
  const sheet = (
    views: readonly { view: ViewName; box: Box }[],
    mmPerM: number,
  ): { content: SheetContent; strain: number } => {
    const drawn = views.map((view) => viewShapes(known, kind, marks, { ...view, mmPerM }));
    const from = views.map(({ view }) => viewTitles[view]).join(' and ');
    return {
      content: {
        title: `${titles[kind]} with their leads, ${from}`,
        about,
        mmPerM,
        isAlong: true,
        shapes: [...drawn.flatMap(({ shapes }) => shapes), key],
      },
      strain: drawn.reduce((sum, { strain }) => sum + strain, 0),
    };
  };
  const boxFrom = (topMm: number, bottomMm: number): Box => ({ leftMm: 0, rightMm: widthMm, topMm, bottomMm });
  const alone = Math.min(scaleFor(side, 1, whole), scaleFor(top, 1, whole));
  const together = sharesTogether
    .map((share) => alone * share)
    .find((mmPerM) => leastHeightMm(side, mmPerM) + leastHeightMm(top, mmPerM) <= roomMm - overMm);
  if (together !== undefined) {
    const mmPerM = roundScale(together);
    const cutMm = (roomMm * leastHeightMm(side, mmPerM)) / (leastHeightMm(side, mmPerM) + leastHeightMm(top, mmPerM));
    const both = sheet(
      [
        { view: 'side', box: boxFrom(0, cutMm) },
        { view: 'top', box: boxFrom(cutMm + 1, roomMm) },
      ],
      mmPerM,
    );
    if (both.strain <= borne.each * marks.length + borne.once) return [both.content];
  }
  return (['side', 'top'] as const).map(
    (view) => sheet([{ view, box: boxFrom(0, roomMm) }], scaleFor(view === 'side' ? side : top, 1, whole)).content,
  );
};

/** A scale of 1 to a multiple of five, not larger than asked. */
const roundScale = (mmPerM: number): number => 1000 / (Math.ceil(1000 / mmPerM / 5) * 5);

const tableParts = (known: KnownBoat, kind: Kind, marks: readonly UnitMark[]): FlowPart[] => [
  { look: 'head', text: kind === 'antenna' ? 'Antennas' : 'Sensors' },
  ...marks.flatMap((mark): FlowPart[] => {
    const feeds = feedsTexts(known, mark);
    const { place } = mark;
    const distances = kind === 'sensor' ? [] : distancesFrom(mark, marks).slice(0, 6);
    return [
      { look: 'name', key: String(mark.number), keyMm: 8, text: mark.kit.name, withNext: true, about: mark.about },
      {
        look: 'plain',
        key: '',
        keyMm: 8,
        text: [
          `${known.codes.get(place.id) ?? ''} ${place.name}: ${heightText(known, mark)}, ${lengthText(known, place.xM)} from the transom, ${sideText(known, place.yM)}`,
          ...leadTexts(known, mark),
          ...(feeds.length === 0 ? [] : [`feeds ${feeds.join(', ')}`]),
          ...(distances.length === 0 ? [] : distances.map((one) => awayText(known, one))),
          ...siteTexts(known, mark),
        ].join('; '),
        about: mark.about,
      },
    ];
  }),
];

const sideText = (known: KnownBoat, yM: number): string =>
  yM === 0 ? 'on the centreline' : `${lengthText(known, Math.abs(yM))} to ${yM < 0 ? 'port' : 'starboard'}`;

/** Every antenna and every sensor at its place in both views, then a table of heights, leads, what they feed, and distances. */
export const antennaSheets = (known: KnownBoat): SheetContent[] => {
  const { widthMm, heightMm } = known.area.content;
  const kinds: readonly Kind[] = ['antenna', 'sensor'];
  const owned = kinds.map((kind) => ({ kind, marks: known.marks.filter((mark) => planOf(known, mark) === kind) }));
  const shown = owned.filter(({ marks }) => marks.length > 0);
  const drawings = shown.flatMap(({ kind, marks }) => drawingSheets(known, kind, marks));
  const parts = shown.flatMap(({ kind, marks }) => tableParts(known, kind, marks));
  const columns = Math.max(2, Math.floor(widthMm / 84));
  const pages =
    parts.length === 0 ? [] : textFlow(parts, { leftMm: 1, topMm: 0, widthMm: widthMm - 2, heightMm, columns });
  return [
    ...drawings,
    ...radarSheets(known),
    ...pages.map((shapes, at) => ({
      title: `antennas and sensors: heights, leads, distances${pages.length === 1 ? '' : `, part ${at + 1} of ${pages.length}`}`,
      about: shown.flatMap(({ marks }) => marks.flatMap((mark) => mark.about)),
      shapes,
    })),
    ...headingSheets(known),
  ];
};
