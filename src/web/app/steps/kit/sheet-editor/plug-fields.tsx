import type { ReactNode } from 'react';
import type { Plug, Port } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { ConductorFields } from './conductor-fields.tsx';
import { words } from './words.ts';

const plugFields: readonly FieldOf<Plug>[] = [
  { key: 'connector', label: words.connector, ask: 'text', longest: 60, must: true },
  { key: 'gender', label: words.gender, ask: 'choice', choices: words.genders, must: true },
  { key: 'fixedLead', label: words.fixedLead, ask: 'length' },
  { key: 'mayCut', label: words.mayCut, ask: 'whether' },
  { key: 'mayExtend', label: words.mayExtend, ask: 'whether' },
];

const freshId = (plugs: readonly Plug[]): string => {
  let at = plugs.length + 1;
  while (plugs.some(({ id }) => id === `plug-${at}`)) at += 1;
  return `plug-${at}`;
};

/** The plugs of a unit: connector, pins, the lead that is part of it, and its wires. */
export const PlugFields = ({
  plugs,
  ports,
  onPlugs,
}: {
  plugs: readonly Plug[];
  ports: readonly Port[];
  onPlugs: (plugs: Plug[]) => void;
}): ReactNode => {
  const set = (at: number, next: Plug): void => onPlugs(plugs.map((one, index) => (index === at ? next : one)));
  return (
    <details className="form-part">
      <summary>{words.plugs}</summary>
      {plugs.map((plug, at) => (
        <fieldset key={plug.id} className="form-fields">
          <legend>{plug.id}</legend>
          <DescribedFields of={plug} fields={plugFields} onOf={(next) => set(at, next)} />
          <ConductorFields
            plug={plug}
            ports={ports.filter(({ onPlug }) => onPlug === plug.id).map(({ id }) => id)}
            onConductors={(conductors) => set(at, withPart(plug, 'conductors', conductors))}
          />
          <button
            type="button"
            className="press-link"
            onClick={() => onPlugs(plugs.filter((_, index) => index !== at))}
          >
            {words.takeOut}
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="press-link"
        onClick={() => onPlugs([...plugs, { id: freshId(plugs), connector: 'leads', gender: 'none' }])}
      >
        {words.addPlug}
      </button>
    </details>
  );
};
