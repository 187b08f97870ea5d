import type { ReactNode } from 'react';
import type { Drive, DriveOutput } from '../../../../../core/boat/drive.ts';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { words } from './words.ts';

const driveFields: readonly FieldOf<Drive>[] = [
  { key: 'type', label: words.driveType, ask: 'choice', choices: words.driveTypes, must: true },
  { key: 'motorV', label: words.motorV, ask: 'number', must: true },
  { key: 'runA', label: words.runA, ask: 'number', must: true },
  { key: 'peakA', label: words.peakA, ask: 'number', must: true },
  { key: 'clutchV', label: words.clutchV, ask: 'number' },
  { key: 'clutchA', label: words.clutchA, ask: 'number' },
  { key: 'bypass', label: words.bypass, ask: 'whether' },
  { key: 'whenPowerIsLost', label: words.whenPowerIsLost, ask: 'choice', choices: words.without },
  { key: 'needsRudderSensor', label: words.needsRudderSensor, ask: 'whether' },
  { key: 'boatKg', label: words.boatKg, ask: 'number' },
];

const firstDrive: Drive = { type: 'reversing-pump', motorV: 12, runA: 0, peakA: 0 };

/** What turns the rudder: its motor, its clutch, and the boat it is made for. */
export const DriveFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => (
  <OptionalPart
    heading={words.drive}
    add={words.addDrive}
    of={sheet.drive}
    first={firstDrive}
    fields={driveFields}
    onOf={(drive) => onSheet(withPart(sheet, 'drive', drive))}
  />
);

type Clutch = NonNullable<DriveOutput['clutch']>;
type Rudder = NonNullable<DriveOutput['rudder']>;

const clutchFields: readonly FieldOf<Clutch>[] = [
  { key: 'fitted', label: words.clutchFitted, ask: 'whether', must: true },
  { key: 'clutchV', label: words.clutchVolts, ask: 'numbers' },
  { key: 'clutchA', label: words.clutchA, ask: 'number' },
];

const rudderFields: readonly FieldOf<Rudder>[] = [
  { key: 'hears', label: words.rudderHears, ask: 'several', choices: words.rudderKinds, must: true },
  { key: 'needed', label: words.rudderNeeded, ask: 'whether', must: true },
];

const outputFields = (ports: readonly string[]): readonly FieldOf<DriveOutput>[] => [
  {
    key: 'port',
    label: words.outputPort,
    ask: 'choice',
    choices: Object.fromEntries(ports.map((id) => [id, id])),
    must: true,
  },
  { key: 'works', label: words.works, ask: 'several', choices: words.worked, must: true },
  { key: 'motorV', label: words.outputVolts, ask: 'numbers' },
  { key: 'runA', label: words.runA, ask: 'number', must: true },
  { key: 'peakA', label: words.peakA, ask: 'number' },
  { key: 'valveA', label: words.valveA, ask: 'number' },
  { key: 'whenBusIsLost', label: words.whenBusIsLost, ask: 'choice', choices: words.without },
];

/** What a pilot computer can work at its drive output. */
export const DriveOutputFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const { driveOutput: output } = sheet;
  const ports = sheet.ports.map(({ id }) => id);
  const put = (next: DriveOutput | undefined): void => onSheet(withPart(sheet, 'driveOutput', next));
  return (
    <OptionalPart
      heading={words.driveOutput}
      add={words.addDriveOutput}
      of={output}
      first={{ port: ports[0] ?? '', works: ['reversing-motor'], runA: 0 }}
      fields={outputFields(ports)}
      onOf={put}
    >
      {output === undefined ? null : (
        <>
          <fieldset className="form-fields">
            <legend>{words.clutch}</legend>
            <DescribedFields<Clutch>
              of={output.clutch ?? { fitted: false }}
              fields={clutchFields}
              onOf={(clutch) => put({ ...output, clutch })}
            />
          </fieldset>
          <fieldset className="form-fields">
            <legend>{words.rudder}</legend>
            <DescribedFields<Rudder>
              of={output.rudder ?? { hears: [], needed: false }}
              fields={rudderFields}
              onOf={(rudder) => put({ ...output, rudder })}
            />
          </fieldset>
        </>
      )}
    </OptionalPart>
  );
};
