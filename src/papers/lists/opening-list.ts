import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { Sheet } from '../../core/boat/sheet.ts';
import { hullOpenings, openings } from '../../core/facts/openings.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { verdictWords } from '../templates/fit-words.ts';
import { labelOf } from './label-of.ts';
import { printCount } from './print-figure.ts';

/** Kinds whose body goes through the hull. */
const throughHull: ReadonlySet<string> = new Set(hullOpenings.kinds);

/** A unit that looks through the laminate from inside makes no hole. */
const goesThrough = (sheet: Sheet | undefined): boolean =>
  sheet !== undefined && throughHull.has(sheet.kind) && !/\bin-hull\b/.test(sheet.name);

const placeName = ({ places }: CardBoat, id: string): string => places.get(id)?.name ?? id;

const passageRow = (index: CardBoat, plan: Plan, way: Way, lines: readonly LineEntry[]): ListCell[] => {
  const wider = plan.passages.find((passage) => passage.way === way.id && passage.takes === 'wider-hole');
  const wideMm = wider?.choices.find(({ does }) => does === 'wider-hole')?.wideMm;
  const [a, b] = way.ends;
  const through = way.through ?? 'plain';
  return [
    `${placeName(index, a)} to ${placeName(index, b)}`,
    openings[through].through,
    `${printCount(lines.length, 'new cable')}: ${lines.map(labelOf).sort(byCodeUnit).join(', ')}`,
    wideMm ?? way.bore?.mm,
    wideMm === undefined ? 'as it is' : 'made wider',
    openings[through].closedBy,
    undefined,
  ];
};

/** A hole in the hull that is entered: how wide it is, and what becomes of it. */
const hullFit = (plan: Plan, unit: string): { readonly wideMm: number; readonly says: string } | undefined => {
  const fit = plan.fits.find((one) => one.unit === unit && one.verdict !== 'not-known');
  return fit === undefined ? undefined : { wideMm: fit.hole.widthMm, says: verdictWords(fit, plan) };
};

const hullRows = ({ boat, sheetOf, ...index }: CardBoat, plan: Plan): ListCell[][] =>
  boat.kit
    .filter(({ id, fate }) => fate !== 'stays' && goesThrough(sheetOf.get(id)))
    .map(({ id, name, place, fate }) => {
      const fit = hullFit(plan, id);
      const { hole, closedBy } = fate === 'goes' ? hullOpenings.left : hullOpenings.wanted;
      const { name: where = place, zM = 0 } = index.places.get(place) ?? {};
      return [
        where,
        zM < 0 ? 'hull, below the waterline' : 'hull',
        name,
        fit?.wideMm,
        fit?.says ?? hole,
        closedBy,
        undefined,
      ];
    });

/**
 * Deck, bulkheads and hull where the work goes through them: what passes, how wide, how it is closed, and room to write who
 * looked at it.
 */
export const openingList = (boat: Boat, plan: Plan): ListTable => {
  const index = cardBoat(boat);
  const fresh = plan.lines.filter(({ kept }) => kept === undefined);
  const rows = boat.ways
    .filter(({ through }) => through !== undefined)
    .toSorted((one, other) => byCodeUnit(one.id, other.id))
    .flatMap((way) => {
      const lines = fresh.filter(({ ways }) => ways.includes(way.id));
      return lines.length === 0 ? [] : [passageRow(index, plan, way, lines)];
    });
  return {
    id: 'openings',
    title: 'Through deck, bulkheads and hull',
    says: 'Where the work goes through something that keeps water or fire out, or parts two rooms. A hole in the hull is work for the yard: the boat ashore, a plug at hand.',
    columns: [
      { id: 'where', head: 'where', share: 2 },
      { id: 'through', head: 'through', share: 1.2 },
      { id: 'what', head: 'what passes', share: 2 },
      { id: 'bore', head: 'hole', unit: 'mm', kind: 'figure', share: 0.6 },
      { id: 'how', head: 'hole is', share: 1.2 },
      { id: 'closed', head: 'closed by', share: 1.6 },
      { id: 'seen', head: 'seen, by whom', kind: 'blank' },
    ],
    rows: [...rows, ...hullRows(index, plan)],
    empty: 'Nothing goes through deck, bulkhead or hull that is known.',
  };
};
