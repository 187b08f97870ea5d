import { type ReactNode, useMemo } from 'react';
import type { Plan } from '../../../../core/plan-shape.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

/** Hands out labels to the lines that have none; nothing where every line has one. */
export const LabelsBlock = ({ plan }: { plan: Plan }): ReactNode => {
  const edit = useEdit();
  const bare = useMemo(() => plan.lines.filter(({ label }) => label === undefined).map(({ id }) => id), [plan]);
  const says = words.giveLabels(bare.length);
  const give = useMemo(() => (): void => edit([{ edit: 'give-labels', params: { lines: bare } }]), [edit, bare]);
  useCommands(
    useMemo(
      () =>
        bare.length === 0
          ? []
          : [{ id: 'give-labels', group: 'change', says, foundBy: words.labelsFoundBy, run: give } as const],
      [bare, says, give],
    ),
  );
  if (bare.length === 0) return null;
  return (
    <section className="block binder-block">
      <h2>{words.labelsHeading}</h2>
      <p className="quiet">{words.labelsSay}</p>
      <button type="button" className="press-link" onClick={give}>
        {says}
      </button>
    </section>
  );
};
