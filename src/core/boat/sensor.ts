import * as z from 'zod';
import { idSchema } from './ids.ts';

/** How a heading sensor finds north: by the Earth’s field, or by something no iron turns. */
export const northSchema = z.enum(['fluxgate', 'nine-axis', 'gyro', 'satellite']);

const voltsSchema = z.number().positive().max(1000).meta({ unit: 'V' });
const hertzPerKnotSchema = z.number().positive().max(1000).meta({ unit: 'Hz per knot' });

/** What an analog port gives, where it talks; what it takes, where it listens. */
export const signalSchema = z
  .strictObject({
    port: idSchema,
    frequenciesKHz: z.exactOptional(z.array(z.number().positive().max(5000).meta({ unit: 'kHz' })).min(1)),
    /** the most an element bears; what an input drives it with */
    powerW: z.exactOptional(z.number().positive().max(10_000).meta({ unit: 'W' })),
    /** what a head wants to be fed with; what an input feeds it with */
    feed: z.exactOptional(z.strictObject({ leastV: voltsSchema, mostV: voltsSchema })),
    pulses: z.exactOptional(z.strictObject({ least: hertzPerKnotSchema, most: hertzPerKnotSchema })),
    /** how a vane says its angle */
    vanes: z.exactOptional(z.array(z.enum(['sine-cosine', 'potentiometer', 'pulse-width'])).min(1)),
  })
  .meta({ id: 'Signal' });
export type Signal = z.infer<typeof signalSchema>;

/** What a sheet says of a sensor, or of the inputs that take one. */
export const sensorSchema = z
  .strictObject({
    north: z.exactOptional(northSchema),
    /** looks through the laminate instead of a hole */
    inHull: z.exactOptional(z.boolean()),
    signals: z.exactOptional(z.array(signalSchema).min(1)),
  })
  .meta({ id: 'Sensor' });
