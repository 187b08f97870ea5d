import type { Sheet } from '../../boat/sheet.ts';
import { analogConverters } from './analog-converters.ts';
import { analogSensors } from './analog-sensors.ts';
import { antennas } from './antennas.ts';
import { audio } from './audio.ts';
import { bridges } from './bridges.ts';
import { busPilot } from './bus-pilot.ts';
import { busSensors } from './bus-sensors.ts';
import { converters } from './converters.ts';
import { depth } from './depth.ts';
import { displays } from './displays.ts';
import { engineAndTanks } from './engine-and-tanks.ts';
import { heading } from './heading.ts';
import { instruments } from './instruments.ts';
import { largeDisplays } from './large-displays.ts';
import { multiplexers } from './multiplexers.ts';
import { networkUnits } from './network.ts';
import { oldInstruments } from './old-instruments.ts';
import { oldKit } from './old-kit.ts';
import { pilot } from './pilot.ts';
import { radarAndNetwork } from './radar-and-network.ts';
import { radars } from './radars.ts';
import { radios } from './radios.ts';
import { shipRadios } from './ship-radios.ts';
import { shipSystems } from './ship-systems.ts';
import { smallDisplays } from './small-displays.ts';
import { smallPilots } from './small-pilots.ts';
import { sounders } from './sounders.ts';

/**
 * Sheets of no maker, one for each kind of unit: what it usually sends, hears, draws and measures.
 * Every one is marked typical; sizes are never for cutting, currents give way to the unit's plate.
 */
export const typicalSheets: readonly Sheet[] = [
  ...displays,
  ...smallDisplays,
  ...largeDisplays,
  ...instruments,
  ...antennas,
  ...heading,
  ...depth,
  ...sounders,
  ...busSensors,
  ...radios,
  ...shipRadios,
  ...radarAndNetwork,
  ...radars,
  ...networkUnits,
  ...converters,
  ...multiplexers,
  ...analogConverters,
  ...bridges,
  ...pilot,
  ...smallPilots,
  ...busPilot,
  ...engineAndTanks,
  ...shipSystems,
  ...audio,
  ...oldKit,
  ...oldInstruments,
  ...analogSensors,
];
