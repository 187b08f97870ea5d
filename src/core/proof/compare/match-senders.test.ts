import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type InventedDevice, recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedDevices } from '../../../../tests/recordings/planned-boat.ts';
import { plannedDevice } from '../../../../tests/recordings/planned-bus.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes } from '../../../../tests/recordings/write-recording.ts';
import type { SurveySender } from '../survey/survey-report.ts';
import { matchSenders, unitsOnBus } from './match-senders.ts';

const gannet = plannedBoat('gannet');
const units = unitsOnBus(gannet, 'nav');
const devices = plannedDevices(gannet, 'nav');

const sendersOf = (heard: readonly InventedDevice[]): readonly SurveySender[] =>
  surveyRecording(candumpBytes(recordBus({ devices: heard, seconds: 6 }))).senders;

const unitAt = new Map([...devices].map(([unit, { address }]) => [address, unit]));

describe('finding the planned units among those heard', () => {
  test('everything that does as planned is found, and nobody is left over', () => {
    const senders = sendersOf([...devices.values()]);
    const { matches, silent, strangers } = matchSenders(units, senders);
    expect(silent).toEqual([]);
    expect(strangers).toEqual([]);
    for (const { unit, senders: own, how, orElse } of matches) {
      const heard = unitAt.get(senders[own[0] ?? -1]?.address ?? -1);
      expect(how === 'sure' ? [unit] : [unit, ...orElse], `${unit} ${how}`).toContain(heard);
      expect(['sure', 'alike']).toContain(how);
    }
  });

  test('two instruments planned alike are found, and it is said that either may be meant', () => {
    const { matches } = matchSenders(units, sendersOf([...devices.values()]));
    expect(matches.find(({ unit }) => unit === 'instr-helm')).toMatchObject({ how: 'alike', orElse: ['instr-fly'] });
  });

  test('engine gateways are told apart by the number of their engine', () => {
    const { matches } = matchSenders(units, sendersOf([...devices.values()]));
    expect(matches.find(({ unit }) => unit === 'eng-gw-port')?.how).toBe('sure');
  });

  test('a NAME in the boat file counts before everything else', () => {
    const senders = sendersOf([...devices.values()]);
    const odd = senders.findIndex(({ address }) => unitAt.get(address ?? -1) === 'gnss');
    const identity = senders[odd]?.name?.hex ?? '';
    const named = units.map((unit) => (unit.unit === 'shunt' ? { ...unit, identity } : unit));
    const { matches, silent } = matchSenders(named, senders);
    expect(matches.find(({ unit }) => unit === 'shunt')).toEqual({
      unit: 'shunt',
      senders: [odd],
      how: 'identity',
      orElse: [],
    });
    expect(silent).toEqual(['gnss']);
  });

  test('a sender nobody planned is left over', () => {
    const charger = plannedDevice({
      kind: 'charger',
      address: 200,
      sends: [{ pgn: 127_507, everyMs: 1500 }],
    });
    const senders = sendersOf([...devices.values(), charger]);
    const { strangers } = matchSenders(units, senders);
    expect(strangers.map(({ sender }) => senders[sender]?.address)).toEqual([200]);
  });

  test('a second function of one box belongs to its unit', () => {
    const gnss = devices.get('gnss');
    const second: InventedDevice = {
      ...plannedDevice({ kind: 'clock', address: 201, sends: [] }),
      ...(gnss?.name === undefined ? {} : { name: { ...gnss.name, functionCode: 190, classCode: 80 } }),
      sends: [],
    };
    const senders = sendersOf([...devices.values(), second]);
    const { matches, strangers } = matchSenders(units, senders);
    expect(strangers).toEqual([]);
    expect(matches.find(({ unit }) => unit === 'gnss')?.senders.map((at) => senders[at]?.address)).toEqual([
      gnss?.address,
      201,
    ]);
  });

  test('whichever units are off, exactly those are missed, and the order of senders moves nothing', () => {
    const senders = sendersOf([...devices.values()]);
    const alike = new Set(['instr-fly', 'instr-helm']);
    const told = (names: readonly string[]): string[] =>
      names.map((unit) => (alike.has(unit) ? 'instrument' : unit)).sort();
    fc.assert(
      fc.property(fc.subarray([...devices.keys()]), fc.boolean(), (off, turned) => {
        const heard = senders.filter(({ address }) => !off.includes(unitAt.get(address ?? -1) ?? ''));
        const { silent, strangers } = matchSenders(units, turned ? heard.toReversed() : heard);
        expect(told(silent)).toEqual(told(off));
        expect(strangers).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
