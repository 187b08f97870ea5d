import { type ReactNode, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { useEdit } from '../../../edit-context.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Underwater = NonNullable<Boat['hull']['underwater']>;

const fields: readonly FieldOf<Omit<Underwater, 'keel'>>[] = [
  { key: 'waterlineM', label: words.waterline, ask: 'number', step: 0.05, least: 1 },
  { key: 'propellerXM', label: words.propeller, ask: 'number', step: 0.05 },
];

const keelFields: readonly FieldOf<NonNullable<Underwater['keel']>>[] = [
  { key: 'fromXM', label: words.keelFrom, ask: 'number', step: 0.05, must: true },
  { key: 'toXM', label: words.keelTo, ask: 'number', step: 0.05, must: true },
];

const Fields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const [under, setUnder] = useState<Underwater>(boat.hull.underwater ?? {});
  const keep = (): void =>
    edit([{ edit: 'set-underwater', params: Object.keys(under).length === 0 ? {} : { underwater: under } }]);
  const half = boat.hull.lengthM / 2;
  return (
    <>
      <div className="form-fields">
        <DescribedFields<Underwater> of={under} fields={fields as readonly FieldOf<Underwater>[]} onOf={setUnder} />
      </div>
      <OptionalPart
        heading={words.keel}
        add={words.addKeel}
        of={under.keel}
        first={{ fromXM: half - 1, toXM: half + 1 }}
        fields={keelFields}
        onOf={(keel) => setUnder(withPart(under, 'keel', keel))}
      />
      <button type="button" className="press-link" onClick={keep}>
        {words.keep}
        <span className="unseen">{words.sitsOf(words.under)}</span>
      </button>
    </>
  );
};

/** Waterline, propeller and keel, which every sensor in the hull is held against. */
export const UnderwaterForm = ({ boat }: { boat: Boat }): ReactNode => (
  <details className="form-part">
    <summary>{words.under}</summary>
    <Fields key={JSON.stringify(boat.hull.underwater)} boat={boat} />
  </details>
);
