import { lineLoad } from '../../joins/line-load.ts';
import { textLines } from '../../units/text-lines.ts';
import type { AisSummary, SentenceReport, SentSentence } from './sentence-survey-report.ts';

const width = 80;
const paragraph = (text: string): string[] => textLines(text, { width, lead: '' });
const several = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
const bauds = [4800, 38_400] as const;

const loadWords = (charsPerS: number): string =>
  bauds.map((baud) => `${lineLoad({ charsPerS, baud }).sharePct.toFixed(1)} % of ${baud} baud`).join(', ');

const headLines = ({ sentences, spanS, chars }: SentenceReport): string[] => {
  const counted = several(sentences, 'sentence');
  if (spanS === undefined || spanS === 0)
    return paragraph(`${counted} of NMEA 0183. They tell no time: how full the line was is unknown.`);
  const charsPerS = chars / spanS;
  return paragraph(
    `${counted} of NMEA 0183 in ${spanS.toFixed(0)} s: ${charsPerS.toFixed(1)} characters a second, ${loadWords(charsPerS)}.`,
  );
};

const faultLines = ({ checksumWrong, checksumAbsent, overLong }: SentenceReport): string[] => [
  ...(checksumWrong === 0
    ? []
    : paragraph(`${several(checksumWrong, 'sentence')} had a wrong checksum and were left out.`)),
  ...(checksumAbsent === 0 ? [] : paragraph(`${several(checksumAbsent, 'sentence')} had no checksum.`)),
  ...(overLong === 0 ? [] : paragraph(`${several(overLong, 'sentence')} were longer than 82 characters.`)),
];

const everyWords = (medianMs: number | undefined): string =>
  medianMs === undefined ? '-' : `${(medianMs / 1000).toFixed(medianMs < 10_000 ? 1 : 0)} s`;

const contentWords = ({ count, empty }: SentSentence): string => {
  if (empty === 0) return '';
  return empty === count ? 'empty throughout: tells nothing' : `${empty} of them empty`;
};

const kindRow = (kind: SentSentence): string =>
  `${kind.talker.padStart(6)}  ${kind.formatter.padEnd(8)}  ${String(kind.count).padStart(7)}  ${everyWords(kind.medianMs).padStart(7)}  ${String(kind.longestChars).padStart(7)}  ${contentWords(kind)}`.trimEnd();

const aisLines = ({ sentences, messages, incomplete, notDecodable, ships }: AisSummary): string[] => {
  const whole = messages.reduce((sum, { count }) => sum + count, 0);
  const types = messages.map(({ formatter, type, count }) => `${formatter} ${type}: ${count}`).join(', ');
  const lost = incomplete + notDecodable;
  return paragraph(
    `AIS: ${several(whole, 'message')} of ${several(ships, 'ship')} in ${several(sentences, 'sentence')} (${types})${lost === 0 ? '' : `; ${lost} not whole`}.`,
  );
};

/** The sentences of a recording as plain text; nothing in it names a ship or says where she was. */
export const sentenceSurveyLines = (report: SentenceReport): string[] => [
  ...headLines(report),
  ...faultLines(report),
  '',
  'talker  sentence    count    every  longest',
  ...report.kinds.map(kindRow),
  ...(report.ais === undefined ? [] : ['', ...aisLines(report.ais)]),
];
