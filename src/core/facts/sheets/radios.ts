import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  coaxPlug,
  hears,
  listens,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const aisClassB = typicalSheet(['maker-loads', 'practice-sent-messages', 'maker-compass-distance'], {
  id: 'ais-class-b',
  name: 'AIS class B, 5 W, typical',
  kind: 'ais',
  transmits: { powerW: 5, mhz: 162, dutyPct: 2 },
  plugs: [busPlug, coaxPlug('vhf', 'so239'), coaxPlug('gnss', 'tnc'), supplyPlug],
  ports: [
    supplyPort,
    busPort(1, {
      sends: [...sends(129025, 129026, 129029), ...sends(129038, 129039, 129040, 129041, 129794, 129809, 129810)],
      hears: hears(127250),
    }),
    { id: 'vhf-rf', onPlug: 'vhf', protocol: 'coax', role: 'listen', hears: readings('ais-targets') },
    {
      id: 'gnss-rf',
      onPlug: 'gnss',
      protocol: 'coax',
      role: 'listen',
      hears: readings('position', 'course-speed-ground', 'time-date'),
    },
  ],
  turns: [
    { fromPort: 'vhf-rf', toPort: 'n2k', carries: readings('ais-targets') },
    { fromPort: 'gnss-rf', toPort: 'n2k', carries: readings('position', 'course-speed-ground', 'time-date') },
  ],
  power: [ownPower({ typicalA: 0.25, maxA: 2.5, minV: 9.6, fuseA: 5 })],
  compassSafe: safeFromCompass(0.3),
});

const vhfDscBus = typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-radio-compass-distance'], {
  id: 'vhf-dsc-bus',
  name: 'Fixed VHF with DSC and a bus port, 25 W, typical',
  kind: 'vhf-radio',
  transmits: { powerW: 25, mhz: 156.8 },
  plugs: [busPlug, coaxPlug('antenna', 'so239'), supplyPlug],
  ports: [
    supplyPort,
    busPort(1, { sends: sends(129808), hears: hears(126992, 129025, 129026, 129029) }),
    { id: 'rf', onPlug: 'antenna', protocol: 'coax', role: 'listen', hears: readings('dsc-calls', 'audio') },
  ],
  turns: [{ fromPort: 'rf', toPort: 'n2k', carries: readings('dsc-calls') }],
  power: [ownPower({ typicalA: 0.35, maxA: 6, minV: 10.8, fuseA: 10 })],
  compassSafe: safeFromCompass(0.8),
  ipCode: 'IPX7',
});

const vhfDsc0183 = typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-radio-compass-distance'], {
  id: 'vhf-dsc-0183',
  name: 'Fixed VHF with DSC and NMEA 0183, 25 W, typical',
  kind: 'vhf-radio',
  transmits: { powerW: 25, mhz: 156.8 },
  plugs: [pairPlug('data', ['in', 'out']), coaxPlug('antenna', 'so239'), supplyPlug],
  ports: [
    supplyPort,
    {
      id: 'in',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'differential',
      baud: 4800,
      role: 'listen',
      hears: listens('RMC', 'GGA', 'GLL', 'GNS', 'ZDA'),
    },
    {
      id: 'out',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'differential',
      baud: 4800,
      role: 'talk',
      sends: says(['DSC']),
    },
    { id: 'rf', onPlug: 'antenna', protocol: 'coax', role: 'listen', hears: readings('dsc-calls', 'audio') },
  ],
  turns: [{ fromPort: 'rf', toPort: 'out', carries: readings('dsc-calls') }],
  power: [ownPower({ typicalA: 0.35, maxA: 6, minV: 10.8, fuseA: 10 })],
  compassSafe: safeFromCompass(0.8),
  ipCode: 'IPX7',
});

const vhfHandheld = typicalSheet(['practice-sheet-gaps'], {
  id: 'vhf-handheld',
  name: 'Handheld VHF with position and DSC in its charger, typical',
  kind: 'vhf-radio',
  plugs: [supplyPlug],
  ports: [supplyPort],
  power: [ownPower({ typicalA: 0.5, maxA: 1, minV: 10.8, fuseA: 3 })],
  ownBattery: true,
  ipCode: 'IPX7',
});

/** Radios: AIS, fixed VHF new and old, handheld VHF. */
export const radios: readonly Sheet[] = [aisClassB, vhfDscBus, vhfDsc0183, vhfHandheld];
