import * as z from 'zod';

/** What an antenna is for: voice and AIS between ships, position, short wave. */
export const aerialUses = ['voice', 'ais', 'position', 'short-wave'] as const;

/** What the sheet of an antenna says of it as one. */
export const antennaSchema = z.strictObject({
  for: z.array(z.enum(aerialUses)).min(1),
  gainDbi: z.exactOptional(z.number().min(-20).max(40).meta({ unit: 'dBi' })),
  /** from its foot to its tip */
  lengthM: z.exactOptional(z.number().min(0).max(20).meta({ unit: 'm' })),
});

/** What a radio sends. */
export const transmitsSchema = z.strictObject({
  powerW: z.number().positive().max(2000).meta({ unit: 'W' }),
  /** where it sends; of a band the highest */
  mhz: z.number().positive().max(10_000).meta({ unit: 'MHz' }),
  /** share of six minutes in which it sends at most */
  dutyPct: z.exactOptional(z.number().positive().max(100).meta({ unit: '%' })),
});

/** What the sheet of a radar says of its scanner. */
export const scannerSchema = z.strictObject({
  kind: z.enum(['dome', 'open-array']),
  sends: z.enum(['pulses', 'solid-state']),
  /** of a pulse radar */
  peakKw: z.exactOptional(z.number().positive().max(100).meta({ unit: 'kW' })),
  /** half-power width of its beam, up and down together */
  verticalBeamDeg: z.exactOptional(z.number().positive().max(90).meta({ unit: '°' })),
  /** across the dome, or the circle in which the array turns */
  acrossM: z.exactOptional(z.number().positive().max(10).meta({ unit: 'm' })),
  leastRangeM: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'm' })),
  /** how far people keep off its beam, as its plate or manual says */
  peopleM: z.exactOptional(z.number().min(0).max(100).meta({ unit: 'm' })),
});
export type Scanner = z.infer<typeof scannerSchema>;
