import { expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes, garbage } from '../../../../tests/recordings/write-recording.ts';
import { sentenceChecksum } from '../decode/sentence.ts';
import { surveyText } from './survey-text.ts';

const sent = (body: string): string => `$${body}*${sentenceChecksum(body)}\r\n`;
const survey = (text: string) => surveyRecording(garbage(text));

test('sentences are counted by talker and formatter, with how often and how long', () => {
  const lines = Array.from(
    { length: 11 },
    (_unused, at) => `${1_777_636_800 + at * 0.5} ${sent('IIHDG,101.1,,,4.2,W')}`,
  );
  const { sentences, frames } = survey(`${lines.join('')}${sent('SDDPT,12.3,-1.5')}`);
  expect(frames).toBe(0);
  expect(sentences).toMatchObject({ sentences: 12, checksumWrong: 0, spanS: 5 });
  expect(sentences?.kinds).toEqual([
    { talker: 'II', formatter: 'HDG', count: 11, empty: 0, longestChars: 25, medianMs: 500 },
    { talker: 'SD', formatter: 'DPT', count: 1, empty: 0, longestChars: 21 },
  ]);
});

test('without stamps the time of day in the sentences tells how full the line is', () => {
  const text = ['120000', '120001', '120002'].map((time) => sent(`GPGLL,5415.0,N,01030.0,W,${time},A`)).join('');
  const report = survey(text);
  expect(report.sentences?.spanS).toBe(2);
  expect(surveyText(report)).toContain('characters a second');
  expect(surveyText(report)).toContain('% of 4800 baud');
});

test('wrong checksums are left out and told, as are sentences without one and ones too long', () => {
  const long = sent(`IIXDR,${'A'.repeat(90)}`);
  const report = survey(`$IIHDT,98.0,T*00\n$IIHDT,98.0,T\n${long}`);
  expect(report.sentences).toMatchObject({ sentences: 3, checksumWrong: 1, checksumAbsent: 1, overLong: 1 });
  expect(report.sentences?.kinds.map(({ count }) => count)).toEqual([1, 1]);
  const text = surveyText(report);
  for (const word of ['wrong checksum', 'no checksum', '82 characters', 'tell no time']) expect(text).toContain(word);
});

test('a sentence whose fields are all empty is told to tell nothing', () => {
  expect(surveyText(survey(sent('IIHDT,,T').repeat(3)))).toContain('empty throughout: tells nothing');
  expect(surveyText(survey(`${sent('IIHDT,,T')}${sent('IIHDT,98.0,T')}`))).toContain('1 of them empty');
});

test('no number of a ship is in what is shown', () => {
  const report = survey('!AIVDM,1,1,,A,11mg=5@P10w?sm0O2dL8@Ovt0000,0*33\n');
  expect(report.sentences?.ais).toMatchObject({ ships: 1, sentences: 1, messages: [{ type: 1, count: 1 }] });
  expect(surveyText(report)).toContain('1 message of 1 ship');
  expect(JSON.stringify(report) + surveyText(report)).not.toContain('123456789');
});

test('sentences beside a bus have a part of their own', () => {
  const bytes = Uint8Array.from([...candumpBytes(recordBus({ seconds: 2 })), ...garbage(sent('SDDPT,12.3,-1.5'))]);
  const report = surveyRecording(bytes);
  expect([report.frames > 0, report.sentences?.sentences]).toEqual([true, 1]);
  expect(surveyText(report)).toContain('Sentences recorded beside the bus');
});
