import { useMemo } from 'react';
import { useCommands } from '../../commands/use-commands.ts';
import { words } from './words.ts';
import { type DayAt, showWork } from './work-view.ts';

/** What can be done with the days of the work, by name. */
export const useWorkCommands = (at: DayAt | undefined): void => {
  useCommands(
    useMemo(
      () => [
        { id: 'show-days', group: 'show' as const, says: words.commands.days, run: () => showWork({ shows: 'days' }) },
        {
          id: 'show-day-sheet',
          group: 'show' as const,
          says: words.commands.day,
          ...(at === undefined ? { whyNot: words.commands.noDay } : {}),
          run: () => showWork({ shows: 'day', ...(at === undefined ? {} : { at }) }),
        },
        {
          id: 'print-day-sheet',
          group: 'show' as const,
          says: words.commands.print,
          ...(at === undefined ? { whyNot: words.commands.noDay } : {}),
          run: () => window.print(),
        },
      ],
      [at],
    ),
  );
};
