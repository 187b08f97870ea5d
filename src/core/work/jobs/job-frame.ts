import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { slices, type WorkSlice, workSlices } from '../../facts/work-slices.ts';
import type { PhaseEntry } from '../../phases-shape.ts';
import type { BusEntry, LineEntry, PlanDraft, ReadingEntry, SeenEntry, ShoppingEntry } from '../../plan-shape.ts';
import { phaseOfLine, unitAt } from '../../quote/line-work.ts';
import { partsOf } from '../../quote/quote-of.ts';
import type { Work } from '../../quote/quote-shape.ts';
import { notFitted } from '../../quote/unit-work.ts';
import { workToDo } from '../../quote/work-to-do.ts';
import type { TestEntry } from '../../tests-shape.ts';

/** What lies in a boat, as far as her jobs look at it. */
export type LaidWork = Pick<PlanDraft, 'joins' | 'lines' | 'ways' | 'passages' | 'masts' | 'panels' | 'fits'>;

/** All that jobs look at in a plan. What is not named here they cannot hang on. */
export interface WorkedPlan extends LaidWork {
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
  readonly readings: readonly Pick<ReadingEntry, 'reading' | 'at' | 'arrives' | 'by' | 'backups'>[];
  readonly before: readonly Pick<SeenEntry, 'reading' | 'at' | 'by'>[];
  readonly shopping: readonly Pick<ShoppingEntry, 'id' | 'item' | 'kind' | 'count' | 'by' | 'each' | 'for'>[];
  readonly shipPapers: PlanDraft['shipPapers'];
  readonly tests?: readonly Pick<TestEntry, 'id' | 'group' | 'what' | 'about' | 'reading'>[];
  readonly phases?: { readonly phases: readonly Pick<PhaseEntry, 'phase' | 'buy'>[] };
}

/** What jobs are made from: a boat and her plan without its work and findings. */
export interface JobsInput {
  readonly index: BoatIndex;
  readonly plan: WorkedPlan;
}

/** One phase of the work: what comes and goes in it, and the lines that are new in it. */
export interface PhaseFrame extends JobsInput {
  readonly phase: number;
  /** the first and the last phase with any work */
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** the work a quote counts in it */
  readonly pieces: readonly Work[];
  readonly comes: readonly Kit[];
  readonly goes: readonly Kit[];
  readonly lines: readonly LineEntry[];
  readonly mastDown: boolean;
}

/** The kind of a unit’s sheet. */
export const kindOf = ({ index }: Pick<JobsInput, 'index'>, unit: string): string =>
  index.sheetOf.get(unit)?.kind ?? '';

/** The slice of a unit by its kind; a bus is backbone, a panel power. */
export const sliceOf = (input: Pick<JobsInput, 'index'>, id: string): WorkSlice => {
  if (input.index.panels.has(id) || input.index.banks.has(id)) return 'power';
  if (input.index.buses.has(id)) return 'backbone';
  return slices.byKind[kindOf(input, id)] ?? 'sensors';
};

/** The later of slices, in the order in which they are switched on. */
export const laterOf = (some: readonly WorkSlice[]): WorkSlice | undefined =>
  workSlices.findLast((slice) => some.includes(slice));

/** What a line ends at: units, panels or buses, by id. */
export const endsOf = ({ index }: Pick<JobsInput, 'index'>, { from, to }: LineEntry): string[] =>
  [from, to].map((end) => {
    const unit = unitAt(index, end);
    if (unit !== undefined) return unit.id;
    const bus = end.split('/')[0] ?? end;
    return index.buses.has(bus) ? bus : end;
  });

/** The name of a job: what it is and what it is about, with its phase where that is not the first. */
export const jobId = (kind: string, about: string, phase: number): string =>
  [kind, ...(about === '' ? [] : [about]), ...(phase === 1 ? [] : [String(phase)])].join(':');

/** Her work by phases, each with its pieces, units and lines; kept for the plan, since jobs and functions ask for the same. */
export const phaseFrames = ({ index, plan }: JobsInput): readonly PhaseFrame[] => framesOfPlan(plan)(index);

const framesOfPlan = keptFor((plan: JobsInput['plan']) => keptFor((index: BoatIndex) => framesOf({ index, plan })));

const framesOf = ({ index, plan }: JobsInput): PhaseFrame[] => {
  const pieces = workToDo(index, plan, partsOf(plan));
  const own = (index.boat.work?.own ?? []).map(({ phase = 1 }) => phase);
  const phases = [...new Set([...pieces.map(({ phase }) => phase), ...own])].sort((a, b) => a - b);
  const worked = phases.filter((phase) => pieces.some((piece) => piece.phase === phase));
  const fitted = index.boat.kit.filter(({ id }) => !notFitted.has(kindOf({ index }, id)));
  const fresh = plan.lines
    .filter(({ kept }) => kept === undefined)
    .map((line) => ({ line, phase: phaseOfLine(index, line) }));
  const inPhase = (fate: Kit['fate'], phase: number): Kit[] =>
    fitted.filter((unit) => unit.fate === fate && (unit.phase ?? 1) === phase);
  return phases.map((phase) => ({
    index,
    plan,
    phase,
    isFirst: phase === worked[0],
    isLast: phase === worked.at(-1),
    pieces: pieces.filter((piece) => piece.phase === phase),
    comes: inPhase('comes', phase),
    goes: inPhase('goes', phase),
    lines: fresh.filter((one) => one.phase === phase).map(({ line }) => line),
    mastDown: index.boat.quote?.mast === 'down',
  }));
};
