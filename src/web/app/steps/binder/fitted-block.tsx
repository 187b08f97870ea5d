import { type ReactNode, useCallback, useMemo, useRef } from 'react';
import type { Fitted } from '../../../../core/boat/fitted.ts';
import { foundSubjects } from '../../../../papers/lists/found-subjects.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { useEdit } from '../../edit-context.ts';
import { useWords } from '../../words/units.ts';
import type { StepMarginProps } from '../step.ts';
import { FittedForm } from './fitted-form.tsx';
import { words } from './words.ts';

const Difference = ({ fitted, name }: { fitted: Fitted; name: string }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const { was, is, on, by, note } = fitted;
  return (
    <li>
      <p>{say(words.difference(name, was, is))}</p>
      <p className="quiet">{words.signed(on, by, note)}</p>
      <button
        type="button"
        className="press-link"
        onClick={() => edit([{ edit: 'take-back-fitted', params: { id: fitted.id } }], words.tookBack(name))}
      >
        {words.takeBack}
        <span className="unseen">{words.takeBackOf(name)}</span>
      </button>
    </li>
  );
};

/** Opens what is folded and puts the keyboard into its first field. */
export const openFold = (fold: HTMLDetailsElement | null): void => {
  if (fold === null) return;
  fold.open = true;
  fold.querySelector<HTMLElement>('select, input, textarea')?.focus();
};

/** What came out otherwise than planned: what was noted so far, and a form for the next. */
export const FittedBlock = ({ boat, plan }: Omit<StepMarginProps, 'hand' | 'onPull'>): ReactNode => {
  const fold = useRef<HTMLDetailsElement>(null);
  const open = useCallback(() => openFold(fold.current), []);
  const names = useMemo(() => {
    const { units, lines, circuits, places } = foundSubjects(boat, plan);
    return new Map([...units, ...lines, ...circuits, ...places].map(({ id, says }) => [id, says]));
  }, [boat, plan]);
  useCommands(
    useMemo(
      () => [
        {
          id: 'note-difference',
          group: 'change',
          says: words.noteSays,
          foundBy: words.noteFoundBy,
          run: open,
        } as const,
      ],
      [open],
    ),
  );
  const noted = boat.fitted ?? [];
  return (
    <section className="block binder-block">
      <h2>{words.fittedHeading}</h2>
      <p className="quiet">{words.fittedSays(noted.length)}</p>
      {noted.length === 0 ? null : (
        <ol className="binder-noted">
          {noted.map((fitted) => (
            <Difference key={fitted.id} fitted={fitted} name={names.get(fitted.about) ?? fitted.about} />
          ))}
        </ol>
      )}
      <details ref={fold}>
        <summary>{words.noteOne}</summary>
        <FittedForm boat={boat} plan={plan} />
      </details>
    </section>
  );
};
