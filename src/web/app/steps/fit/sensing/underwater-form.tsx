import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { useEdit } from '../../../edit-context.ts';
import { DescribedFields, type FieldOf, OptionalPart } from '../../../forms/described.tsx';
import { DraftForm } from '../../../forms/draft-form.tsx';
import { words } from './words.ts';

type Underwater = NonNullable<Boat['hull']['underwater']>;
type Keel = NonNullable<Underwater['keel']>;
type Along = Omit<Underwater, 'keel'>;

const fields: readonly FieldOf<Along>[] = [
  { key: 'waterlineM', label: words.waterline, ask: 'metres' },
  { key: 'propellerXM', label: words.propeller, ask: 'metres', signed: true },
];

const keelFields: readonly FieldOf<Keel>[] = [
  { key: 'fromXM', label: words.keelFrom, ask: 'metres', signed: true, must: true },
  { key: 'toXM', label: words.keelTo, ask: 'metres', signed: true, must: true },
];

/** Waterline, propeller and keel, which every sensor in the hull is held against. */
export const UnderwaterForm = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const { underwater = {}, lengthM } = boat.hull;
  const half = lengthM / 2;
  return (
    <DraftForm<Underwater>
      heading={words.under}
      whose={boat.name}
      of={underwater}
      onKeep={(kept) =>
        edit([{ edit: 'set-underwater', params: Object.keys(kept).length === 0 ? {} : { underwater: kept } }])
      }
    >
      {({ keel, ...along }, put) => (
        <>
          <div className="form-fields">
            <DescribedFields<Along>
              of={along}
              fields={fields}
              onOf={(next) => put(withPart<Underwater, 'keel'>(next, 'keel', keel))}
            />
          </div>
          <OptionalPart
            heading={words.keel}
            add={words.addKeel}
            of={keel}
            first={{ fromXM: half - 1, toXM: half + 1 }}
            fields={keelFields}
            onOf={(next) => put(withPart<Underwater, 'keel'>(along, 'keel', next))}
          />
        </>
      )}
    </DraftForm>
  );
};
