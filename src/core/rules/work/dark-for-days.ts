import { functionFallbacks } from '../../facts/fallback-kit.ts';
import { functionNames } from '../../facts/function-names.ts';
import { darkMost } from '../../facts/job-figures.ts';
import type { PhaseWork } from '../../work-shape.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { phasesOf } from './work-links.ts';

type Dark = NonNullable<PhaseWork['order']>['dark'][number];

/** The day as the calendar has it, or counted from the first of its phase. */
const dayWords = ({ days }: PhaseWork, at: number): string =>
  days.find(({ day }) => day === at)?.date ?? `day ${at + 1}`;

/** Jobs that put a function out at the beginning of a dark time, of those that break its ways. */
const breakers = ({ order, functions }: PhaseWork, dark: Dark): string[] => {
  const ends = new Set(
    functions.filter((one) => one.function === dark.function).flatMap(({ ways }) => ways.flatMap(({ until }) => until)),
  );
  const begins = (order?.starts ?? []).filter(({ day, slot }) => day === dark.from.day && slot === dark.from.slot);
  return begins.map(({ job }) => job).filter((job) => ends.has(job));
};

/** An essential function is dark for days at a stretch while she lies afloat and must be able to move. */
export const darkForDays: Rule = {
  id: 'work/dark-for-days',
  level: 'fault',
  title: 'An essential function is dark for days.',
  sources: ['choice-dark-limit', 'choice-watched-functions'],
  looksAt: 'whole-plan',
  check: ({ plan }) =>
    phasesOf(plan).flatMap((phase) =>
      (phase.order?.dark ?? []).flatMap((dark) => {
        const days = dark.to.day - dark.from.day;
        if (dark.hoursH <= 0 || days <= darkMost.value) return [];
        return [
          {
            about: breakers(phase, dark),
            apart: [dark.function, phase.phase, dark.from.day],
            says: `${functionNames.byFunction[dark.function]} is dark from ${dayWords(phase, dark.from.day)} to ${dayWords(phase, dark.to.day)}: ${days} days, ${dark.hoursH} hours while she must be able to move. At hand meanwhile: ${functionFallbacks[dark.function].says}.`,
            measured: { value: days, unit: darkMost.unit },
            limit: figurePart(darkMost),
            cure: 'Leave the old one in until the new one is on, or take the day out that you settled for it; else she stays at the berth.',
          },
        ];
      }),
    ),
};
