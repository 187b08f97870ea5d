import { type ReactNode, useState } from 'react';
import type { Boat, Cable, LineKind, Way } from '../../../../core/boat/boat-schema.ts';
import { parseBore } from '../../../../core/units/parse-bore.ts';
import { cablesInWay } from '../../../../core/walk-round/cables-in-way.ts';
import { useEdit } from '../../edit-context.ts';
import { ChosenField, TypedField } from '../../forms/typed-field.tsx';
import { CoaxForm } from './coax-form.tsx';
import { words } from './words.ts';

/** Says of a cable that it lies in the way; until more is known it goes from one end of the way to the other. */
const NewCable = ({ boat, way }: { boat: Boat; way: Way }): ReactNode => {
  const edit = useEdit();
  const [kind, setKind] = useState<LineKind>('feed');
  const add = (diameterMm: number): void => {
    const name = words.cableName(words.lineKinds[kind]);
    edit(cablesInWay(boat, way, { kind, diameterMm, count: 1, name }));
  };
  return (
    <div className="new-cable">
      <ChosenField
        label={words.cableKind}
        value={kind}
        options={words.lineKinds}
        onChoose={(chosen) => chosen !== undefined && setKind(chosen)}
      />
      <TypedField
        label={words.diameter}
        name="diameter"
        shown=""
        wrong={words.wrongDiameter}
        parse={(text) => {
          const mm = parseBore(text);
          return mm === undefined || mm <= 0 || mm > 200 ? undefined : mm;
        }}
        onPut={add}
      />
    </div>
  );
};

const CableRow = ({ cable }: { cable: Cable }): ReactNode => {
  const edit = useEdit();
  const name = cable.name ?? cable.id;
  const change = (to: Partial<Pick<Cable, 'condition' | 'fate'>>): void =>
    edit([{ edit: 'change-cable', params: { cable: cable.id, ...to } }]);
  return (
    <li className="cable-row">
      <span>{words.cable(name, cable.diameterMm)}</span>
      <ChosenField
        label={words.condition}
        value={cable.condition}
        options={words.conditions}
        onChoose={(condition) => condition !== undefined && change({ condition })}
      />
      <ChosenField
        label={words.fate}
        value={cable.fate}
        options={words.fates}
        onChoose={(fate) => fate !== undefined && change({ fate })}
      />
      {cable.kind === 'coax' ? <CoaxForm cable={cable} /> : null}
      <button
        type="button"
        className="edit-link"
        aria-label={words.takeOut(name)}
        onClick={() => edit([{ edit: 'remove-cable', params: { cable: cable.id } }])}
      >
        {words.takeOutShort}
      </button>
    </li>
  );
};

/** The cables aboard that lie in a way, and what is said of one more. */
export const CablesInWay = ({ boat, way }: { boat: Boat; way: Way }): ReactNode => {
  const cables = boat.cables.filter(({ ways }) => ways.includes(way.id));
  return (
    <section className="cables-in" aria-label={words.inIt}>
      <h4>{words.inIt}</h4>
      {cables.length === 0 ? (
        <p className="quiet">{words.nothingIn}</p>
      ) : (
        <ul>
          {cables.map((cable) => (
            <CableRow key={cable.id} cable={cable} />
          ))}
        </ul>
      )}
      <NewCable boat={boat} way={way} />
    </section>
  );
};
