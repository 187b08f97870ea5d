import type { PhaseWork } from '../../core/work-shape.ts';

/** The days of a phase on which somebody works, in order. */
export const workingDays = ({ order }: Pick<PhaseWork, 'order'>): number[] =>
  [
    ...new Set(
      (order?.starts ?? []).flatMap(({ day, lastDay, hands }) =>
        hands.length === 0 ? [] : Array.from({ length: lastDay - day + 1 }, (_, at) => day + at),
      ),
    ),
  ].sort((one, other) => one - other);
