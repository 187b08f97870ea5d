import type { ReactNode } from 'react';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { NumberField } from '../../../forms/fields.tsx';
import { words } from './words.ts';

type Box = NonNullable<Sheet['body']>;
type SizeKey = 'body' | 'cutout';
type SideName = 'widthMm' | 'heightMm' | 'depthMm';

/** A box with one side changed, and all else that is known of it. */
const sideOf = (box: Box | undefined, side: SideName, value: number | undefined): Box | undefined => {
  const { widthMm = 0, heightMm = 0, depthMm, ...known }: Partial<Box> = box ?? {};
  const sides: Record<SideName, number | undefined> = { widthMm, heightMm, depthMm, [side]: value };
  const next = { widthMm: sides.widthMm ?? 0, heightMm: sides.heightMm ?? 0 };
  if (next.widthMm === 0 && next.heightMm === 0) return undefined;
  return { ...known, ...next, ...(sides.depthMm === undefined ? {} : { depthMm: sides.depthMm }) };
};

/** The body of a unit and the hole it takes, in millimetres. */
export const SizeFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const set = (key: SizeKey, side: SideName, value: number | undefined): void => {
    const { [key]: box, ...rest } = sheet;
    const next = sideOf(box, side, value);
    onSheet(next === undefined ? rest : { ...rest, [key]: next });
  };
  return (
    <details className="form-part">
      <summary>{words.sizes}</summary>
      {(['body', 'cutout'] as const).map((key) => (
        <fieldset key={key} className="form-fields">
          <legend>{words[key]}</legend>
          <NumberField
            label={words.width}
            value={sheet[key]?.widthMm}
            onValue={(value) => set(key, 'widthMm', value)}
          />
          <NumberField
            label={words.height}
            value={sheet[key]?.heightMm}
            onValue={(value) => set(key, 'heightMm', value)}
          />
          <NumberField
            label={words.depth}
            value={sheet[key]?.depthMm}
            onValue={(value) => set(key, 'depthMm', value)}
          />
        </fieldset>
      ))}
    </details>
  );
};
