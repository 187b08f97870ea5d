import { byCodeUnit } from '../../boat/ids.ts';
import { remember } from '../../boat/remember.ts';
import type { FitEntry, PlateEntry } from '../../fits-shape.ts';
import { fitOf } from './fit-of.ts';
import { type FittingFigures, fittingFigures } from './fitting-figures.ts';
import { type OpeningCase, type OpeningsInput, openingCases } from './opening-case.ts';
import { plateOf, type UnderPlate } from './plate-of.ts';
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

const withNeighbours = (one: Fitted, all: readonly Fitted[], figures: FittingFigures): FitEntry => {
  const webs = websOf(one, all, figures);
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

interface Asked {
  readonly cases: readonly OpeningCase[];
  readonly figures: FittingFigures;
}

interface Openings {
  readonly fits: readonly FitEntry[];
  readonly plates: readonly PlateEntry[];
}

const fitAll = ({ cases, figures }: Asked): Openings => {
  const under = cases.map((one) => ({ opening: one.opening, fit: fitOf(one, figures) }));
  const plates = [...byPlate(under)]
    .flatMap(([id, those]) => plateOf(id, those, figures) ?? [])
    .sort((a, b) => byCodeUnit(a.id, b.id));
  const fitted = under.map((one): Fitted => {
    const plate = plates.find(({ id }) => id === plateIdOf(one));
    return plate === undefined ? one : { ...one, plate };
  });
  return { fits: fitted.map((one) => withNeighbours(one, fitted, figures)), plates };
};

/** The latest answers: nearly every edit leaves all that openings hang on as it was. */
const known = remember({ most: 8, keyOf: (asked: Asked) => JSON.stringify(asked), find: fitAll });

/** Every opening with what is to come there, and every plate that takes, by id. */
export const planOpenings = (input: OpeningsInput): { fits: FitEntry[]; plates: PlateEntry[] } => {
  const cases = openingCases(input);
  if (cases.length === 0) return { fits: [], plates: [] };
  const { fits, plates } = known({ cases, figures: fittingFigures(input.index.boat) });
  return { fits: [...fits], plates: [...plates] };
};
