import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { DayBank, DayPhase, Taken } from '../energy-shape.ts';
import { bankEndurance } from './bank-endurance.ts';
import type { DayDraw } from './day-draws.ts';
import { hoursIn, type Reckoned } from './day-hours.ts';
import type { DayOnBoat } from './days-of-boat.ts';
import { unchargedParts } from './uncharged-parts.ts';
import { unitDay } from './unit-day.ts';

const wholeDay = 24;

/** What one unit takes in one phase, beside what is known of it. */
export interface UnitTaken extends Taken {
  readonly kit: string;
  readonly kind: string;
  readonly known: DayDraw['known'];
}

/** One kind of day on one boat. */
export interface OnBoat {
  readonly index: BoatIndex;
  readonly day: DayOnBoat;
  /** counts the Ah of what no bank feeds, and of the whole boat */
  readonly atV: number;
}

const takenBy = ({ index, day }: OnBoat, draw: DayDraw, reckoned: Reckoned): ReturnType<typeof unitDay> =>
  unitDay(draw, {
    parts: day.parts,
    uncharged: unchargedParts(index, draw.fed?.bank.id),
    reckoned,
    ownHours: day.ownHours(draw.kit, draw.kind),
  });

/**
 * What every unit takes in a day, all its ports together, sorted by unit. Where
 * the ports of one unit hang on two banks, each is an entry.
 */
export const unitsTaken = (onBoat: OnBoat, draws: readonly DayDraw[]): UnitTaken[] => {
  const taken = new Map<string, UnitTaken>();
  for (const draw of draws) {
    const { hours, wh, fromBankWh } = takenBy(onBoat, draw, 'usual');
    const bank = draw.fed?.bank;
    const key = `${draw.kit} ${bank?.id ?? ''}`;
    const before = taken.get(key);
    taken.set(key, {
      kit: draw.kit,
      kind: draw.kind,
      known: before?.known ?? draw.known,
      hours: Math.max(hours, before?.hours ?? 0),
      wh: wh + (before?.wh ?? 0),
      ah: wh / (bank?.nominalV ?? onBoat.atV) + (before?.ah ?? 0),
      fromBankWh: fromBankWh + (before?.fromBankWh ?? 0),
      ...(bank === undefined ? {} : { bank: bank.id }),
    });
  }
  return [...taken.values()]
    .filter(({ wh }) => wh > 0)
    .sort((one, other) => byCodeUnit(one.kit, other.kit) || byCodeUnit(one.bank ?? '', other.bank ?? ''));
};

const sumOf = <Entry>(list: readonly Entry[], part: (entry: Entry) => number): number =>
  list.reduce((sum, entry) => sum + part(entry), 0);

/** What every bank gives in a day of one phase, and how long it lasts so; a bank of which nothing is taken is left out. */
export const banksGive = ({ index, day }: OnBoat, phase: number, units: readonly UnitTaken[]): DayBank[] =>
  [...index.banks.values()]
    .sort((one, other) => byCodeUnit(one.id, other.id))
    .flatMap((bank) => {
      const its = units.filter((unit) => unit.bank === bank.id);
      if (its.length === 0) return [];
      const ah = sumOf(its, (unit) => unit.ah);
      const { usableAh, hours } = bankEndurance(index.boat, bank, ah / wholeDay);
      return [
        {
          phase,
          bank: bank.id,
          wh: sumOf(its, (unit) => unit.wh),
          ah,
          unchargedH: hoursIn(day.parts, unchargedParts(index, bank.id)),
          fromBankAh: sumOf(its, (unit) => unit.fromBankWh) / bank.nominalV,
          usableAh,
          ...(hours === undefined ? {} : { enduranceH: hours }),
        },
      ];
    });

/** All a day takes in one phase, and what it might take by the ends of the usual hours. */
export const phaseTakes = (
  onBoat: OnBoat,
  { phase, draws }: { readonly phase: number; readonly draws: readonly DayDraw[] },
  units: readonly UnitTaken[],
): DayPhase => {
  const wh = sumOf(units, (unit) => unit.wh);
  const unfedWh = sumOf(
    units.filter(({ bank }) => bank === undefined),
    (unit) => unit.wh,
  );
  return {
    phase,
    wh,
    ah: wh / onBoat.atV,
    leastWh: sumOf(draws, (draw) => takenBy(onBoat, draw, 'least').wh),
    mostWh: sumOf(draws, (draw) => takenBy(onBoat, draw, 'most').wh),
    ...(unfedWh > 0 ? { unfedWh } : {}),
  };
};

/** How much longer a unit's bank would last with it off all day; undefined where it hangs on none, or carries nothing else. */
export const hoursSaved = (index: BoatIndex, banks: readonly DayBank[], unit: UnitTaken): number | undefined => {
  const bank = index.banks.get(unit.bank ?? '');
  const given = banks.find((entry) => entry.bank === unit.bank);
  if (bank === undefined || given?.enduranceH === undefined) return undefined;
  const left = bankEndurance(index.boat, bank, Math.max(0, given.ah - unit.ah) / wholeDay).hours;
  return left === undefined || given.ah - unit.ah < 1e-9 ? undefined : left - given.enduranceH;
};
