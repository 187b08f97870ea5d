import type { Sheet } from '../../boat/sheet.ts';
import {
  netPlug,
  netPort,
  ownPower,
  ownWatts,
  readings,
  safeFromCompass,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const radarArraySolid = typicalSheet(['maker-compass-distance', 'memory-scanners', 'practice-sheet-gaps'], {
  id: 'radar-array-solid',
  name: 'Open-array solid-state radar, 12 or 24 V, typical',
  kind: 'radar',
  scanner: {
    kind: 'open-array',
    sends: 'solid-state',
    verticalBeamDeg: 25,
    acrossM: 1.3,
    leastRangeM: 6,
    peopleM: 1,
  },
  plugs: [netPlug, supplyPlug],
  ports: [supplyPort, netPort({ sends: readings('radar-picture', 'radar-targets') })],
  power: [ownWatts({ typicalW: 120, maxW: 120, minV: 10.8, fuseA: 15 })],
  compassSafe: safeFromCompass(1),
  ipCode: 'IPX6',
});

/** An old radar with its own supply and its maker's own cable to its screen. */
const magnetron = (
  own: Pick<Sheet, 'id' | 'name'> & { amps: [number, number]; fuseA: number; compassM: number } & Required<
      Pick<Sheet, 'scanner'>
    >,
) =>
  typicalSheet(['memory-loads', 'maker-compass-distance', 'memory-scanners', 'practice-sheet-gaps'], {
    id: own.id,
    name: own.name,
    kind: 'radar',
    scanner: own.scanner,
    plugs: [{ id: 'cable', connector: 'maker-b-radar', gender: 'male' }, supplyPlug],
    ports: [
      supplyPort,
      { id: 'video', onPlug: 'cable', protocol: 'video', role: 'talk', sends: readings('radar-picture') },
    ],
    power: [ownPower({ typicalA: own.amps[0], maxA: own.amps[1], minV: 10.8, maxV: 32, fuseA: own.fuseA })],
    compassSafe: safeFromCompass(own.compassM),
  });

const radarMagnetron4kw = magnetron({
  id: 'radar-magnetron-4kw',
  name: 'Old 4 kW magnetron radar with its own supply, typical',
  amps: [2.5, 4],
  fuseA: 5,
  compassM: 2,
  scanner: { kind: 'dome', sends: 'pulses', peakKw: 4, verticalBeamDeg: 25, acrossM: 0.61, leastRangeM: 25 },
});

const radarMagnetronArray = magnetron({
  id: 'radar-magnetron-array',
  name: 'Old 6 kW magnetron radar with open array, typical',
  amps: [6, 12],
  fuseA: 15,
  compassM: 2.3,
  scanner: { kind: 'open-array', sends: 'pulses', peakKw: 6, verticalBeamDeg: 20, acrossM: 1.3, leastRangeM: 30 },
});

/** Radars with an open array, and the old ones with a magnetron. */
export const radars: readonly Sheet[] = [radarArraySolid, radarMagnetron4kw, radarMagnetronArray];
