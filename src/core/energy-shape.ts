import * as z from 'zod';
import { standardDaySchema } from './boat/own-day.ts';

// The part of a plan that tells what a day takes out of the banks.
const id = z.string();
const hours = z.number().meta({ unit: 'h' });
const wattHours = z.number().meta({ unit: 'Wh' });
const ampHours = z.number().meta({ unit: 'Ah' });

/** Hours of a day the boat lies at anchor, sails, runs under engine, lies alongside. */
const partsSchema = z.strictObject({ anchor: hours, sailing: hours, motoring: hours, alongside: hours });

/** What one unit takes in a day; Ah at the volts of its bank. `fromBankWh`: in the hours in which nothing charges. */
const takenSchema = z.strictObject({
  hours,
  wh: wattHours,
  ah: ampHours,
  fromBankWh: wattHours,
  /** absent where the file does not say what feeds it */
  bank: z.exactOptional(id),
});
export type Taken = z.infer<typeof takenSchema>;

/**
 * A unit in a day: before the refit, after it, or both. `hours`: how long it does what it is for. What takes nothing that
 * day is left out.
 */
const dayUnitSchema = z.strictObject({
  kit: id,
  /** what is known of its draw: its sheet, or only its load number on the bus, which is the most it may draw */
  known: z.enum(['sheet', 'load-number']),
  /** a satellite internet terminal, often the largest single draw of a boat */
  internet: z.exactOptional(z.literal(true)),
  before: z.exactOptional(takenSchema),
  after: z.exactOptional(takenSchema),
  /** with it off all day its bank would last so much longer after the refit; absent where the bank would carry nothing else */
  savesH: z.exactOptional(hours),
});
export type DayUnit = z.infer<typeof dayUnitSchema>;

/**
 * A bank in a day of one phase. `usableAh`: what it gives at the mean current of that day, of the share that is used; `unchargedH`,
 * `fromBankAh`: hours of that day in which neither engine nor shore power charges it, and what it gives in them;
 * `enduranceH`: how long that lasts with nothing charging, absent where nothing draws.
 */
const dayBankSchema = z.strictObject({
  phase: z.int(),
  bank: id,
  wh: wattHours,
  ah: ampHours,
  unchargedH: hours,
  fromBankAh: ampHours,
  usableAh: ampHours,
  enduranceH: z.exactOptional(hours),
});
export type DayBank = z.infer<typeof dayBankSchema>;

/** All a day takes in one phase. `leastWh`, `mostWh`: by the ends of the hours that common practice gives. */
const dayPhaseSchema = z.strictObject({
  phase: z.int(),
  wh: wattHours,
  ah: ampHours,
  leastWh: wattHours,
  mostWh: wattHours,
  /** taken by units of which the file does not say what feeds them */
  unfedWh: z.exactOptional(wattHours),
});
export type DayPhase = z.infer<typeof dayPhaseSchema>;

/** One kind of day, before the refit (phase 0) and in each phase after it. Whole-boat Ah are counted at `atV`. */
export const energyDaySchema = z.strictObject({
  /** a standard day, or the id of one of the person's own */
  when: id,
  /** the standard day that one of the person's own is like */
  like: z.exactOptional(standardDaySchema),
  parts: partsSchema,
  /** so many such days follow each other before the bank is charged */
  chargedAfter: z.number().meta({ unit: 'days' }),
  atV: z.number().meta({ unit: 'V' }),
  ahPerDayBefore: ampHours,
  ahPerDayAfter: ampHours,
  whPerDayBefore: wattHours,
  whPerDayAfter: wattHours,
  phases: z.array(dayPhaseSchema),
  byKit: z.array(dayUnitSchema),
  banks: z.array(dayBankSchema),
});
export type EnergyDay = z.infer<typeof energyDaySchema>;

/** A unit that takes power and of which nobody says how much: it is in no sum. */
const unknownDrawSchema = z.strictObject({ kit: id, before: z.boolean(), after: z.boolean() });
export type UnknownDraw = z.infer<typeof unknownDrawSchema>;

/** What a plan says of the energy of a day. */
export const energyEntriesSchema = {
  energy: z.array(energyDaySchema),
  unknownDraws: z.array(unknownDrawSchema),
};
