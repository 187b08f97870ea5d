import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EnergyDay, Plan } from '../../core/plan-shape.ts';
import { ampHours, lasting } from '../../core/rules/energy/day-words.ts';
import { dayName, partsWords, wattHours } from './day-name.ts';

type DayBank = EnergyDay['banks'][number];

/** What one unit takes in a day, as a table shows it; empty where it takes nothing. */
export interface EnergyUnitRow {
  readonly kit: string;
  readonly name: string;
  readonly hours: string;
  readonly beforeWh: string;
  readonly beforeAh: string;
  readonly afterWh: string;
  readonly afterAh: string;
  /** how much longer its bank lasts with it off */
  readonly saves: string;
  readonly savesH: string;
  /** it is a satellite terminal, or its draw is only known by its load number */
  readonly remark?: string;
}

/** One kind of day, as lists and tables show it. */
export interface EnergyDayRows {
  readonly when: string;
  readonly name: string;
  /** what it takes before and after, for example "16 Ah before, 34 Ah after" */
  readonly takes: string;
  readonly takesWh: string;
  /** what it is made of, how sure it is, what each bank gives */
  readonly says: readonly string[];
  readonly units: readonly EnergyUnitRow[];
}

const lastPhaseOf = ({ phases }: EnergyDay): number => Math.max(...phases.map(({ phase }) => phase));

/** What carries the part that a bank does not give. */
const carried = ({ parts }: EnergyDay, isAll: boolean): string => {
  if (isAll) return 'with nothing charging';
  if (parts.alongside > 0) return 'the charger on shore power carries the rest; should that fail,';
  return parts.motoring > 0 ? 'the engine carries the rest; with nothing charging' : 'with nothing charging';
};

/** What a bank gives in a day after the refit, and how long it lasts so, beside how long it did before. */
const bankWords = (boat: Boat, day: EnergyDay, given: DayBank): string => {
  const bank = boat.supply.banks.find(({ id }) => id === given.bank);
  const was = day.banks.find(({ phase, bank: id }) => phase === 0 && id === given.bank)?.enduranceH;
  const lasts = given.enduranceH === undefined ? '' : ` it lasts ${lasting(given.enduranceH)}`;
  const before = was === undefined ? ', and had nothing to give before' : `, and ${lasting(was)} before`;
  const gives =
    given.fromBankAh > given.ah - 0.05
      ? `all ${ampHours(given.ah)}`
      : `${ampHours(given.fromBankAh)} of ${ampHours(given.ah)}`;
  return `The bank ${given.bank} gives ${gives}; ${carried(day, gives.startsWith('all'))}${lasts}${before}. ${ampHours(given.usableAh)} of its ${bank?.capacityAh ?? 0} Ah are for use.`;
};

const rangeWords = (day: EnergyDay): string[] => {
  const phase = day.phases.at(-1);
  if (phase === undefined || phase.mostWh - phase.leastWh < 1) return [];
  return [`By the usual range of hours it is ${wattHours(phase.leastWh)} to ${wattHours(phase.mostWh)}.`];
};

const phaseWords = (day: EnergyDay): string[] => {
  const between = day.phases.filter(({ phase }) => phase > 0 && phase < lastPhaseOf(day));
  return between.map(({ phase, ah, wh }) => `With phase ${phase} done it takes ${ampHours(ah)}, ${wattHours(wh)}.`);
};

const unfedWords = (day: EnergyDay): string[] => {
  const wh = day.phases.at(-1)?.unfedWh;
  return wh === undefined ? [] : [`${wattHours(wh)} of it go to units that no circuit feeds yet, and are in no bank.`];
};

const remarkOf = ({ internet, known }: EnergyDay['byKit'][number]): { remark?: string } => {
  if (internet === true) return { remark: 'satellite internet' };
  return known === 'load-number' ? { remark: 'at most, by its load number' } : {};
};

const unitRow = (boat: Boat, unit: EnergyDay['byKit'][number]): EnergyUnitRow => {
  const { kit, before, after, savesH } = unit;
  const figure = (value: number | undefined, digits: number): string => value?.toFixed(digits) ?? '';
  return {
    kit,
    name: boat.kit.find(({ id }) => id === kit)?.name ?? kit,
    hours: figure((after ?? before)?.hours, 1),
    beforeWh: figure(before?.wh, 0),
    beforeAh: figure(before?.ah, 1),
    afterWh: figure(after?.wh, 0),
    afterAh: figure(after?.ah, 1),
    saves: savesH === undefined ? '' : lasting(savesH),
    savesH: figure(savesH, 1),
    ...remarkOf(unit),
  };
};

const mostWh = ({ before, after }: EnergyDay['byKit'][number]): number => Math.max(after?.wh ?? 0, before?.wh ?? 0);

/** Charge in words, where there may be none. */
export const orNothing = (ah: number): string => (ah < 0.05 ? 'nothing' : ampHours(ah));

/** The volts that Ah are counted at, where more banks than one give them. */
export const countedAt = ({ banks, atV }: EnergyDay): string =>
  new Set(banks.map(({ bank }) => bank)).size > 1 ? ` at ${atV} V` : '';

const takesOf = (day: EnergyDay): string =>
  `${orNothing(day.ahPerDayBefore)} before, ${orNothing(day.ahPerDayAfter)} after${countedAt(day)}`;

/** Every kind of day of a plan with its sums, its banks and its units, the largest draw first. */
export const energyDays = (boat: Boat, plan: Pick<Plan, 'energy'>): EnergyDayRows[] =>
  plan.energy.map((day) => ({
    when: day.when,
    name: dayName(boat, day),
    takes: takesOf(day),
    takesWh: `${wattHours(day.whPerDayBefore)} before, ${wattHours(day.whPerDayAfter)} after`,
    says: [
      `${partsWords(day)}.${day.chargedAfter === 1 ? '' : ` ${day.chargedAfter} such days follow each other before the bank is charged.`}`,
      ...day.banks.filter(({ phase }) => phase === lastPhaseOf(day)).map((given) => bankWords(boat, day, given)),
      ...phaseWords(day),
      ...rangeWords(day),
      ...unfedWords(day),
    ],
    units: [...day.byKit].sort((one, other) => mostWh(other) - mostWh(one)).map((unit) => unitRow(boat, unit)),
  }));

/** The largest rows of a table, and the others as one row where there are more. */
export const largestRows = (units: readonly EnergyUnitRow[], most: number): EnergyUnitRow[] => {
  const others = units.slice(most - 1);
  if (others.length < 2) return [...units];
  const sum = (part: (row: EnergyUnitRow) => string, digits: number): string =>
    others.reduce((all, row) => all + Number(part(row)), 0).toFixed(digits);
  return [
    ...units.slice(0, most - 1),
    {
      kit: '',
      name: `${others.length} smaller units together`,
      hours: '',
      beforeWh: sum(({ beforeWh }) => beforeWh, 0),
      beforeAh: sum(({ beforeAh }) => beforeAh, 1),
      afterWh: sum(({ afterWh }) => afterWh, 0),
      afterAh: sum(({ afterAh }) => afterAh, 1),
      saves: '',
      savesH: '',
    },
  ];
};
