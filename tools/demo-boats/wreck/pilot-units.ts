import type { Boat, Join, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Drive, DriveOutput } from '../../../src/core/boat/drive.ts';
import type { Port, Sheet } from '../../../src/core/boat/sheet.ts';
import { taped } from './base.ts';

const sheet = (id: string, name: string, more: Pick<Sheet, 'kind' | 'plugs' | 'ports'> & Partial<Sheet>): Sheet => ({
  id,
  name,
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  ...more,
});

const leads = (id: string): Sheet['plugs'][number] => ({ id, connector: 'leads', gender: 'none' });

/** A drive that everything fits: a small reversing pump. */
const soundDrive: Drive = {
  type: 'reversing-pump',
  motorV: 12,
  runA: 3,
  peakA: 9,
  whenPowerIsLost: 'lets-go',
  needsRudderSensor: true,
  boatKg: 9000,
};

const soundOutput: DriveOutput = {
  port: 'motor',
  works: ['reversing-motor'],
  runA: 6,
  peakA: 10,
  clutch: { fitted: true, clutchA: 2 },
  rudder: { hears: ['potentiometer'], needed: true },
  whenBusIsLost: 'lets-go',
};

/** A pilot of its own, told apart by `name`, that differs in one thing from one in which everything fits. */
export interface OwnPilot {
  readonly name: string;
  readonly drive?: Partial<Drive>;
  readonly output?: Partial<DriveOutput>;
  /** true leaves what the sheet says of the output out */
  readonly silent?: boolean;
  readonly rudder?: Sheet['rudderSensor'] | 'none';
  /** the lead to the drive, where it lies aboard */
  readonly lead?: { readonly areaMm2: number; readonly lengthM: number };
}

const rudderPort: Port = {
  id: 'signal',
  onPlug: 'lead',
  protocol: 'analog',
  role: 'talk',
  sends: [{ reading: 'rudder' }],
};

const sheetsOf = ({ name, drive = {}, output = {}, silent = false, rudder = 'potentiometer' }: OwnPilot): Sheet[] => {
  const run = { ...soundDrive, ...drive };
  const ports: Port[] = [
    { id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' },
    { id: 'motor', onPlug: 'drive', protocol: 'analog', role: 'talk', sends: [{ reading: 'pilot-command' }] },
    { id: 'rudder-in', onPlug: 'rudder', protocol: 'analog', role: 'listen', hears: [{ reading: 'rudder' }] },
    ...(output.whenBusIsLost === undefined
      ? []
      : [{ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000' as const, role: 'both' as const, len: 1 }]),
  ];
  const bus: Sheet['plugs'] =
    output.whenBusIsLost === undefined ? [] : [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }];
  return [
    sheet(`${name}-pilot-sheet`, `Pilot computer, ${name}, as its manual has it`, {
      kind: 'pilot-computer',
      plugs: [leads('supply'), leads('drive'), leads('rudder'), ...bus],
      ports,
      power: [{ port: 'dc', typical: 0.3, max: 0.5, unit: 'A', behaves: 'current', minV: 10, maxV: 16, fuseA: 15 }],
      ...(silent ? {} : { driveOutput: { ...soundOutput, ...output } }),
    }),
    sheet(`${name}-drive-sheet`, `Steering drive, ${name}, as its manual has it`, {
      kind: 'steering-drive',
      plugs: [leads('leads')],
      ports: [
        { id: 'motor', onPlug: 'leads', protocol: 'analog', role: 'listen', hears: [{ reading: 'pilot-command' }] },
      ],
      power: [
        {
          port: 'motor',
          typical: run.runA,
          max: run.runA,
          peak: run.peakA,
          unit: 'A',
          behaves: 'current',
          minV: soundDrive.motorV * 0.8,
          maxV: run.motorV * 1.35,
        },
      ],
      drive: run,
    }),
    ...(rudder === 'none'
      ? []
      : [
          sheet(`${name}-rudder-sheet`, `Rudder sensor, ${name}, as its manual has it`, {
            kind: 'rudder-sensor',
            plugs: [leads('lead')],
            ports: [rudderPort],
            ...(rudder === undefined ? {} : { rudderSensor: rudder }),
          }),
        ]),
  ];
};

const joined = (id: string, [from, talk]: [string, string], [to, listen]: [string, string]): Join => ({
  id,
  kind: 'analog',
  members: [
    { kit: from, port: talk, as: 'talk' },
    { kit: to, port: listen, as: 'listen' },
  ],
  hold: 'fixed',
});

/** The boat with one pilot more: its computer in the panel locker, drive and rudder sensor in the stern. */
export const withPilot = (boat: Boat, pilot: OwnPilot): Boat => {
  const { name, rudder, lead } = pilot;
  const [computer, drive, sensor] = [`${name}-pilot`, `${name}-drive`, `${name}-rudder`];
  const unit = (id: string, says: string, place: string): Kit => ({
    id,
    name: `${says}, ${name}`,
    sheet: `${id}-sheet`,
    fate: 'stays',
    place,
    tail: taped(0.3),
  });
  return {
    ...boat,
    sheets: [...boat.sheets, ...sheetsOf(pilot)],
    kit: [
      ...boat.kit,
      unit(computer, 'pilot computer', 'panel-locker'),
      unit(drive, 'steering drive', 'stern-locker'),
      ...(rudder === 'none' ? [] : [unit(sensor, 'rudder sensor', 'stern-locker')]),
    ],
    joins: [
      ...boat.joins,
      joined(`lead-${drive}`, [computer, 'motor'], [drive, 'motor']),
      ...(rudder === 'none' ? [] : [joined(`lead-${sensor}`, [sensor, 'signal'], [computer, 'rudder-in'])]),
    ],
    ...(lead === undefined ? {} : { cables: [...boat.cables, leadCable(name, drive, lead)] }),
    supply: {
      ...boat.supply,
      panels: boat.supply.panels.map((panel) =>
        panel.id === 'switches'
          ? {
              ...panel,
              circuits: [
                ...panel.circuits,
                { id: `c-${name}`, ratingA: 15, kind: 'slow-breaker', feeds: [`${computer}.dc`] },
              ],
            }
          : panel,
      ),
    },
  };
};

const leadCable = (
  name: string,
  drive: string,
  { areaMm2, lengthM }: NonNullable<OwnPilot['lead']>,
): Boat['cables'][number] => ({
  id: `cable-${name}`,
  kind: 'analog',
  from: { place: 'panel-locker' },
  to: { place: 'stern-locker' },
  serves: `lead-${drive}`,
  ways: ['w8', 'w9'],
  length: taped(lengthM),
  diameterMm: 7,
  conductors: 2,
  areaMm2,
  condition: 'good',
  fate: 'stays',
});
