import type { BoatIndex } from '../boat/boat-index.ts';
import type { EditCall } from '../boat/history.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { PhaseBus, PhaseEntry, PhasesPart } from '../phases-shape.ts';
import type { BusEntry } from '../plan-shape.ts';
import { needKey } from '../readings/arrivals.ts';
import type { PhaseReadings } from './phase-readings.ts';

/** The phases in which something comes or goes, first to last; a boat that changes in one phase has one. */
export const phasesOf = ({ boat }: Pick<BoatIndex, 'boat'>): number[] => {
  const own = boat.kit.flatMap(({ fate, phase = 1 }) => (fate === 'stays' ? [] : [phase]));
  return [...new Set(own)].sort((a, b) => a - b);
};

/** What comes and goes in one phase. */
export const changesIn = ({ boat }: Pick<BoatIndex, 'boat'>, phase: number): Pick<PhaseEntry, 'comes' | 'goes'> => {
  const with_ = (fate: 'comes' | 'goes'): string[] =>
    boat.kit
      .filter((unit) => unit.fate === fate && (unit.phase ?? 1) === phase)
      .map(({ id }) => id)
      .sort(byCodeUnit);
  return { comes: with_('comes'), goes: with_('goes') };
};

/** Terminators that stand elsewhere in a phase than in the one before: the ends of a trunk that are in one and not in the other. */
export const movedTerminators = (
  phases: readonly { readonly phase: number; readonly buses: readonly PhaseBus[] }[],
): PhasesPart['moved'] =>
  phases.flatMap(({ phase, buses }, n) =>
    buses.flatMap(({ id, ends }) => {
      const before = phases[n - 1]?.buses.find((bus) => bus.id === id);
      const left = (before?.ends ?? []).filter((end) => !ends.includes(end));
      const fresh = ends.filter((end) => before !== undefined && !before.ends.includes(end));
      return left.flatMap((from, at) => {
        const to = fresh[at];
        return to === undefined ? [] : [{ bus: id, phase, from, to }];
      });
    }),
  );

/** A change that may make phasing cost less, before it is tried. */
export interface PhaseChange {
  readonly says: string;
  readonly edits: EditCall[];
}

/** Changes tried at most: each takes about as long as the phases themselves. */
const mostChanges = 6;

/** Whether a bus grows in a later phase and loses no unit then: its trunk of the end serves the first phase too. */
const onlyGrows = ({ boat, kit }: BoatIndex, bus: string, first: number): boolean => {
  const units = boat.joins
    .filter((join) => join.bus === bus)
    .flatMap(({ members }) => members.flatMap((member) => kit.get(member.kit) ?? []));
  const later = units.filter(({ fate, phase = 1 }) => fate !== 'stays' && phase > first);
  return later.length > 0 && later.every(({ fate }) => fate === 'comes');
};

/** A trunk laid in the first phase as it will be in the end, with its later tees left free. */
const pinChanges = (
  index: BoatIndex,
  buses: readonly Pick<BusEntry, 'id' | 'grade' | 'walk'>[],
  first: number,
): PhaseChange[] =>
  buses
    .filter(({ id }) => index.boat.pins?.layouts?.[id] === undefined && onlyGrows(index, id, first))
    .map(({ id, grade, walk }) => ({
      says: `Lay the trunk of ${index.buses.get(id)?.name ?? id} in phase ${first} as it will be in the end, with the later tees left free.`,
      edits: [{ edit: 'pin-layout', params: { bus: id, grade, walk, state: 'fixed' } }],
    }));

const unitsOf = (ports: readonly string[]): string[] => [...new Set(ports.map((port) => splitDotted(port).kit))];

type Met = PhaseReadings['needs'][number];

/** The same need in the end, or where its screen leaves, the same reading at a screen that comes. */
const inTheEnd = (need: Met, last: readonly Met[], isLater: (unit: string) => boolean): Met | undefined => {
  const met = last.filter(({ arrives }) => arrives);
  return (
    met.find((entry) => needKey(entry) === needKey(need)) ??
    met.find(({ reading, at }) => reading === need.reading && isLater(at))
  );
};

/** Each unit that comes later and takes over a need from others, with those others. */
const takenOver = (
  { kit }: BoatIndex,
  readings: readonly PhaseReadings[],
): ReadonlyMap<string, ReadonlySet<string>> => {
  const over = new Map<string, Set<string>>();
  const [first, last] = [readings[0]?.phase ?? 1, readings.at(-1)?.needs ?? []];
  const isLater = (id: string): boolean => {
    const unit = kit.get(id);
    return unit?.fate === 'comes' && (unit.phase ?? 1) > first;
  };
  for (const need of readings.slice(0, -1).flatMap(({ needs }) => needs.filter(({ arrives }) => arrives))) {
    const after = inTheEnd(need, last, isLater);
    const fresh = unitsOf(after?.by ?? []);
    const left = unitsOf(need.by).filter((unit) => !fresh.includes(unit));
    if (left.length === 0) continue;
    for (const unit of fresh.filter(isLater)) over.set(unit, new Set([...(over.get(unit) ?? []), ...left]));
  }
  return over;
};

/** A unit brought forward to the first phase, with what it takes over from going at once, or never bought. */
const forwardChange = (
  { kit }: BoatIndex,
  {
    unit,
    left,
    between,
    first,
  }: { unit: string; left: ReadonlySet<string>; between: readonly string[]; first: number },
): PhaseChange => {
  const nameOf = (id: string): string => kit.get(id)?.name ?? id;
  const phase = first === 1 ? {} : { phase: first };
  const goes = [...left].filter((id) => kit.get(id)?.fate === 'goes').sort(byCodeUnit);
  const never = [...left].filter((id) => between.includes(id)).sort(byCodeUnit);
  const without = never.length === 0 ? '' : `, and do without ${never.map(nameOf).join(' and ')}`;
  return {
    says: `Fit ${nameOf(unit)} in phase ${first} already${without}.`,
    edits: [
      { edit: 'set-fate', params: { unit, fate: 'comes', ...phase } },
      ...goes.map((id): EditCall => ({ edit: 'set-fate', params: { unit: id, fate: 'goes', ...phase } })),
      ...never.map((id): EditCall => ({ edit: 'remove-unit', params: { unit: id } })),
    ],
  };
};

/** Changes worth trying where phasing costs something: buses first, then units that take over from others, by id. */
export const phaseChanges = (
  index: BoatIndex,
  {
    buses,
    readings,
    between,
  }: {
    readonly buses: readonly Pick<BusEntry, 'id' | 'grade' | 'walk'>[];
    readonly readings: readonly PhaseReadings[];
    readonly between: readonly string[];
  },
): PhaseChange[] => {
  const first = readings[0]?.phase ?? 1;
  const units = [...takenOver(index, readings)].sort(([one], [other]) => byCodeUnit(one, other));
  return [
    ...pinChanges(index, buses, first),
    ...units.map(([unit, left]) => forwardChange(index, { unit, left, between, first })),
  ].slice(0, mostChanges);
};
