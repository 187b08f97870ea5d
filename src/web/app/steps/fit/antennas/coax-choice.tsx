import type { ReactNode } from 'react';
import type { CoaxPiece } from '../../../../../core/aerial-shape.ts';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { type CoaxKindId, coaxKindIds, coaxKinds } from '../../../../../core/facts/coax.ts';
import { useEdit } from '../../../edit-context.ts';
import { words } from './words.ts';

const Kinds = ({
  name,
  none,
  chosen,
  onChoose,
}: {
  name: string;
  /** what is said where none is chosen */
  none: string;
  chosen: CoaxKindId | undefined;
  onChoose: (kind: CoaxKindId | undefined) => void;
}): ReactNode => (
  <label className="coax-choice">
    <span className="unseen">{words.coaxOf(name)}</span>
    <select value={chosen ?? ''} onChange={({ target }) => onChoose(coaxKindIds.find((id) => id === target.value))}>
      <option value="">{none}</option>
      {coaxKindIds.map((id) => (
        <option key={id} value={id}>
          {coaxKinds[id].name}
        </option>
      ))}
    </select>
  </label>
);

/** What a kept coax is, as read on its jacket, and whether its joints were looked at. */
const KeptCoax = ({ boat, id }: { boat: Boat; id: string }): ReactNode => {
  const edit = useEdit();
  const cable = boat.cables.find((entry) => entry.id === id);
  if (cable === undefined) return null;
  const { kind, ...others } = cable.coax ?? {};
  const name = cable.name ?? id;
  const isDry = others.joints === 'dry';
  return (
    <>
      <Kinds
        name={name}
        none={words.notRead}
        chosen={kind}
        onChoose={(next) =>
          edit(
            [
              {
                edit: 'change-cable',
                params: { cable: id, coax: { ...others, ...(next === undefined ? {} : { kind: next }) } },
              },
            ],
            next === undefined ? words.isNotRead(name) : words.isOf(name, coaxKinds[next].name),
          )
        }
      />
      <label className="coax-dry">
        <input
          type="checkbox"
          checked={isDry}
          onChange={() =>
            edit(
              [
                {
                  edit: 'change-cable',
                  params: { cable: id, coax: { ...cable.coax, joints: isDry ? 'weathered' : 'dry' } },
                },
              ],
              words.jointsOf(name, !isDry),
            )
          }
        />
        {words.jointsDry}
      </label>
    </>
  );
};

/** Which coax a piece of a run is made of: read aboard, settled, or left to the plan. */
export const CoaxChoice = ({ boat, piece }: { boat: Boat; piece: CoaxPiece }): ReactNode => {
  const edit = useEdit();
  if (piece.cable !== undefined) return <KeptCoax boat={boat} id={piece.cable} />;
  const pinned = boat.pins?.coax?.[piece.line];
  return (
    <Kinds
      name={piece.line}
      none={words.asPicked}
      chosen={pinned?.kind}
      onChoose={(kind) =>
        edit([
          {
            edit: 'pin-coax',
            params: {
              line: piece.line,
              ...(kind === undefined ? {} : { as: { kind, state: pinned?.state ?? 'fixed' } }),
            },
          },
        ])
      }
    />
  );
};
