import type { ReactNode } from 'react';
import type { Cable } from '../../../../core/boat/boat-schema.ts';
import { coaxKindIds, coaxKinds } from '../../../../core/facts/coax.ts';
import { withPart } from '../../../../core/kit/with-part.ts';
import { useEdit } from '../../edit-context.ts';
import { DescribedFields, type FieldOf } from '../../forms/described.tsx';
import { DraftForm } from '../../forms/draft-form.tsx';
import { ListOfParts } from '../../forms/list-of-parts.tsx';
import { words } from './words.ts';

type Coax = NonNullable<Cable['coax']>;
type Loss = NonNullable<Coax['losses']>[number];

/** Every kind of coax by what is printed on its jacket. */
export const coaxChoices = Object.fromEntries(coaxKindIds.map((id) => [id, coaxKinds[id].name])) as Readonly<
  Record<(typeof coaxKindIds)[number], string>
>;

const fields: readonly FieldOf<Omit<Coax, 'losses'>>[] = [
  { key: 'kind', label: words.coaxKind, ask: 'choice', choices: coaxChoices },
  { key: 'joints', label: words.coaxJoints, ask: 'choice', choices: words.coaxJointsAre },
];

const lossFields: readonly FieldOf<Loss>[] = [
  { key: 'mhz', label: words.lossAt, ask: 'number', must: true },
  { key: 'dbPer100M', label: words.lossIs, ask: 'number', must: true },
];

/** What a coax that is aboard is, as read on its jacket and its data sheet, and how its joints are. */
export const CoaxForm = ({ cable }: { cable: Cable }): ReactNode => {
  const edit = useEdit();
  const { id, coax = {} } = cable;
  const kind = coax.kind === undefined ? words.jacketNotRead : coaxKinds[coax.kind].name;
  return (
    <DraftForm<Coax>
      heading={coax.joints === 'dry' ? words.coaxIsDry(kind) : words.coaxIs(kind)}
      whose={cable.name ?? id}
      of={coax}
      onKeep={(kept) => edit([{ edit: 'change-cable', params: { cable: id, coax: kept } }])}
    >
      {({ losses, ...printed }, put) => (
        <>
          <div className="form-fields">
            <DescribedFields
              of={printed}
              fields={fields}
              onOf={(next) => put(withPart<Coax, 'losses'>(next, 'losses', losses))}
            />
          </div>
          <ListOfParts
            heading={words.losses}
            add={words.addLoss}
            nameOf={words.loss}
            first={{ mhz: 157, dbPer100M: 10 }}
            all={losses}
            fields={lossFields}
            onAll={(next) => put(withPart<Coax, 'losses'>(printed, 'losses', next))}
          />
        </>
      )}
    </DraftForm>
  );
};
