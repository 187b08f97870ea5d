import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EssentialFunction } from '../../core/facts/essential-functions.ts';
import { shipPapers } from '../../core/facts/ship-papers.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import type { Job } from '../../core/work-shape.ts';
import { briefBoat } from '../binder/brief-boat.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import { lineName } from '../cards/line-words.ts';
import { endWords } from '../lists/end-words.ts';
import { functionWords } from './function-words.ts';

/** What the work of a boat is told in: her things and lines by id. */
export interface WorkNames {
  readonly boat: Boat;
  readonly index: CardBoat;
  readonly lines: ReadonlyMap<string, LineEntry>;
  /** items of the shopping list by id */
  readonly items: ReadonlyMap<string, string>;
}

/** Finds by id what the jobs of a plan are about, each called by as much of its name as tells it from the others. */
export const workNames = (boat: Boat, { lines, shopping }: Pick<Plan, 'lines' | 'shopping'>): WorkNames => ({
  boat,
  index: cardBoat(briefBoat(boat)),
  lines: new Map(lines.map((line) => [line.id, line])),
  items: new Map(shopping.map(({ id, item }) => [id, item])),
});

const isFunction = (id: string): id is EssentialFunction => Object.hasOwn(functionWords, id);
const isPaper = (id: string): id is keyof typeof shipPapers => Object.hasOwn(shipPapers, id);

/** What a job waits for or takes, by its name: an item of the shopping list, or a paper. */
export const itemName = ({ items }: Pick<WorkNames, 'items'>, id: string): string =>
  items.get(id) ?? (isPaper(id) ? shipPapers[id].name : id);

/** One thing a job is about, by its name: a line by kind and label, a way by its ends, anything else as the ends of lines are called. */
export const thingName = (names: WorkNames, id: string): string => {
  const { boat, index, lines } = names;
  const line = lines.get(id);
  if (line !== undefined) return lineName(line);
  const placeName = (place: string): string => index.places.get(place)?.name ?? place;
  const way = boat.ways.find((own) => own.id === id);
  if (way !== undefined) return way.ends.map(placeName).join(' to ');
  const opening = boat.openings?.find((own) => own.id === id);
  if (opening !== undefined) return opening.name;
  if (boat.cables.some((cable) => cable.id === id)) return `old cable ${id}`;
  if (isPaper(id)) return shipPapers[id].name;
  if (isFunction(id)) return functionWords[id];
  return index.places.has(id) ? placeName(id) : endWords(index, id);
};

/** The cables a job is about, by kind and label. */
export const jobCables = ({ lines }: WorkNames, { about }: Pick<Job, 'about'>): string[] =>
  about.flatMap((id) => {
    const line = lines.get(id);
    return line === undefined ? [] : [lineName(line)];
  });
