import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  coaxPlug,
  hears,
  listenPort,
  listens,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
  supplyPlug,
  supplyPort,
  talkPort,
  typicalSheet,
} from './parts.ts';

const aisClassA = typicalSheet(['practice-sent-messages', 'maker-compass-distance', 'practice-sheet-gaps'], {
  id: 'ais-class-a',
  name: 'AIS class A, 12.5 W, with its own position antenna, typical',
  kind: 'ais',
  transmits: { powerW: 12.5, mhz: 162, dutyPct: 2 },
  plugs: [
    busPlug,
    coaxPlug('vhf', 'so239'),
    coaxPlug('gnss', 'tnc'),
    pairPlug('data', ['pilot-out', 'pilot-in']),
    pairPlug('sensors', ['heading-in']),
    supplyPlug,
  ],
  ports: [
    supplyPort,
    busPort(1, {
      sends: sends(129025, 129026, 129029, 129038, 129039, 129040, 129041, 129794, 129809, 129810),
      hears: hears(127250, 127251),
    }),
    { id: 'vhf-rf', onPlug: 'vhf', protocol: 'coax', role: 'listen', hears: readings('ais-targets') },
    {
      id: 'gnss-rf',
      onPlug: 'gnss',
      protocol: 'coax',
      role: 'listen',
      hears: readings('position', 'course-speed-ground', 'time-date'),
    },
    talkPort('pilot-out', { baud: 38_400, sends: says(['VDM', 'VDO']) }),
    listenPort('pilot-in', { baud: 38_400, hears: [] }),
    listenPort('heading-in', { onPlug: 'sensors', baud: 38_400, hears: listens('HDT', 'ROT', 'THS') }),
  ],
  turns: [
    { fromPort: 'vhf-rf', toPort: 'n2k', carries: readings('ais-targets') },
    { fromPort: 'vhf-rf', toPort: 'pilot-out', carries: readings('ais-targets') },
    { fromPort: 'gnss-rf', toPort: 'n2k', carries: readings('position', 'course-speed-ground', 'time-date') },
  ],
  power: [ownPower({ typicalA: 1, maxA: 4, minV: 10.8, maxV: 32, fuseA: 10 })],
  compassSafe: safeFromCompass(0.3),
});

const aisReceiver = typicalSheet(['practice-loads', 'practice-sent-messages', 'maker-compass-distance'], {
  id: 'ais-receiver',
  name: 'AIS receiver for the bus and NMEA 0183, sends nothing itself, typical',
  kind: 'ais',
  plugs: [busPlug, coaxPlug('vhf', 'so239'), pairPlug('data', ['out'])],
  ports: [
    busPort(2, { sends: sends(129038, 129039, 129040, 129041, 129794, 129809, 129810) }),
    { id: 'vhf-rf', onPlug: 'vhf', protocol: 'coax', role: 'listen', hears: readings('ais-targets') },
    talkPort('out', { baud: 38_400, sends: says(['VDM']) }),
  ],
  turns: [
    { fromPort: 'vhf-rf', toPort: 'n2k', carries: readings('ais-targets') },
    { fromPort: 'vhf-rf', toPort: 'out', carries: readings('ais-targets') },
  ],
  power: [{ port: 'n2k', typical: 0.05, max: 0.1, unit: 'A', behaves: 'current', minV: 9, maxV: 16 }],
  compassSafe: safeFromCompass(0.3),
});

const vhfAisBus = typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-radio-compass-distance'], {
  id: 'vhf-ais-bus',
  name: 'Fixed VHF with DSC, AIS receiver and a socket for a second handset, 25 W, typical',
  kind: 'vhf-radio',
  transmits: { powerW: 25, mhz: 156.8 },
  plugs: [
    busPlug,
    coaxPlug('antenna', 'so239'),
    { id: 'second-handset', connector: 'maker-d-8', gender: 'female' },
    supplyPlug,
  ],
  ports: [
    supplyPort,
    busPort(1, {
      sends: sends(129038, 129039, 129040, 129041, 129794, 129808, 129809, 129810),
      hears: hears(126992, 129025, 129026, 129029),
    }),
    {
      id: 'rf',
      onPlug: 'antenna',
      protocol: 'coax',
      role: 'listen',
      hears: readings('ais-targets', 'dsc-calls', 'audio'),
    },
    { id: 'handset', onPlug: 'second-handset', protocol: 'audio', role: 'talk', sends: readings('audio', 'dsc-calls') },
  ],
  turns: [
    { fromPort: 'rf', toPort: 'n2k', carries: readings('ais-targets', 'dsc-calls') },
    { fromPort: 'rf', toPort: 'handset', carries: readings('audio', 'dsc-calls') },
  ],
  power: [ownPower({ typicalA: 0.6, maxA: 6, minV: 10.8, fuseA: 10 })],
  compassSafe: safeFromCompass(0.8),
  ipCode: 'IPX7',
});

const vhfRemoteHandset = typicalSheet(['practice-compass-distance', 'practice-sheet-gaps'], {
  id: 'vhf-remote-handset',
  name: 'Second handset of a fixed VHF, typical',
  kind: 'vhf-handset',
  plugs: [{ id: 'cable', connector: 'maker-d-8', gender: 'male' }],
  ports: [{ id: 'link', onPlug: 'cable', protocol: 'audio', role: 'listen', hears: readings('audio', 'dsc-calls') }],
  compassSafe: safeFromCompass(1),
  ipCode: 'IPX7',
});

const antennaSplitter = typicalSheet(['practice-sheet-gaps'], {
  id: 'antenna-splitter',
  name: 'Splitter that lets VHF and AIS share one antenna, fails safe to the VHF, typical',
  kind: 'antenna-splitter',
  plugs: [coaxPlug('antenna', 'so239'), coaxPlug('to-vhf', 'so239'), coaxPlug('to-ais', 'so239'), supplyPlug],
  ports: [
    supplyPort,
    {
      id: 'rf',
      onPlug: 'antenna',
      protocol: 'coax',
      role: 'listen',
      hears: readings('ais-targets', 'dsc-calls', 'audio'),
    },
    { id: 'vhf-rf', onPlug: 'to-vhf', protocol: 'coax', role: 'talk', sends: readings('dsc-calls', 'audio') },
    { id: 'ais-rf', onPlug: 'to-ais', protocol: 'coax', role: 'talk', sends: readings('ais-targets') },
  ],
  turns: [
    { fromPort: 'rf', toPort: 'vhf-rf', carries: readings('dsc-calls', 'audio') },
    { fromPort: 'rf', toPort: 'ais-rf', carries: readings('ais-targets') },
  ],
  power: [ownPower({ typicalA: 0.1, maxA: 0.15, minV: 9.6, fuseA: 1 })],
});

const navtex0183 = typicalSheet(['practice-sheet-gaps'], {
  id: 'navtex-0183',
  name: 'Navtex receiver with its antenna, NMEA 0183 position in, typical',
  kind: 'weather-receiver',
  plugs: [pairPlug('data', ['in']), supplyPlug],
  ports: [supplyPort, listenPort('in', { hears: listens('GGA', 'GLL', 'RMC', 'ZDA') })],
  power: [ownPower({ typicalA: 0.2, maxA: 0.5, minV: 10.8, fuseA: 1 })],
  compassSafe: safeFromCompass(0.3),
});

const mfhfDsc = typicalSheet(['practice-sheet-gaps', 'practice-radio-compass-distance'], {
  id: 'mfhf-dsc',
  name: 'MF/HF radio with DSC, 150 W, NMEA 0183 position in, typical',
  kind: 'mfhf-radio',
  transmits: { powerW: 150, mhz: 27.5 },
  plugs: [pairPlug('data', ['in', 'out']), coaxPlug('antenna', 'so239'), supplyPlug],
  ports: [
    supplyPort,
    listenPort('in', { hears: listens('GGA', 'GLL', 'RMC', 'ZDA') }),
    talkPort('out', { sends: says(['DSC']) }),
    { id: 'rf', onPlug: 'antenna', protocol: 'coax', role: 'listen', hears: readings('dsc-calls', 'audio') },
  ],
  turns: [{ fromPort: 'rf', toPort: 'out', carries: readings('dsc-calls') }],
  power: [ownPower({ typicalA: 2, maxA: 28, minV: 10.8, fuseA: 40 })],
  compassSafe: safeFromCompass(0.8),
});

const mfhfTuner = typicalSheet(['practice-sheet-gaps'], {
  id: 'mfhf-tuner',
  name: 'Antenna tuner of an MF/HF radio, fed by the radio, typical',
  kind: 'antenna-tuner',
  plugs: [coaxPlug('coax', 'so239')],
  ports: [{ id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'talk', sends: readings('dsc-calls', 'audio') }],
  ipCode: 'IP66',
});

/** A unit with its own battery and no wires. */
const alone = (id: string, name: string): Sheet =>
  typicalSheet(['practice-sheet-gaps'], { id, name, kind: 'beacon', plugs: [], ports: [], ipCode: 'IPX7' });

const hailer = typicalSheet(['practice-compass-distance', 'practice-sheet-gaps'], {
  id: 'hailer-fog',
  name: 'Loud hailer and fog signal, typical',
  kind: 'hailer',
  plugs: [{ id: 'speaker', connector: 'leads', gender: 'none' }, supplyPlug],
  ports: [supplyPort, { id: 'horn', onPlug: 'speaker', protocol: 'audio', role: 'talk', sends: readings('audio') }],
  power: [ownPower({ typicalA: 0.3, maxA: 5, minV: 10.8, fuseA: 7.5 })],
  compassSafe: safeFromCompass(1),
});

const vhfWhip2m = typicalSheet(['practice-sheet-gaps', 'practice-whip-gain'], {
  id: 'vhf-whip-2m',
  name: '2.4 m whip for VHF or AIS, 6 dB, typical',
  kind: 'radio-antenna',
  antenna: { for: ['voice', 'ais'], gainDbi: 6, lengthM: 2.4 },
  plugs: [coaxPlug('coax', 'so239')],
  ports: [
    { id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'talk', sends: readings('ais-targets', 'dsc-calls', 'audio') },
  ],
});

/** Radios beside the plain ones: AIS of other classes, handsets, HF, receivers, beacons, hailer. */
export const shipRadios: readonly Sheet[] = [
  aisClassA,
  aisReceiver,
  vhfAisBus,
  vhfRemoteHandset,
  antennaSplitter,
  navtex0183,
  mfhfDsc,
  mfhfTuner,
  alone('beacon-distress', 'Distress beacon with its own battery, typical'),
  alone('beacon-mob', 'Man-overboard beacon worn on a lifejacket, typical'),
  hailer,
  vhfWhip2m,
];
