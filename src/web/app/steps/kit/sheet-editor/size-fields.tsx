import type { ReactNode } from 'react';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { ScrewsList } from '../../../forms/screws-list.tsx';
import { words } from './words.ts';

type Cutout = NonNullable<Sheet['cutout']>;
type Face = NonNullable<Sheet['face']>;

const boxFields = [
  { key: 'widthMm', label: words.width, ask: 'number', must: true },
  { key: 'heightMm', label: words.height, ask: 'number', must: true },
  { key: 'depthMm', label: words.depth, ask: 'number' },
  { key: 'shape', label: words.shape, ask: 'choice', choices: words.shapes },
  { key: 'cornerMm', label: words.corner, ask: 'number' },
] as const satisfies readonly FieldOf<NonNullable<Sheet['body']>>[];

const faceFields: readonly FieldOf<Face>[] = [
  { key: 'worked', label: words.faceWorked, ask: 'choice', choices: words.workedBy },
  { key: 'letterMm', label: words.letter, ask: 'number' },
];

const nothing = { widthMm: 0, heightMm: 0 };

/** The body of a unit, the hole it takes with its screws, the room behind, and its face: all in millimetres. */
export const SizeFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const { cutout } = sheet;
  return (
    <details className="form-part">
      <summary>{words.sizes}</summary>
      <OptionalPart<NonNullable<Sheet['body']>>
        heading={words.body}
        add={words.addSize}
        of={sheet.body}
        first={nothing}
        fields={boxFields}
        onOf={(body) => onSheet(withPart(sheet, 'body', body))}
      />
      <OptionalPart<Cutout>
        heading={words.cutout}
        add={words.addSize}
        of={cutout}
        first={nothing}
        fields={boxFields}
        onOf={(next) => onSheet(withPart(sheet, 'cutout', next))}
      >
        {cutout === undefined ? null : (
          <ScrewsList
            heading={words.screws}
            all={cutout.screws}
            onAll={(screws) => onSheet({ ...sheet, cutout: withPart(cutout, 'screws', screws) })}
          />
        )}
      </OptionalPart>
      <div className="form-fields">
        <DescribedFields of={sheet} fields={[{ key: 'plugsMm', label: words.plugsMm, ask: 'number' }]} onOf={onSheet} />
        <DescribedFields<Face>
          of={sheet.face ?? {}}
          fields={faceFields}
          onOf={(face) => onSheet(withPart(sheet, 'face', Object.keys(face).length === 0 ? undefined : face))}
        />
      </div>
    </details>
  );
};
