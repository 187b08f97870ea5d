import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit, Place } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { keptFor } from '../../boat/kept-for.ts';
import type { Opening } from '../../boat/opening.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { BusEntry, LineEntry } from '../../plan-shape.ts';
import { cableOutsideMm } from '../../ways/cable-outside.ts';
import { mayCutBy } from './may-cut-by.ts';

/** What of a sheet fitting looks at. */
export type FaceSheet = Pick<Sheet, 'kind' | 'body' | 'cutout' | 'plugsMm' | 'face' | 'ipCode' | 'power'>;

/** One opening with all of the boat that its fit hangs on, so that it is worked out anew only where one of these changes. */
export interface OpeningCase {
  readonly opening: Opening;
  readonly exposure: Place['exposure'];
  /** the unit that is there when all is done; absent where none is */
  readonly unit?: Pick<Kit, 'id' | 'fate'>;
  readonly sheet?: FaceSheet;
  /** whether the sizes of the unit may be cut by */
  readonly mayCut?: boolean;
  /** the thickest cable that ends at the unit */
  readonly thickest?: { readonly line: string; readonly cableMm: number };
}

/** What openings are planned from: the boat, her lines, and her buses with the grade of their cable. */
export interface OpeningsInput {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
}

const faceOf = keptFor(
  ({ kind, body, cutout, plugsMm, face, ipCode, power }: Sheet): FaceSheet => ({
    kind,
    ...(body === undefined ? {} : { body }),
    ...(cutout === undefined ? {} : { cutout }),
    ...(plugsMm === undefined ? {} : { plugsMm }),
    ...(face === undefined ? {} : { face }),
    ...(ipCode === undefined ? {} : { ipCode }),
    ...(power === undefined ? {} : { power }),
  }),
);

const thickestAt = ({ index, lines, buses }: OpeningsInput, unit: string): OpeningCase['thickest'] | undefined => {
  const start = `${unit}.`;
  let thickest: OpeningCase['thickest'] | undefined;
  for (const line of lines) {
    if (!line.from.startsWith(start) && !line.to.startsWith(start)) continue;
    const cableMm = cableOutsideMm(index, line, buses);
    if (thickest === undefined || cableMm > thickest.cableMm) thickest = { line: line.id, cableMm };
  }
  return thickest;
};

const caseOf = (opening: Opening, input: OpeningsInput): OpeningCase => {
  const { index } = input;
  const exposure = index.places.get(opening.place)?.exposure ?? 'dry';
  const unit = index.kit.get(opening.for ?? '');
  const sheet = index.sheetOf.get(unit?.id ?? '');
  if (unit === undefined || sheet === undefined || !isAboard(unit, lastPhase(index.boat))) return { opening, exposure };
  const thickest = thickestAt(input, unit.id);
  return {
    opening,
    exposure,
    unit: { id: unit.id, fate: unit.fate },
    sheet: faceOf(sheet),
    mayCut: mayCutBy(unit, sheet),
    ...(thickest === undefined ? {} : { thickest }),
  };
};

/** Every opening of a boat with what its fit hangs on, by id. */
export const openingCases = (input: OpeningsInput): OpeningCase[] =>
  [...(input.index.boat.openings ?? [])]
    .sort((a, b) => byCodeUnit(a.id, b.id))
    .map((opening) => caseOf(opening, input));
