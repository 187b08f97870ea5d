import { type ReactNode, useMemo } from 'react';
import { type OfferedNeeds, offeredToday, offeredUsual } from '../../../../../papers/needs/offered-needs.ts';
import type { Command } from '../../../commands/command.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { type MakeEdits, useEdit } from '../../../edit-context.ts';
import { Explained } from '../../../words/explained.tsx';
import { WireHer } from '../../kit/wire-her.tsx';
import type { StepMarginProps } from '../../step.ts';
import { words } from './words.ts';
import '../../kit/kit.css';

const Offer = ({ offered, label }: { offered: OfferedNeeds; label: string }): ReactNode => {
  const edit = useEdit();
  return (
    <div className="kit-offer">
      <button type="button" className="press-link" onClick={() => edit(offered.edits, offered.title)}>
        {label}
      </button>
      <details className="why">
        <summary>
          {words.which}
          <span className="unseen">: {label}</span>
        </summary>
        <ul className="kit-will-want">
          {offered.says.map((sentence) => (
            <li key={sentence}>
              <Explained text={sentence} />
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
};

const commandOf = (
  edit: MakeEdits,
  offered: OfferedNeeds | undefined,
  command: Pick<Command, 'id' | 'says' | 'foundBy'> & { readonly whyNot: string },
): Command => {
  const { whyNot, ...own } = command;
  return {
    ...own,
    group: 'change',
    ...(offered === undefined ? { whyNot } : {}),
    run: () => {
      if (offered !== undefined) edit(offered.edits, offered.title);
    },
  };
};

/** What can be taken in with one press at the step Needs: usual needs, what is seen today, and the wires for them. */
export const NeedsOffers = ({ boat, plan }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const usual = useMemo(() => offeredUsual(boat), [boat]);
  const today = useMemo(() => offeredToday(boat, plan), [boat, plan]);
  useCommands(
    useMemo(
      () => [
        commandOf(edit, usual, {
          id: 'usual-needs',
          says: words.usual(usual?.count ?? 0),
          foundBy: words.usualFoundBy,
          whyNot: words.noUsual,
        }),
        commandOf(edit, today, {
          id: 'needs-of-today',
          says: words.today(today?.count ?? 0),
          foundBy: words.todayFoundBy,
          whyNot: words.noToday,
        }),
      ],
      [edit, usual, today],
    ),
  );
  return (
    <>
      {usual === undefined && today === undefined ? null : (
        <section className="block" aria-label={words.heading}>
          <h2>{words.heading}</h2>
          {today === undefined ? null : <Offer offered={today} label={words.today(today.count)} />}
          {usual === undefined ? null : <Offer offered={usual} label={words.usual(usual.count)} />}
        </section>
      )}
      <WireHer boat={boat} plan={plan} />
    </>
  );
};
