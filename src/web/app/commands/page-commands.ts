import { useMemo } from 'react';
import type { EditState } from '../../workers/protocol.ts';
import { bringHintsBack } from '../hints/hint-store.ts';
import { words as hintWords } from '../hints/words.ts';
import { atStep, hashOf, type Route, type StepId, stepIds } from '../route.ts';
import { lights, setLight } from '../theme.ts';
import { unitsChoice } from '../words/units.ts';
import { words as pageWords } from '../words.ts';
import type { Command } from './command.ts';
import { useCommands } from './use-commands.ts';
import { words } from './words.ts';

const go = (route: Route): void => {
  window.location.hash = hashOf(route);
};

const stepCommand = (route: Exclude<Route, { page: 'boats' }>, step: StepId): Command => ({
  id: `go-to-${step}`,
  group: 'go',
  says: words.goTo[step],
  run: () => {
    go(atStep(route, step));
    // whoever goes to a step by its name is at its work, not at the head of the page
    document.querySelector<HTMLElement>('.margin')?.focus();
  },
});

const undoCommands = ({ undo, redo }: EditState, onStep: (step: 'undo' | 'redo') => void): Command[] => [
  {
    id: 'undo',
    group: 'change',
    says: undo === undefined ? words.undo : words.undoSays(undo),
    short: words.undo,
    foundBy: words.undoFoundBy,
    keys: ['Mod+Z'],
    ...(undo === undefined ? { whyNot: words.nothingToUndo } : {}),
    run: () => onStep('undo'),
  },
  {
    id: 'redo',
    group: 'change',
    says: redo === undefined ? words.redo : words.redoSays(redo),
    short: words.redo,
    foundBy: words.redoFoundBy,
    keys: ['Mod+Shift+Z', 'Ctrl+Y'],
    ...(redo === undefined ? { whyNot: words.nothingToRedo } : {}),
    run: () => onStep('redo'),
  },
];

/** How the page is shown, on every page the same. */
const showCommands: readonly Command[] = [
  {
    id: 'hints-again',
    group: 'show',
    says: hintWords.again,
    foundBy: hintWords.againFoundBy,
    run: bringHintsBack,
  },
  ...lights.map(
    (light): Command => ({
      id: `light-${light}`,
      group: 'show',
      says: words.light(pageWords.light[light]),
      foundBy: words.lightFoundBy,
      run: () => setLight(light),
    }),
  ),
  ...unitsChoice.values.map(
    (units): Command => ({
      id: `units-${units}`,
      group: 'show',
      says: words.units(pageWords.units[units]),
      foundBy: words.unitsFoundBy,
      run: () => unitsChoice.choose(units),
    }),
  ),
];

/** Offers what can be done on every page: steps to go to, undo and redo, how things are shown, print. */
export const usePageCommands = ({
  route,
  edits,
  onStep,
}: {
  route: Route;
  /** the edits of the boat that is open; absent while none is */
  edits: EditState | undefined;
  onStep: (step: 'undo' | 'redo') => void;
}): void => {
  const commands = useMemo(
    (): readonly Command[] => [
      ...(route.page === 'boats'
        ? []
        : [
            ...stepIds.map((step) => stepCommand(route, step)),
            {
              id: 'all-boats',
              group: 'go',
              says: words.allBoatsSays,
              short: words.allBoats,
              run: () => go({ page: 'boats' }),
            } as const,
          ]),
      ...(edits === undefined
        ? []
        : [
            ...undoCommands(edits, onStep),
            {
              id: 'print',
              group: 'boat',
              says: words.printSays,
              short: words.print,
              run: () => window.print(),
            } as const,
          ]),
      ...showCommands,
    ],
    [route, edits, onStep],
  );
  useCommands(commands);
};
