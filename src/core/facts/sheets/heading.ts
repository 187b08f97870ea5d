import type { Sheet } from '../../boat/sheet.ts';
import { busPlug, busPort, busPower, hears, sends, typicalSheet } from './parts.ts';

const headingSensorBus = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'heading-sensor-bus',
  name: '9-axis heading sensor for the bus, typical',
  kind: 'heading-sensor',
  plugs: [busPlug],
  ports: [busPort(2, { sends: sends(127250, 127251, 127257), hears: hears(127258) })],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  ipCode: 'IPX6/IPX7',
});

const compassMagnetic = typicalSheet(['practice-sheet-gaps'], {
  id: 'compass-magnetic',
  name: 'Magnetic steering compass, typical',
  kind: 'steering-compass',
  plugs: [],
  ports: [],
});

/** Heading: a sensor for the bus and the compass that needs no wires. */
export const heading: readonly Sheet[] = [headingSensorBus, compassMagnetic];
