import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port, Sends, Sheet } from '../boat/sheet.ts';
import { readingsOfSentence } from '../facts/message-readings.ts';
import { nmea0183 } from '../facts/nmea0183.ts';
import { usualEveryMs } from '../facts/sentence-rates.ts';
import { shipSentencesPerS } from '../facts/waters.ts';
import { sentenceChars } from '../joins/line-load.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { rateOf, type SaidRate } from './said-rate.ts';
import { shipsOnBoat } from './ships-on-boat.ts';

/** One sentence on a 0183 line, again and again. */
export interface TalkedSentence {
  readonly sentence: string;
  /** the port at which it begins, `kit.port`: another than the talker of the line where that passes it on */
  readonly from: string;
  readonly chars: number;
  readonly everyMs: number;
  readonly rate: SaidRate;
}

interface Asked {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  /** units that are being asked already: what they pass on is not passed back through them */
  readonly passing: ReadonlySet<string>;
}

type Turn = NonNullable<Sheet['turns']>[number];

const carriesAny = ({ carries }: Turn, sentence: string): boolean =>
  readingsOfSentence(sentence).some(({ reading }) => carries.some((carry) => carry.reading === reading));

/** Whether a sentence that comes in leaves at an output: by the output's own list, else by what the turn carries. */
const isPassed = (output: Port, turn: Turn, sentence: string): boolean => {
  const listed = (output.sends ?? []).flatMap((sent) => sent.sentence ?? []);
  if (listed.length > 0 && !listed.includes(sentence)) return false;
  return readingsOfSentence(sentence).length === 0 || carriesAny(turn, sentence);
};

/** Inputs in 0183 whose sentences a unit passes on at one of its outputs. */
const inputTurns = ({ ports, turns = [] }: Sheet, output: Port): readonly Turn[] =>
  turns.filter(
    ({ fromPort, toPort }) =>
      toPort === output.id && ports.find((port) => port.id === fromPort)?.protocol === 'nmea0183',
  );

/** All that its talkers send to one input, `kit.port`. */
const arriving = (asked: Asked, input: string): readonly TalkedSentence[] => {
  const talkers = asked.joins
    .filter(
      ({ kind, members }) =>
        kind === 'nmea0183' && members.some((m) => `${m.kit}.${m.port}` === input && m.as === 'listen'),
    )
    .flatMap(({ members }) => members.filter(({ as }) => as === 'talk'))
    .map(({ kit, port }) => `${kit}.${port}`);
  return [...new Set(talkers)].flatMap((talker) => talksOf(asked, talker));
};

const ownSentence = (
  { index }: Asked,
  { kit, port, sent }: { kit: string; port: Port; sent: Sends },
): readonly TalkedSentence[] => {
  const { sentence } = sent;
  if (sentence === undefined) return [];
  const said = { sentence, from: `${kit}.${port.id}`, chars: sentenceChars(sentence) };
  const everyMs = sent.everyMs ?? usualEveryMs(sentence);
  if (everyMs !== undefined)
    return [{ ...said, everyMs, rate: rateOf({ unit: index.kit.get(kit), port: port.id, sent }) }];
  return sentence === 'VDM'
    ? [{ ...said, everyMs: 1000 / shipSentencesPerS(shipsOnBoat(index.boat)), rate: 'waters' }]
    : [];
};

/** Whether only what comes in can be the origin of a sentence an output lists. */
const isOnlyPassed = (sheet: Sheet, output: Port, inputs: readonly Turn[], sentence: string): boolean => {
  const others = (sheet.turns ?? []).filter((turn) => turn.toPort === output.id && !inputs.includes(turn));
  return inputs.some((turn) => carriesAny(turn, sentence)) && !others.some((turn) => carriesAny(turn, sentence));
};

const talksOf = (asked: Asked, talker: string): readonly TalkedSentence[] => {
  const [kit = '', portId = ''] = talker.split('.');
  const sheet = asked.index.sheetOf.get(kit);
  const port = sheet?.ports.find(({ id }) => id === portId);
  if (sheet === undefined || port === undefined || asked.passing.has(kit)) return [];
  const inputs = inputTurns(sheet, port);
  const inside = { ...asked, passing: new Set([...asked.passing, kit]) };
  const passed = inputs.flatMap((turn) =>
    arriving(inside, `${kit}.${turn.fromPort}`)
      .filter(({ sentence }) => isPassed(port, turn, sentence))
      .map((talked) => ({ ...talked, rate: 'passed' as const })),
  );
  const comeIn = new Set(passed.map(({ sentence }) => sentence));
  const own = (port.sends ?? []).filter(
    ({ sentence }) => sentence !== undefined && !comeIn.has(sentence) && !isOnlyPassed(sheet, port, inputs, sentence),
  );
  return [...own.flatMap((sent) => ownSentence(asked, { kit, port, sent })), ...passed];
};

/**
 * What a talker of a 0183 line, `kit.port`, sends again and again: its own sentences, and all it passes on from its inputs, as
 * often as they come in there. Sentences that come on event only are not in it, but VDM is, as the waters of the boat bring
 * it. Pure.
 */
export const lineTalks = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  talker: string,
): readonly TalkedSentence[] => talksOf({ index, joins, passing: new Set() }, talker);

/** How many 0183 inputs a talker passes on: two and more make it a multiplexer. */
export const inputsOfTalker = (index: BoatIndex, talker: string): number => {
  const [kit = '', portId = ''] = talker.split('.');
  const sheet = index.sheetOf.get(kit);
  const port = sheet?.ports.find(({ id }) => id === portId);
  return sheet === undefined || port === undefined
    ? 0
    : new Set(inputTurns(sheet, port).map(({ fromPort }) => fromPort)).size;
};

/** Characters a second of all these sentences. */
export const talkedCharsPerS = (talks: readonly TalkedSentence[]): number =>
  talks.reduce((sum, { chars, everyMs }) => sum + (1000 * chars) / everyMs, 0);

/** The speed of a talker's line, bit/s: that of its sheet, else of the plain standard. */
export const baudOf = (port: Pick<Port, 'baud'> | undefined): number => port?.baud ?? nmea0183.baud.value;
