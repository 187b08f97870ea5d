import { useMemo, useState } from 'react';
import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { applyChanges } from '../../../../../core/boat/sheet-changes.ts';
import { type Change, changesBetween } from '../../../../../core/kit/changes-between.ts';
import { type EditedSheet, sheetFromManual } from '../../../../../core/kit/sheet-from-manual.ts';
import { unitDiffers } from '../../../../../core/kit/unit-differs.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import type { Scope } from './scope-choice.tsx';

/** The sheet as it is before anything is entered: that of every unit, or as this one unit has it. */
const baseOf = (sheet: Sheet, unit: Kit, scope: Scope): Sheet =>
  scope === 'unit' ? applyChanges(sheet, unit.changes ?? []) : sheet;

/** A sheet that is of no manual yet says where it was read only once somebody says so. */
const firstDraft = (sheet: Sheet): Sheet =>
  sheet.source === 'manual' ? sheet : withPart(sheet, 'sourceNote', undefined);

export interface SheetDraft {
  readonly old: Sheet;
  readonly alike: number;
  readonly draft: Sheet;
  readonly setDraft: (draft: Sheet) => void;
  readonly scope: Scope;
  readonly setScope: (scope: Scope) => void;
  readonly how: Change['how'];
  readonly setHow: (how: Change['how']) => void;
  /** what comes of it; undefined while nothing is changed */
  readonly made: EditedSheet | undefined;
  /** all by which the unit differs from its sheet with what is entered */
  readonly changes: readonly Change[];
  /** lets one of them be as the sheet has it */
  readonly takeBack: (path: string) => void;
}

/** A sheet that is being filled in, for all units of it or for one; what is entered stays when the choice of which changes. */
export const useDraft = (boat: Boat, unit: Kit): SheetDraft | undefined => {
  const old = boat.sheets.find(({ id }) => id === unit.sheet);
  const [scope, setScope] = useState<Scope>('all');
  const [how, setHow] = useState<Change['how']>('seen');
  const [draft, setDraft] = useState(() => (old === undefined ? undefined : firstDraft(old)));
  const differs = useMemo(
    () => (draft === undefined || scope !== 'unit' ? undefined : unitDiffers(boat, { unit: unit.id, draft, how })),
    [boat, unit.id, draft, scope, how],
  );
  const fromManual = useMemo(
    () =>
      draft === undefined || scope === 'unit'
        ? undefined
        : sheetFromManual(boat, { unit: unit.id, draft, forAll: scope === 'all' }),
    [boat, unit.id, draft, scope],
  );
  if (old === undefined || draft === undefined) return undefined;
  const changes = differs?.changes ?? unit.changes ?? [];
  return {
    old,
    alike: boat.kit.filter(({ sheet }) => sheet === unit.sheet).length,
    draft,
    setDraft,
    scope,
    setScope: (next) => {
      const entered = changesBetween(baseOf(old, unit, scope), draft, how);
      setDraft(applyChanges(baseOf(old, unit, next), entered));
      setScope(next);
    },
    how,
    setHow,
    made: differs ?? fromManual,
    changes,
    takeBack: (taken) =>
      setDraft(
        applyChanges(
          old,
          changes.filter(({ path }) => path !== taken),
        ),
      ),
  };
};
