import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { HeadingInput } from '../../../core/fitting/heading/heading-field.ts';
import { type HeadingMap, type HeadingMapView, headingMap } from '../../../core/fitting/heading/heading-map.ts';
import type { Box } from '../../drawing/box.ts';
import { headingPlaceRows, headingRows } from '../../heading/heading-rows.ts';
import { mapKey } from '../../heading/map-shapes.ts';
import { mapView } from '../../heading/map-view.ts';
import { neighbourKind, neighbourName } from '../../heading/near-words.ts';
import { inUnits } from '../../lists/in-units.ts';
import { lineKey } from '../../sheet/line-key.ts';
import { reachIn, scaleFor } from '../boat/window-plan.ts';
import { leastHeightMm } from '../boat/window-view.ts';
import type { SheetContent } from '../framed-sheet.ts';
import { type KnownBoat, lengthText } from '../known-boat.ts';
import { type FlowPart, textFlow } from '../text-flow.ts';

const keyMm = 6;

const viewWords = (known: KnownBoat, { view, atM }: HeadingMapView): string =>
  view === 'side'
    ? 'from starboard on the centreline'
    : `from above ${lengthText(known, Math.abs(atM))} ${atM < 0 ? 'under' : 'over'} the water`;

/** Both views under each other at one scale, as large as they go. */
const roomsFor = ({ boat, area }: KnownBoat, { views }: HeadingMap): { boxes: Box[]; mmPerM: number } => {
  const { widthMm } = area.content;
  const roomMm = area.content.heightMm - keyMm;
  const reaches = views.map(({ view }) => reachIn(view, boat));
  const shares = reaches.map((reach) => leastHeightMm(reach, 1000 / 50));
  const wholeMm = shares.reduce((sum, share) => sum + share, 0);
  let topMm = 0;
  const boxes = shares.map((share): Box => {
    const bottomMm = topMm + (roomMm * share) / wholeMm;
    const box = { leftMm: 0, rightMm: widthMm, topMm: topMm + 1, bottomMm };
    topMm = bottomMm;
    return box;
  });
  const scales = reaches.map((reach, at) => {
    const { topMm: fromMm = 0, bottomMm = 0 } = boxes[at] ?? {};
    return scaleFor(reach, 1, { widthMm: widthMm - 4, heightMm: bottomMm - fromMm });
  });
  return { boxes, mmPerM: Math.min(...scales) };
};

const drawingSheet = (known: KnownBoat, map: HeadingMap, about: readonly string[]): SheetContent => {
  const { boxes, mmPerM } = roomsFor(known, map);
  const { widthMm, heightMm } = known.area.content;
  const key = lineKey({
    contents: { codes: [], guessed: false, trunk: false, converters: false, more: mapKey },
    widthMm,
    topMm: heightMm - keyMm,
  });
  return {
    title: `where a heading sensor may go, ${map.views.map((view) => viewWords(known, view)).join(' and ')}`,
    about,
    mmPerM,
    isAlong: true,
    shapes: [
      ...boxes.flatMap((box, at) => {
        const view = map.views[at];
        return view === undefined ? [] : mapView({ known, map, mapView: view, box, mmPerM });
      }),
      key.shape,
    ],
  };
};

const tableParts = (
  known: KnownBoat,
  input: HeadingInput,
  { map, unit }: { map: HeadingMap; unit: string },
): FlowPart[] => {
  const said = (text: string): string => inUnits(text, known.units.word === 'm' ? 'metres' : 'feet');
  const numberOf = (id: string): string => String(known.marks.find(({ kit }) => kit.id === id)?.number ?? '');
  return [
    { look: 'head', text: 'Heading sensors' },
    ...headingRows(known.index, known.plan).map(
      ({ key, what, fact, lights }): FlowPart => ({
        look: 'plain',
        key: numberOf(key),
        keyMm: 8,
        text: said(`${what}: ${fact}`),
        about: lights,
      }),
    ),
    { look: 'head', text: 'Places for one, best first' },
    ...headingPlaceRows(known.index, input, { except: unit }).map(
      ({ key, what, fact }): FlowPart => ({
        look: 'plain',
        key: known.codes.get(key) ?? '',
        keyMm: 8,
        text: said(`${what}: ${fact}`),
        about: [key],
      }),
    ),
    { look: 'head', text: 'What keeps one off, most of the map first' },
    ...map.limits.map(
      (limit): FlowPart => ({
        look: 'plain',
        key: numberOf(limit.id),
        keyMm: 8,
        text: said(`${neighbourName(known.index, limit)}: ${limit.leastM.toFixed(2)} m (${neighbourKind(limit)})`),
        about: [limit.id],
      }),
    ),
    {
      look: 'quiet',
      text: 'Before a hole is drilled slide the sensor 30 cm each way with everything switched on: 5° of change or less is good, over 10° is another place. Its arrow points to the bow. Stow no iron within a metre of it, and write that on the locker.',
      withNext: true,
    },
  ];
};

/** Where a heading sensor may go, hatched over both views, then every place with what speaks for or against it; nothing where none is magnetic. */
export const headingSheets = (known: KnownBoat): SheetContent[] => {
  const unit = known.plan.sites.find(({ heading }) => heading?.magnetic === true)?.unit;
  if (unit === undefined) return [];
  const input: HeadingInput = { index: indexBoat(known.boat), lines: known.plan.lines, feeds: known.plan.feeds };
  const map = headingMap(input, unit);
  const about = known.plan.sites.flatMap(({ unit: sensor, heading }) => (heading === undefined ? [] : [sensor]));
  const { widthMm, heightMm } = known.area.content;
  const columns = Math.max(2, Math.floor(widthMm / 84));
  const parts = tableParts(known, input, { map, unit });
  const pages = textFlow(parts, { leftMm: 1, topMm: 0, widthMm: widthMm - 2, heightMm, columns });
  return [
    drawingSheet(known, map, about),
    ...pages.map((shapes, at) => ({
      title: `places for a heading sensor${pages.length === 1 ? '' : `, part ${at + 1} of ${pages.length}`}`,
      about,
      shapes,
    })),
  ];
};
