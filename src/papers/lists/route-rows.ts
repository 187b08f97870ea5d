import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { mayBeLed } from '../../core/leading/may-be-led.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { lineName } from '../cards/line-words.ts';
import { type EndNames, endWords } from './end-words.ts';
import { lineFromTo } from './led-words.ts';

/** One line that may be led otherwise: its route in words, and what can be done about it. */
export interface RouteRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
  /** what a press does, in words, and the edits it makes */
  readonly acts: readonly { readonly says: string; readonly title: string; readonly edits: readonly EditCall[] }[];
}

const byPlaces = (places: ReadonlyMap<string, { readonly name: string }>, ids: readonly string[]): string => {
  const inner = ids.slice(1, -1).map((id) => places.get(id)?.name ?? id);
  return inner.length === 0 ? 'straight' : `by ${inner.join(', ')}`;
};

const actsOf = (index: EndNames, line: LineEntry): RouteRow['acts'] => {
  const name = lineFromTo(index, line);
  if (line.pinned !== undefined) {
    return [
      {
        says: 'let the plan lead it again',
        title: `The ${name} may go any way again.`,
        edits: [{ edit: 'unpin-route', params: { line: line.id } }],
      },
    ];
  }
  const pin = (ways: readonly string[]): EditCall[] => [
    { edit: 'pin-route', params: { line: line.id, ways: [...ways], state: 'fixed' } },
  ];
  const settle = { says: 'settle this route', title: `The ${name} stays as it is led.`, edits: pin(line.ways) };
  if (line.other === undefined) return [settle];
  const { places, ways, lengthM } = line.other;
  return [
    settle,
    {
      says: `lead it ${byPlaces(index.places, places)}, ${lengthM.toFixed(2)} m`,
      title: `The ${name} is led ${byPlaces(index.places, places)}.`,
      edits: pin(ways),
    },
  ];
};

const rowOf = (index: EndNames, line: LineEntry): RouteRow => ({
  key: line.id,
  what: `${lineName(line)}: ${endWords(index, line.from)} to ${endWords(index, line.to)}`,
  fact: `${line.lengthM.toFixed(2)} m, ${byPlaces(index.places, line.places)}${line.pinned === undefined ? '' : ', settled'}`,
  lights: [line.id, ...line.ways],
  acts: actsOf(index, line),
});

type Index = EndNames & Pick<BoatIndex, 'buses'>;

const isOfBus = ({ buses }: Index, { kind, from, to }: LineEntry): boolean =>
  kind === 'drop' || buses.has(from) || buses.has(to);

/** The new lines that no bus lays, in the order of the plan, with their routes. */
export const routeRows = (index: Index, { lines }: Pick<Plan, 'lines'>): RouteRow[] =>
  lines.filter((line) => mayBeLed(line) && !isOfBus(index, line)).map((line) => rowOf(index, line));

/** The drops and leads of the buses, in the order of the plan, with their routes. */
export const busRouteRows = (index: Index, { lines }: Pick<Plan, 'lines'>): RouteRow[] =>
  lines.filter((line) => mayBeLed(line) && isOfBus(index, line)).map((line) => rowOf(index, line));
