import type { Boat, Kit, Place, Way } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import { read, taped, wreckBase } from './base.ts';

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

/** A bare way to a spot from the nearest place of the sound boat, so that it is a place of the boat like any other. */
const wayTo = (to: Place): Way => {
  const apartM = ({ xM, yM, zM }: Place): number => Math.hypot(xM - to.xM, yM - to.yM, zM - to.zM);
  const from = wreckBase.places.reduce((best, place) => (apartM(place) < apartM(best) ? place : best));
  return {
    id: `to-${to.id}`,
    ends: [from.id, to.id],
    length: taped(Math.ceil(apartM(from) * 10 + 2) / 10),
    kind: 'open',
    known: 'seen',
  };
};

/** The boat with one more unit at a place of hers or of its own, joined to nothing, by a manual of its own. */
export const withSited = (
  boat: Boat,
  {
    kit,
    place,
    sheet,
  }: { kit: Omit<Kit, 'sheet' | 'place'>; place: Place | string; sheet: Pick<Sheet, 'kind'> & Partial<Sheet> },
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
    ...(typeof place === 'string' ? {} : { places: [...boat.places, place], ways: [...boat.ways, wayTo(place)] }),
    sheets: [...boat.sheets, own],
    kit: [...boat.kit, { ...kit, sheet: own.id, place: typeof place === 'string' ? place : place.id }],
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

/** The same with a bare depth element, in the bow unless it has a place of its own. */
export const withSounder = (
  boat: Boat,
  {
    kit,
    place = 'fore-locker',
    frequenciesKHz,
  }: { kit: Omit<Kit, 'sheet' | 'place'>; place?: Place | string; frequenciesKHz?: readonly number[] },
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
