import { readingWords } from '../../core/facts/reading-words.ts';
import { dockTrials } from '../../core/facts/trial-tests.ts';
import type { TestEntry, TestKind } from '../../core/tests-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { printReading, printWindow } from './print-reading.ts';

type Names = Pick<CardBoat, 'buses' | 'kit' | 'panels' | 'places'>;

const nameOf = ({ kit, panels, buses }: Names, id: string): string => {
  const [unit = id] = id.split('.');
  const own = (kit.get(unit) ?? buses.get(unit))?.name;
  return own ?? (panels.has(unit) ? `panel ${unit}` : unit.replaceAll('-', ' '));
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** Pins of the five-pole plugs, as the test names them. */
const pins = { shield: 'pin 1', plus: 'pin 2', minus: 'pin 3', high: 'pin 4', low: 'pin 5' } as const;

const wireWords: Partial<Record<TestKind, string>> = {
  'high-to-minus': `CAN high (${pins.high}) to minus (${pins.minus})`,
  'high-to-plus': `CAN high (${pins.high}) to plus (${pins.plus})`,
  'high-to-shield': `CAN high (${pins.high}) to shield (${pins.shield})`,
  'low-to-minus': `CAN low (${pins.low}) to minus (${pins.minus})`,
  'low-to-plus': `CAN low (${pins.low}) to plus (${pins.plus})`,
  'low-to-shield': `CAN low (${pins.low}) to shield (${pins.shield})`,
  'shield-to-ground': `Shield (${pins.shield}) to ground, its one earth lifted; put it back afterwards`,
  'feed-polarity': `Red to black (pins 2 and 3) of the lead of the feed, before it is plugged`,
  'bus-dead': 'Red to black (pins 2 and 3) with the breaker of the bus off',
  devices: 'Units that are heard on the bus',
  errors: 'Errors counted in ten minutes, everything awake',
};

const hullState = (names: Names, what: string): string => {
  if (what === 'off') return 'all off';
  return what === 'on' ? 'everything on' : `${nameOf(names, what)} on`;
};

const anodeState: Readonly<Record<string, string>> = {
  before: 'before the work, all off',
  after: 'after the work, all off',
  on: 'after the work, everything on',
};

/** The place of a test as a part of a sentence; empty where it has none. */
export const testPlace = ({ places }: Names, { place }: Pick<TestEntry, 'place'>): string =>
  place === undefined ? '' : (places.get(place)?.name ?? place);

const spotWords: Partial<Record<NonNullable<TestEntry['spot']>, string>> = {
  'end-1': 'the first end of the trunk, ',
  middle: 'the middle of the trunk, ',
  'end-2': 'the last end of the trunk, ',
};

const engineWords: Readonly<Record<string, string>> = {
  cranking: ', while the engine is cranked',
  charging: ', while it charges',
};

const busWords = (names: Names, test: TestEntry): string => {
  const at = `${test.spot === undefined ? '' : (spotWords[test.spot] ?? '')}${testPlace(names, test)}`;
  switch (test.test) {
    case 'data-ohm':
      return `CAN high to CAN low (pins 4 and 5), all plugged, at ${at}`;
    case 'lifted-ohm':
      return `CAN high to CAN low (pins 4 and 5) at ${at}, the terminator there lifted`;
    case 'bus-volts':
      return test.spot === 'far'
        ? `Red to black (pins 2 and 3) at the plug of ${nameOf(names, test.about[1] ?? '')}, the farthest drop${engineWords[test.what ?? ''] ?? ''}`
        : `Red to black (pins 2 and 3) at ${at}${test.spot === 'feed' ? ', where the bus is fed' : ''}`;
    case 'high-idle':
      return `CAN high to black (pins 4 and 3) at ${at}, bus quiet`;
    case 'low-idle':
      return `CAN low to black (pins 5 and 3) at ${at}, bus quiet`;
    default:
      return wireWords[test.test] ?? test.test;
  }
};

const unitWords = (names: Names, test: TestEntry): string => {
  const name = (at: number): string => nameOf(names, test.about[at] ?? '');
  switch (test.test) {
    case 'feed-volts':
      return `Red to black at the plug of ${name(1)}, everything on`;
    case 'pair-idle':
      return `A to B at ${name(2)} while ${name(1)} is silent`;
    case 'pair-heard':
      return `${name(2)} takes what ${name(1)} sends`;
    case 'plus-to-hull':
      return `Plus to hull, ${hullState(names, test.what ?? '')}`;
    case 'minus-to-hull':
      return `Minus to hull, ${hullState(names, test.what ?? '')}`;
    case 'anode':
      return `Anode against a reference cell in the water, ${anodeState[test.what ?? ''] ?? ''}`;
    case 'pulled':
      return `Pull or switch off ${name(0)}`;
    case 'noise':
      return `${test.what === 'lights' ? 'LED lights' : nameOf(names, test.what ?? '')}: on and off, quiet channel, squelch just silent`;
    default:
      return test.what ?? test.test;
  }
};

/** What is done at one test, in a sentence without its stop. */
export const testWords = (names: Names, test: TestEntry): string => {
  if (test.group === 'bus') return busWords(names, test);
  if (test.test === 'shown') {
    const { reading, instance } = test;
    const words = reading === undefined ? '' : readingWords[reading];
    const numbered = instance === undefined ? '' : ` ${instance}`;
    return `${words.charAt(0).toUpperCase()}${words.slice(1)}${numbered} on ${nameOf(names, test.about[0] ?? '')}`;
  }
  if (test.test === 'tried') return dockTrials.find(({ id }) => id === test.what)?.does ?? test.id;
  return unitWords(names, test);
};

/** What is expected, as the column says it. */
export const expectWords = (names: Names, test: TestEntry): string => {
  const { right, passes, under, unit } = test;
  switch (test.test) {
    case 'shown':
      return 'there, and believable';
    case 'pair-heard':
      return 'it does';
    case 'pulled':
      return `taken over by another source: ${listed(test.about.slice(1).map((id) => nameOf(names, id)))}`;
    case 'noise':
      return 'still silent, AIS targets stay';
    case 'tried':
      return dockTrials.find(({ id }) => id === test.what)?.expect ?? '';
    default: {
      const parts = [
        ...(right === undefined ? [] : [printWindow(right, unit)]),
        ...(passes === undefined ? [] : [`${printWindow(passes, unit)} passes`]),
        ...(under?.rightV === undefined ? [] : [`at most ${printReading(under.rightV, 'V')} under the feed`]),
      ];
      return parts.length === 0 ? 'written down, for what changes' : parts.join('; ');
    }
  }
};

/** A test of a bus in a few words, beside what was read at it. */
export const briefTestWords = (names: Names, test: TestEntry): string => {
  switch (test.test) {
    case 'data-ohm':
      return `at ${testPlace(names, test)}`;
    case 'lifted-ohm':
      return `lifted at ${testPlace(names, test)}`;
    default:
      return testWords(names, test);
  }
};
