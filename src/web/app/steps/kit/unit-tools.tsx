import { type ReactNode, type SubmitEvent, useCallback, useMemo, useState } from 'react';
import type { Boat, Kit } from '../../../../core/boat/boat-schema.ts';
import type { Sheet } from '../../../../core/boat/sheet.ts';
import { copyUnit } from '../../../../core/kit/copy-unit.ts';
import { likelyPlaces } from '../../../../core/kit/likely-places.ts';
import { useEdit } from '../../edit-context.ts';
import { usePart } from '../../use-part.ts';
import { takeUp } from './kit-hand.ts';
import { KeepSheet } from './own-sheets.tsx';
import { words } from './words.ts';

const PlaceSelect = ({
  label,
  boat,
  sheet,
  not,
  onPlace,
}: {
  label: string;
  boat: Boat;
  sheet: Sheet;
  /** a place that is no choice */
  not?: string;
  onPlace: (place: string) => void;
}): ReactNode => {
  const places = useMemo(() => likelyPlaces(boat, sheet).filter(({ id }) => id !== not), [boat, sheet, not]);
  return (
    <label>
      {label}{' '}
      <select
        value=""
        onChange={({ target }) => {
          if (target.value !== '') onPlace(target.value);
        }}
      >
        <option value="">{words.noPlace}</option>
        {places.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
};

const bringEditor = () => import('./sheet-editor/sheet-editor.tsx');

const LateSheetEditor = (given: { boat: Boat; unit: Kit; onClose: () => void }): ReactNode => {
  const part = usePart(bringEditor);
  return part === undefined ? null : <part.SheetEditor {...given} />;
};

/** What can be done with one unit beside setting what becomes of it: name, move, copy, replace, take out. */
export const UnitTools = ({ boat, unit }: { boat: Boat; unit: Kit }): ReactNode => {
  const edit = useEdit();
  const [isSheet, setIsSheet] = useState(false);
  const closeSheet = useCallback(() => setIsSheet(false), []);
  const sheet = boat.sheets.find(({ id }) => id === unit.sheet);
  const call = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const name = String(new FormData(event.currentTarget).get('name') ?? '').trim();
    if (name !== '' && name !== unit.name) edit([{ edit: 'name-unit', params: { unit: unit.id, name } }]);
  };
  const copyTo = (place: string): void => {
    const made = copyUnit(boat, unit.id, place);
    if (made !== undefined) edit(made.edits, made.says);
  };
  if (sheet === undefined) return null;
  return (
    <div className="kit-tools">
      <form onSubmit={call}>
        <label>
          {words.name} <input name="name" key={unit.name} defaultValue={unit.name} autoComplete="off" maxLength={200} />
        </label>{' '}
        <button type="submit" className="press-link">
          {words.callIt}
        </button>
      </form>
      <PlaceSelect
        label={words.moveTo}
        boat={boat}
        sheet={sheet}
        not={unit.place}
        onPlace={(place) => edit([{ edit: 'move-unit', params: { unit: unit.id, place } }])}
      />
      <PlaceSelect label={words.copyTo} boat={boat} sheet={sheet} onPlace={copyTo} />
      <p className="kit-presses">
        <button type="button" className="press-link" onClick={() => takeUp({ replaces: unit.id })}>
          {words.replace}
        </button>
        <button type="button" className="press-link" aria-expanded={isSheet} onClick={() => setIsSheet(!isSheet)}>
          {words.sheet}
        </button>
        {sheet.source === 'typical' ? null : <KeepSheet sheet={sheet} />}
        <button
          type="button"
          className="press-link"
          onClick={() => edit([{ edit: 'remove-unit', params: { unit: unit.id } }])}
        >
          {words.takeOut}
        </button>
      </p>
      {isSheet ? <LateSheetEditor boat={boat} unit={unit} onClose={closeSheet} /> : null}
    </div>
  );
};
