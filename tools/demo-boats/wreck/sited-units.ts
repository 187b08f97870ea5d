import type { Boat, Kit, Place, Way } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import { read, taped } from './base.ts';

/** A spot that only one fault knows. */
export const spot = (id: string, name: string, at: readonly [xM: number, yM: number, zM: number]): Place => ({
  id,
  name,
  xM: at[0],
  yM: at[1],
  zM: at[2],
  exposure: 'damp',
  reach: 'panel',
  tees: false,
});

/** A bare way from the bow to a spot, so that it is a place of the boat like any other. */
const wayTo = ({ places }: Boat, to: Place): Way => {
  const from = places.find(({ id }) => id === 'fore-locker') ?? to;
  const straightM = Math.hypot(from.xM - to.xM, from.yM - to.yM, from.zM - to.zM);
  return {
    id: `to-${to.id}`,
    ends: [from.id, to.id],
    length: taped(Math.ceil(straightM * 10 + 2) / 10),
    kind: 'open',
    known: 'seen',
  };
};

/** The boat with one more unit at a place of its own, joined to nothing, by a manual of its own. */
export const withSited = (
  boat: Boat,
  {
    kit,
    place,
    sheet,
  }: { kit: Omit<Kit, 'sheet' | 'place'>; place: Place; sheet: Pick<Sheet, 'kind'> & Partial<Sheet> },
): Boat => {
  const own = read({
    id: `${kit.id}-sheet`,
    name: `${kit.name}, by its manual`,
    source: 'manual',
    plugs: [],
    ports: [],
    ...sheet,
  });
  return {
    ...boat,
    places: [...boat.places, place],
    ways: [...boat.ways, wayTo(boat, place)],
    sheets: [...boat.sheets, own],
    kit: [...boat.kit, { ...kit, sheet: own.id, place: place.id }],
  };
};

/** The same with a fluxgate, well off whatever her hull is of. */
export const withFluxgate = (
  boat: Boat,
  {
    id,
    name,
    place,
    site = { offSteelM: 3 },
  }: { id: string; name: string; place: Place; site?: NonNullable<Kit['site']> },
): Boat =>
  withSited(boat, {
    kit: { id, name, fate: 'stays', site },
    place,
    sheet: { kind: 'heading-sensor', sensor: { north: 'fluxgate' }, compassSafe: { valueM: 0.3, how: 'papers' } },
  });

/** The same with a bare depth element, at a frequency of its own unless one is given. */
export const withSounder = (
  boat: Boat,
  {
    kit,
    place,
    frequenciesKHz,
  }: { kit: Omit<Kit, 'sheet' | 'place'>; place: Place; frequenciesKHz?: readonly number[] },
): Boat =>
  withSited(boat, {
    kit,
    place,
    sheet: {
      kind: 'transducer',
      compassSafe: { valueM: 0.1, how: 'papers' },
      plugs: [{ id: 'lead', connector: 'leads', gender: 'none' }],
      ports: [{ id: 'echo', onPlug: 'lead', protocol: 'analog', role: 'talk', sends: [{ reading: 'sonar-picture' }] }],
      ...(frequenciesKHz === undefined
        ? {}
        : { sensor: { signals: [{ port: 'echo', frequenciesKHz: [...frequenciesKHz], powerW: 300 }] } }),
    },
  });
