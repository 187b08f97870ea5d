import { type ReactNode, useEffect, useState } from 'react';
import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../../../../core/boat/ids.ts';
import type { Plug, Port, Sheet } from '../../../../../core/boat/sheet.ts';
import { applyChanges } from '../../../../../core/boat/sheet-changes.ts';
import { typicalSheets } from '../../../../../core/facts/sheets/index.ts';
import { isSameSheet } from '../../../../../core/kit/sheet-from-manual.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { withoutPort } from '../../../../../core/kit/without-port.ts';
import { useEdit } from '../../../edit-context.ts';
import { ChoiceField, TextField } from '../../../forms/fields.tsx';
import { AboardFields, EarthingFields, LightingFields, RemoteFields } from './aboard-fields.tsx';
import { AerialFields } from './aerial-fields.tsx';
import { DriveFields, DriveOutputFields } from './drive-fields.tsx';
import { PlugFields } from './plug-fields.tsx';
import { PortFields } from './port-fields.tsx';
import { PowerFields } from './power-fields.tsx';
import { ScopeChoice } from './scope-choice.tsx';
import { SensorFields } from './sensor-fields.tsx';
import { SizeFields } from './size-fields.tsx';
import { TogetherFields } from './together-fields.tsx';
import { TurnFields } from './turn-fields.tsx';
import { UnitChanges } from './unit-changes.tsx';
import { type SheetDraft, useDraft } from './use-draft.ts';
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

const kindsWith = (own: string): readonly (readonly [string, string])[] =>
  [...new Set([own, ...typicalSheets.map(({ kind }) => kind)])]
    .sort(byCodeUnit)
    .map((kind) => [kind, kind.replaceAll('-', ' ')] as const);

/** What it is, what its maker calls it and where it was read: said of a sheet, and of no one unit. */
const SheetFields = ({ draft, setDraft }: Pick<SheetDraft, 'draft' | 'setDraft'>): ReactNode => (
  <>
    <ChoiceField
      label={words.kind}
      value={draft.kind}
      choices={kindsWith(draft.kind)}
      onValue={(kind) => setDraft({ ...draft, kind })}
    />
    <TextField label={words.name} value={draft.name} longest={120} onValue={(name) => setDraft({ ...draft, name })} />
    <TextField
      label={words.note}
      hint={words.noteHint}
      value={draft.sourceNote ?? ''}
      longest={400}
      onValue={(note) => setDraft(withPart(draft, 'sourceNote', note === '' ? undefined : note))}
    />
  </>
);

/** The parts of a sheet, each of its own and closed until it is wanted. */
const Parts = ({ draft, setDraft }: Pick<SheetDraft, 'draft' | 'setDraft'>): ReactNode => (
  <>
    <h4>{words.ports}</h4>
    {draft.ports.map((port, at) => (
      <PortFields
        key={port.id}
        port={port}
        plugs={draft.plugs}
        onPort={(next) => setDraft({ ...draft, ports: draft.ports.map((one, index) => (index === at ? next : one)) })}
        onTakeOut={() => setDraft(withoutPort(draft, port.id))}
      />
    ))}
    <button
      type="button"
      className="press-link"
      onClick={() => setDraft({ ...draft, ports: [...draft.ports, freshPort(draft.ports, draft.plugs)] })}
    >
      {words.addPort}
    </button>
    <TurnFields sheet={draft} onTurns={(turns) => setDraft(withPart(draft, 'turns', turns))} />
    <TogetherFields sheet={draft} onSheet={setDraft} />
    <PlugFields plugs={draft.plugs} ports={draft.ports} onPlugs={(plugs) => setDraft({ ...draft, plugs })} />
    <PowerFields
      power={draft.power ?? []}
      ports={draft.ports}
      onPower={(power) => setDraft(withPart(draft, 'power', power))}
    />
    <SizeFields sheet={draft} onSheet={setDraft} />
    <AboardFields sheet={draft} onSheet={setDraft} />
    <SensorFields sheet={draft} onSheet={setDraft} />
    <AerialFields sheet={draft} onSheet={setDraft} />
    <LightingFields sheet={draft} onSheet={setDraft} />
    <EarthingFields sheet={draft} onSheet={setDraft} />
    <RemoteFields sheet={draft} onSheet={setDraft} />
    <DriveFields sheet={draft} onSheet={setDraft} />
    <DriveOutputFields sheet={draft} onSheet={setDraft} />
  </>
);

/** Whether the boat has what was entered: as a sheet, or as this unit has its own. */
const hasTaken = (boat: Boat, unit: Kit, sent: Sheet): boolean =>
  boat.sheets.some(
    (sheet) =>
      isSameSheet(sheet, sent) ||
      (sheet.id === unit.sheet && isSameSheet(applyChanges(sheet, unit.changes ?? []), sent)),
  );

/** Fills in the sheet of a unit, or how one unit differs from it; nothing is changed before "done", and that is one step. */
export const SheetEditor = ({ boat, unit, onClose }: { boat: Boat; unit: Kit; onClose: () => void }): ReactNode => {
  const edit = useEdit();
  const [sent, setSent] = useState<Sheet | undefined>(undefined);
  const found = useDraft(boat, unit);
  // a sheet that was refused is still here to be put right
  useEffect(() => {
    if (sent !== undefined && hasTaken(boat, unit, sent)) onClose();
  }, [boat, unit, sent, onClose]);
  if (found === undefined) return null;
  const { old, alike, draft, setDraft, scope, setScope, how, setHow, made, changes, takeBack } = found;
  return (
    <section className="part-form sheet-editor" aria-label={words.heading(unit.name)}>
      <h3>{words.heading(unit.name)}</h3>
      <ScopeChoice alike={alike} scope={scope} how={how} onScope={setScope} onHow={setHow} />
      {scope === 'unit' ? (
        <UnitChanges changes={changes} onTakeBack={takeBack} />
      ) : (
        <>
          {old.source === 'manual' ? null : <p className="quiet">{words.typical}</p>}
          <SheetFields draft={draft} setDraft={setDraft} />
        </>
      )}
      <Parts draft={draft} setDraft={setDraft} />
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
