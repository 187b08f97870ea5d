import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react';
import type { SetBinder } from '../../../../papers/pages/page-shape.ts';
import { PageView } from './page-view.tsx';
import { words } from './words.ts';

interface Turning {
  readonly set: SetBinder;
  readonly at: number;
  readonly turnTo: (page: number) => void;
}

/** The sheet before, the next one, and every chapter by name. */
const TurnPages = ({ set, at, turnTo }: Turning): ReactNode => {
  const chapters = set.bookmarks.filter(({ level }) => level === 0);
  const current = chapters.findLast((mark) => mark.page <= at);
  return (
    <div className="binder-turn">
      <button type="button" aria-label={words.before} disabled={at === 0} onClick={() => turnTo(at - 1)}>
        ←
      </button>
      <select
        aria-label={words.look}
        value={current?.page ?? 0}
        onChange={(event) => turnTo(Number(event.currentTarget.value))}
      >
        <option value={0}>{set.title}</option>
        {chapters.map((mark) => (
          <option key={`${mark.page} ${mark.title}`} value={mark.page}>
            {mark.title}
          </option>
        ))}
      </select>
      <button
        type="button"
        aria-label={words.after}
        disabled={at === set.pages.length - 1}
        onClick={() => turnTo(at + 1)}
      >
        →
      </button>
    </div>
  );
};

/** The sheets one by one, small in the margin, and as large as the window where one is pressed. */
export const SheetsToLookAt = ({ set }: { readonly set: SetBinder }): ReactNode => {
  const [page, setPage] = useState(0);
  const [isLarge, setIsLarge] = useState(false);
  const large = useRef<HTMLDialogElement>(null);
  const of = set.pages.length;
  const at = Math.min(page, of - 1);
  const shown = set.pages[at];
  if (shown === undefined) return null;
  const label = words.sheet(at + 1, of);
  const turning = { set, at, turnTo: setPage };
  const byKey = ({ key, target }: KeyboardEvent): void => {
    if (target instanceof HTMLSelectElement) return;
    if (key === 'ArrowRight') setPage(Math.min(of - 1, at + 1));
    if (key === 'ArrowLeft') setPage(Math.max(0, at - 1));
  };
  return (
    <section className="binder-look" aria-label={words.look}>
      <TurnPages {...turning} />
      <button
        type="button"
        className="binder-enlarge"
        aria-label={words.enlarge(at + 1, of)}
        onClick={() => {
          setIsLarge(true);
          large.current?.showModal();
        }}
      >
        <PageView page={shown} label={label} />
      </button>
      <p className="quiet" aria-live="polite">
        {label}
      </p>
      <dialog
        ref={large}
        className="binder-large"
        aria-label={words.look}
        onClose={() => setIsLarge(false)}
        onKeyDown={byKey}
      >
        {isLarge ? (
          <>
            <TurnPages {...turning} />
            <PageView page={shown} label={label} />
            <button type="button" className="binder-do" onClick={() => large.current?.close()}>
              {words.back}
            </button>
          </>
        ) : null}
      </dialog>
    </section>
  );
};
