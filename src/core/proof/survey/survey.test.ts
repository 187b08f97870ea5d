import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inventedDevices, type RecordedFrame, recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { namePayload } from '../../../../tests/recordings/payloads.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes, garbage, pcapBytes } from '../../../../tests/recordings/write-recording.ts';
import { UserError } from '../../boat/user-error.ts';
import { buildCanId } from '../readers/can-id.ts';
import { startSurvey } from './survey.ts';
import type { SurveyReport, SurveySender } from './survey-report.ts';

const bus = recordBus({ seconds: 20 });
const report = surveyRecording(candumpBytes(bus));

const senderAt = (found: SurveyReport, address: number): SurveySender => {
  const sender = found.senders.find((one) => one.address === address);
  if (sender === undefined) throw new Error(`No sender at ${address}.`);
  return sender;
};
const sentBy = (found: SurveyReport, address: number, pgn: number) =>
  senderAt(found, address).sends.find((sent) => sent.pgn === pgn);

describe('the survey of an invented bus', () => {
  test('counts every frame, and each fast packet as one message', () => {
    expect(report.frames).toBe(bus.length);
    expect(report.byPgn.find(({ pgn }) => pgn === 129_540)).toEqual({ pgn: 129_540, frames: 440, messages: 20 });
    expect(report.fastPackets).toMatchObject({ orphan: 0, outOfSequence: 0, overwritten: 0, openAtEnd: 0 });
    expect(report.byPgn.reduce((sum, { frames }) => sum + frames, 0)).toBe(bus.length);
  });

  test('knows every device by its NAME and lists the one that made no claim', () => {
    expect(report.claims).toBe(8);
    expect(report.senders.map(({ address }) => address)).toEqual([3, 20, 35, 36, 37, 50, 51, 52, 77]);
    expect(report.withoutClaim).toEqual([77]);
    expect(senderAt(report, 20).name).toMatchObject({ classCode: 60, functionCode: 145, unique: 11 });
  });

  test('adds up LEN and tells who left it open', () => {
    expect(report.lenSum).toBe(3 + 2 + 1 + 1 + 1 + 1);
    expect(senderAt(report, 3).product).not.toHaveProperty('len');
    expect(senderAt(report, 52).product).toBeUndefined();
  });

  test('measures how often each message comes', () => {
    expect(sentBy(report, 35, 127_250)?.medianMs).toBeCloseTo(100, 0);
    expect(sentBy(report, 20, 129_029)?.medianMs).toBeCloseTo(1000, 0);
    expect(Math.round((sentBy(report, 50, 127_508)?.medianMs ?? 0) / 50) * 50).toBe(1500);
  });

  test('measures each instance by itself: two tanks every 2.5 s are not one every 1.25 s', () => {
    const tanks = sentBy(report, 52, 127_505);
    expect(
      tanks?.parts.map(({ instance, kind, medianMs }) => [instance, kind, Math.round((medianMs ?? 0) / 100) * 100]),
    ).toEqual([
      [0, 0, 2500],
      [1, 0, 2500],
    ]);
    expect(tanks?.medianMs).toBeLessThan(2500);
  });

  test('finds two battery monitors on one instance, and two temperatures on another', () => {
    expect(report.sharedInstances).toEqual([
      { pgn: 127_508, instance: 1, addresses: [50, 51] },
      { pgn: 130_316, instance: 0, kind: 0, addresses: [36, 37] },
    ]);
  });

  test('tells a depth sounder without echo from one with depth', () => {
    expect(sentBy(report, 36, 128_267)?.parts[0]).toMatchObject({ messages: 20, empty: 0 });
    expect(sentBy(report, 37, 128_267)?.parts[0]).toMatchObject({ messages: 20, empty: 20 });
  });

  test('lists what was asked for', () => {
    expect(report.requests).toEqual([
      { pgn: 60_928, count: 1 },
      { pgn: 126_996, count: 1 },
    ]);
  });

  test('says the same of text and pcap, cut into pieces anywhere', () => {
    expect(surveyRecording(pcapBytes(bus), 999)).toEqual(report);
    expect(surveyRecording(candumpBytes(bus), 777)).toEqual(report);
  });

  test('load lies between unstuffed and worst, and the busiest second is no emptier than the mean', () => {
    const { bits, load, time } = report;
    expect(bits.exact).toBeGreaterThan(bits.unstuffed);
    expect(bits.exact).toBeLessThan(bits.worst);
    expect(load?.exactPct).toBeCloseTo(bits.exact / (time?.durationS ?? 1) / 2500, 6);
    expect(load?.busiest.exactPct).toBeGreaterThan(load?.exactPct ?? 100);
  });

  test('a recording without times has no duration, load or rate', () => {
    const timeless = surveyRecording(candumpBytes(bus, { style: 'old-angle' }));
    expect(timeless).not.toHaveProperty('time');
    expect(timeless).not.toHaveProperty('load');
    expect(sentBy(timeless, 35, 127_250)).not.toHaveProperty('medianMs');
    expect(timeless.bits).toEqual(report.bits);
  });
});

describe('a survey that has to bear with the recording', () => {
  test('a clock that jumps two weeks back and forth again adds no time', () => {
    const jumped = bus.map((frame, at) => (at < 500 || at > 900 ? frame : { ...frame, timeUs: frame.timeUs - 1.2e12 }));
    const found = surveyRecording(candumpBytes(jumped));
    const lostUs = [500, 901].reduce((sum, at) => sum + (bus[at]?.timeUs ?? 0) - (bus[at - 1]?.timeUs ?? 0), 0);
    expect(found.time?.clockSteps.map(({ atFrame }) => atFrame)).toEqual([500, 901]);
    expect(found.time?.durationS).toBeCloseTo((report.time?.durationS ?? 0) - lostUs / 1e6, 6);
  });

  test('lines that are no frame are counted and change nothing else', () => {
    const bytes = candumpBytes(bus);
    const lineEnd = bytes.indexOf(10, 3000) + 1;
    const noise = garbage('# note\nnot a frame\n(1700000000.5) can0 09F8\n\n');
    const mixed = Uint8Array.from([...bytes.subarray(0, lineEnd), ...noise, ...bytes.subarray(lineEnd)]);
    expect(surveyRecording(mixed)).toEqual({ ...report, broken: 2, brokenAt: expect.any(Array) });
  });

  test('a lost frame costs its message and is counted', () => {
    const at = bus.findIndex(({ id, data }) => ((id >>> 8) & 0x3_ffff) === 129_029 && (data[0] ?? 0) % 32 === 3);
    const found = surveyRecording(candumpBytes(bus.filter((_frame, index) => index !== at)));
    expect(found.fastPackets).toMatchObject({ outOfSequence: 1, orphan: 2 });
    expect(sentBy(found, 20, 129_029)?.messages).toBe(19);
  });

  test('a device that moves to another address stays one device', () => {
    const compass = inventedDevices.find(({ address }) => address === 35)?.name;
    if (compass === undefined) throw new Error('The compass has a NAME.');
    const moved = bus.flatMap((frame, at): RecordedFrame[] => {
      if (at < 1000 || (frame.id & 0xff) !== 35) return [frame];
      return [{ ...frame, id: frame.id - 35 + 90 }];
    });
    const timeUs = moved[999]?.timeUs ?? 0;
    const claimId = buildCanId({ priority: 6, pgn: 60_928, destination: 255, source: 90 });
    moved.splice(1000, 0, { timeUs, id: claimId, data: namePayload(compass) });
    const found = surveyRecording(candumpBytes(moved));
    expect(senderAt(found, 90)).toMatchObject({ addresses: [35, 90], claims: 2, product: { len: 2 } });
    expect(found.senders).toHaveLength(9);
    expect(sentBy(found, 90, 127_250)?.messages).toBe(sentBy(report, 35, 127_250)?.messages);
  });

  test('a device that can claim no address is told without one', () => {
    const claimId = buildCanId({ priority: 6, pgn: 60_928, destination: 255, source: 254 });
    const name = namePayload({ unique: 99, makerCode: 2009, functionCode: 130, classCode: 120 });
    const found = surveyRecording(candumpBytes([...bus, { timeUs: bus.at(-1)?.timeUs ?? 0, id: claimId, data: name }]));
    const lost = found.senders.filter(({ address }) => address === undefined);
    expect(lost).toMatchObject([{ addresses: [], claims: 1, frames: 1 }]);
  });

  test('an empty recording gives an empty report', () => {
    expect(surveyRecording(new Uint8Array(0))).toMatchObject({ frames: 0, senders: [], byPgn: [], lenSum: 0 });
  });

  test('any damage to a recording gives a report or a refusal, in memory that stays flat', () => {
    const sound = candumpBytes(bus.slice(0, 200));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(sound.length - 1), fc.integer({ min: 0, max: 255 })), { maxLength: 60 }),
        (hits) => {
          const bytes = sound.slice();
          for (const [at, value] of hits) bytes[at] = value;
          try {
            const found = surveyRecording(bytes, 500);
            expect(found.senders.length).toBeLessThanOrEqual(300);
            expect(found.frames).toBeLessThanOrEqual(200);
          } catch (error) {
            expect(error).toBeInstanceOf(UserError);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a recording of nothing but new NAMEs and new numbers is cut down to what a bus can hold', () => {
    const frames = Array.from({ length: 6000 }, (_unused, at): RecordedFrame[] => {
      const claim = buildCanId({ priority: 6, pgn: 60_928, destination: 255, source: at % 254 });
      const odd = buildCanId({ priority: 6, pgn: 0x1_f000 + (at % 4096), destination: 255, source: 7 });
      const name = namePayload({ unique: at, makerCode: 2009, functionCode: 130, classCode: 120 });
      return [
        { timeUs: at, id: claim, data: name },
        { timeUs: at, id: odd, data: new Uint8Array(8) },
      ];
    }).flat();
    const found = surveyRecording(pcapBytes(frames));
    expect(found.senders.filter(({ name }) => name !== undefined)).toHaveLength(1024);
    expect(found.leftOut).toBeGreaterThan(0);
    expect(found.frames).toBe(12_000);
  });

  test('a recording in which every sender says everything, under every instance, does not fill the memory', () => {
    const survey = startSurvey();
    const data = new Uint8Array(8);
    const frame = { timeUs: undefined, id: 0, extended: true, error: false, remote: false, length: 8, data };
    const numbers = [
      127_245,
      127_488,
      127_505,
      127_508,
      130_312,
      130_316,
      ...Array.from({ length: 60 }, (_unused, at) => 65_280 + at),
    ];
    for (let source = 0; source < 250; source += 1)
      for (const pgn of numbers)
        for (let instance = 0; instance < 8; instance += 1) {
          data.fill(instance);
          survey.onFrame({ ...frame, id: buildCanId({ priority: 6, pgn, destination: 255, source }) });
        }
    const found = survey.report();
    const records = found.senders.reduce((sum, { sends }) => sum + sends.length, 0);
    const parts = found.senders.reduce(
      (sum, { sends }) => sum + sends.reduce((more, one) => more + one.parts.length, 0),
      0,
    );
    expect([records <= 8192, parts <= 16_384]).toEqual([true, true]);
    expect(found.leftOut).toBeGreaterThan(0);
    expect(found.frames).toBe(250 * numbers.length * 8);
  });
});
