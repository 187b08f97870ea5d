import * as z from 'zod';
import { measureSchema } from './boat/measure.ts';
import { bridgeDatums } from './facts/bridge-datums.ts';
import { shipPaperIds } from './facts/ship-papers.ts';
import { typedIds } from './facts/typed-settings.ts';

// The part of a plan that tells what is typed into each unit by the boat’s own measures, and the papers that go before.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const degrees = z.number().meta({ unit: '°' });
const knots = z.number().meta({ unit: 'kn' });

/** How well a figure is known: taped, tried at sea, from papers, off the drawing, guessed. */
export const howKnown = ['taped', 'at-sea', 'papers', 'drawn', 'guessed'] as const;
export type How = (typeof howKnown)[number];

/** What has to be found out before it can be typed. */
export const typedGaps = [
  'transducer-depth',
  'position-antenna',
  'ship-number',
  'read-back',
  'call-sign',
  'screen-units',
] as const;

const shownSchema = z.strictObject({ figure: z.string(), in: z.string() });

/** One thing to type into one unit: in its own unit, and beside it in the other; absent while something is missing. */
export const typedEntrySchema = z.strictObject({
  /** `kit:what` */
  id,
  kit: id,
  what: z.enum(typedIds),
  /** in metres, degrees or as a factor, as it is computed */
  is: z.exactOptional(z.number().meta({ unit: 'm, ° or factor' })),
  shown: z.exactOptional(shownSchema),
  also: z.exactOptional(shownSchema),
  how: z.exactOptional(z.enum(howKnown)),
  /** the unit whose soundings it is for, where that is another */
  of: z.exactOptional(id),
  /** what a depth is counted from there */
  reference: z.exactOptional(z.enum(['surface', 'transducer', 'keel'])),
  /** left at nothing here, as it is set nearer to the source */
  setElsewhere: z.exactOptional(z.literal(true)),
  mayEnter: z.exactOptional(z.enum(['radio-installer', 'once', 'ask-flag'])),
  missing: z.exactOptional(z.enum(typedGaps)),
  /** what was read off it, as it stands there now, and whether that is what should */
  stands: z.exactOptional(z.strictObject({ shown: shownSchema, agrees: z.boolean() })),
});
export type TypedEntry = z.infer<typeof typedEntrySchema>;

/** One paper that is started before anything is ordered, and the units that ask for it. */
export const shipPaperEntrySchema = z.strictObject({
  paper: z.enum(shipPaperIds),
  for: z.array(id),
  state: z.enum(['to-ask', 'to-start', 'asked', 'have', 'not-needed']),
  on: z.exactOptional(z.string()),
  waitDays: z.int().meta({ unit: 'days' }),
  /** whether the office said so, or it is from memory */
  waitFrom: z.enum(['office', 'memory']),
  /** the day it may be there, counted from the day it was asked for */
  thereOn: z.exactOptional(z.string()),
});
export type ShipPaperEntry = z.infer<typeof shipPaperEntrySchema>;

/** The air draft when the work is done, and what it is made of. */
export const airDraftEntrySchema = z.strictObject({
  valueM: metres,
  mostM: metres,
  how: z.enum(howKnown),
  parts: z.array(z.strictObject({ name: z.string(), length: measureSchema, unit: z.exactOptional(id) })),
  /** before the work, where that is known otherwise */
  beforeM: z.exactOptional(metres),
});
export type AirDraftEntry = z.infer<typeof airDraftEntrySchema>;

const trialOf = { id, on: z.string() };
const unitOf = { ...trialOf, kit: id };

/** What follows from what was tried at sea. */
export const seaEntrySchema = z.strictObject({
  logs: z.array(
    z.strictObject({
      ...unitOf,
      speedsKn: z.array(knots),
      trueKn: knots,
      indicatedKn: knots,
      factor: z.number().meta({ unit: 'factor' }),
    }),
  ),
  winds: z.array(
    z.strictObject({
      ...unitOf,
      offsetDeg: degrees,
      turnedTo: z.enum(['port', 'starboard', 'neither']),
      spreadDeg: degrees,
    }),
  ),
  leads: z.array(z.strictObject({ ...unitOf, belowWaterM: metres, surfaceM: metres, keelM: metres })),
  swings: z.array(
    z.strictObject({
      ...unitOf,
      electronics: z.enum(['off', 'on']),
      points: z.array(z.strictObject({ headingDeg: degrees, deviationDeg: degrees })),
      /** absent where there are too few headings for one */
      curve: z.exactOptional(
        z.strictObject({
          a: degrees,
          b: degrees,
          c: degrees,
          d: degrees,
          e: degrees,
          residualDeg: degrees,
          mostDeg: degrees,
        }),
      ),
      /** by the curve, every 15 degrees from north; empty without one */
      card: z.array(degrees),
    }),
  ),
  bridges: z.array(
    z.strictObject({
      ...trialOf,
      name: z.string(),
      datum: z.exactOptional(z.enum(bridgeDatums)),
      /** the highest tide at which she passes; absent where nobody said what the chart counts from */
      highestTideM: z.exactOptional(metres),
    }),
  ),
});
export type SeaEntry = z.infer<typeof seaEntrySchema>;

/** What a plan says of settings by measure, papers and trials. */
export const settingsSheetSchema = {
  typed: z.array(typedEntrySchema),
  shipPapers: z.array(shipPaperEntrySchema),
  airDraft: airDraftEntrySchema,
  atSea: seaEntrySchema,
};
