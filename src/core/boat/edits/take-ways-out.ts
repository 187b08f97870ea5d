import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';
import { shortName } from '../short-name.ts';
import { UserError } from '../user-error.ts';
import { fewInWords } from './few-in-words.ts';
import { nameInBoat } from './name-in-boat.ts';
import { withoutPhotos } from './without-photos.ts';
import { withoutPin } from './without-pin.ts';

interface Through {
  /** buses and lines that are settled through a way, by id */
  readonly layouts: readonly string[];
  readonly routes: readonly string[];
  readonly cables: readonly Boat['cables'][number][];
}

const runningThrough = (boat: Draft<Boat> | Boat, ways: ReadonlySet<string>): Through => ({
  layouts: Object.entries(boat.pins?.layouts ?? {}).flatMap(([bus, { walk }]) =>
    walk.some(({ via }) => via !== undefined && ways.has(via)) ? [bus] : [],
  ),
  routes: Object.entries(boat.pins?.routes ?? {}).flatMap(([line, route]) =>
    route.ways.some((id) => ways.has(id)) ? [line] : [],
  ),
  cables: boat.cables.filter((cable) => cable.ways.some((id) => ways.has(id))),
});

const busWords = (boat: Draft<Boat> | Boat, bus: string): string => `the backbone ${nameInBoat(boat.buses, bus)}`;

/** What runs through some ways, in words: settled backbones and lines, cables that are aboard. */
export const throughInWords = (boat: Boat, ways: ReadonlySet<string>): readonly string[] => {
  const { layouts, routes, cables } = runningThrough(boat, ways);
  return [
    ...layouts.map((bus) => busWords(boat, bus)),
    ...routes,
    ...cables.map(({ id, name }) => (name === undefined ? id : shortName(name))),
  ];
};

/** What was bought or fitted for a way lies there or waits for it; only a person can say what becomes of it. */
const refuseSettled = (boat: Draft<Boat>, { layouts, routes }: Through): void => {
  const lying = [
    ...layouts.flatMap((bus) => {
      const state = boat.pins?.layouts?.[bus]?.state ?? 'fixed';
      return state === 'fixed' ? [] : [`${busWords(boat, bus)} is ${state}`];
    }),
    ...routes.flatMap((line) => {
      const state = boat.pins?.routes?.[line]?.state ?? 'fixed';
      return state === 'fixed' ? [] : [`${line} is ${state}`];
    }),
  ];
  if (lying.length === 0) return;
  throw new UserError({
    says: `This way cannot go: ${fewInWords(lying)} for it.`,
    whatToDo: 'Let that be planned anew first, or keep the way.',
  });
};

/**
 * Takes ways out of a draft. Cables aboard that ran through them stay, with the rest of their route; routes and layouts
 * that were only settled by choice are let go. Throws UserError where something was bought or fitted for one of them.
 */
export const takeWaysOut = (boat: Draft<Boat>, ways: ReadonlySet<string>): void => {
  const through = runningThrough(boat, ways);
  refuseSettled(boat, through);
  for (const bus of through.layouts) withoutPin(boat, 'layouts', bus);
  for (const line of through.routes) withoutPin(boat, 'routes', line);
  for (const cable of boat.cables) {
    if (cable.ways.some((id) => ways.has(id))) cable.ways = cable.ways.filter((id) => !ways.has(id));
  }
  boat.ways = boat.ways.filter(({ id }) => !ways.has(id));
  withoutPhotos(boat, (of) => ways.has(of));
};
