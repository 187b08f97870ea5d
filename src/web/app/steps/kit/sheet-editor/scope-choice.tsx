import type { ReactNode } from 'react';
import type { Change } from '../../../../../core/kit/changes-between.ts';
import { ChoiceField } from '../../../forms/fields.tsx';
import { words } from './words.ts';

/** Of what that is so which is entered: every unit of the sheet, one unit by a sheet of its own, or one that differs from it. */
export type Scope = 'all' | 'own' | 'unit';

const hows = ['seen', 'manual', 'recording'] as const satisfies readonly Change['how'][];

/** Chooses of what that is so which is entered, and of one unit how it is known. */
export const ScopeChoice = ({
  alike,
  scope,
  how,
  onScope,
  onHow,
}: {
  /** how many units are of this sheet */
  alike: number;
  scope: Scope;
  how: Change['how'];
  onScope: (scope: Scope) => void;
  onHow: (how: Change['how']) => void;
}): ReactNode => {
  const scopes: readonly Scope[] = alike < 2 ? ['all', 'unit'] : ['all', 'own', 'unit'];
  const says = { all: words.forAll(alike), own: words.forOwn, unit: words.forUnit };
  return (
    <>
      <fieldset className="form-several">
        <legend>{words.scope}</legend>
        {scopes.map((one) => (
          <label key={one} className="kit-needs">
            <input type="radio" name="sheet-scope" checked={one === scope} onChange={() => onScope(one)} />
            <span>{says[one]}</span>
          </label>
        ))}
      </fieldset>
      {scope === 'unit' ? (
        <ChoiceField
          label={words.howKnown}
          value={how}
          choices={hows.map((one) => [one, words.known[one]] as const)}
          onValue={onHow}
        />
      ) : null}
    </>
  );
};
