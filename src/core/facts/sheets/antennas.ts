import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  coaxPlug,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
  typicalSheet,
} from './parts.ts';

const gnssAntennaBus = typicalSheet(['maker-loads', 'practice-sent-messages'], {
  id: 'gnss-antenna-bus',
  name: '10 Hz position antenna for the bus, typical',
  kind: 'position-antenna',
  antenna: { for: ['position'] },
  plugs: [busPlug],
  ports: [busPort(3, { sends: sends(126992, 127258, 129025, 129026, 129029, 129539, 129540) })],
  power: [busPower({ typicalA: 0.1, maxA: 0.15 })],
  compassSafe: safeFromCompass(0.15),
  ipCode: 'IPX6/IPX7',
});

const gnssAntennaCoax = typicalSheet(['practice-sheet-gaps'], {
  id: 'gnss-antenna-coax',
  name: 'Position antenna on its own 10 m coax, typical',
  kind: 'position-antenna',
  antenna: { for: ['position'] },
  plugs: [
    {
      id: 'coax',
      connector: 'tnc',
      gender: 'male',
      fixedLead: { valueM: 10, how: 'papers', lessM: 0, moreM: 0 },
      mayCut: false,
      mayExtend: false,
    },
  ],
  ports: [
    {
      id: 'rf',
      onPlug: 'coax',
      protocol: 'coax',
      role: 'talk',
      sends: readings('position', 'course-speed-ground', 'time-date').map((sent) => ({ ...sent, everyMs: 1000 })),
    },
  ],
  compassSafe: safeFromCompass(0.15),
  ipCode: 'IPX6/IPX7',
});

const gnssAntenna0183 = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'gnss-antenna-0183',
  name: 'Old position antenna with NMEA 0183 leads, fed by its plotter, typical',
  kind: 'position-antenna',
  antenna: { for: ['position'] },
  plugs: [pairPlug('data', ['out'])],
  ports: [
    {
      id: 'out',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'single-ended',
      baud: 4800,
      role: 'talk',
      sends: [...says(['RMC'], 2000), ...says(['GGA', 'VTG'], 1000)],
    },
  ],
  compassSafe: safeFromCompass(0.15),
});

const vhfWhip1m = typicalSheet(['practice-sheet-gaps', 'practice-whip-gain'], {
  id: 'vhf-whip-1m',
  name: '1 m whip for VHF or AIS, no extra gain, typical',
  kind: 'radio-antenna',
  antenna: { for: ['voice', 'ais'], gainDbi: 3, lengthM: 1 },
  plugs: [coaxPlug('coax', 'so239')],
  ports: [
    { id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'talk', sends: readings('ais-targets', 'dsc-calls', 'audio') },
  ],
});

/** Antennas: position antennas and the radio whip. */
export const antennas: readonly Sheet[] = [gnssAntennaBus, gnssAntennaCoax, gnssAntenna0183, vhfWhip1m];
