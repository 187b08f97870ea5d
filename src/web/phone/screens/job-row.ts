import type { PhoneJob } from '../../../papers/phone/phone-day.ts';
import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import { el } from '../dom/el.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { cautionLines } from './caution-lines.ts';
import type { ScreenParts } from './screen.ts';
import { tickMark, tickPress } from './tick-row.ts';

const { today } = words;

/** Jobs whose steps are unfolded; they stay so when the row is drawn anew. */
const unfolded = new Set<string>();

const stepsOf = (job: PhoneJob, state: PhoneState, parts: ScreenParts): HTMLElement | undefined => {
  if (job.steps.length === 0) return undefined;
  const done = job.steps.filter(({ tick }) => state.log.ticks.get(tick)?.done === true).length;
  const details: HTMLDetailsElement = el(
    'details',
    {
      class: 'steps',
      open: unfolded.has(job.tick),
      on: { toggle: () => (details.open ? unfolded.add(job.tick) : unfolded.delete(job.tick)) },
    },
    el('summary', { 'data-part': `steps ${job.tick}` }, today.steps(done, job.steps.length)),
    ...job.steps.map((step) => tickPress(step, state, parts)),
  );
  return details;
};

/** A job: its tick, who does it when and where, what it takes and what to mind, its steps. */
export const jobRow = (job: PhoneJob, sheet: PhoneSheet, state: PhoneState, parts: ScreenParts): Row => ({
  key: job.tick,
  mark: `${JSON.stringify(job)} ${[job, ...job.steps].map(({ tick }) => tickMark(tick, state)).join()}`,
  draw: () =>
    el(
      'li',
      { class: 'row' },
      tickPress(job, state, parts),
      job.about.length === 0 ? undefined : el('p', {}, job.about.join('; ')),
      job.takes.length === 0 ? undefined : el('p', { class: 'takes' }, today.takes(job.takes.join(', '))),
      ...cautionLines(sheet, job.cautions),
      stepsOf(job, state, parts),
    ),
});
