import { useMemo } from 'react';
import type { BinderPart } from '../../../../papers/pages/parts-of.ts';
import type { BinderFile } from '../../../workers/binder-protocol.ts';
import type { Command } from '../../commands/command.ts';
import { useCommands } from '../../commands/use-commands.ts';
import type { BinderDesk, DeskState } from './binder-desk.ts';
import { sizeChoice } from './binder-tools.tsx';
import { paperChoice } from './use-binder-desk.ts';
import { words } from './words.ts';

interface BinderActs {
  readonly desk: BinderDesk;
  readonly onMake: () => void;
  readonly onPrint: () => void;
}

const fileCommands = (desk: BinderDesk, onPrint: () => void, part: BinderPart | undefined): Command[] => {
  const title = part?.title ?? words.whole;
  const write = (file: BinderFile) => () => desk.write(file);
  return [
    {
      id: 'download-binder',
      group: 'boat',
      says: words.downloadSays(title),
      foundBy: words.downloadFoundBy,
      run: write({ as: 'pdf', ...(part === undefined ? {} : { part }) }),
    },
    // in place of what prints any other page
    {
      id: 'print',
      group: 'boat',
      says: words.printSays(title),
      short: words.print,
      foundBy: words.printFoundBy,
      run: onPrint,
    },
    ...(['xlsx', 'json'] as const).map(
      (as): Command => ({
        id: `save-lists-${as}`,
        group: 'boat',
        says: words.saveListOf(as === 'xlsx' ? words.workbook : words.json),
        foundBy: words.listFoundBy,
        run: write({ as }),
      }),
    ),
  ];
};

const pageCommands: readonly Command[] = [
  ...paperChoice.values.map(
    (paper): Command => ({
      id: `binder-on-${paper}`,
      group: 'show',
      says: words.setFor(words.papers[paper]),
      run: () => paperChoice.choose(paper),
    }),
  ),
  ...sizeChoice.values.map(
    (size): Command => ({
      id: `binder-size-${size}`,
      group: 'show',
      says: words.sizeSays(words.sizes[size]),
      run: () => sizeChoice.choose(size),
    }),
  ),
];

/** Offers what can be done with the binder. */
export const useBinderCommands = (
  { shown, making, writing }: DeskState,
  part: BinderPart | undefined,
  { desk, onMake, onPrint }: BinderActs,
): void => {
  const isThere = shown !== undefined;
  const isBusy = making !== undefined || writing !== undefined;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'make-binder', group: 'boat', says: words.makeBinder, foundBy: words.makeFoundBy, run: onMake },
        ...(isBusy ? [{ id: 'stop-binder', group: 'boat', says: words.stopSays, run: desk.stop } as const] : []),
        ...(isThere ? fileCommands(desk, onPrint, part) : []),
        ...pageCommands,
      ],
      [isThere, isBusy, part, desk, onMake, onPrint],
    ),
  );
};
