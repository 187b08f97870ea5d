import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import type { Bookmark } from '../../../../papers/pages/page-shape.ts';
import type { BinderPart } from '../../../../papers/pages/parts-of.ts';
import { useIsPrinting } from '../../use-is-printing.ts';
import type { BinderDesk, ShownBinder } from './binder-desk.ts';
import { BinderLeaf } from './binder-leaf.tsx';
import { BinderLine } from './binder-line.tsx';
import { BinderTools, sizeChoice } from './binder-tools.tsx';
import { ContentsList } from './contents-list.tsx';
import { readRevision } from './read-choice.ts';
import { useBinderCommands } from './use-binder-commands.ts';
import { useBinderDesk, useWanted } from './use-binder-desk.ts';
import { useNearPages } from './use-near-pages.ts';
import { usePageInSight } from './use-page-in-sight.ts';
import { words } from './words.ts';
import './binder.css';

interface BinderPagesProps {
  readonly boat: Boat;
  readonly plan: Plan;
}

const numbersOf = ({ sizes }: ShownBinder, part: BinderPart | undefined): number[] => {
  const { first, last } = part ?? { first: 0, last: sizes.length - 1 };
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
};

const titleAt = ({ parts }: ShownBinder, page: number): string =>
  parts.find(({ first, last }) => first <= page && page <= last)?.title ?? words.cover;

/** What is read, one page below the other, with its contents beside; only pages near the window are drawn. */
const ReadingColumn = ({
  desk,
  shown,
  part,
  name,
}: {
  desk: BinderDesk;
  shown: ShownBinder;
  part: BinderPart | undefined;
  name: string;
}): ReactNode => {
  const scroll = useRef<HTMLElement>(null);
  const numbers = useMemo(() => numbersOf(shown, part), [shown, part]);
  const near = useNearPages(scroll, numbers);
  const inSight = usePageInSight(scroll, numbers);
  const isPrinting = useIsPrinting();
  const size = sizeChoice.use();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another binder has other pages under the same numbers
  useEffect(() => desk.want([...near]), [desk, near, shown]);
  const go = useCallback(
    ({ page, topMm }: Pick<Bookmark, 'page' | 'topMm'>) => {
      const leaf = scroll.current?.querySelector<HTMLElement>(`[data-page="${page}"]`);
      if (scroll.current === null || leaf === null || leaf === undefined) return;
      leaf.focus({ preventScroll: true });
      const share = topMm / (shown.sizes[page]?.heightMm ?? 1);
      scroll.current.scrollTop = leaf.offsetTop - 12 + share * leaf.offsetHeight;
    },
    [shown],
  );
  const bookmarks = useMemo(
    () => shown.bookmarks.filter(({ page }) => part === undefined || (part.first <= page && page <= part.last)),
    [shown, part],
  );
  return (
    <div className="binder-desk">
      <ContentsList bookmarks={bookmarks} parts={shown.parts} inSight={inSight} onGo={go} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <section className={`binder-scroll ${size}`} ref={scroll} tabIndex={0} aria-label={words.papersOf(name)}>
        {numbers.map((at) => (
          <BinderLeaf
            key={at}
            at={at}
            size={shown.sizes[at] ?? { widthMm: 210, heightMm: 297 }}
            paper={shown.wanted.paper}
            label={words.pageOf(at + 1, shown.sizes.length, titleAt(shown, at))}
            onGo={go}
            page={isPrinting || near.has(at) ? desk.page(at) : undefined}
          />
        ))}
      </section>
    </div>
  );
};

const BinderRoom = ({ boat, plan }: BinderPagesProps): ReactNode => {
  const wanted = useWanted(boat, plan);
  const { desk, state } = useBinderDesk(wanted);
  const { shown } = state;
  const [title, setTitle] = useState<string | undefined>(undefined);
  const part = shown?.parts.find((one) => one.title === title);
  const make = useCallback(() => desk.make(wanted), [desk, wanted]);
  const print = useCallback(() => {
    const now = desk.state().shown;
    if (now === undefined) return;
    const numbers = numbersOf(now, part);
    desk.want(numbers);
    void desk.whenHere(numbers).then(() => window.print());
  }, [desk, part]);
  // whoever comes back sees her as she stands
  useEffect(() => () => readRevision(undefined), []);
  useBinderCommands(state, part, { desk, onMake: make, onPrint: print });
  return (
    <div className="binder-room">
      <BinderLine desk={desk} state={state} isOld={'revision' in wanted.of} onMake={make} />
      {shown === undefined ? (
        <div className="binder-desk" />
      ) : (
        <ReadingColumn desk={desk} shown={shown} part={part} name={boat.name} />
      )}
      <BinderTools shown={shown} part={part} onPart={setTitle} onFile={desk.write} onPrint={print} />
    </div>
  );
};

/** The papers of the boat before they are printed; for a boat with nothing aboard, what to do next. */
export const BinderPages = ({ boat, plan }: BinderPagesProps): ReactNode =>
  boat.kit.length > 0 ? (
    <BinderRoom boat={boat} plan={plan} />
  ) : (
    <section className="binder-room binder-empty">
      <h2>{words.emptyHeading}</h2>
      <p>{words.empty}</p>
    </section>
  );
