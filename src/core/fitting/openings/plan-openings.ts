import { byCodeUnit } from '../../boat/ids.ts';
import type { FitEntry, PlateEntry } from '../../fits-shape.ts';
import { fitOf } from './fit-of.ts';
import { fittingFigures } from './fitting-figures.ts';
import { plateOf, type UnderPlate } from './plate-of.ts';
import type { LinesBehind } from './room-behind.ts';
import { crowdsOf, cutAwayOf, type Fitted, websOf } from './webs-of.ts';

/** The plate an opening lies under; undefined where it takes none. A hole in the hull is closed otherwise. */
const plateIdOf = ({ opening, fit }: UnderPlate): string | undefined =>
  fit.verdict === 'plate' || (fit.verdict === 'close' && opening.throughHull !== true)
    ? (opening.plate?.id ?? `plate-${opening.id}`)
    : undefined;

const byPlate = (under: readonly UnderPlate[]): ReadonlyMap<string, readonly UnderPlate[]> => {
  const plates = new Map<string, UnderPlate[]>();
  for (const one of under) {
    const id = plateIdOf(one);
    if (id !== undefined) plates.set(id, [...(plates.get(id) ?? []), one]);
  }
  return plates;
};

const withNeighbours = (one: Fitted, all: readonly Fitted[], input: LinesBehind): FitEntry => {
  const webs = websOf(one, all, fittingFigures(input.index.boat));
  const crowds = crowdsOf(one, all);
  const cutAwayPct = cutAwayOf(one, all);
  return {
    ...one.fit,
    ...(one.plate === undefined ? {} : { plate: one.plate.id }),
    ...(webs === undefined ? {} : { webs }),
    ...(crowds === undefined ? {} : { crowds }),
    ...(cutAwayPct === undefined ? {} : { cutAwayPct }),
  };
};

/** Every opening with what is to come there, and every plate that takes, by id. */
export const planOpenings = (input: LinesBehind): { fits: FitEntry[]; plates: PlateEntry[] } => {
  const openings = [...(input.index.boat.openings ?? [])].sort((a, b) => byCodeUnit(a.id, b.id));
  const under = openings.map((opening) => ({ opening, fit: fitOf(opening, input) }));
  const figures = fittingFigures(input.index.boat);
  const plates = [...byPlate(under)]
    .flatMap(([id, those]) => plateOf(id, those, figures) ?? [])
    .sort((a, b) => byCodeUnit(a.id, b.id));
  const fitted = under.map((one): Fitted => {
    const plate = plates.find(({ id }) => id === plateIdOf(one));
    return plate === undefined ? one : { ...one, plate };
  });
  return { fits: fitted.map((one) => withNeighbours(one, fitted, input)), plates };
};
