import type { Boat } from '../boat/boat-schema.ts';
import type { Sheet } from '../boat/sheet.ts';
import { applyChanges } from '../boat/sheet-changes.ts';
import { type Change, changesBetween } from './changes-between.ts';
import { type EditedSheet, isSameSheet } from './sheet-from-manual.ts';
import { tidySheet } from './tidy-sheet.ts';

/** A unit that differs from its sheet, as one step. */
export interface UnitThatDiffers extends EditedSheet {
  /** all by which it then differs */
  readonly changes: readonly Change[];
}

/** Whether a path is another, or leads on from it. */
const isWithin = (path: string, other: string): boolean => path === other || path.startsWith(`${other}.`);

/** The changes without those that change nothing beside the others. */
const needed = (sheet: Sheet, changes: readonly Change[]): Change[] => {
  const wanted = applyChanges(sheet, changes);
  return changes.reduce<Change[]>(
    (left, one) => {
      const others = left.filter((change) => change !== one);
      return isSameSheet(applyChanges(sheet, others), wanted) ? others : left;
    },
    [...changes],
  );
};

/**
 * One unit as somebody says it differs from its sheet, which stays as it is for every other. What was said of it before
 * and still holds keeps how it is known. Undefined where the boat has no such unit, or nothing is changed. Pure; one step.
 */
export const unitDiffers = (
  boat: Boat,
  { unit: id, draft, how }: { readonly unit: string; readonly draft: Sheet; readonly how: Change['how'] },
): UnitThatDiffers | undefined => {
  const unit = boat.kit.find((one) => one.id === id);
  const sheet = boat.sheets.find((one) => one.id === unit?.sheet);
  if (unit === undefined || sheet === undefined) return undefined;
  const before = unit.changes ?? [];
  const now = tidySheet(applyChanges(sheet, before));
  // where a sheet is from is said of the sheet, and of no one unit
  const { sourceNote: _, ...said } = tidySheet(draft);
  const note = now.sourceNote === undefined ? {} : { sourceNote: now.sourceNote };
  const wanted: Sheet = { ...said, id: now.id, name: now.name, kind: now.kind, source: now.source, ...note };
  const fresh = changesBetween(now, wanted, how);
  if (fresh.length === 0) return undefined;
  const kept = before.filter(({ path }) => !fresh.some((change) => isWithin(path, change.path)));
  const changes = needed(sheet, [...kept, ...fresh]);
  const says = `${unit.name} ${changes.length === 0 ? 'is as its sheet has it' : 'differs from its sheet'}.`;
  return {
    changes,
    sheet: applyChanges(sheet, changes),
    edits: [{ edit: 'set-changes', params: { unit: id, changes } }],
    says,
  };
};
