import { typicalSheets } from '../facts/sheets/index.ts';
import { aBoat, type BoatBuilder } from './a-boat.test-helper.ts';
import type { Join } from './boat-schema.ts';
import type { Drive, DriveOutput } from './drive.ts';
import type { Sheet } from './sheet.ts';

const sheetOf = (id: string): Sheet => {
  const sheet = typicalSheets.find((entry) => entry.id === id);
  if (sheet === undefined) throw new Error(`There is no typical sheet ${id}.`);
  return sheet;
};

const lead = (id: string, from: [kit: string, port: string], to: [kit: string, port: string]): Join => ({
  id,
  kind: 'analog',
  members: [
    { kit: from[0], port: from[1], as: 'talk' },
    { kit: to[0], port: to[1], as: 'listen' },
  ],
  hold: 'fixed',
});

/** How a pilot differs from one in which everything fits. */
export interface PilotCase {
  readonly drive?: Partial<Drive>;
  readonly output?: Partial<DriveOutput>;
  /** leaves entries of drive or output out */
  readonly without?: readonly (keyof Drive | keyof DriveOutput)[];
  readonly rudder?: boolean;
}

const lacking = <Part extends object>(part: Part, without: readonly string[]): Part =>
  Object.fromEntries(Object.entries(part).filter(([name]) => !without.includes(name))) as Part;

/** The Tern with a pilot: computer in the locker on 12 V, pump and rudder sensor at the stern, one wheel at the helm. */
export const aPilotBoat = ({ drive = {}, output = {}, without = [], rudder = true }: PilotCase = {}): BoatBuilder => {
  const computer = sheetOf('pilot-computer-0183');
  const pump = sheetOf('hydraulic-pump-12');
  if (computer.driveOutput === undefined || pump.drive === undefined) throw new Error('The pilot has no drive.');
  const run = { ...pump.drive, ...drive };
  return aBoat()
    .add({
      sheets: [
        { ...computer, driveOutput: lacking({ ...computer.driveOutput, ...output }, without) },
        {
          ...pump,
          drive: lacking(run, without),
          power: (pump.power ?? []).map((power) => ({
            ...power,
            typical: run.runA,
            max: run.runA,
            peak: run.peakA,
          })),
        },
        sheetOf('rudder-analog'),
      ],
      kit: [
        { id: 'pilot', name: 'Pilot computer', sheet: 'pilot-computer-0183', fate: 'comes', place: 'locker' },
        { id: 'pump', name: 'Pump', sheet: 'hydraulic-pump-12', fate: 'comes', place: 'stern-rail' },
        { id: 'rudder', name: 'Rudder sensor', sheet: 'rudder-analog', fate: 'comes', place: 'stern-rail' },
      ],
      joins: [
        lead('pump-lead', ['pilot', 'motor'], ['pump', 'motor']),
        ...(rudder ? [lead('rudder-lead', ['rudder', 'signal'], ['pilot', 'rudder-in'])] : []),
      ],
    })
    .with({ steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }] }] })
    .change((boat) => {
      boat.hull.displacement = { valueKg: 4000, of: 'light' };
      boat.supply.panels[0]?.circuits.push({ id: 'pilot-circuit', ratingA: 25, kind: 'breaker', feeds: ['pilot.dc'] });
    });
};
