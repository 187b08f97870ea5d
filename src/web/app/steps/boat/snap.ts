import type { Place, Way } from '../../../../core/boat/boat-schema.ts';
import { inchM } from '../../../../core/units/foot.ts';
import type { SheetViewName } from './view-axes.ts';
import { axesOf } from './view-axes.ts';

/** What a place that is moved holds on to, so that it can be said. */
export type Caught = { readonly what: 'centreline' } | { readonly what: 'height'; readonly of: string };

export interface Snapped {
  readonly alongM: number;
  readonly acrossM: number;
  readonly caught?: Caught;
}

/** The grid on which places are put: 5 cm, or 2 inches. */
export const gridM = { metres: 0.05, feet: 2 * inchM } as const;

/** Where nothing catches, places are read to the centimetre. */
const freeM = 0.01;

const toGrid = (valueM: number, stepM: number): number => Math.round(valueM / stepM) * stepM;

/** Places that a way leads to from the one that is moved. */
export const neighboursOf = (
  { places, ways }: { readonly places: readonly Place[]; readonly ways: readonly Way[] },
  place: string,
): readonly Place[] => {
  const ends = new Set(ways.flatMap((way) => (way.ends.includes(place) ? way.ends : [])));
  ends.delete(place);
  return places.filter(({ id }) => ends.has(id));
};

/**
 * Where a place that the hand holds comes to lie in one view: across the sheet on the grid, the other way on the centreline
 * or at the height of a neighbour where it is within `reachM` of them, else on the grid as well; `isFree` leaves all that.
 *
 * @example snapped({ at: { alongM: 4.02, acrossM: 0.06 }, view: 'top', neighbours: [], … }) // 4 m, on the centreline
 */
export const snapped = ({
  at,
  view,
  neighbours,
  stepM,
  reachM,
  isFree,
}: {
  readonly at: { readonly alongM: number; readonly acrossM: number };
  readonly view: SheetViewName;
  readonly neighbours: readonly Place[];
  readonly stepM: number;
  readonly reachM: number;
  readonly isFree: boolean;
}): Snapped => {
  const [alongAxis, acrossAxis] = axesOf(view);
  if (isFree) return { alongM: toGrid(at.alongM, freeM), acrossM: toGrid(at.acrossM, freeM) };
  const onCentre = (axis: string, valueM: number): boolean => axis === 'yM' && Math.abs(valueM) <= reachM;
  const alongM = onCentre(alongAxis, at.alongM) ? 0 : toGrid(at.alongM, stepM);
  if (onCentre(acrossAxis, at.acrossM)) return { alongM, acrossM: 0, caught: { what: 'centreline' } };
  const [level] =
    acrossAxis === 'zM'
      ? neighbours
          .filter(({ zM }) => Math.abs(zM - at.acrossM) <= reachM)
          .sort((a, b) => Math.abs(a.zM - at.acrossM) - Math.abs(b.zM - at.acrossM))
      : [];
  if (level !== undefined) return { alongM, acrossM: level.zM, caught: { what: 'height', of: level.name } };
  return {
    alongM,
    acrossM: toGrid(at.acrossM, stepM),
    ...(alongM === 0 && alongAxis === 'yM' ? { caught: { what: 'centreline' } } : {}),
  };
};
