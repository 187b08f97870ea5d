import type { Boat } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import { lineName } from '../cards/line-words.ts';
import { endWords } from '../lists/end-words.ts';

/** What the work of a boat is told in: her things and lines by id. */
export interface WorkNames {
  readonly boat: Boat;
  readonly index: CardBoat;
  readonly lines: ReadonlyMap<string, LineEntry>;
}

/** Finds by id what the jobs of a plan are about. */
export const workNames = (boat: Boat, { lines }: Pick<Plan, 'lines'>): WorkNames => ({
  boat,
  index: cardBoat(boat),
  lines: new Map(lines.map((line) => [line.id, line])),
});

/** One thing a job is about, by its name: a line by kind and label, a way by its ends, anything else as the ends of lines are called. */
export const thingName = ({ boat, index, lines }: WorkNames, id: string): string => {
  const line = lines.get(id);
  if (line !== undefined) return lineName(line);
  const way = boat.ways.find((own) => own.id === id);
  const placeName = (place: string): string => index.places.get(place)?.name ?? place;
  if (way !== undefined) return way.ends.map(placeName).join(' to ');
  return index.places.has(id) ? placeName(id) : endWords(index, id);
};
