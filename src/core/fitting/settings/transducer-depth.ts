import { byCodeUnit } from '../../boat/ids.ts';
import type { How } from '../../settings-sheet-shape.ts';
import { leadLine } from '../sea/lead-line.ts';
import { joinedTo, type SheetInput } from './sheet-input.ts';

/** How deep a transducer lies below the water, and how well that is known. */
export interface KnownDepth {
  readonly belowM: number;
  readonly how: How;
}

const transducerKinds: ReadonlySet<string> = new Set(['transducer', 'depth-sensor']);

/** What was found by a lead line last, else what somebody measured, else where it stands on the drawing. */
const ownDepth = ({ index }: SheetInput, unit: string): KnownDepth | undefined => {
  const { measures, sea, hull } = index.boat;
  const [lead] = (sea?.leads ?? [])
    .filter((trial) => trial.unit === unit)
    .toSorted((a, b) => byCodeUnit(b.on, a.on) || byCodeUnit(a.id, b.id));
  if (lead !== undefined) {
    return { belowM: leadLine({ ...lead, draftM: hull.draftM }).belowWaterM, how: 'at-sea' };
  }
  const measured = measures?.transducers?.find((entry) => entry.unit === unit);
  return measured === undefined ? undefined : { belowM: measured.below.valueM, how: measured.below.how };
};

const drawnDepth = ({ index }: SheetInput, unit: string): KnownDepth | undefined => {
  const zM = index.places.get(index.kit.get(unit)?.place ?? '')?.zM;
  return zM === undefined || zM >= 0 ? undefined : { belowM: -zM, how: 'drawn' };
};

/** How deep the transducer lies from which a unit has its soundings: its own, or that of one joined to it by a lead. */
export const transducerDepth = (input: SheetInput, source: string): KnownDepth | undefined => {
  const { index } = input;
  const isTransducer = (unit: string): boolean => transducerKinds.has(index.sheetOf.get(unit)?.kind ?? '');
  const others = [...joinedTo(input, source)].filter(isTransducer).sort(byCodeUnit);
  const units = [source, ...others];
  const first = (find: typeof ownDepth): KnownDepth | undefined =>
    units.map((unit) => find(input, unit)).find((known) => known !== undefined);
  return (
    first(ownDepth) ??
    [...others, ...(isTransducer(source) ? [source] : [])]
      .map((unit) => drawnDepth(input, unit))
      .find((known) => known !== undefined)
  );
};
