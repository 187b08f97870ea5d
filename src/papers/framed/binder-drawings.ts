import type { Drawing } from '../drawing/shapes.ts';
import { linePages } from '../lanes/line-pages.ts';
import { oneLine } from '../power/one-line.ts';
import { antennaSheets } from './antennas/antenna-sheets.ts';
import { boatSheets } from './boat/boat-sheets.ts';
import { keySheets } from './boat/key-sheets.ts';
import { framedSheet, type SheetBlock, type SheetContent } from './framed-sheet.ts';
import { type KnownBoat, knownBoat, type SheetRequest } from './known-boat.ts';
import { placeSheets } from './places/place-sheets.ts';

/** What a drawing of the binder shows. */
export type DrawingPart = 'boat' | 'key' | 'data' | 'power' | 'antennas' | 'places';

/** One drawing of the binder in its frame. */
export interface BinderDrawing {
  readonly part: DrawingPart;
  /** its number among the drawings, from 1 */
  readonly sheet: number;
  /** a name for its files: "sheet-03-data" */
  readonly name: string;
  readonly title: string;
  /** ids of places and units it tells of in detail, so that an index finds it */
  readonly about: readonly string[];
  readonly drawing: Drawing;
}

/** What the drawings of one binder are made of. */
export interface BinderRequest extends SheetRequest {
  readonly standing: SheetBlock['standing'];
  readonly revision?: string;
  /** YYYY-MM-DD */
  readonly dateIso?: string;
}

interface Part {
  readonly part: DrawingPart;
  readonly contents: readonly SheetContent[];
}

const dataSheets = ({ boat, plan, area }: KnownBoat, units: SheetRequest['units']): SheetContent[] => {
  const { widthMm, heightMm } = area.content;
  const pages = linePages({ boat, plan, widthMm, heightMm, ...(units === undefined ? {} : { units }) });
  return pages.map(({ shapes, isAlong }, at) => ({
    title: `lines of data${pages.length === 1 ? '' : `, part ${at + 1} of ${pages.length}`}`,
    about: [],
    isAlong,
    shapes,
  }));
};

const powerSheets = ({ boat, plan, area }: KnownBoat, units: SheetRequest['units']): SheetContent[] => {
  const { widthMm, heightMm } = area.content;
  const pages = oneLine({ boat, plan, widthMm, heightMm, units, isFramed: true });
  return pages.map(({ shapes }, at) => ({
    title: `power on one line${pages.length === 1 ? '' : `, part ${at + 1} of ${pages.length}`}`,
    about: [],
    shapes,
  }));
};

/** On which sheet each place is shown in detail; `first` is the number of the first of them. */
const detailsOf = (known: KnownBoat, places: readonly SheetContent[], first: number): ReadonlyMap<string, number> => {
  const details = new Map<string, number>();
  for (const [at, { about }] of places.entries()) {
    for (const id of about) if (known.index.places.has(id) && !details.has(id)) details.set(id, first + at);
  }
  return details;
};

const partsOf = (known: KnownBoat, units: SheetRequest['units']): Part[] => {
  const boat = boatSheets(known, 1);
  const data = dataSheets(known, units);
  const power = powerSheets(known, units);
  const antennas = antennaSheets(known);
  const places = placeSheets(known);
  // how many sheets the key takes hangs on no number in it being longer than three digits
  const keyCount = keySheets(known, detailsOf(known, places, 100)).length;
  const first = 1 + boat.length + keyCount + data.length + power.length + antennas.length;
  return [
    { part: 'boat', contents: boat },
    { part: 'key', contents: keySheets(known, detailsOf(known, places, first)) },
    { part: 'data', contents: data },
    { part: 'power', contents: power },
    { part: 'antennas', contents: antennas },
    { part: 'places', contents: places },
  ];
};

/**
 * Every drawing of the binder on one paper, in order and in its frame: the boat from the side and from above with all lines,
 * what its codes stand for, the lines of data, power on one line, antennas and sensors, every place in detail. Equal input gives equal drawings.
 */
export const binderDrawings = (request: BinderRequest): BinderDrawing[] => {
  const known = knownBoat(request);
  const all = partsOf(known, request.units).flatMap(({ part, contents }) =>
    contents.map((content) => ({ part, content })),
  );
  const { standing, revision, dateIso } = request;
  return all.map(({ part, content }, at) => {
    const sheet = at + 1;
    const block: SheetBlock = {
      boat: request.boat.name,
      sheet,
      of: all.length,
      standing,
      ...(revision === undefined ? {} : { revision }),
      ...(dateIso === undefined ? {} : { dateIso }),
    };
    return {
      part,
      sheet,
      name: `sheet-${String(sheet).padStart(2, '0')}-${part}`,
      title: content.title,
      about: content.about,
      drawing: framedSheet(content, request.paper, block),
    };
  });
};
