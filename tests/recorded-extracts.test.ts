import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { SentPart, SurveyReport } from '../src/core/proof/survey/survey-report.ts';
import { readRecording } from './recordings/read-recording.ts';
import { surveyRecording } from './recordings/survey-recording.ts';

const extract = (name: string): Uint8Array => readFileSync(new URL(`recordings/extracts/${name}`, import.meta.url));

const partsFrom = (report: SurveyReport, pgn: number, address: number): readonly SentPart[] =>
  report.senders.find((sender) => sender.address === address)?.sends.find((sent) => sent.pgn === pgn)?.parts ?? [];

/** Which references a sender gives, and whether data came with each. */
const seen = (report: SurveyReport, pgn: number, address: number): string[] =>
  partsFrom(report, pgn, address).map(
    ({ kind, messages, empty }) => `${kind ?? 'depth'} ${empty < messages ? 'data' : 'no data'}`,
  );

describe('an extract of a full bus of 43 addresses (own script over the whole recording)', () => {
  const bytes = extract('full-bus.candump.log');
  const report = surveyRecording(bytes);

  test('MS-94: shows every address and nothing but 29-bit frames', () => {
    expect(report.senders).toHaveLength(43);
    expect(report).toMatchObject({ shortFrames: 0, errorFrames: 0, remoteFrames: 0, broken: 0 });
  });

  test('MS-95: both steps of the recorder’s clock are found to the microsecond and add no time', () => {
    expect(report.time?.clockSteps.map(({ jumpUs }) => jumpUs)).toEqual([-1_197_906_557_387, 1_197_905_571_421]);
  });

  test('MS-97: the time between first and last frame, which ignores the steps, is not what is told', () => {
    const times = readRecording(bytes).frames.flatMap(({ timeUs }) => timeUs ?? []);
    const naiveS = ((times.at(-1) ?? 0) - (times[0] ?? 0)) / 1e6;
    expect((report.time?.durationS ?? 0) - naiveS).toBeCloseTo((1_197_906_557_387 - 1_197_905_571_421) / 1e6, 6);
  });

  test('MS-99: 49 claims by 40 NAMEs; three senders made none', () => {
    expect(report.claims).toBe(49);
    const names = report.senders.flatMap(({ name }) => name?.hex ?? []);
    expect([names.length, new Set(names).size]).toEqual([40, 40]);
    expect(report.withoutClaim).toEqual([13, 16, 26]);
    expect(report.senders.every(({ addresses }) => addresses.length === 1)).toBe(true);
  });

  test('MS-101: six frames of long messages had lost their beginning, and none is taken for a message', () => {
    expect(report.fastPackets).toMatchObject({ orphan: 6, outOfSequence: 0, overwritten: 0, openAtEnd: 0 });
  });

  test('MS-102: two rudders on the number of none, three water temperatures on one instance, and no other clash', () => {
    expect(report.sharedInstances).toEqual([
      { pgn: 127_245, instance: 255, addresses: [16, 33] },
      { pgn: 130_316, instance: 0, kind: 0, addresses: [36, 37, 38] },
    ]);
  });

  test.each([
    [127_250, 23, ['1 data']],
    [127_250, 128, ['1 data']],
    [128_267, 15, ['depth no data']],
    [128_267, 17, ['depth no data']],
    [128_267, 18, ['depth no data']],
    [128_267, 19, ['depth no data']],
    [128_267, 36, ['depth data']],
    [128_267, 37, ['depth data']],
    [128_267, 38, ['depth data']],
    [129_026, 0, ['0 data']],
    [129_026, 20, ['0 data', '3 no data']],
    [129_026, 21, ['0 data']],
    [129_026, 28, ['0 data']],
    [129_026, 31, ['0 data']],
    [129_026, 127, ['1 data']],
    [130_306, 26, ['0 data', '2 data', '3 data']],
    [130_306, 34, ['2 data']],
    [130_306, 40, ['2 data']],
  ])('MS-103: %i from %i is known by its reference, and by whether data came with it', (pgn, address, expected) => {
    expect(seen(report, pgn, address)).toEqual(expected);
  });

  test('MS-103: one compass tells no variation, the other does', () => {
    const lastOf = (address: number) => partsFrom(report, 127_250, address)[0]?.last;
    expect(lastOf(23)).not.toHaveProperty('variation');
    expect(lastOf(128)).toHaveProperty('variation');
  });

  test('MS-103: nobody else sends any of these', () => {
    const senders = (pgn: number) =>
      report.senders.filter(({ sends }) => sends.some((sent) => sent.pgn === pgn)).map(({ address }) => address);
    expect([127_250, 128_267, 129_026, 130_306].map(senders)).toEqual([
      [23, 128],
      [15, 17, 18, 19, 36, 37, 38],
      [0, 20, 21, 28, 31, 127],
      [26, 34, 40],
    ]);
  });
});

describe('an extract of a small boat with a pilot (own script over the whole recording)', () => {
  const report = surveyRecording(extract('pilot-boat.candump.log'));

  test('MS-104: five addresses send 26 message numbers; two made a claim, none told its LEN', () => {
    expect(report.senders).toHaveLength(5);
    expect(report.byPgn).toHaveLength(26);
    expect(report.senders.filter(({ name }) => name !== undefined).map(({ address }) => address)).toEqual([0, 204]);
    expect(report.withoutClaim).toEqual([43, 116, 172]);
    expect(report.senders.filter(({ product }) => product !== undefined)).toEqual([]);
  });

  test('MS-105: every long message comes whole, the two rudders share a number, each reference is known', () => {
    expect(report.fastPackets).toMatchObject({ orphan: 0, outOfSequence: 0, overwritten: 0, openAtEnd: 0 });
    expect(report.sharedInstances).toEqual([{ pgn: 127_245, instance: 252, addresses: [172, 204] }]);
    expect(seen(report, 127_250, 204)).toEqual(['1 data']);
    expect(partsFrom(report, 127_250, 204)[0]?.last).not.toHaveProperty('variation');
    expect(seen(report, 128_267, 116)).toEqual(['depth data']);
    expect(seen(report, 129_026, 43)).toEqual(['0 data']);
    expect(seen(report, 130_306, 116)).toEqual(['2 data']);
  });
});

describe('an extract of three devices switched on, recorded without times (own script over the whole recording)', () => {
  const report = surveyRecording(extract('bench-power-up.candump.txt'));

  test('MS-106: has no duration, load or rate; 15 claims of 3 addresses, 6 requests, 2 devices of LEN 7 together', () => {
    expect(report).not.toHaveProperty('time');
    expect(report).not.toHaveProperty('load');
    expect(report).toMatchObject({ broken: 1, claims: 15, lenSum: 7 });
    expect(report.senders.map(({ address }) => address)).toEqual([0, 1, 35]);
    expect(report.senders.filter(({ product }) => product !== undefined)).toHaveLength(2);
    expect(report.requests).toEqual([
      { pgn: 60_928, count: 4 },
      { pgn: 126_996, count: 2 },
    ]);
  });
});

test('the extracts hold no text of a maker, and no number that tells one unit from all others', () => {
  for (const name of ['full-bus.candump.log', 'pilot-boat.candump.log', 'bench-power-up.candump.txt']) {
    const { senders } = surveyRecording(extract(name));
    expect(
      senders.flatMap((sender) => sender.name?.unique ?? []).every((unique) => unique > 1000 && unique < 1100),
    ).toBe(true);
    expect(senders.flatMap(({ product }) => product?.model ?? []).every((model) => /^X*$/.test(model))).toBe(true);
  }
});

describe('an extract of product information, joined by the recorder', () => {
  const report = surveyRecording(extract('product-information.csv'));

  test('MS-100: 56 messages of 38 units, whose loads add up to 66 steps of 50 mA (own script over the whole recording)', () => {
    expect(report).toMatchObject({ frames: 0, joined: 56, lenSum: 66, broken: 0 });
    expect(report.byPgn).toEqual([{ pgn: 126_996, frames: 0, messages: 56 }]);
    expect(report.senders.filter(({ product }) => product !== undefined)).toHaveLength(38);
    expect(report.load).toBeUndefined();
  });
});

describe('the shape of recordings of NMEA 0183', () => {
  test('MS-108: 171 messages of 33 ships in 183 sentences, by type (own script over the whole recording)', () => {
    const { sentences } = surveyRecording(extract('harbour-shape.log'));
    expect(sentences).toMatchObject({ sentences: 183, checksumWrong: 0, checksumAbsent: 0 });
    const types = [
      [1, 116],
      [3, 21],
      [5, 12],
      [8, 6],
      [18, 7],
      [24, 9],
    ] as const;
    expect(sentences?.ais).toEqual({
      sentences: 183,
      messages: types.map(([type, count]) => ({ formatter: 'VDM', type, count })),
      incomplete: 0,
      notDecodable: 0,
      ships: 33,
    });
  });

  test('MS-110: six kinds of sentences are there and empty throughout: they count as absent (own script over the whole recording)', () => {
    const { sentences } = surveyRecording(extract('sailing-shape.log'));
    const kinds = sentences?.kinds ?? [];
    expect(kinds).toHaveLength(15);
    const isAlways = ({ count, empty }: (typeof kinds)[number]) => empty === count;
    expect(
      kinds
        .filter(isAlways)
        .map(({ formatter }) => formatter)
        .sort(),
    ).toEqual(['GSV', 'HDM', 'HDT', 'VDR', 'WCV', 'XTE']);
    expect(kinds.filter((kind) => !isAlways(kind) && kind.empty > 0)).toEqual([]);
  });
});
