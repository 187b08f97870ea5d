import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import type { Plug, Port, Power, Sheet } from '../../../../../core/boat/sheet.ts';
import { isSameSheet, sheetFromManual } from '../../../../../core/kit/sheet-from-manual.ts';
import { useEdit } from '../../../edit-context.ts';
import { TextField } from './fields.tsx';
import { PlugFields } from './plug-fields.tsx';
import { PortFields } from './port-fields.tsx';
import { PowerFields } from './power-fields.tsx';
import { SizeFields } from './size-fields.tsx';
import { words } from './words.ts';
import './sheet-editor.css';

const freshPort = (ports: readonly Port[], [plug]: readonly Plug[]): Port => {
  let at = ports.length + 1;
  while (ports.some(({ id }) => id === `port-${at}`)) at += 1;
  return {
    id: `port-${at}`,
    ...(plug === undefined ? {} : { onPlug: plug.id }),
    protocol: plug === undefined ? 'wifi' : 'nmea0183',
    role: plug === undefined ? 'both' : 'listen',
  };
};

const withPower = ({ power: _, ...sheet }: Sheet, power: Power[]): Sheet =>
  power.length === 0 ? sheet : { ...sheet, power };

const withNote = ({ sourceNote: _, ...sheet }: Sheet, note: string): Sheet =>
  note === '' ? sheet : { ...sheet, sourceNote: note };

/** Fills in the sheet of a unit from the maker’s manual; nothing is changed before "done", and that is one step. */
export const SheetEditor = ({ boat, unit, onClose }: { boat: Boat; unit: Kit; onClose: () => void }): ReactNode => {
  const edit = useEdit();
  const old = boat.sheets.find(({ id }) => id === unit.sheet);
  const alike = boat.kit.filter(({ sheet }) => sheet === unit.sheet).length;
  const [draft, setDraft] = useState<Sheet | undefined>(() =>
    old === undefined || old.source === 'manual' ? old : withNote(old, ''),
  );
  const [forAll, setForAll] = useState(true);
  const [sent, setSent] = useState<Sheet | undefined>(undefined);
  const made = useMemo(
    () => (draft === undefined ? undefined : sheetFromManual(boat, { unit: unit.id, draft, forAll })),
    [boat, unit.id, draft, forAll],
  );
  // a sheet that was refused is still here to be put right
  useEffect(() => {
    if (sent !== undefined && boat.sheets.some((sheet) => isSameSheet(sheet, sent))) onClose();
  }, [boat, sent, onClose]);
  if (draft === undefined || old === undefined) return null;
  const setPort = (at: number, port: Port): void =>
    setDraft({ ...draft, ports: draft.ports.map((one, index) => (index === at ? port : one)) });
  return (
    <section className="sheet-editor" aria-label={words.heading(unit.name)}>
      <h3>{words.heading(unit.name)}</h3>
      {old.source === 'manual' ? null : <p className="quiet">{words.typical}</p>}
      <TextField label={words.name} value={draft.name} longest={120} onValue={(name) => setDraft({ ...draft, name })} />
      <TextField
        label={words.note}
        hint={words.noteHint}
        value={draft.sourceNote ?? ''}
        longest={400}
        onValue={(note) => setDraft(withNote(draft, note))}
      />
      {alike < 2 ? null : (
        <label className="kit-needs">
          <input type="checkbox" checked={forAll} onChange={({ target }) => setForAll(target.checked)} />
          <span>{words.forAll(alike)}</span>
        </label>
      )}
      <h4>{words.ports}</h4>
      {draft.ports.map((port, at) => (
        <PortFields
          key={port.id}
          port={port}
          plugs={draft.plugs}
          onPort={(next) => setPort(at, next)}
          onTakeOut={() => setDraft({ ...draft, ports: draft.ports.filter((_, index) => index !== at) })}
        />
      ))}
      <button
        type="button"
        className="press-link"
        onClick={() => setDraft({ ...draft, ports: [...draft.ports, freshPort(draft.ports, draft.plugs)] })}
      >
        {words.addPort}
      </button>
      <PowerFields
        power={draft.power ?? []}
        ports={draft.ports}
        onPower={(power) => setDraft(withPower(draft, power))}
      />
      <SizeFields sheet={draft} onSheet={setDraft} />
      <PlugFields plugs={draft.plugs} onPlugs={(plugs) => setDraft({ ...draft, plugs })} />
      <p className="kit-presses">
        <button
          type="button"
          className="press-link"
          disabled={made === undefined}
          onClick={() => {
            if (made === undefined) return;
            setSent(made.sheet);
            edit(made.edits, made.says);
          }}
        >
          {words.done}
        </button>
        <button type="button" className="press-link" onClick={onClose}>
          {words.leave}
        </button>
        {made === undefined ? <span className="quiet">{words.unchanged}</span> : null}
      </p>
    </section>
  );
};
