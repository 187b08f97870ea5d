import * as z from 'zod';

// The part of a plan that tells of the ways of a boat: how full they are, what goes up her masts, her networks.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const percent = z.number().meta({ unit: '%' });
const watts = z.number().meta({ unit: 'W' });

/**
 * What lies in a way with a bore when the work is done. `kept`: cables that stay; `lines`: new ones; `sharePct`: published
 * share for so many; `largestMm`: largest cable or moulded plug to be drawn in; `fitsAtMm`: bore that takes all of it.
 */
export const wayEntrySchema = z.strictObject({
  id,
  boreMm: z.number().meta({ unit: 'mm' }),
  kept: z.array(id),
  lines: z.array(id),
  fillPct: percent,
  sharePct: percent,
  /** least bore that keeps the published share */
  leastBoreMm: z.number().meta({ unit: 'mm' }),
  largestMm: z.exactOptional(z.number().meta({ unit: 'mm' })),
  verdict: z.enum(['fits', 'advice', 'doubt', 'refused']),
  reasons: z.array(z.enum(['fill', 'plug', 'two-cables', 'jam'])),
  fitsAtMm: z.exactOptional(z.number().meta({ unit: 'mm' })),
});
export type WayEntry = z.infer<typeof wayEntrySchema>;

const passageDoes = z.enum(['fit-plug', 'wider-hole', 'other-way']);

const money = z.int().meta({ unit: 'hundredths of the currency' });

/**
 * A line whose plug does not pass a way it takes, or would have taken, and what can be done: what the plan takes first, then
 * the cheapest. `takes` is absent where nothing can be done.
 */
export const passageEntrySchema = z.strictObject({
  way: id,
  line: id,
  takes: z.exactOptional(passageDoes),
  choices: z.array(
    z.strictObject({
      does: passageDoes,
      cost: money,
      wideMm: z.exactOptional(z.number().meta({ unit: 'mm' })),
      ways: z.exactOptional(z.array(id)),
    }),
  ),
});
export type PassageEntry = z.infer<typeof passageEntrySchema>;

/**
 * New cables in a mast: `stepKnown` where the boat file says how it is stepped; `breakAt` the dry place where they are
 * parted; `holds` how often they are held on the way up. Lengths at their longest.
 */
export const mastEntrySchema = z.strictObject({
  foot: id,
  top: id,
  stepped: z.enum(['deck', 'keel']),
  stepKnown: z.boolean(),
  heightM: metres,
  breakAt: z.exactOptional(id),
  lines: z.array(z.strictObject({ line: id, aloftM: metres, weightKg: z.number().meta({ unit: 'kg' }) })),
  weightKg: z.number().meta({ unit: 'kg' }),
  holds: z.int(),
});
export type MastEntry = z.infer<typeof mastEntrySchema>;

/** Units joined by Ethernet cables into one network, with its switches and routers. */
export const networkEntrySchema = z.strictObject({
  id,
  units: z.array(id),
  hubs: z.array(
    z.strictObject({
      kit: id,
      sockets: z.int(),
      free: z.int(),
      /** its cables as it stands, without tails, and from the place that takes least */
      cableM: z.exactOptional(metres),
      best: z.exactOptional(z.strictObject({ place: id, cableM: metres })),
      /** what the classes of the units on its sockets reserve, and what its sockets may give together */
      reservedW: z.exactOptional(watts),
      budgetW: z.exactOptional(watts),
    }),
  ),
  /** wifi that is one network with it */
  radios: z.array(id),
});
export type NetworkEntry = z.infer<typeof networkEntrySchema>;
