import type { ReactNode } from 'react';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Antenna = NonNullable<Sheet['antenna']>;
type Transmits = NonNullable<Sheet['transmits']>;
type Scanner = NonNullable<Sheet['scanner']>;

const antennaFields: readonly FieldOf<Antenna>[] = [
  { key: 'for', label: words.antennaFor, ask: 'several', choices: words.antennaUses, must: true },
  { key: 'gainDbi', label: words.gain, ask: 'number', least: -20 },
  { key: 'lengthM', label: words.antennaLength, ask: 'number' },
];

const transmitsFields: readonly FieldOf<Transmits>[] = [
  { key: 'powerW', label: words.sendsW, ask: 'number', must: true },
  { key: 'mhz', label: words.sendsMhz, ask: 'number', must: true },
  { key: 'dutyPct', label: words.duty, ask: 'number' },
];

const scannerFields: readonly FieldOf<Scanner>[] = [
  { key: 'kind', label: words.scannerKind, ask: 'choice', choices: words.scannerKinds, must: true },
  { key: 'sends', label: words.scannerSends, ask: 'choice', choices: words.scannerSendings, must: true },
  { key: 'peakKw', label: words.peakKw, ask: 'number' },
  { key: 'verticalBeamDeg', label: words.verticalBeam, ask: 'number' },
  { key: 'acrossM', label: words.scannerAcross, ask: 'number' },
  { key: 'leastRangeM', label: words.leastRange, ask: 'number' },
  { key: 'peopleM', label: words.peopleOff, ask: 'number' },
];

/** What is said of an antenna, of a radio that sends, and of the scanner of a radar. */
export const AerialFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => (
  <>
    <OptionalPart<Antenna>
      heading={words.antenna}
      add={words.addAntenna}
      of={sheet.antenna}
      first={{ for: ['voice'] }}
      fields={antennaFields}
      onOf={(antenna) => onSheet(withPart(sheet, 'antenna', antenna))}
    />
    <OptionalPart<Transmits>
      heading={words.transmits}
      add={words.addTransmits}
      of={sheet.transmits}
      first={{ powerW: 25, mhz: 156.8 }}
      fields={transmitsFields}
      onOf={(transmits) => onSheet(withPart(sheet, 'transmits', transmits))}
    />
    <OptionalPart<Scanner>
      heading={words.scanner}
      add={words.addScanner}
      of={sheet.scanner}
      first={{ kind: 'dome', sends: 'solid-state' }}
      fields={scannerFields}
      onOf={(scanner) => onSheet(withPart(sheet, 'scanner', scanner))}
    />
  </>
);
