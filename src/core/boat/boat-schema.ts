import * as z from 'zod';
import { aboardSchema } from './aboard.ts';
import { atSeaSchema } from './at-sea.ts';
import { chosenSourceSchema } from './chosen-source.ts';
import { cableCoaxSchema, coaxKindSchema } from './coax.ts';
import { daySchema } from './day.ts';
import { fittedSchema } from './fitted.ts';
import { dottedIdSchema, idSchema, limitIdSchema, lineIdSchema } from './ids.ts';
import { lineKinds } from './line-kinds.ts';
import { measureSchema } from './measure.ts';
import { measuresSchema } from './measures.ts';
import { openingSchema } from './opening.ts';
import { ownDaySchema } from './own-day.ts';
import { photosSchema } from './photo.ts';
import { proofSchema } from './proved.ts';
import { quoteSchema } from './quote.ts';
import { kitRemoteSchema } from './remote.ts';
import { revisionsSchema } from './revision.ts';
import { changeSchema, genderSchema, protocolSchema, readingSchema, referenceSchema, sheetSchema } from './sheet.ts';
import { shipPapersSchema } from './ship-papers.ts';
import { kitSiteSchema, underwaterSchema } from './site.ts';
import { steeringSchema } from './steering.ts';
import { supplySchema } from './supply.ts';
import { underlaysSchema } from './underlay.ts';
import { watersSchema } from './waters.ts';
import { workSchema } from './work.ts';

export const lineKindSchema = z.enum(lineKinds);
export type LineKind = z.infer<typeof lineKindSchema>;

const nameSchema = z.string().min(1).max(200);
const metresSchema = z.number().min(-500).max(500).meta({ unit: 'm' });
const outlineSchema = z
  .array(z.tuple([metresSchema, metresSchema]))
  .min(3)
  .max(500);

export const hullSchema = z.strictObject({
  kind: z.enum([
    'sloop',
    'ketch',
    'catamaran',
    'pilothouse-motorboat',
    'trawler',
    'sport-cruiser',
    'open-boat',
    'rigid-inflatable',
    'river-cruiser',
    'steel-workboat',
  ]),
  material: z.enum(['grp', 'wood', 'steel', 'aluminium', 'other']),
  lengthM: z.number().min(2).max(60).meta({ unit: 'm' }),
  beamM: z.number().min(0.5).max(20).meta({ unit: 'm' }),
  draftM: z.number().min(0.05).max(10).meta({ unit: 'm' }),
  airDraft: measureSchema,
  /** what she weighs: empty, or with crew, stores and full tanks */
  displacement: z.exactOptional(
    z.strictObject({
      valueKg: z.number().positive().max(10_000_000).meta({ unit: 'kg' }),
      of: z.enum(['light', 'laden']),
    }),
  ),
  outline: z.exactOptional(z.strictObject({ side: outlineSchema, top: outlineSchema })),
  /** what sensors under the water must keep clear of */
  underwater: z.exactOptional(underwaterSchema),
  /** how each mast is stepped, by the place at its foot */
  masts: z.exactOptional(z.array(z.strictObject({ foot: idSchema, stepped: z.enum(['deck', 'keel']) }))),
});

export const placeSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  xM: metresSchema,
  yM: metresSchema,
  zM: metresSchema,
  exposure: z.enum(['dry', 'damp', 'spray', 'weather', 'engine', 'bilge']),
  reach: z.enum(['open', 'panel', 'hard', 'aloft']),
  tees: z.boolean(),
  spares: z.exactOptional(z.int().min(0).max(20)),
  /** height of the sole that people stand on there, over the water */
  soleZM: z.exactOptional(metresSchema),
  /** somebody stood there and it is so */
  seen: z.exactOptional(z.boolean()),
  /** every box, plug and cable end there is in this file */
  counted: z.exactOptional(z.boolean()),
});
export type Place = z.infer<typeof placeSchema>;

export const waySchema = z.strictObject({
  id: idSchema,
  ends: z.tuple([idSchema, idSchema]),
  length: measureSchema,
  kind: z.enum(['conduit', 'open', 'tray', 'mast', 'gland']),
  known: z.enum(['pulled', 'seen', 'assumed']),
  bore: z.exactOptional(
    z.strictObject({
      mm: z.number().positive().max(1000).meta({ unit: 'mm' }),
      how: z.enum(['taped', 'papers', 'guessed']),
    }),
  ),
  through: z.exactOptional(z.enum(['deck', 'watertight', 'fire', 'plain'])),
  allows: z.exactOptional(z.array(lineKindSchema)),
  trunkTimes: z.exactOptional(z.union([z.literal(1), z.literal(2)])),
  hours: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'h' })),
  exposure: z.exactOptional(z.enum(['dry', 'damp', 'spray', 'weather', 'engine', 'bilge'])),
  near: z.exactOptional(z.array(idSchema)),
  /** every cable in it is in this file */
  counted: z.exactOptional(z.boolean()),
});
export type Way = z.infer<typeof waySchema>;

const endSchema = z.strictObject({
  place: idSchema,
  at: z.exactOptional(z.union([dottedIdSchema, idSchema])),
  connector: z.exactOptional(z.string().min(1).max(60)),
  gender: z.exactOptional(genderSchema),
});

export const cableSchema = z.strictObject({
  id: idSchema,
  kind: lineKindSchema,
  name: z.exactOptional(nameSchema),
  from: endSchema,
  to: endSchema,
  serves: z.exactOptional(idSchema),
  ways: z.array(idSchema),
  length: measureSchema,
  diameterMm: z.number().positive().max(200).meta({ unit: 'mm' }),
  conductors: z.exactOptional(z.int().min(1).max(100)),
  /** copper of one conductor of a feed, a feeder or the lead of a steering drive */
  areaMm2: z.exactOptional(z.number().positive().max(1000).meta({ unit: 'mm²' })),
  /** of a coax: what it is, what it loses, how its joints are */
  coax: z.exactOptional(cableCoaxSchema),
  condition: z.enum(['good', 'doubtful', 'bad', 'untested']),
  fate: z.enum(['stays', 'goes']),
  terminator: z.exactOptional(z.boolean()),
});
export type Cable = z.infer<typeof cableSchema>;

export const kitSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  sheet: idSchema,
  fate: z.enum(['stays', 'goes', 'comes']),
  phase: z.exactOptional(z.int().min(1).max(9)),
  place: idSchema,
  tail: z.exactOptional(measureSchema),
  /** bare on the metal of hull, mast or engine, or parted from it by a pad, wood or plastic */
  mount: z.exactOptional(z.enum(['metal', 'isolated'])),
  /** what is known of its wifi, its network side and their password */
  remote: z.exactOptional(kitRemoteSchema),
  /** what is known of the spot a sensor sits in */
  site: z.exactOptional(kitSiteSchema),
  identity: z.exactOptional(z.string().regex(/^[0-9a-f]{16}$/, 'A NAME is 16 hexadecimal digits in small letters.')),
  instances: z.exactOptional(
    z.array(z.strictObject({ port: idSchema, reading: readingSchema, instance: z.int().min(0).max(252) })),
  ),
  changes: z.exactOptional(z.array(changeSchema)),
  /** what was read off it as it hangs aboard */
  aboard: z.exactOptional(aboardSchema),
});
export type Kit = z.infer<typeof kitSchema>;

export const needSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int().min(0).max(252)),
  at: idSchema,
  must: z.boolean(),
  everyMs: z.exactOptional(z.number().positive().max(86_400_000).meta({ unit: 'ms' })),
  reference: z.exactOptional(referenceSchema),
  withOffset: z.exactOptional(z.boolean()),
});
export type Need = z.infer<typeof needSchema>;

export const gradeSchema = z.enum(['light', 'mid', 'heavy', 'industrial-thick']);
export type GradeId = z.infer<typeof gradeSchema>;

export const busSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  protocol: z.literal('nmea2000'),
  grade: z.exactOptional(gradeSchema),
  /** the places where its shield is earthed */
  shieldAt: z.exactOptional(z.array(idSchema)),
});

export const joinKinds = protocolSchema.exclude(['dc']);
export const joinSchema = z.strictObject({
  id: idSchema,
  kind: joinKinds,
  bus: z.exactOptional(idSchema),
  members: z.array(z.strictObject({ kit: idSchema, port: idSchema, as: z.enum(['talk', 'listen', 'both']) })),
  hold: z.enum(['fixed', 'never']),
  /** the units of it at which the shield of its cable is earthed */
  shieldAt: z.exactOptional(z.array(idSchema)),
  confirmed: z.exactOptional(z.strictObject({ by: nameSchema, source: nameSchema, version: nameSchema })),
});
export type Join = z.infer<typeof joinSchema>;

const hundredths = z.int().min(0).max(1_000_000_000).meta({ unit: 'hundredths of the currency' });
export const itemSchema = z
  .string()
  .max(160)
  .regex(/^[a-z][a-z0-9-]*$/, 'An item is named as the shopping list names it, for example light-drop-2000mm.');
export const pricesSchema = z.strictObject({
  currency: z.string().regex(/^[A-Z]{3}$/, 'A currency is three capital letters, for example EUR.'),
  trunkPerM: hundredths,
  dropPerM: hundredths,
  tee: hundredths,
  terminator: hundredths,
  feed: hundredths,
  feedLeadPerM: hundredths,
  hour: hundredths,
  byGrade: z.exactOptional(
    z.partialRecord(gradeSchema, z.strictObject({ trunkPerM: hundredths, dropPerM: hundredths })),
  ),
  /** price of one of an item of the shopping list, or of a metre where it is sold by the metre */
  items: z.exactOptional(z.record(itemSchema, hundredths)),
});

const stateSchema = z.enum(['fixed', 'bought', 'fitted']);
const walkStepSchema = z.strictObject({
  place: idSchema,
  via: z.exactOptional(idSchema),
  tees: z.array(z.string().min(1).max(140)),
});
export const pinsSchema = z.strictObject({
  layouts: z.exactOptional(
    z.record(
      idSchema,
      z.strictObject({ grade: gradeSchema, walk: z.array(walkStepSchema).min(1), state: stateSchema }),
    ),
  ),
  /** by line id: the ways it takes, from either end to the other */
  routes: z.exactOptional(z.record(lineIdSchema, z.strictObject({ ways: z.array(idSchema), state: stateSchema }))),
  /** by line id: the copper of its conductors */
  wires: z.exactOptional(
    z.record(
      lineIdSchema,
      z.strictObject({ areaMm2: z.number().positive().max(1000).meta({ unit: 'mm²' }), state: stateSchema }),
    ),
  ),
  /** by line id: the kind of its coax */
  coax: z.exactOptional(z.record(lineIdSchema, z.strictObject({ kind: coaxKindSchema, state: stateSchema }))),
  /** by `panel.circuit`: the protection that stands there whatever the plan would pick */
  fuses: z.exactOptional(
    z.record(
      dottedIdSchema,
      z.strictObject({ ratingA: z.number().positive().max(10_000).meta({ unit: 'A' }), state: stateSchema }),
    ),
  ),
  /** by line id: the cables it is made of, end to end; `cable` where one is aboard already */
  pieces: z.exactOptional(
    z.record(
      lineIdSchema,
      z.strictObject({
        pieces: z
          .array(
            z.strictObject({ mm: z.int().min(1).max(500_000).meta({ unit: 'mm' }), cable: z.exactOptional(idSchema) }),
          )
          .min(1),
        state: stateSchema,
      }),
    ),
  ),
});

export const limitOverrideSchema = z.strictObject({
  value: z.number().meta({ unit: 'that of the limit' }),
  reason: z.string().min(1).max(400),
});

export const orderStates = ['have', 'order', 'ordered', 'arrived', 'returned'] as const;
/** Where an item of the shopping list stands: `count` where it is not the whole of it; `orderBy` the last day to order. */
export const orderSchema = z.strictObject({
  item: itemSchema,
  state: z.enum(orderStates),
  count: z.exactOptional(
    z.number().min(0).max(100_000).meta({ unit: 'pieces, or metres of what is sold by the metre' }),
  ),
  supplier: z.exactOptional(nameSchema),
  leadDays: z.exactOptional(z.int().min(0).max(2000).meta({ unit: 'days' })),
  orderBy: z.exactOptional(daySchema),
  /** the day it is to arrive, as the supplier said */
  due: z.exactOptional(daySchema),
});
export type Order = z.infer<typeof orderSchema>;

export const acceptedSchema = z.strictObject({
  finding: z.string().min(1).max(400),
  reason: z.string().min(1).max(400),
});

/** The boat file, version 1: what a person measured, chose, ticked. Everything else is computed. */
export const boatSchema = z
  .strictObject({
    format: z.literal('fairlead-boat'),
    version: z.literal(1),
    name: nameSchema,
    hull: hullSchema,
    places: z.array(placeSchema),
    ways: z.array(waySchema),
    cables: z.array(cableSchema),
    sheets: z.array(sheetSchema),
    kit: z.array(kitSchema),
    needs: z.array(needSchema),
    sources: z.exactOptional(z.array(chosenSourceSchema)),
    buses: z.array(busSchema),
    joins: z.array(joinSchema),
    waters: z.exactOptional(watersSchema),
    measures: z.exactOptional(measuresSchema),
    papers: z.exactOptional(shipPapersSchema),
    sea: z.exactOptional(atSeaSchema),
    supply: supplySchema,
    days: z.exactOptional(z.array(ownDaySchema)),
    steering: z.exactOptional(steeringSchema),
    openings: z.exactOptional(z.array(openingSchema)),
    prices: z.exactOptional(pricesSchema),
    limits: z.exactOptional(z.record(limitIdSchema, limitOverrideSchema)),
    pins: z.exactOptional(pinsSchema),
    labels: z.exactOptional(
      z.record(
        lineIdSchema,
        z
          .string()
          .regex(
            /^[A-Z][A-Z0-9-]{1,9}$/,
            'A label is a capital letter, then capitals, digits or hyphens, for example C07.',
          ),
      ),
    ),
    orders: z.exactOptional(
      z.array(orderSchema).refine((orders) => new Set(orders.map(({ item }) => item)).size === orders.length, {
        message: 'An item stands in the orders once.',
      }),
    ),
    quote: z.exactOptional(quoteSchema),
    work: z.exactOptional(workSchema),
    accepted: z.exactOptional(z.array(acceptedSchema)),
    underlays: z.exactOptional(underlaysSchema),
    photos: z.exactOptional(photosSchema),
    fitted: z.exactOptional(z.array(fittedSchema)),
    revisions: z.exactOptional(revisionsSchema),
    proof: z.exactOptional(proofSchema),
  })
  .meta({
    title: 'Fairlead boat file',
    description: 'What a person measured, chose and ticked; everything else is computed.',
  });
export type Boat = z.infer<typeof boatSchema>;

export type Bus = z.infer<typeof busSchema>;
export type WalkStep = z.infer<typeof walkStepSchema>;
