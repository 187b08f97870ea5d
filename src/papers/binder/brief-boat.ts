import type { Boat } from '../../core/boat/boat-schema.ts';
import { briefNames } from '../sources/brief-names.ts';

const briefly = <Thing extends { readonly id: string; readonly name: string }>(things: readonly Thing[]): Thing[] => {
  const names = briefNames(new Map(things.map((thing) => [thing.id, thing])));
  return things.map((thing) => ({ ...thing, name: names.get(thing.id)?.name ?? thing.name }));
};

/** The boat with every unit and place called by as much of its name as tells it from the others: a table has no room for more. */
export const briefBoat = (boat: Boat): Boat => ({ ...boat, kit: briefly(boat.kit), places: briefly(boat.places) });
