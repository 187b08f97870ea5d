import type { ReactNode } from 'react';
import type { CoaxPiece } from '../../../../../core/aerial-shape.ts';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { coaxKindIds, coaxKinds } from '../../../../../core/facts/coax.ts';
import { useEdit } from '../../../edit-context.ts';
import { ChoiceField } from '../../../forms/fields.tsx';
import { CoaxForm } from '../../boat/coax-form.tsx';
import { words } from './words.ts';

const asPicked = '-';

/** Which coax a piece of a run is made of: read aboard, settled, or left to the plan. */
export const CoaxChoice = ({ boat, piece }: { boat: Boat; piece: CoaxPiece }): ReactNode => {
  const edit = useEdit();
  if (piece.cable !== undefined) {
    const cable = boat.cables.find(({ id }) => id === piece.cable);
    return cable === undefined ? null : <CoaxForm cable={cable} />;
  }
  const pinned = boat.pins?.coax?.[piece.line];
  return (
    <div className="form-fields">
      <ChoiceField
        label={words.newCoax}
        value={pinned?.kind ?? asPicked}
        choices={[[asPicked, words.asPicked], ...coaxKindIds.map((id) => [id, coaxKinds[id].name] as const)]}
        onValue={(kind) => {
          const as = kind === asPicked ? {} : { as: { kind, state: pinned?.state ?? 'fixed' } };
          edit([{ edit: 'pin-coax', params: { line: piece.line, ...as } }]);
        }}
      />
    </div>
  );
};
