import type { ReactNode } from 'react';
import type { Plug } from '../../../../../core/boat/sheet.ts';
import { ChoiceField, TextField } from './fields.tsx';
import { words } from './words.ts';

const genders = ['male', 'female', 'none'] as const;

const freshId = (plugs: readonly Plug[]): string => {
  let at = plugs.length + 1;
  while (plugs.some(({ id }) => id === `plug-${at}`)) at += 1;
  return `plug-${at}`;
};

/** The plugs of a unit: connector and pins. */
export const PlugFields = ({
  plugs,
  onPlugs,
}: {
  plugs: readonly Plug[];
  onPlugs: (plugs: Plug[]) => void;
}): ReactNode => {
  const set = (at: number, next: Plug): void => onPlugs(plugs.map((one, index) => (index === at ? next : one)));
  return (
    <details className="sheet-part">
      <summary>{words.plugs}</summary>
      {plugs.map((plug, at) => (
        <fieldset key={plug.id} className="sheet-fields">
          <legend>{plug.id}</legend>
          <TextField
            label={words.connector}
            value={plug.connector}
            longest={60}
            onValue={(connector) => set(at, { ...plug, connector })}
          />
          <ChoiceField
            label={words.gender}
            value={plug.gender}
            choices={genders.map((gender) => [gender, words.genders[gender]] as const)}
            onValue={(gender) => set(at, { ...plug, gender })}
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
