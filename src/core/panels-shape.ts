import * as z from 'zod';
import { fuseFamilyIds } from './facts/fuses.ts';

// The part of a plan that tells of the source side: banks, converters, panels with their circuits, and what guards them.
const id = z.string();
const volts = z.number().meta({ unit: 'V' });
const amps = z.number().meta({ unit: 'A' });
const metres = z.number().meta({ unit: 'm' });
const percent = z.number().meta({ unit: '%' });
const millimetres = z.number().meta({ unit: 'mm' });

/**
 * The main fuse or breaker of a bank or panel. `farMm` along the wire from its source at its longest, beside `allowedMm`;
 * `neededA` the fault current it must break and what asks for that; `givenA` what it is printed to break, or its kind is.
 * `unknown` where the newer text wants a figure that the bank does not state, `no-figure` where nobody has said its cranking
 * amperes: the figure is the least it can be then. Behind a converter, which limits itself, it is 0. What the boat file does
 * not say is absent.
 */
export const mainEntrySchema = z.strictObject({
  kind: z.enum(['fuse', 'breaker', 'none', 'not-known']),
  family: z.exactOptional(z.enum(fuseFamilyIds)),
  ratingA: z.exactOptional(amps),
  farMm: z.exactOptional(millimetres),
  allowedMm: millimetres,
  sheathed: z.exactOptional(z.boolean()),
  neededA: amps,
  neededBy: z.enum(['table', 'stated', 'lithium', 'unknown', 'no-figure', 'limits-itself']),
  givenA: z.exactOptional(amps),
  breaks: z.enum(['yes', 'no', 'not-known']),
});
export type MainEntry = z.infer<typeof mainEntrySchema>;

/** What a group of units draws together at the lowest supply; `peakA` with the largest of the peaks upon what the others draw. */
const draw = { typicalA: amps, mostA: amps, peakA: z.exactOptional(amps) };

const chargerEntrySchema = z.strictObject({
  charger: id,
  kind: z.enum(['alternator', 'mains', 'solar', 'wind', 'dcdc']),
  ratedA: z.exactOptional(amps),
});

/**
 * One bank. `crankingA` of everything that stands in parallel with it (`with`, the banks); `serves` the panels and converters
 * that hang on it, near or far; `cautions` by id, to be shown where its work is.
 */
export const bankEntrySchema = z.strictObject({
  bank: id,
  nominalV: volts,
  capacityAh: z.number().meta({ unit: 'Ah' }),
  /** whether it turns a starter */
  cranks: z.boolean(),
  crankingA: z.exactOptional(amps),
  with: z.array(id),
  /** that its maker states, of it alone */
  shortCircuitA: z.exactOptional(amps),
  main: mainEntrySchema,
  isolator: z.exactOptional(z.boolean()),
  partedBy: z.exactOptional(z.enum(['switch', 'relay', 'diode', 'dcdc', 'apart', 'nothing'])),
  chargers: z.array(chargerEntrySchema),
  serves: z.array(id),
  cautions: z.array(id),
  ...draw,
});
export type BankEntry = z.infer<typeof bankEntrySchema>;

/** One converter: what feeds it, what it must give when everything on it draws, and what it takes then. */
export const converterEntrySchema = z.strictObject({
  converter: id,
  panel: z.exactOptional(id),
  circuit: z.exactOptional(id),
  inV: z.exactOptional(volts),
  outV: volts,
  ratedA: amps,
  isolated: z.boolean(),
  serves: z.array(id),
  ...draw,
  takesA: z.exactOptional(amps),
});
export type ConverterEntry = z.infer<typeof converterEntrySchema>;

const circuitEntrySchema = z.strictObject({
  circuit: id,
  name: z.exactOptional(z.string()),
  kind: z.enum(['breaker', 'slow-breaker', 'fuse', 'live-fuse']),
  ratingA: amps,
  /** what it feeds when the refit is done: ports, buses, panels, converters */
  feeds: z.array(id),
  free: z.boolean(),
  interruptA: z.exactOptional(amps),
  ...draw,
});
export type CircuitEntry = z.infer<typeof circuitEntrySchema>;

/**
 * The wire to a panel. `guardA` is what protects it from its source on, and `guardBy` what that is: the main of the bank, of
 * the panel itself, the circuit above it, the panel above it, or its converter. The drop is that at `dropAtA`, its main rating.
 */
const feederEntrySchema = z.strictObject({
  lengthM: metres,
  longestM: metres,
  areaMm2: z.exactOptional(z.number().meta({ unit: 'mm²' })),
  engineSpace: z.boolean(),
  ampacityA: z.exactOptional(amps),
  dropAtA: z.exactOptional(amps),
  dropV: z.exactOptional(volts),
  dropPct: z.exactOptional(percent),
});

export const guardBySchema = z.enum(['bank-main', 'panel-main', 'circuit', 'panel-above', 'converter']);

/** Circuits wanted in one phase beside those free; `short` is absent where nobody has counted the free places. */
const roomSchema = z.strictObject({
  phase: z.int(),
  free: z.int(),
  /** ports, buses and converters that no circuit names */
  wanted: z.array(id),
  short: z.exactOptional(z.int()),
});

/**
 * One panel. `from` what it hangs on, `source` the bank or converter in the end; `faultA` the current of a short at its bars;
 * `branchA` what a circuit of it must break. `takes`: a fuse block with so many circuits, and the circuit it wants here.
 */
export const panelEntrySchema = z.strictObject({
  panel: id,
  from: id,
  source: id,
  /** the banks it draws on in the end, through converters too */
  banks: z.array(id),
  nominalV: volts,
  /** taken from between the batteries of its bank */
  tap: z.exactOptional(z.boolean()),
  feeder: z.exactOptional(feederEntrySchema),
  guardA: z.exactOptional(amps),
  guardBy: z.exactOptional(guardBySchema),
  main: mainEntrySchema,
  faultA: z.exactOptional(amps),
  branchA: amps,
  circuits: z.array(circuitEntrySchema),
  /** places with nothing in them yet */
  freeWays: z.exactOptional(z.int()),
  room: z.array(roomSchema),
  takes: z.exactOptional(z.strictObject({ circuits: z.int(), feedA: z.exactOptional(amps) })),
  ...draw,
});
export type PanelEntry = z.infer<typeof panelEntrySchema>;

/** What wants a circuit and no panel aboard has its volts. */
const unplacedSchema = z.strictObject({ phase: z.int(), wanted: z.array(id) });

/** What a plan says of the source side. `mains`: ways that pass mains wiring, and chargers on it, only to keep away from. */
export const panelsEntriesSchema = {
  banks: z.array(bankEntrySchema),
  converters: z.array(converterEntrySchema),
  panels: z.array(panelEntrySchema),
  noPanel: z.array(unplacedSchema),
  /** the place where all negatives meet */
  negativeAt: z.exactOptional(id),
  mains: z.strictObject({ chargers: z.array(id), ways: z.array(id) }),
};
