import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { lastPhase } from './boat/phase.ts';
import { type DrawsAboard, drawsAboard } from './energy/day-draws.ts';
import { type DayOnBoat, daysOfBoat } from './energy/days-of-boat.ts';
import { banksGive, hoursSaved, phaseTakes, type UnitTaken, unitsTaken } from './energy/phase-day.ts';
import type { DayBank, DayUnit, EnergyDay, Taken, UnknownDraw } from './energy-shape.ts';
import { supplyDefaults } from './facts/defaults.ts';
import type { PlanDraft, StandingJoin } from './plan-shape.ts';

/** What the energy of a day is planned from. */
export interface EnergyInput {
  readonly index: BoatIndex;
  readonly joinsAt: (phase: number) => readonly StandingJoin[];
}

export type EnergyParts = Pick<PlanDraft, 'energy' | 'unknownDraws'>;

/** Volts the Ah of the whole boat are counted at: those of its largest house bank. */
const countedAtV = (index: BoatIndex): number => {
  const banks = [...index.banks.values()].sort(
    (one, other) =>
      Number(one.for === 'start') - Number(other.for === 'start') ||
      other.capacityAh * other.nominalV - one.capacityAh * one.nominalV ||
      byCodeUnit(one.id, other.id),
  );
  return banks[0]?.nominalV ?? supplyDefaults.nominalV.value;
};

const takenOf = ({ hours, wh, ah, fromBankWh, bank }: UnitTaken): Taken => ({
  hours,
  wh,
  ah,
  fromBankWh,
  ...(bank === undefined ? {} : { bank }),
});

interface Sides {
  readonly index: BoatIndex;
  readonly before: readonly UnitTaken[];
  readonly after: readonly UnitTaken[];
  readonly banksAfter: readonly DayBank[];
}

/** Every unit of a day, before the refit and after it. */
const byKit = ({ index, before, after, banksAfter }: Sides): DayUnit[] => {
  const keyOf = ({ kit, bank }: UnitTaken): string => `${kit} ${bank ?? ''}`;
  const sides = new Map<string, { before?: UnitTaken; after?: UnitTaken }>();
  for (const unit of before) sides.set(keyOf(unit), { before: unit });
  for (const unit of after) sides.set(keyOf(unit), { ...sides.get(keyOf(unit)), after: unit });
  return [...sides]
    .sort(([one], [other]) => byCodeUnit(one, other))
    .flatMap(([, side]) => {
      const unit = side.after ?? side.before;
      if (unit === undefined) return [];
      const savesH = side.after === undefined ? undefined : hoursSaved(index, banksAfter, side.after);
      return [
        {
          kit: unit.kit,
          known: unit.known,
          ...(unit.kind === 'satellite-terminal' ? { internet: true as const } : {}),
          ...(side.before === undefined ? {} : { before: takenOf(side.before) }),
          ...(side.after === undefined ? {} : { after: takenOf(side.after) }),
          ...(savesH === undefined ? {} : { savesH }),
        },
      ];
    });
};

const energyDay = (index: BoatIndex, aboard: readonly DrawsAboard[], day: DayOnBoat): EnergyDay => {
  const atV = countedAtV(index);
  const onBoat = { index, day, atV };
  const units = aboard.map(({ draws }) => unitsTaken(onBoat, draws));
  const phases = aboard.map(({ draws }, phase) => phaseTakes(onBoat, { phase, draws }, units[phase] ?? []));
  const banks = units.map((taken, phase) => banksGive(onBoat, phase, taken));
  const [before, after] = [phases[0], phases.at(-1)];
  return {
    when: day.when,
    ...(day.like === undefined ? {} : { like: day.like }),
    parts: day.parts,
    chargedAfter: day.chargedAfter,
    atV,
    ahPerDayBefore: before?.ah ?? 0,
    ahPerDayAfter: after?.ah ?? 0,
    whPerDayBefore: before?.wh ?? 0,
    whPerDayAfter: after?.wh ?? 0,
    phases,
    byKit: byKit({ index, before: units[0] ?? [], after: units.at(-1) ?? [], banksAfter: banks.at(-1) ?? [] }),
    banks: banks.flat(),
  };
};

const unknownOf = (before: readonly string[], after: readonly string[]): UnknownDraw[] =>
  [...new Set([...before, ...after])]
    .sort(byCodeUnit)
    .map((kit) => ({ kit, before: before.includes(kit), after: after.includes(kit) }));

/**
 * What a day takes out of the banks, before the refit and in each phase: at anchor, under way, alongside, and the person's
 * own days; by unit, with how long each bank lasts. A unit of unknown draw is named and in no sum.
 */
export const planEnergy = ({ index, joinsAt }: EnergyInput): EnergyParts => {
  const phases = Array.from({ length: lastPhase(index.boat) + 1 }, (_, phase) => phase);
  const aboard = phases.map((phase) => drawsAboard(index, phase, joinsAt(phase)));
  return {
    energy: daysOfBoat(index.boat).map((day) => energyDay(index, aboard, day)),
    unknownDraws: unknownOf(aboard[0]?.unknown ?? [], aboard.at(-1)?.unknown ?? []),
  };
};
