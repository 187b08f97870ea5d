import type { Sheet } from '../../boat/sheet.ts';
import { analogSensors } from './analog-sensors.ts';
import { antennas } from './antennas.ts';
import { converters } from './converters.ts';
import { depth } from './depth.ts';
import { displays } from './displays.ts';
import { engineAndTanks } from './engine-and-tanks.ts';
import { heading } from './heading.ts';
import { multiplexers } from './multiplexers.ts';
import { oldInstruments } from './old-instruments.ts';
import { oldKit } from './old-kit.ts';
import { pilot } from './pilot.ts';
import { radarAndNetwork } from './radar-and-network.ts';
import { radios } from './radios.ts';
import { smallDisplays } from './small-displays.ts';
import { smallPilots } from './small-pilots.ts';

/**
 * Sheets of no maker, one for each kind of unit: what it usually sends, hears, draws and measures.
 * Every one is marked typical; sizes are never for cutting, currents give way to the unit's plate.
 */
export const typicalSheets: readonly Sheet[] = [
  ...displays,
  ...smallDisplays,
  ...antennas,
  ...heading,
  ...depth,
  ...radios,
  ...radarAndNetwork,
  ...converters,
  ...multiplexers,
  ...pilot,
  ...smallPilots,
  ...engineAndTanks,
  ...oldKit,
  ...oldInstruments,
  ...analogSensors,
];
