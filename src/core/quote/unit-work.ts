import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import type { QuoteTask } from '../facts/quote-figures.ts';
import type { Work } from './quote-shape.ts';

/** Kinds that stand in a hole cut for them. */
export const inHoles: ReadonlySet<string> = new Set(['display', 'instrument', 'pilot-head', 'keypad']);

/** Kinds that are no work of this trade to take out or put in. */
export const notFitted: ReadonlySet<string> = new Set(['engine', 'gearbox', 'steering-compass', 'tablet']);

/** Tasks of kinds that have one of their own. */
const ownTask: Readonly<Record<string, QuoteTask>> = {
  radar: 'radar-mast',
  transducer: 'transducer',
  'depth-sensor': 'transducer',
  'speed-sensor': 'transducer',
  'vhf-radio': 'vhf',
  'mfhf-radio': 'vhf',
  pilot: 'pilot-sensors',
  'pilot-computer': 'pilot-sensors',
  'steering-drive': 'pilot-drive',
};

/** Kinds that are fitted within a task of another: one of each for each time that task is done. */
const within: Readonly<Record<string, QuoteTask>> = {
  'radio-antenna': 'vhf',
  'heading-sensor': 'pilot-sensors',
  'rudder-sensor': 'pilot-sensors',
};

const phaseOf = ({ phase = 1 }: Kit): number => phase;

interface Fitting {
  readonly index: BoatIndex;
  readonly units: readonly Kit[];
}

const kindOf = ({ sheetOf }: BoatIndex, { id }: Kit): string => sheetOf.get(id)?.kind ?? '';

const isAloft = ({ places }: BoatIndex, { place }: Kit): boolean => places.get(place)?.reach === 'aloft';

const takenOut = ({ index, units }: Fitting): Work[] =>
  units
    .filter(({ fate }) => fate === 'goes')
    .map((unit) => {
      const isDown = index.boat.quote?.mast === 'down' || !isAloft(index, unit);
      const radar = isDown ? 'remove-radar-mast-down' : 'remove-radar-mast-up';
      const task = kindOf(index, unit) === 'radar' ? radar : 'remove-display';
      return { task, count: 1, phase: phaseOf(unit), of: unit.id };
    });

/**
 * Holes in one panel: each old one takes a cover plate, or a new fascia that a new display stands in; new displays beyond the
 * old ones take a hole of their own. So one display more never means fewer hours.
 */
const holeWork = ({ index, units }: Fitting): Work[] => {
  const stood = units.filter((unit) => unit.fate !== 'stays' && inHoles.has(kindOf(index, unit)));
  return [...new Set(stood.map(({ place }) => place))].flatMap((place) => {
    const here = stood.filter((unit) => unit.place === place);
    const old = here.filter(({ fate }) => fate === 'goes');
    const fresh = here.filter(({ fate }) => fate === 'comes');
    return [
      ...old.map((unit): Work => ({ task: 'cover-plate', count: 1, phase: phaseOf(unit), of: unit.id })),
      ...fresh
        .slice(old.length)
        .map((unit): Work => ({ task: 'flush-mount', count: 1, phase: phaseOf(unit), of: unit.id })),
    ];
  });
};

const putIn = ({ index, units }: Fitting): Work[] => {
  const fresh = units.filter(({ fate }) => fate === 'comes');
  const own = fresh.flatMap((unit): Work[] => {
    const task = ownTask[kindOf(index, unit)];
    return task === undefined ? [] : [{ task, count: 1, phase: phaseOf(unit), of: unit.id }];
  });
  const used = new Map<string, number>();
  const also = new Map<Work, string[]>();
  const others = fresh.flatMap((unit): Work[] => {
    const kind = kindOf(index, unit);
    if (ownTask[kind] !== undefined || inHoles.has(kind) || notFitted.has(kind)) return [];
    const nth = used.get(kind) ?? 0;
    used.set(kind, nth + 1);
    const host = within[kind] === undefined ? undefined : own.filter(({ task }) => task === within[kind])[nth];
    if (host !== undefined) {
      also.set(host, [...(also.get(host) ?? []), unit.id]);
      return [];
    }
    return [{ task: isAloft(index, unit) ? 'fit-aloft' : 'fit-unit', count: 1, phase: phaseOf(unit), of: unit.id }];
  });
  const hosts = own.map((one): Work => {
    const units = also.get(one);
    return units === undefined ? one : { ...one, also: units };
  });
  return [...hosts, ...others];
};

/** The work on units: those that go are taken out, those that come are fitted. */
export const unitWork = (index: BoatIndex): Work[] => {
  const fitting: Fitting = {
    index,
    units: index.boat.kit.filter((unit) => !notFitted.has(kindOf(index, unit))),
  };
  return [...takenOut(fitting), ...holeWork(fitting), ...putIn(fitting)];
};
