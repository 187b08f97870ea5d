import type { ReactNode } from 'react';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { words } from './words.ts';

interface SheetProps {
  readonly sheet: Sheet;
  readonly onSheet: (sheet: Sheet) => void;
}

type Lighting = NonNullable<Sheet['lighting']>;
type Earthing = NonNullable<Sheet['earthing']>;
type Remote = NonNullable<Sheet['remote']>;

const aboardFields: readonly FieldOf<Sheet>[] = [
  { key: 'compassSafe', label: words.compassSafe, ask: 'length' },
  { key: 'ipCode', label: words.ipCode, ask: 'text', longest: 20, hint: 'IP67' },
  { key: 'ownBattery', label: words.ownBattery, ask: 'whether' },
  { key: 'terminator', label: words.terminator, ask: 'whether' },
  { key: 'rudderSensor', label: words.rudderSensor, ask: 'choice', choices: words.rudderKinds },
];

/** What counts where a unit is fitted: compass, water, its own battery, a terminator in it. */
export const AboardFields = ({ sheet, onSheet }: SheetProps): ReactNode => (
  <details className="form-part">
    <summary>{words.aboard}</summary>
    <div className="form-fields">
      <DescribedFields of={sheet} fields={aboardFields} onOf={onSheet} />
    </div>
  </details>
);

const lightingFields: readonly FieldOf<Lighting>[] = [
  { key: 'dims', label: words.dims, ask: 'choice', choices: words.dimmed, must: true },
  { key: 'dialect', label: words.dialect, ask: 'text', longest: 30, hint: 'maker-a/2' },
  { key: 'quietens', label: words.quietens, ask: 'whether' },
];

/** How a screen is dimmed, and whether its alarm falls silent with the others. */
export const LightingFields = ({ sheet, onSheet }: SheetProps): ReactNode => (
  <OptionalPart
    heading={words.lighting}
    add={words.addLighting}
    of={sheet.lighting}
    first={{ dims: 'own-knob' }}
    fields={lightingFields}
    onOf={(lighting) => onSheet(withPart(sheet, 'lighting', lighting))}
  />
);

const earthingFields: readonly FieldOf<Earthing>[] = [
  { key: 'body', label: words.bodyOf, ask: 'choice', choices: words.bodies },
  { key: 'bodyTo', label: words.bodyTo, ask: 'choice', choices: words.minusOrNothing },
  { key: 'poles', label: words.poles, ask: 'choice', choices: words.polesOf },
  { key: 'braidTo', label: words.braidTo, ask: 'choice', choices: words.shieldsTo },
  { key: 'shieldTo', label: words.shieldTo, ask: 'choice', choices: words.shieldsTo },
  { key: 'shieldThrough', label: words.shieldThrough, ask: 'whether' },
  { key: 'signalTo', label: words.signalTo, ask: 'choice', choices: words.signalsTo },
];

/** What the metal of a unit is joined to inside it. */
export const EarthingFields = ({ sheet, onSheet }: SheetProps): ReactNode => (
  <details className="form-part">
    <summary>{words.earthing}</summary>
    <div className="form-fields">
      <DescribedFields<Earthing>
        of={sheet.earthing ?? {}}
        fields={earthingFields}
        onOf={(earthing) => onSheet(withPart(sheet, 'earthing', earthing))}
      />
    </div>
  </details>
);

const remoteFields: readonly FieldOf<Remote>[] = [
  { key: 'writes', label: words.writes, ask: 'choice', choices: words.writing },
  { key: 'givesAddresses', label: words.givesAddresses, ask: 'whether' },
];

/** What can be done to a unit by wifi or over the network. */
export const RemoteFields = ({ sheet, onSheet }: SheetProps): ReactNode => (
  <details className="form-part">
    <summary>{words.remote}</summary>
    <div className="form-fields">
      <DescribedFields<Remote>
        of={sheet.remote ?? {}}
        fields={remoteFields}
        onOf={(remote) => onSheet(withPart(sheet, 'remote', remote))}
      />
    </div>
  </details>
);
