import { byCodeUnit } from '../../boat/ids.ts';
import { lenCurrent } from '../../facts/bus-limits.ts';
import { textLines } from '../../units/text-lines.ts';
import type { BrokenPlace } from '../readers/recording-reader-shape.ts';
import { instanceOf } from './draft-sends.ts';
import { senderKind } from './sender-words.ts';
import { sentenceSurveyLines } from './sentence-survey-text.ts';
import type { SharedInstance, SurveyReport, SurveySender } from './survey-report.ts';
import { givenWords, lastWords, listWords, partWords, readingsGiven, sendsWords } from './survey-words.ts';

/** How a survey is printed. */
export interface SurveyTextOptions {
  /** show what devices call themselves, which is the maker's text; never serials */
  readonly makerTexts?: boolean;
}

const width = 80;
const paragraph = (text: string): string[] => textLines(text, { width, lead: '' });
const item = (text: string): string[] => textLines(text, { width, lead: '- ' });
const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines];

const percent = (value: number): string => `${value.toFixed(1)} %`;
const several = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

const clockWords = (jumpUs: number): string => {
  const seconds = Math.abs(jumpUs) / 1_000_000;
  const long = seconds >= 172_800 ? `${(seconds / 86_400).toFixed(1)} days` : `${Math.round(seconds)} s`;
  return `${long} ${jumpUs < 0 ? 'back' : 'on'}`;
};

const timeLines = ({ time, load, joined }: SurveyReport): string[] => {
  if (time === undefined) {
    return paragraph('The recording tells no time: duration, load and intervals are unknown.');
  }
  const steps = time.clockSteps.map(({ jumpUs }) => clockWords(jumpUs)).join(', ');
  return [
    ...(load === undefined
      ? joined === 0
        ? []
        : paragraph('The recorder joined long messages: how many frames they took, and with them the load, is unknown.')
      : paragraph(
          `Load ${percent(load.exactPct)} of what the bus can carry, ${percent(load.worstPct)} if every frame took its longest. Fullest second (${load.busiest.second} s from the start): ${percent(load.busiest.exactPct)}.`,
        )),
    ...(steps === '' ? [] : paragraph(`The recorder's clock jumped: ${steps}. Jumps of more than 60 s add no time.`)),
  ];
};

const mostPlacesShown = 5;
const placeWords = ({ line, byte }: BrokenPlace): string => (line === undefined ? `byte ${byte ?? 0}` : `line ${line}`);

const damageLines = (report: SurveyReport): string[] => {
  const { broken, cutShort, shortFrames, errorFrames, fastPackets } = report;
  const lost = fastPackets.outOfSequence + fastPackets.overwritten + fastPackets.malformed;
  return [
    ...(broken === 0 ? [] : paragraph(`${several(broken, 'line')} of the recording could not be read.`)),
    ...report.brokenAt.slice(0, mostPlacesShown).flatMap((place) => item(`${placeWords(place)}: ${place.says}`)),
    ...(cutShort ? paragraph('The recording ends in the middle of a frame.') : []),
    ...(shortFrames === 0
      ? []
      : paragraph(`${several(shortFrames, 'frame')} had 11-bit identifiers, which this bus does not use.`)),
    ...(errorFrames === 0 ? [] : paragraph(`The recorder noted ${several(errorFrames, 'fault')} on the bus.`)),
    ...(lost + fastPackets.orphan === 0
      ? []
      : paragraph(
          `Of the long messages ${fastPackets.complete} came whole, ${lost} broke off; ${several(fastPackets.orphan, 'frame')} had lost their beginning.`,
        )),
  ];
};

const headLines = (report: SurveyReport): string[] => [
  ...paragraph(
    `${several(report.frames, 'frame')}${report.time === undefined ? '' : ` in ${report.time.durationS.toFixed(1)} s`}: ${several(report.messages, 'message')} from ${several(report.senders.length, 'sender')}.`,
  ),
  ...timeLines(report),
  ...damageLines(report),
];

const shownText = (text: string): string => text.replace(/[^ -~]/g, '?');

const rowOf = (sender: SurveySender, at: number, { makerTexts = false }: SurveyTextOptions): string[] => {
  const address = sender.address ?? '-';
  const len = sender.product?.len ?? '?';
  const lead = `${String(at + 1).padStart(4)}  ${String(address).padStart(7)}  ${String(len).padStart(3)}  `;
  const model = makerTexts && sender.product !== undefined ? `, calls itself "${shownText(sender.product.model)}"` : '';
  const claim = sender.name === undefined ? ' (no claim seen)' : '';
  return [
    ...textLines(`${senderKind(sender).words}${claim}${model}`, { width, lead }),
    ...textLines(sendsWords(sender), { width, lead: ' '.repeat(lead.length) }),
  ];
};

const senderLines = ({ senders }: SurveyReport, options: SurveyTextOptions): string[] =>
  senders.length === 0
    ? []
    : [' No.  address  LEN  what it is and sends', ...senders.flatMap((sender, at) => rowOf(sender, at, options))];

/** A value seen aboard tells which of two like units is which. */
const lastLines = ({ senders }: SurveyReport): string[] =>
  senders.flatMap((sender, at) => {
    const words = lastWords(sender);
    return words.length === 0 ? [] : item(`No. ${at + 1}: ${words.join('; ')}`);
  });

/** An instance number that stands for none is shared without harm. */
const isClash = (shared: SharedInstance): boolean => instanceOf(shared.pgn, shared) !== undefined;

const numbersAt = (report: SurveyReport, addresses: readonly number[]): number[] =>
  report.senders.flatMap((sender, at) => {
    const address = sender.address ?? sender.addresses.at(-1);
    return address !== undefined && addresses.includes(address) ? [at + 1] : [];
  });

const clashWords = ({ pgn, kind, instance }: SharedInstance): string =>
  `${partWords(pgn, { ...(kind === undefined ? {} : { kind }) })} (${pgn}), instance ${instance}`;

const clashLines = (report: SurveyReport): string[] =>
  report.sharedInstances
    .filter(isClash)
    .flatMap((shared) => item(`${clashWords(shared)}: No. ${listWords(numbersAt(report, shared.addresses))}`));

const doubledLines = ({ senders }: SurveyReport): string[] => {
  const givers = new Map<string, number[]>();
  for (const [at, sender] of senders.entries()) {
    // Readings with an instance are doubled only on the same instance, and that is told above.
    for (const given of readingsGiven(sender).filter(({ instance }) => instance === undefined)) {
      givers.set(givenWords(given), [...(givers.get(givenWords(given)) ?? []), at + 1]);
    }
  }
  return [...givers]
    .filter(([, numbers]) => numbers.length > 1)
    .sort(([a], [b]) => byCodeUnit(a, b))
    .flatMap(([words, numbers]) => item(`${words}: No. ${listWords(numbers)}`));
};

const withoutProduct = ({ senders }: SurveyReport): number[] =>
  senders.flatMap(({ product }, at) => (product?.len === undefined ? [at + 1] : []));
const withoutName = ({ senders }: SurveyReport): number[] =>
  senders.flatMap(({ name }, at) => (name === undefined ? [at + 1] : []));

const lenLines = (report: SurveyReport): string[] => {
  const unknown = withoutProduct(report);
  if (unknown.length === report.senders.length) return item('No sender told its LEN.');
  const amps = ((report.lenSum * lenCurrent.value) / 1000).toFixed(2);
  const zero = report.senders.filter(({ product }) => product?.len === 0).length;
  const least =
    unknown.length === 0
      ? `LEN adds up to ${report.lenSum}, which is ${amps} A.`
      : `LEN adds up to ${report.lenSum}, which is ${amps} A at least: ${several(unknown.length, 'sender')} did not tell it (No. ${listWords(unknown)}).`;
  return item(
    zero === 0 ? least : `${least} ${several(zero, 'sender')} declared 0: fed from elsewhere, or not filled in.`,
  );
};

const missingLines = (report: SurveyReport): string[] => {
  const unnamed = withoutName(report);
  return [
    ...lenLines(report),
    ...(unnamed.length === 0
      ? []
      : item(
          `No claim was seen from No. ${listWords(unnamed)}: known by address only, which may change with the next start.`,
        )),
  ];
};

const nextLines = (report: SurveyReport): string[] => {
  const isPartial = withoutName(report).length + withoutProduct(report).length > 0;
  const hasClash = report.sharedInstances.some(isClash);
  const steps = [
    ...(report.time === undefined ? ['Record again with times, for at least two minutes.'] : []),
    ...(isPartial
      ? [
          'Record from the moment the bus is switched on, and let the recorder ask everyone for claims (60928) and product information (126996).',
        ]
      : []),
    ...(hasClash ? ['Give each of the senders on a shared instance its own, then record again.'] : []),
    ...(doubledLines(report).length > 0 ? ['For each doubled reading choose the main source on the displays.'] : []),
    'Find each number aboard, and put it in its place in the draft.',
  ];
  return steps.flatMap((step, at) => textLines(step, { width, lead: `${at + 1}. ` }));
};

const nothingLines = ({ broken }: SurveyReport): string[] => [
  ...paragraph(
    `No frame was found. ${broken === 0 ? 'The recording is empty.' : `None of its ${several(broken, 'line')} is a frame.`}`,
  ),
  ...paragraph('Record the bus again as candump text or pcap.'),
];

/**
 * The survey as calm text of 80 columns. Numbers of senders are those of the drafted boat. Makers' texts are left out
 * unless asked for; unique numbers and serials always.
 */
export const surveyText = (report: SurveyReport, options: SurveyTextOptions = {}): string => {
  const onLine = report.sentences === undefined ? [] : sentenceSurveyLines(report.sentences);
  if (report.frames + report.joined === 0) {
    return [...(onLine.length === 0 ? nothingLines(report) : [...onLine, ...damageLines(report)]), ''].join('\n');
  }
  return [
    ...headLines(report),
    ...section('Senders (LEN = load on the bus in steps of 50 mA)', senderLines(report, options)),
    ...section('Last values heard (to tell like units apart)', lastLines(report)),
    ...section('One instance, several senders', clashLines(report)),
    ...section('One reading, several senders', doubledLines(report)),
    ...section('What is not known', missingLines(report)),
    ...section('What to do next', nextLines(report)),
    ...section('Sentences recorded beside the bus', onLine),
    '',
  ].join('\n');
};
