import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inventedDevices, recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { littleEndian } from '../../../../tests/recordings/payloads.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes } from '../../../../tests/recordings/write-recording.ts';
import { layoutProblems } from '../../backbone/layout-problems.ts';
import { readBoat } from '../../boat/read-boat.ts';
import { writeBoat } from '../../boat/write-boat.ts';
import { draftBoat } from './draft-boat.ts';

const recorded = (devices = inventedDevices) => surveyRecording(candumpBytes(recordBus({ devices, seconds: 20 })));
const boat = draftBoat(recorded());

const portOf = (kit: string, from = boat) => {
  const sheet = from.kit.find(({ id }) => id === kit)?.sheet;
  const port = from.sheets.find(({ id }) => id === sheet)?.ports[0];
  if (port === undefined) throw new Error(`No port of ${kit}.`);
  return port;
};
const near = (everyMs: number) => expect.toSatisfy((value: number) => Math.abs(value - everyMs) < everyMs / 20);

/** One sender alone beside the display that asks, which is unit 1. */
const oneSender = (pgn: number, payload: (count: number) => Uint8Array) =>
  recorded([{ address: 9, sends: [{ pgn, priority: 5, everyMs: 500, payload }] }]);

describe('the boat drafted from a recording', () => {
  test('is a boat file that can be read again', () => {
    expect(readBoat(writeBoat(boat))).toEqual(boat);
  });

  test('has one unit a NAME, known by it, and says which one showed none', () => {
    expect(boat.kit.map(({ id, name, identity }) => [id, name, identity?.length])).toEqual([
      ['display-1', 'display, unit 1', 16],
      ['position-antenna-2', 'position sensor, unit 2', 16],
      ['heading-sensor-3', 'attitude sensor, unit 3', 16],
      ['depth-sensor-4', 'depth, speed and temperature sensor, unit 4', 16],
      ['depth-sensor-5', 'depth, speed and temperature sensor, unit 5', 16],
      ['battery-monitor-6', 'battery monitor, unit 6', 16],
      ['battery-monitor-7', 'battery monitor, unit 7', 16],
      ['tank-adapter-8', 'tank sender, unit 8', 16],
      ['wind-sensor-9', 'wind sensor at address 77, no claim seen, unit 9', undefined],
    ]);
  });

  test('sends what was recorded, as often as it was, without the messages that only keep the bus going', () => {
    expect(portOf('position-antenna-2').sends).toEqual([
      { pgn: 129_025, everyMs: near(100) },
      { pgn: 129_026, everyMs: near(250) },
      { pgn: 129_029, everyMs: near(1000) },
      { pgn: 129_540, everyMs: near(1000) },
    ]);
    expect(portOf('wind-sensor-9').sends).toEqual([{ pgn: 130_306, everyMs: near(100) }]);
  });

  test('keeps instances apart, and says that both tanks hold fuel', () => {
    expect(portOf('tank-adapter-8').sends).toEqual([
      { pgn: 127_505, instance: 0, everyMs: near(2500) },
      { pgn: 127_505, instance: 1, everyMs: near(2500) },
      { reading: 'fuel-level', instance: 0, everyMs: near(2500) },
      { reading: 'fuel-level', instance: 1, everyMs: near(2500) },
    ]);
  });

  test('leaves out depth that came without data, and says so', () => {
    expect(portOf('depth-sensor-4').sends?.map(({ pgn }) => pgn)).toContain(128_267);
    expect(portOf('depth-sensor-5').sends?.map(({ pgn }) => pgn)).not.toContain(128_267);
    expect(boat.sheets[4]?.sourceNote).toContain('without data: 128267');
  });

  test('says what the reference of a heading and the offset of a depth were set to', () => {
    const noteOf = (unit: number) => boat.sheets[unit - 1]?.sourceNote;
    expect(noteOf(3)).toContain('Its heading was magnetic.');
    expect(noteOf(4)).toContain('Its depth offset was 1.45 m to the keel.');
    expect(noteOf(5)).not.toContain('offset');
    const unset = oneSender(128_267, (n) => littleEndian([n & 0xff, 1], [900, 4], [0, 2], [0xff, 1]));
    expect(draftBoat(unset).sheets[1]?.sourceNote).toContain('Its depth offset was not set.');
  });

  test('carries LEN where the device told it', () => {
    expect(portOf('position-antenna-2').len).toBe(3);
    expect(portOf('display-1')).not.toHaveProperty('len');
    expect(portOf('tank-adapter-8')).not.toHaveProperty('len');
  });

  test('has a feed, so that a layout of its bus can be looked for', () => {
    const [problem] = layoutProblems(boat);
    expect(problem?.devices).toHaveLength(boat.kit.length);
    expect(problem?.feed.mv).toBeGreaterThan(9000);
    expect(problem?.feed.reach).toHaveLength(1);
  });

  test('shows no text of a maker and no number of a unit outside its identity', () => {
    const text = JSON.stringify(boat);
    for (const word of ['POSITION SENSOR', 'COMPASS', 'BATTERY MONITOR', '000042', '1.2.3']) {
      expect(text).not.toContain(word);
    }
  });

  test('a sensor that sends true wind only is not drafted with apparent wind', () => {
    const trueWind = oneSender(130_306, (n) =>
      littleEndian([n & 0xff, 1], [772, 2], [48_869, 2], [0xfb, 1], [0xffff, 2]),
    );
    const sends = portOf('wind-sensor-2', draftBoat(trueWind)).sends;
    expect(sends).toEqual([
      { pgn: 130_306, everyMs: near(500) },
      { reading: 'wind-true', everyMs: near(500) },
    ]);
  });

  test('the temperature of an engine room is not drafted as that of the sea', () => {
    const engineRoom = oneSender(130_316, (n) =>
      littleEndian([n & 0xff, 1], [0, 1], [3, 1], [288_150, 3], [0xffff, 2]),
    );
    expect(portOf('unknown-2', draftBoat(engineRoom)).sends).toEqual([]);
  });

  test('a rudder of no instance is drafted without one', () => {
    const rudder = oneSender(127_245, () => littleEndian([252, 1], [0xff, 1], [0x7fff, 2], [100, 2], [0xffff, 2]));
    expect(portOf('rudder-sensor-2', draftBoat(rudder)).sends).toEqual([{ pgn: 127_245, everyMs: near(500) }]);
  });

  test('messages sent in bunches are drafted at their mean interval', () => {
    const twins = [0, 1].map(() => ({
      pgn: 129_038,
      priority: 4,
      everyMs: 1000,
      payload: () => new Uint8Array(28),
    }));
    const sends = portOf('ais-2', draftBoat(recorded([{ address: 9, sends: twins }]))).sends;
    expect(sends).toEqual([{ pgn: 129_038, everyMs: near(510) }]);
  });

  test('a damaged number beyond those of the bus is left out', () => {
    const bytes = candumpBytes([{ timeUs: 1, id: 0x1bf0_1405, data: new Uint8Array(8) }]);
    expect(portOf('unknown-1', draftBoat(surveyRecording(bytes))).sends).toEqual([]);
  });

  test('a recording without times gives messages without intervals', () => {
    const timeless = surveyRecording(candumpBytes(recordBus({ seconds: 5 }), { style: 'old-columns' }));
    expect(portOf('wind-sensor-9', draftBoat(timeless)).sends).toEqual([{ pgn: 130_306 }]);
  });

  test('an empty recording gives a boat without kit that can be read again', () => {
    const empty = draftBoat(surveyRecording(new Uint8Array(0)));
    expect(empty.kit).toEqual([]);
    expect(readBoat(writeBoat(empty))).toEqual(empty);
  });

  test('whatever the bytes of a recording say, the draft can be read again', () => {
    const sound = candumpBytes(recordBus({ seconds: 3 }).slice(0, 400));
    const hit = fc.tuple(fc.nat(sound.length - 1), fc.constantFrom(...'0123456789ABCDEF'.split('')));
    fc.assert(
      fc.property(fc.array(hit, { maxLength: 300 }), (hits) => {
        const bytes = sound.slice();
        for (const [at, digit] of hits) bytes[at] = digit.charCodeAt(0);
        const drafted = draftBoat(surveyRecording(bytes));
        expect(readBoat(writeBoat(drafted))).toEqual(drafted);
      }),
      { numRuns: 40 },
    );
  });
});
