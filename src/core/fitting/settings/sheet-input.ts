import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { TypedEntry } from '../../settings-sheet-shape.ts';
import type { SettingEntry } from '../../sources-shape.ts';

/** What a settings sheet is made from: the boat, who is joined to whom, and who enters the offset of each depth. */
export interface SheetInput {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly settings: readonly SettingEntry[];
}

/** One thing to type before it is known what stands there. */
export type Wanted = Omit<TypedEntry, 'stands'>;

/** The units aboard when the work is done whose sheet is such a one. */
export const unitsWhere = (index: BoatIndex, isSuch: (sheet: Sheet) => boolean): readonly Kit[] => {
  const last = lastPhase(index.boat);
  return index.boat.kit.filter((unit) => {
    const sheet = index.sheetOf.get(unit.id);
    return sheet !== undefined && isAboard(unit, last) && isSuch(sheet);
  });
};

/** The units of some kinds that are aboard when the work is done. */
export const unitsOfKind = (index: BoatIndex, kinds: readonly string[]): readonly Kit[] =>
  unitsWhere(index, ({ kind }) => kinds.includes(kind));

/** Units that are joined to one by a line of their own, not by a bus that many share. */
export const joinedTo = ({ joins }: SheetInput, kit: string): readonly string[] =>
  joins
    .filter(({ bus, members }) => bus === undefined && members.some((member) => member.kit === kit))
    .flatMap(({ members }) => members.map((member) => member.kit))
    .filter((other) => other !== kit);
