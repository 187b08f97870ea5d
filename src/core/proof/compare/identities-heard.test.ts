import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedMessages } from '../../../../tests/recordings/planned-boat.ts';
import { plannedDevice } from '../../../../tests/recordings/planned-bus.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes } from '../../../../tests/recordings/write-recording.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { edits } from '../../boat/edits/index.ts';
import { readBoat } from '../../boat/read-boat.ts';
import { writeBoat } from '../../boat/write-boat.ts';
import { heardEdit } from '../../kit/heard-edit.ts';
import { identitiesHeard, takeOver } from './identities-heard.ts';
import { provedReadings } from './proved-readings.ts';

const gannet = plannedBoat('gannet');
const { boat } = gannet.index;
const devices = [...plannedMessages(gannet, 'nav')].map(([unit, said]) =>
  plannedDevice({
    ...said,
    sends: said.sends.map((one) => (unit === 'heading' && one.pgn === 127_250 ? { ...one, everyMs: 500 } : one)),
  }),
);
const report = surveyRecording(candumpBytes(recordBus({ devices, seconds: 10 })));
const heardOn = (on: Boat) =>
  identitiesHeard({ ...gannet, index: indexBoat(on) }, 'nav', { senders: report.senders, durationS: 10 });
const taken = takeOver(heardOn(boat));
const after = taken === undefined ? boat : edits['take-identities'].apply(boat, taken);

describe('a recording taken over into a boat', () => {
  test('gives each unit that is surely known its NAME, and of two alike neither', () => {
    const named = after.kit.filter(({ identity }) => identity !== undefined).map(({ id }) => id);
    expect(named).toContain('heading');
    expect(named).toContain('eng-gw-port');
    expect(named).not.toContain('instr-helm');
    expect(readBoat(writeBoat(after)).kit.length).toBe(boat.kit.length);
  });

  test('notes an interval that is not the planned one as heard, and numbers nobody had said', () => {
    const changes = after.kit.find(({ id }) => id === 'heading')?.changes ?? [];
    const [rate] = changes.filter(({ path }) => path === 'ports.n2k.sends.127250.everyMs');
    expect(rate?.how).toBe('recording');
    expect(Number(rate?.value)).toBeGreaterThan(450);
  });

  test('finds nothing more to say the second time, and overwrites nothing', () => {
    expect(takeOver(heardOn(after))).toBeUndefined();
    const other = { units: [{ unit: 'heading', identity: '0123456789abcdef' }] };
    expect(() => edits['take-identities'].apply(after, other)).toThrow('another NAME');
  });

  test('adds no unit that is aboard already, known or not to be told from its like', () => {
    const { params, takenOver, unsure, known } = heardEdit(boat, report, gannet.plan);
    // only whoever asked the others is new here
    expect(params?.units.map(({ name }) => name) ?? []).toEqual([expect.stringContaining('address 3')]);
    expect(takenOver).toEqual(taken);
    expect(unsure).toBe(2);
    expect(known).toBe(devices.length);
  });
});

test('readings heard are noted as proved, and a reading on that way then rests on proof', () => {
  const params = provedReadings(
    {
      format: 1,
      boat: '',
      wires: [],
      units: [],
      messages: [],
      strangers: [],
      findings: [],
      readings: [
        { reading: 'depth', from: 'depth-bus.n2k', at: ['mfd-helm'], must: true, state: 'heard' },
        { reading: 'heading', from: 'heading.n2k', at: ['mfd-helm'], must: true, state: 'silent' },
      ],
    },
    '2027-05-05',
  );
  expect(params).toEqual({ proved: [{ reading: 'depth', from: 'depth-bus.n2k', on: '2027-05-05' }] });
  const noted = params === undefined ? boat : edits['note-proved'].apply(boat, params);
  expect(noted.proof?.proved.length).toBe(1);
  expect(edits['remove-unit'].apply(noted, { unit: 'depth-bus' }).proof).toBeUndefined();
});
