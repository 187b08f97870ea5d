import { type ReactNode, useCallback, useEffect, useMemo, useRef } from 'react';
import { indexBoat } from '../../../../../core/boat/boat-index.ts';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { WalkStop } from '../../../../../core/walk-round/walk-question.ts';
import { walkRound } from '../../../../../core/walk-round/walk-round.ts';
import { walkRoundPage } from '../../../../../papers/walk-round/walk-round-page.ts';
import type { Command } from '../../../commands/command.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { plainName, saveFile } from '../../../saving/save-file.ts';
import { Word } from '../../../words/explained.tsx';
import { nextOpen } from './next-open.ts';
import { WalkStopView } from './walk-stop.tsx';
import { words } from './words.ts';
import './walk-round.css';

/** Hands the form to the browser as a file, to be opened and printed from there. */
const saveForm = (boat: Boat): void =>
  saveFile({ name: words.fileName(plainName(boat.name)), text: walkRoundPage(boat), type: 'html' });

const rowOf = (block: HTMLElement | null, key: string | undefined): HTMLElement | undefined =>
  [...(block?.querySelectorAll<HTMLElement>('[data-question]') ?? [])].find((row) => row.dataset.question === key);

/** Opens the place of a question and goes there; into its first field where `into`, for that opens the keyboard of a phone. */
const goTo = (row: HTMLElement, into: boolean): void => {
  const stop = row.closest('details');
  if (stop !== null) stop.open = true;
  const field = into ? row.querySelector<HTMLElement>('input:not([hidden]), select, button') : null;
  (field ?? row).focus({ preventScroll: true });
  row.scrollIntoView({ block: 'center' });
};

/** The question one is at, and the way on from it: by a press, and of itself where an answer took the field away. */
const useWayOn = (stops: readonly WalkStop[]) => {
  const block = useRef<HTMLElement>(null);
  const last = useRef<string | undefined>(undefined);
  const goOn = useCallback(
    (into: boolean): void => {
      const row = rowOf(block.current, nextOpen(stops, last.current));
      if (row === undefined) return;
      last.current = row.dataset.question;
      goTo(row, into);
    },
    [stops],
  );
  useEffect(() => {
    const wasHere = last.current !== undefined && rowOf(block.current, last.current) === undefined;
    if (wasHere && document.activeElement === document.body) goOn(false);
  }, [goOn]);
  useEffect(() => {
    const note = ({ target }: FocusEvent): void => {
      const row = target instanceof Element ? target.closest<HTMLElement>('[data-question]') : null;
      if (row !== null) last.current = row.dataset.question;
    };
    const here = block.current;
    here?.addEventListener('focusin', note);
    return () => here?.removeEventListener('focusin', note);
  }, []);
  return { block, goOn };
};

/** The walk round the boat on the screen: place by place what is still open, each with what takes the answer. */
export const WalkRoundBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const index = useMemo(() => indexBoat(boat), [boat]);
  const stops = useMemo(() => walkRound(boat), [boat]);
  const questions = stops.flatMap((stop) => stop.questions);
  const answered = questions.filter(({ known }) => known).length;
  const isDone = answered === questions.length;
  const { block, goOn } = useWayOn(stops);
  useCommands(
    useMemo(
      (): Command[] => [
        {
          id: 'next-open-question',
          group: 'go',
          says: words.goToNext,
          short: words.next,
          foundBy: words.goToNextFoundBy,
          keys: ['Alt+N'],
          ...(isDone ? { whyNot: words.allAnswered } : {}),
          run: () => goOn(true),
        },
      ],
      [goOn, isDone],
    ),
  );
  return (
    <section ref={block} className="block walk-round">
      <h2>
        <Word of="walk-round">{words.heading}</Word>
      </h2>
      <p>{words.intro(stops.length)}</p>
      <button type="button" className="walk-form" onClick={() => saveForm(boat)}>
        {words.saveForm}
      </button>
      {stops.map((stop, at) => (
        <WalkStopView key={stop.place} index={index} stop={stop} number={at + 1} />
      ))}
      <div className="walk-bar">
        <span role="status">{words.answeredOf({ answered, all: questions.length })}</span>
        {isDone ? null : (
          <button type="button" onClick={() => goOn(true)}>
            {words.next}
          </button>
        )}
      </div>
    </section>
  );
};
