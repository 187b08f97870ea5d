import type { Boat, Place } from '../../core/boat/boat-schema.ts';
import type { SheetName } from '../../core/facts/sheet-sizes.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import { labelOf as labelOfLine } from '../lists/label-of.ts';
import { linesByWay } from '../lists/lines-by-way.ts';
import { type SheetUnits, sheetUnits } from '../sheet/sheet-units.ts';
import { type UnitMark, unitMarks } from '../sheet/unit-marks.ts';
import { type SheetArea, sheetArea } from './sheet-area.ts';

/** What the sheets of one binder look up, gathered once. */
export interface KnownBoat {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly index: CardBoat;
  /** every unit that stays or comes, with its number */
  readonly marks: readonly UnitMark[];
  readonly marksAt: ReadonlyMap<string, readonly UnitMark[]>;
  /** what is written on each line, by its id */
  readonly labels: ReadonlyMap<string, string>;
  readonly linesIn: ReadonlyMap<string, readonly LineEntry[]>;
  /** short codes of the places by id, from the stern forward: "P7" */
  readonly codes: ReadonlyMap<string, string>;
  readonly units: SheetUnits;
  readonly paper: SheetName;
  readonly area: SheetArea;
}

/** What a set of sheets is made of. */
export interface SheetRequest {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly paper: SheetName;
  readonly units?: keyof typeof sheetUnits;
}

/** From the stern forward, then from below upwards, as units are numbered. */
const sternFirst = (a: Place, b: Place): number => a.xM - b.xM || a.zM - b.zM || a.yM - b.yM || byCodeUnit(a.id, b.id);

/** Codes of the places in the order in which units are numbered. */
const placeCodes = ({ places }: Boat): ReadonlyMap<string, string> =>
  new Map([...places].sort(sternFirst).map(({ id }, at): [string, string] => [id, `P${at + 1}`]));

const byPlace = (marks: readonly UnitMark[]): ReadonlyMap<string, readonly UnitMark[]> => {
  const at = new Map<string, UnitMark[]>();
  for (const mark of marks) at.set(mark.place.id, [...(at.get(mark.place.id) ?? []), mark]);
  return at;
};

/** Gathers what the sheets of a boat need. */
export const knownBoat = ({ boat, plan, paper, units = 'metres' }: SheetRequest): KnownBoat => {
  const index = cardBoat(boat);
  const marks = unitMarks({ boat, index, plan });
  return {
    boat,
    plan,
    index,
    marks,
    marksAt: byPlace(marks),
    labels: new Map(plan.lines.map((line) => [line.id, labelOfLine(line)])),
    linesIn: linesByWay(plan),
    codes: placeCodes(boat),
    units: sheetUnits[units],
    paper,
    area: sheetArea(paper),
  };
};

/** The name of a place up to its first comma, for a drawing; the whole name stands in the key. */
export const briefPlace = (name: string): string => name.split(/[,:(]/)[0]?.trim() ?? name;

/** The label of a line, "C07". */
export const labelOf = ({ labels }: Pick<KnownBoat, 'labels'>, line: string): string => labels.get(line) ?? line;

/** A length with its unit, "10.80 m" or "35.4 ft". */
export const lengthText = ({ units }: Pick<KnownBoat, 'units'>, lengthM: number): string =>
  units.word === 'm' ? `${lengthM.toFixed(2)} m` : `${(lengthM / units.inM).toFixed(1)} ft`;
