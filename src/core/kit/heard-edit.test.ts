import { describe, expect, test } from 'vitest';
import { inventedDevices, recordBus } from '../../../tests/recordings/invented-bus.ts';
import { surveyRecording } from '../../../tests/recordings/survey-recording.ts';
import { candumpBytes } from '../../../tests/recordings/write-recording.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { edits } from '../boat/edits/index.ts';
import { readBoat } from '../boat/read-boat.ts';
import { writeBoat } from '../boat/write-boat.ts';
import { heardIn } from '../proof/survey/heard.ts';
import { boatFromPattern } from '../starting/boat-from-pattern.ts';
import { heardEdit } from './heard-edit.ts';

const report = surveyRecording(candumpBytes(recordBus({ devices: inventedDevices, seconds: 20 })));
const bare = boatFromPattern({ pattern: 'sloop-deck-stepped', name: 'Recorded', lengthM: 9.4 });
const withHeard = (boat: Boat): Boat => {
  const { params } = heardEdit(boat, report);
  return params === undefined ? boat : edits['add-heard'].apply(boat, params);
};

describe('what a recording heard, put aboard a boat', () => {
  const boat = withHeard(bare);

  test('gives a boat file that can be read again, with every unit on her backbone', () => {
    expect(readBoat(writeBoat(boat)).kit.length).toBe(9);
    expect(layoutProblems(boat)[0]?.devices.length).toBe(9);
  });

  test('stands where such units usually stand', () => {
    expect(Object.fromEntries(boat.kit.map(({ id, place }) => [id, place]))).toMatchObject({
      'display-1': 'helm',
      'position-antenna-2': 'stern-rail',
      'depth-sensor-4': 'sensor-well',
      'wind-sensor-9': 'masthead',
      'battery-monitor-6': 'battery-box',
    });
  });

  test('leaves alone the units whose NAME she knows, and doubles only those that showed none', () => {
    const again = heardEdit(boat, report);
    expect([again.added, again.known]).toEqual([1, 8]);
    const twice = withHeard(boat);
    expect(twice.kit.filter(({ id }) => id.startsWith('wind-sensor')).map(({ id }) => id)).toEqual([
      'wind-sensor-9',
      'wind-sensor-9-2',
    ]);
    expect(readBoat(writeBoat(twice)).kit.length).toBe(10);
  });

  test('makes a backbone on a boat that has none', () => {
    const { feeds: _feeds, ...circuit } = bare.supply.panels[0]?.circuits[0] ?? {
      id: 'c',
      ratingA: 3,
      kind: 'fuse' as const,
      feeds: [],
    };
    const none: Boat = {
      ...bare,
      buses: [],
      supply: {
        ...bare.supply,
        panels: bare.supply.panels.map((panel) => ({ ...panel, circuits: [{ ...circuit, feeds: [] }] })),
      },
    };
    expect(withHeard(none).buses.length).toBe(1);
  });

  test('is refused where there is no place, or where nobody spoke', () => {
    expect(() => heardEdit({ ...bare, places: [], ways: [] }, report)).toThrow('This boat has no place yet.');
    expect(() => heardEdit(bare, surveyRecording(new TextEncoder().encode('(0.0) can0 1F80102A#R\n')))).toThrow(
      'Nobody spoke in this recording.',
    );
  });
});

test('what is shown of a recording holds no serial and no maker’s text', () => {
  const shown = JSON.stringify(heardIn(report));
  for (const { product, name } of report.senders) {
    for (const secret of [product?.serial, product?.model, name?.hex]) {
      if (secret !== undefined && secret !== '') expect(shown).not.toContain(secret);
    }
  }
  expect(heardIn(report).units.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
});
