import { type ReactNode, useMemo } from 'react';
import { offeredWiring } from '../../../../papers/kit/offered-wiring.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { useEdit } from '../../edit-context.ts';
import { Explained } from '../../words/explained.tsx';
import type { StepMarginProps } from '../step.ts';
import { words } from './words.ts';

/** One press takes in everything that the plan proposes: joins, ports on the backbone, circuits. */
export const WireHer = ({ boat, plan }: Pick<StepMarginProps, 'boat' | 'plan'>): ReactNode => {
  const edit = useEdit();
  const offered = useMemo(() => offeredWiring(boat, plan), [boat, plan]);
  useCommands(
    useMemo(
      () => [
        {
          id: 'wire-her',
          group: 'change',
          says: words.wire,
          foundBy: words.wireFoundBy,
          ...(offered === undefined ? { whyNot: words.nothingToWire } : {}),
          run: () => {
            if (offered !== undefined) edit(offered.edits, offered.title);
          },
        },
      ],
      [offered, edit],
    ),
  );
  if (offered === undefined) return null;
  return (
    <section className="block kit-wire" aria-label={words.wire}>
      <p>
        <Explained text={words.wireSays(offered.says)} />{' '}
        <button type="button" className="press-link" onClick={() => edit(offered.edits, offered.title)}>
          {words.wireButton}
        </button>
      </p>
    </section>
  );
};
