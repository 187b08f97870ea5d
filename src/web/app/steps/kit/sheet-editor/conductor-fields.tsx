import type { ReactNode } from 'react';
import type { Plug } from '../../../../../core/boat/sheet.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Conductor = NonNullable<Plug['conductors']>[number];

const fieldsFor = (ports: readonly string[]): readonly FieldOf<Conductor>[] => [
  { key: 'label', label: words.label, ask: 'text', longest: 40, must: true },
  { key: 'colour', label: words.colour, ask: 'text', longest: 40, must: true },
  { key: 'role', label: words.role, ask: 'choice', choices: words.roles, must: true },
  {
    key: 'ports',
    label: words.ofPorts,
    ask: 'several',
    choices: Object.fromEntries(ports.map((id) => [id, id])),
    must: true,
  },
];

/** The wires of one plug: what the maker calls each, its colour, what it does and for which ports. */
export const ConductorFields = ({
  plug,
  ports,
  onConductors,
}: {
  plug: Plug;
  /** ids of the ports on it */
  ports: readonly string[];
  onConductors: (conductors: Conductor[]) => void;
}): ReactNode => {
  const { conductors = [] } = plug;
  const fields = fieldsFor(ports);
  return (
    <details className="form-part wide">
      <summary>{words.conductors(conductors.length)}</summary>
      {conductors.map((one, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a wire is known by its label, which is typed here
        <fieldset key={at} className="form-fields sheet-wire">
          <legend>{one.label}</legend>
          <DescribedFields
            of={one}
            fields={fields}
            onOf={(next) =>
              onConductors(conductors.map((other, index) => (index === at ? { ...one, ...next } : other)))
            }
          />
          <button
            type="button"
            className="press-link"
            aria-label={words.leaveOut(one.label)}
            onClick={() => onConductors(conductors.filter((_, index) => index !== at))}
          >
            {words.takeOut}
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="press-link"
        onClick={() =>
          onConductors([...conductors, { label: String(conductors.length + 1), colour: '', ports: [], role: 'spare' }])
        }
      >
        {words.addConductor}
      </button>
    </details>
  );
};
