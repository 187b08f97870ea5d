import { jobTickId, stepTickId } from '../../../core/work/ticks.ts';
import type { PhoneJob, PhoneWork } from '../../../papers/phone/phone-day.ts';
import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import { el } from '../dom/el.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { cautionLines } from './caution-lines.ts';
import type { ScreenParts } from './screen.ts';
import { type Ticked, tickMark, tickPress } from './tick-row.ts';

const { today } = words;

/** Jobs whose steps are unfolded; they stay so when the row is drawn anew. */
const unfolded = new Set<string>();

/** The steps of a job, each with the id it is ticked under. */
const ticksOf = ({ id, steps }: PhoneJob, says: PhoneWork['steps']): Ticked[] =>
  steps.map((step) => ({ tick: stepTickId(id, step), says: says[step] ?? step }));

const stepsOf = (
  job: Ticked,
  steps: readonly Ticked[],
  state: PhoneState,
  parts: ScreenParts,
): HTMLElement | undefined => {
  if (steps.length === 0) return undefined;
  const done = steps.filter(({ tick }) => state.log.ticks.get(tick)?.done === true).length;
  const details: HTMLDetailsElement = el(
    'details',
    {
      class: 'steps',
      open: unfolded.has(job.tick),
      on: { toggle: () => (details.open ? unfolded.add(job.tick) : unfolded.delete(job.tick)) },
    },
    el('summary', { 'data-part': `steps ${job.tick}` }, today.steps(done, steps.length)),
    ...steps.map((step) => tickPress(step, state, parts)),
  );
  return details;
};

/** A job: its tick, who does it when and where, what it takes and what to mind, its steps. */
export const jobRow = (job: PhoneJob, sheet: PhoneSheet, state: PhoneState, parts: ScreenParts): Row => {
  const own: Ticked = { tick: jobTickId(job.id), says: job.says };
  const steps = ticksOf(job, sheet.work?.steps ?? {});
  return {
    key: own.tick,
    mark: `${JSON.stringify(job)} ${[own, ...steps].map(({ tick }) => tickMark(tick, state)).join()}`,
    draw: () =>
      el(
        'li',
        { class: 'row' },
        tickPress(own, state, parts),
        job.about.length === 0 ? undefined : el('p', {}, job.about.join('; ')),
        job.takes.length === 0 ? undefined : el('p', { class: 'takes' }, today.takes(job.takes.join(', '))),
        ...cautionLines(sheet, job.cautions),
        stepsOf(own, steps, state, parts),
      ),
  };
};
