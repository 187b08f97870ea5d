import * as z from 'zod';
import { readingIds } from '../facts/reading-ids.ts';
import { antennaSchema, scannerSchema, transmitsSchema } from './aerial.ts';
import { driveOutputSchema, driveSchema, rudderKindSchema } from './drive.ts';
import { earthingSchema } from './earthing.ts';
import { idSchema } from './ids.ts';
import { lightingSchema } from './lighting.ts';
import { measureSchema } from './measure.ts';
import { screwSchema } from './opening.ts';
import { sheetRemoteSchema } from './remote.ts';
import { sensorSchema } from './sensor.ts';

export const protocols = [
  'nmea2000',
  'nmea0183',
  'ethernet',
  'single-wire',
  'analog',
  'engine-can',
  'modbus',
  'coax',
  'video',
  'audio',
  'usb',
  'wifi',
  'dc',
] as const;
export const protocolSchema = z.enum(protocols);
export type Protocol = z.infer<typeof protocolSchema>;

export const readingSchema = z.enum(readingIds).meta({ id: 'Reading' });
const instanceSchema = z.int().min(0).max(252);
const everyMsSchema = z.number().positive().max(86_400_000).meta({ unit: 'ms' });
export const referenceSchema = z.enum(['true', 'magnetic', 'water', 'ground', 'keel', 'waterline', 'transducer']);
export type Reference = z.infer<typeof referenceSchema>;

const form = {
  pgn: z.exactOptional(z.int().min(0).max(131_071)),
  sentence: z.exactOptional(
    z.string().regex(/^[A-Z]{3}$/, 'A sentence is named by its three letters, for example RMC.'),
  ),
  reading: z.exactOptional(readingSchema),
  instance: z.exactOptional(instanceSchema),
};
const exactlyOneForm = (said: { pgn?: number; sentence?: string; reading?: string }): boolean =>
  [said.pgn, said.sentence, said.reading].filter((part) => part !== undefined).length === 1;
const oneForm = { message: 'Give exactly one of pgn, sentence, reading.' };

/** One thing a port sends: a PGN, a sentence or a bare reading. */
export const sendsSchema = z
  .strictObject({ ...form, everyMs: z.exactOptional(everyMsSchema) })
  .refine(exactlyOneForm, oneForm)
  .meta({ id: 'Sends' });
export type Sends = z.infer<typeof sendsSchema>;

/** One thing a port understands, and how it wants it. */
export const hearsSchema = z
  .strictObject({
    ...form,
    wants: z.exactOptional(
      z.strictObject({
        everyMs: z.exactOptional(everyMsSchema),
        reference: z.exactOptional(referenceSchema),
        withOffset: z.exactOptional(z.boolean()),
      }),
    ),
  })
  .refine(exactlyOneForm, oneForm)
  .meta({ id: 'Hears' });
export type Hears = z.infer<typeof hearsSchema>;

export const portSchema = z
  .strictObject({
    id: idSchema,
    onPlug: z.exactOptional(idSchema),
    protocol: protocolSchema,
    dialect: z.exactOptional(
      z.string().regex(/^maker-[a-z]\/([0-9]+|unknown)$/, 'A dialect is written maker-a/2, or maker-a/unknown.'),
    ),
    line: z.exactOptional(z.enum(['differential', 'single-ended', 'rs232', 'rs485'])),
    isolated: z.exactOptional(z.boolean()),
    baud: z.exactOptional(z.int().positive().max(10_000_000).meta({ unit: 'bit/s' })),
    role: z.enum(['talk', 'listen', 'both']),
    /** the socket gives power over the network cable, by 802.3af, at or bt */
    poe: z.exactOptional(z.enum(['af', 'at', 'bt'])),
    len: z.exactOptional(z.int().min(0).max(255).meta({ unit: '50 mA' })),
    sends: z.exactOptional(z.array(sendsSchema)),
    hears: z.exactOptional(z.array(hearsSchema)),
  })
  .meta({ id: 'Port' });
export type Port = z.infer<typeof portSchema>;

const conductorSchema = z.strictObject({
  label: z.string().min(1).max(40),
  colour: z.string().min(1).max(40),
  ports: z.array(idSchema),
  role: z.enum([
    'A',
    'B',
    'signal',
    'common',
    'plus',
    'minus',
    'shield',
    'can-high',
    'can-low',
    'centre',
    'excite',
    'spare',
  ]),
});

export const genderSchema = z.enum(['male', 'female', 'none']);

export const plugSchema = z
  .strictObject({
    id: idSchema,
    connector: z.string().min(1).max(60),
    gender: genderSchema,
    fixedLead: z.exactOptional(measureSchema),
    mayCut: z.exactOptional(z.boolean()),
    mayExtend: z.exactOptional(z.boolean()),
    conductors: z.exactOptional(z.array(conductorSchema)),
  })
  .meta({ id: 'Plug' });
export type Plug = z.infer<typeof plugSchema>;

const carriesSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(instanceSchema),
  asInstance: z.exactOptional(instanceSchema),
  loses: z.exactOptional(z.array(z.enum(['instance', 'reference', 'offset', 'rate']))),
});

export const turnSchema = z
  .strictObject({ fromPort: idSchema, toPort: idSchema, carries: z.array(carriesSchema) })
  .meta({ id: 'Turn' });
export type Turn = z.infer<typeof turnSchema>;

export const powerSchema = z
  .strictObject({
    port: idSchema,
    typical: z.number().min(0).max(100_000).meta({ unit: 'A or W, as unit says' }),
    max: z.number().min(0).max(100_000).meta({ unit: 'A or W, as unit says' }),
    /** for moments only: sending, starting, a motor against its stop */
    peak: z.exactOptional(z.number().min(0).max(100_000).meta({ unit: 'A or W, as unit says' })),
    unit: z.enum(['A', 'W']),
    behaves: z.enum(['current', 'power']),
    atV: z.exactOptional(z.number().positive().max(1000).meta({ unit: 'V' })),
    minV: z.number().min(0).max(1000).meta({ unit: 'V' }),
    maxV: z.number().positive().max(1000).meta({ unit: 'V' }),
    fuseA: z.exactOptional(z.number().positive().max(1000).meta({ unit: 'A' })),
  })
  .meta({ id: 'Power' });
export type Power = z.infer<typeof powerSchema>;

const boxSizes = {
  widthMm: z.number().positive().max(10_000).meta({ unit: 'mm' }),
  heightMm: z.number().positive().max(10_000).meta({ unit: 'mm' }),
  depthMm: z.exactOptional(z.number().positive().max(10_000).meta({ unit: 'mm' })),
  /** absent: a rectangle */
  shape: z.exactOptional(z.enum(['rectangle', 'round'])),
  /** radius of the corners of a rectangle */
  cornerMm: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'mm' })),
};
const boxSizeSchema = z.strictObject(boxSizes);

/** What is cut for a unit; its screws from the middle of it, absent where they are not known. */
const cutoutSchema = z.strictObject({ ...boxSizes, screws: z.exactOptional(z.array(screwSchema).max(40)) });

/** What the maker's sheet says of one kind of unit; a boat file holds a copy of each sheet it uses. */
export const sheetSchema = z
  .strictObject({
    id: idSchema,
    name: z.string().min(1).max(120),
    kind: idSchema,
    source: z.enum(['typical', 'manual', 'recording']),
    sourceNote: z.exactOptional(z.string().min(1).max(400)),
    plugs: z.array(plugSchema),
    ports: z.array(portSchema),
    together: z.exactOptional(z.array(z.array(idSchema).min(2))),
    turns: z.exactOptional(z.array(turnSchema)),
    inLine: z.exactOptional(z.tuple([idSchema, idSchema])),
    terminator: z.exactOptional(z.boolean()),
    power: z.exactOptional(z.array(powerSchema)),
    /** runs on a battery inside it when its feed is gone */
    ownBattery: z.exactOptional(z.boolean()),
    drive: z.exactOptional(driveSchema),
    driveOutput: z.exactOptional(driveOutputSchema),
    /** what a rudder sensor gives; on a drive, that of the sensor built into it */
    rudderSensor: z.exactOptional(rudderKindSchema),
    body: z.exactOptional(boxSizeSchema),
    cutout: z.exactOptional(cutoutSchema),
    /** room behind the body for its plugs, with the bend of the cables its maker has in mind */
    plugsMm: z.exactOptional(z.number().positive().max(1000).meta({ unit: 'mm' })),
    /** of what is looked at: how it is worked, and how high its smallest letters that matter are */
    face: z.exactOptional(
      z.strictObject({
        worked: z.exactOptional(z.enum(['keys', 'touch', 'both'])),
        letterMm: z.exactOptional(z.number().positive().max(500).meta({ unit: 'mm' })),
      }),
    ),
    compassSafe: z.exactOptional(measureSchema),
    /** of a sensor, or of what takes a bare one */
    sensor: z.exactOptional(sensorSchema),
    antenna: z.exactOptional(antennaSchema),
    /** of a radio */
    transmits: z.exactOptional(transmitsSchema),
    /** of a radar */
    scanner: z.exactOptional(scannerSchema),
    earthing: z.exactOptional(earthingSchema),
    /** what can be done to it by wifi or over the network */
    remote: z.exactOptional(sheetRemoteSchema),
    /** of a screen: how it is dimmed and its alarm silenced */
    lighting: z.exactOptional(lightingSchema),
    ipCode: z.exactOptional(
      z.string().regex(/^IP[0-6X][0-9X](\/IP[0-6X][0-9X])*$/, 'An IP code is written IPX6 or IP67.'),
    ),
  })
  .meta({ id: 'Sheet' });
export type Sheet = z.infer<typeof sheetSchema>;

/** One change to a sheet for one unit, written by path: ports.n2k.len; an absent value takes the entry out. */
export const changeSchema = z.strictObject({
  path: z
    .string()
    .regex(/^[a-zA-Z0-9-]+(\.[a-zA-Z0-9-]+)*$/, 'A path is names joined by dots, for example ports.n2k.len.'),
  // reason: any JSON; a type that holds itself is too deep for the compiler where a whole boat is drafted
  value: z.exactOptional(z.json() as z.ZodType<unknown>),
  how: z.enum(['manual', 'recording', 'seen']),
});
