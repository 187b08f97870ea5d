import { useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Underlay, UnderlayView } from '../../../../core/boat/underlay.ts';
import type { Command } from '../../commands/command.ts';
import { useCommands } from '../../commands/use-commands.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { takeTool } from './place-hand.ts';
import { words } from './words.ts';

/** A picture as it is said in the boat file once it is shown, or hidden. */
export const withHidden = ({ hidden: _, ...underlay }: Underlay, isHidden: boolean): Underlay =>
  isHidden ? { ...underlay, hidden: true } : underlay;

const commandsOf = (underlay: Underlay, edit: MakeEdits): Command[] => {
  const { view } = underlay;
  const isHidden = underlay.hidden === true;
  return [
    {
      id: `picture-shown-${view}`,
      group: 'show',
      says: isHidden ? words.showPicture[view] : words.hidePicture[view],
      short: isHidden ? words.show : words.hide,
      run: () => edit([{ edit: 'set-underlay', params: withHidden(underlay, !isHidden) }]),
    },
    {
      id: `picture-away-${view}`,
      group: 'change',
      says: words.takeAwayPicture[view],
      short: words.takeAway,
      run: () => edit([{ edit: 'remove-underlay', params: { view } }]),
    },
  ];
};

/** Offers what can be done with the pictures under the drawing. */
export const useUnderlayCommands = (
  { boat, edit }: { readonly boat: Boat; readonly edit: MakeEdits },
  choose: (view: UnderlayView) => void,
): void => {
  const { underlays } = boat;
  useCommands(
    useMemo((): readonly Command[] => {
      const views = ['side', 'top'] as const;
      return [
        ...views.map(
          (view): Command => ({
            id: `picture-choose-${view}`,
            group: 'change',
            says: words.choose[view],
            foundBy: words.pictureFoundBy,
            run: () => choose(view),
          }),
        ),
        {
          id: 'picture-points',
          group: 'change',
          says: words.markPointsOfPicture,
          short: words.markPoints,
          ...(underlays === undefined ? { whyNot: words.needPicture } : {}),
          run: () => takeTool('points'),
        },
        ...(underlays ?? []).flatMap((underlay) => commandsOf(underlay, edit)),
      ];
    }, [underlays, edit, choose]),
  );
};
