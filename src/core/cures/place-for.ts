import type { Place } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import type { CureContext } from './cure-context.ts';

/** Kinds that must see the sky or stand in the wind, and kinds that must reach the water (common practice). */
const aloft: ReadonlySet<string> = new Set(
  'ais-antenna camera position-antenna radar radio-antenna satellite-terminal weather-sensor wind-sensor'.split(' '),
);
const low: ReadonlySet<string> = new Set('depth-sensor speed-sensor temperature-sensor transducer'.split(' '));

const extreme = (places: readonly Place[], sign: 1 | -1): string | undefined =>
  [...places].sort((a, b) => sign * (a.zM - b.zM) || byCodeUnit(a.id, b.id))[0]?.id;

/**
 * Where a unit of a sheet would go: where one of its kind stands or stood, else the highest place in the weather or the
 * lowest of all for what needs sky or water, else beside what it is wired to. A person moves it from there.
 */
export const placeFor = ({ index }: CureContext, { kind }: Sheet, beside: string): string => {
  const like = index.boat.kit.find((unit) => index.sheetOf.get(unit.id)?.kind === kind);
  if (like !== undefined) return like.place;
  const { places } = index.boat;
  if (low.has(kind)) return extreme(places, 1) ?? beside;
  const outside = places.filter(({ exposure }) => exposure === 'weather');
  return aloft.has(kind) ? (extreme(outside, -1) ?? beside) : beside;
};
