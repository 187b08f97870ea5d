import type { BusEntry } from '../../core/plan-shape.ts';
import type { Cause } from '../../core/proof/dock/diagnose.ts';
import type { ReadingRange } from '../../core/proof/dock/reading-range.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { printWindow } from './print-reading.ts';

/** A cause in a sentence, and what mends it. `at`: what is said of the place it fits best, before the name of that. */
interface CauseWords {
  readonly says: string;
  readonly mends: string;
  readonly at?: string;
}

const causeWords: Readonly<Record<string, CauseWords>> = {
  ok: { says: 'Nothing is wrong with the bus.', mends: 'Go on with the sheet.' },
  'term-1': {
    says: 'One terminator is missing.',
    mends: 'Put it in at the end of the trunk; look whether a unit there holds one that is switched off.',
    at: 'most likely at',
  },
  'term-0': { says: 'There is no terminator at all.', mends: 'Put one in at each end of the trunk.' },
  'term-3': {
    says: 'There is a terminator too many.',
    mends: 'Look for a hidden one: in a masthead unit, a power lead, a blanking plug or a display. Take it out.',
    at: 'it fits best near',
  },
  'term-drop': {
    says: 'A terminator sits on a drop, not at the end of the trunk.',
    mends: 'Move it to the end of the trunk; the drawing shows which that is.',
    at: 'it fits best near',
  },
  'open-trunk': {
    says: 'A data wire is open in the trunk.',
    mends:
      'Part the trunk there, look at the pins, and pull at each wire; the units fall into two groups at the break.',
    at: 'it fits best after',
  },
  'open-drop': {
    says: 'A data wire is open in one drop.',
    mends: 'Look at the drop of the unit that is not heard: plug, pins, tee.',
  },
  short: {
    says: 'The data wires are shorted.',
    mends: 'Unplug one piece after another from there on until the ohms jump up; the ohms also lead to it.',
    at: 'it fits best near',
  },
  'swap-data': {
    says: 'The data wires are swapped at one unit.',
    mends:
      'Unplug the units made up by hand one after the other until the errors stop; turn pins 4 and 5 in that plug.',
  },
  'data-to-supply': {
    says: 'A data wire touches minus, plus or the shield.',
    mends: 'Power off. Unplug one piece after another until the ohms jump up; look for a crushed cable or a bad plug.',
  },
  'swap-power': {
    says: 'Red and black are swapped at the feed.',
    mends: 'Switch off at once. Turn the two wires at the panel, and measure again before anything is plugged.',
  },
  'bad-negative': {
    says: 'The minus has a bad joint.',
    mends: 'Clean and tighten the black wire there: pins, screw terminals, field-made plugs.',
    at: 'it fits best after',
  },
  'two-feeds': {
    says: 'The bus is fed at two places and its plus is not cut between them.',
    mends:
      'Take one feed out, or cut the plus of the trunk between the two: batteries are joined and a breaker no longer parts them.',
  },
  'shield-twice': {
    says: 'The shield is earthed twice.',
    mends:
      'Find the second earth: a plug whose shell touches metal, a unit that joins shield and case. Leave the one at the feed.',
  },
  water: {
    says: 'A tee or a plug is wet.',
    mends: 'Look for green pins; dry and renew it, and find how the water came in. Reading and fault come and go.',
    at: 'it fits best near',
  },
};

/** What a measurement that only a search wants is called; all others are tests of the sheet. */
export const searchWords: Readonly<Record<string, { readonly what: string; readonly kind: 'number' | 'yes-no' }>> = {
  'plug-ohm': {
    what: 'CAN high to CAN low in the plug of the unit that is not heard, unplugged from it, power off',
    kind: 'number',
  },
  steady: { what: 'The ohms stand still while plugs and tees are moved by hand', kind: 'yes-no' },
};

const placeAt = ({ places }: Pick<CardBoat, 'places'>, bus: BusEntry, step: number): string => {
  const place = bus.walk[step]?.place ?? '';
  return places.get(place)?.name ?? place;
};

/** A fault in a sentence, wherever it may be. */
export const faultWords = (fault: string): string => causeWords[fault]?.says ?? fault;

/** One cause as a sentence, how likely it is, and what mends it. */
export const causeSays = (index: Pick<CardBoat, 'places'>, bus: BusEntry, { fault, step, share }: Cause) => {
  const own = causeWords[fault];
  const where = step === undefined || own?.at === undefined ? '' : ` (${own.at} ${placeAt(index, bus, step)})`;
  return {
    says: `${(own?.says ?? fault).replace(/\.$/, '')}${where}.`,
    mends: own?.mends ?? '',
    sharePct: share > 0.99 ? 'over 99 %' : share < 0.01 ? 'under 1 %' : `${Math.round(share * 100)} %`,
  };
};

const unitOf = { ohm: 'ohm', volts: 'V', devices: 'devices', errors: 'errors' } as const;

/** What a reading would be under a cause, as it is said beside it. */
export const rangeWords = ({ scale, least, most, fromFeed }: ReadingRange): string => {
  if (scale === 'yes-no') return least === 1 ? 'yes' : 'no';
  if (scale === 'errors' && most > 1000) return least === 0 ? 'none or many' : 'many';
  if (fromFeed === true) {
    const [fewV, manyV] = [Math.max(0, -most), -least];
    return `${printWindow({ least: fewV, most: manyV }, 'V')} under the feed`;
  }
  return printWindow({ least, most }, unitOf[scale]);
};
