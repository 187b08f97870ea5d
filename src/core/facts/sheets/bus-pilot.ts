import type { Drive } from '../../boat/drive.ts';
import type { Sheet } from '../../boat/sheet.ts';
import {
  analogIn,
  analogOut,
  busPlug,
  busPort,
  busPower,
  hears,
  leads,
  ownPower,
  readings,
  safeFromCompass,
  sends,
  signalPlug,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const pilotComputerBus = typicalSheet(['memory-pilot-outputs', 'practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'pilot-computer-bus',
  name: 'Pilot computer for the bus, 12 or 24 V, drive output 25 A, typical',
  kind: 'pilot-computer',
  plugs: [busPlug, supplyPlug, leads('rudder'), signalPlug('drive', 'motor')],
  ports: [
    supplyPort,
    busPort(1, {
      sends: sends(127237, 127245),
      hears: [
        ...hears(127250, 127251, 127258, 128259, 129025, 129026, 129029, 129283, 129284, 129285, 130306),
        ...readings('pilot-command'),
      ],
    }),
    analogIn('rudder-in', 'rudder', 'rudder'),
    analogOut('motor', 'drive', 'pilot-command'),
  ],
  turns: [{ fromPort: 'rudder-in', toPort: 'n2k', carries: readings('rudder') }],
  power: [ownPower({ typicalA: 1, maxA: 1, minV: 10.8, maxV: 32, fuseA: 25 })],
  driveOutput: {
    port: 'motor',
    works: ['reversing-motor', 'solenoid-valves'],
    runA: 15,
    peakA: 25,
    valveA: 5,
    clutch: { fitted: true, clutchV: [12, 24], clutchA: 3 },
    rudder: { hears: ['potentiometer', 'frequency'], needed: true },
    whenBusIsLost: 'lets-go',
  },
  compassSafe: safeFromCompass(0.3),
});

const pilotHeadBus = typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'pilot-head-bus',
  name: 'Pilot head for the bus, typical',
  kind: 'pilot-head',
  plugs: [busPlug],
  ports: [
    busPort(7, {
      sends: [...sends(126_720), { reading: 'pilot-command' }],
      hears: hears(126983, 127237, 127245, 127250, 129283, 129284, 130306),
    }),
  ],
  power: [busPower({ typicalA: 0.25, maxA: 0.35 })],
  compassSafe: safeFromCompass(0.4),
  ipCode: 'IPX6/IPX7',
});

const rudderSensorBus = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'rudder-sensor-bus',
  name: 'Rudder angle sensor for the bus, typical',
  kind: 'rudder-sensor',
  plugs: [busPlug],
  ports: [busPort(1, { sends: sends(127245) })],
  power: [busPower({ typicalA: 0.04, maxA: 0.05 })],
  rudderSensor: 'bus',
  ipCode: 'IP67',
});

/** Clutch, valves or bypass that fall open without current. */
const withoutGrip = { whenPowerIsLost: 'lets-go' } as const;

interface OwnDrive {
  readonly id: string;
  readonly name: string;
  /** where its currents come from; absent = a plausible choice */
  readonly loads?: 'practice-loads' | 'memory-loads';
  readonly drive: Drive;
}

/** A drive that a pilot computer feeds through its drive output. */
const driveSheet = ({ id, name, loads, drive }: OwnDrive): Sheet =>
  typicalSheet([...(loads === undefined ? [] : [loads]), 'memory-pilot-outputs', 'practice-sheet-gaps'], {
    id,
    name,
    kind: 'steering-drive',
    plugs: [signalPlug('leads', 'motor')],
    ports: [{ id: 'motor', onPlug: 'leads', protocol: 'analog', role: 'listen', hears: readings('pilot-command') }],
    power: [
      {
        port: 'motor',
        typical: drive.runA,
        max: drive.runA,
        peak: drive.peakA,
        unit: 'A',
        behaves: 'current',
        minV: drive.motorV * 0.9,
        maxV: drive.motorV * (4 / 3),
      },
    ],
    drive,
  });

const hydraulicPumpConstant = typicalSheet(['maker-loads', 'memory-pilot-outputs', 'practice-sheet-gaps'], {
  id: 'hydraulic-pump-constant',
  name: 'Hydraulic pump that runs all the time, with two valves, 12 V, typical',
  kind: 'steering-drive',
  plugs: [signalPlug('leads', 'motor'), supplyPlug],
  ports: [
    supplyPort,
    { id: 'motor', onPlug: 'leads', protocol: 'analog', role: 'listen', hears: readings('pilot-command') },
  ],
  power: [
    ownPower({ typicalA: 10, maxA: 34, minV: 10.8, fuseA: 40 }),
    { port: 'motor', typical: 1, max: 1, peak: 2, unit: 'A', behaves: 'current', minV: 10.8, maxV: 16 },
  ],
  drive: { type: 'constant-pump', motorV: 12, runA: 1, peakA: 2, ...withoutGrip, needsRudderSensor: true },
});

/** A pilot on the bus: computer, head, rudder sensor, and the drives it can work. */
export const busPilot: readonly Sheet[] = [
  pilotComputerBus,
  pilotHeadBus,
  rudderSensorBus,
  hydraulicPumpConstant,
  driveSheet({
    id: 'steering-solenoid-24',
    name: 'Solenoid valves of a steering gear whose pump always runs, 24 V, typical',
    drive: { type: 'constant-pump', motorV: 24, runA: 2, peakA: 4, ...withoutGrip, needsRudderSensor: true },
  }),
  driveSheet({
    id: 'linear-drive-12',
    name: 'Linear drive on the rudder quadrant, 12 V, typical',
    loads: 'practice-loads',
    drive: {
      type: 'linear',
      motorV: 12,
      runA: 5,
      peakA: 15,
      clutchV: 12,
      clutchA: 1,
      ...withoutGrip,
      needsRudderSensor: true,
      boatKg: 11_000,
    },
  }),
  driveSheet({
    id: 'wheel-drive-12',
    name: 'Wheel drive of a pilot, 12 V, typical',
    loads: 'memory-loads',
    drive: {
      type: 'wheel',
      motorV: 12,
      runA: 1.75,
      peakA: 5,
      clutchV: 12,
      clutchA: 0.5,
      ...withoutGrip,
      needsRudderSensor: false,
      boatKg: 7000,
    },
  }),
  driveSheet({
    id: 'tiller-drive-12',
    name: 'Tiller drive of a pilot computer, 12 V, typical',
    loads: 'memory-loads',
    // A screw holds the tiller until the drive is lifted off its pin.
    drive: {
      type: 'tiller',
      motorV: 12,
      runA: 1,
      peakA: 3.5,
      whenPowerIsLost: 'holds',
      needsRudderSensor: false,
      boatKg: 5500,
    },
  }),
  driveSheet({
    id: 'stern-drive-12',
    name: 'Drive on the assisted steering of a stern drive, 12 V, typical',
    drive: { type: 'stern-drive', motorV: 12, runA: 2, peakA: 6, ...withoutGrip, needsRudderSensor: true },
  }),
];
