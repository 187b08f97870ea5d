import type { SourceKey } from './sources.ts';

/**
 * Parts of the work that each end in a working boat, in the order in which they are switched on. What is fitted below the
 * waterline is a part of its own, so that nothing else waits for the lift.
 */
export const workSlices = ['power', 'backbone', 'sensors', 'radio', 'displays', 'pilot', 'radar', 'hull'] as const;
export type WorkSlice = (typeof workSlices)[number];

/** The slice of a unit by the kind of its sheet; kinds that are not named here are sensors. */
export const slices: { readonly source: SourceKey; readonly byKind: Readonly<Record<string, WorkSlice>> } = {
  source: 'practice-work-order',
  byKind: {
    charger: 'power',
    inverter: 'power',
    'power-control': 'power',
    'power-monitor': 'power',
    'switch-panel': 'power',
    converter: 'backbone',
    multiplexer: 'backbone',
    gateway: 'backbone',
    router: 'backbone',
    'cellular-hub': 'backbone',
    'network-switch': 'backbone',
    recorder: 'backbone',
    ais: 'radio',
    'antenna-splitter': 'radio',
    'antenna-tuner': 'radio',
    beacon: 'radio',
    hailer: 'radio',
    'mfhf-radio': 'radio',
    'mob-unit': 'radio',
    'radio-antenna': 'radio',
    'satellite-terminal': 'radio',
    'vhf-handset': 'radio',
    'vhf-radio': 'radio',
    'weather-receiver': 'radio',
    alarm: 'displays',
    audio: 'displays',
    camera: 'displays',
    computer: 'displays',
    display: 'displays',
    instrument: 'displays',
    keypad: 'displays',
    loudspeaker: 'displays',
    tablet: 'displays',
    pilot: 'pilot',
    'pilot-computer': 'pilot',
    'pilot-head': 'pilot',
    'steering-drive': 'pilot',
    radar: 'radar',
  },
};

/** Kinds whose work touches what turns the rudder: after it the drive is checked before she leaves the berth. */
export const driveKinds: { readonly source: SourceKey; readonly kinds: readonly string[] } = {
  source: 'practice-drive-check',
  kinds: ['pilot', 'pilot-computer', 'steering-drive', 'rudder-sensor'],
};
