import { type ReactNode, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { GuideBlock } from '../../../papers/guide/guide-shape.ts';
import { bringHintsBack } from '../hints/hint-store.ts';
import { GuideBlocks } from './guide-blocks.tsx';
import { openGuide } from './guide-hand.ts';
import { contentsPage, guidePage, wholeGuide } from './guide-pages.ts';
import './guide.css';
import { words } from './words.ts';

type Page = readonly GuideBlock[];

/** The page of a name once it has come; `none` where the guide has no such page. */
const usePage = (name: string): Page | 'none' | undefined => {
  const [found, setFound] = useState<{ readonly name: string; readonly page: Page | 'none' } | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    void guidePage(name).then((page) => {
      if (!isGone) setFound({ name, page: page ?? 'none' });
    });
    return () => {
      isGone = true;
    };
  }, [name]);
  return found?.name === name ? found.page : undefined;
};

/** Whatever had the keyboard before has it again once the guide is shut. */
const useKeyboardBack = (): void => {
  useEffect(() => {
    const before = document.activeElement;
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
};

const picturesIn = (within: HTMLElement | null): Promise<unknown> =>
  Promise.all([...(within?.querySelectorAll('img') ?? [])].map((picture) => picture.decode().catch(() => undefined)));

/** The guide beside the boat: the page of a step, those its links lead to, and all of it on paper. */
export const GuideView = ({ name }: { name: string }): ReactNode => {
  const page = usePage(name);
  const body = useRef<HTMLDivElement>(null);
  const [whole, setWhole] = useState<readonly Page[] | 'gathering' | undefined>(undefined);
  useKeyboardBack();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a page that has come begins at its top
  useEffect(() => {
    body.current?.querySelector('h2')?.focus();
    body.current?.scrollTo(0, 0);
  }, [page]);
  const printWhole = async (): Promise<void> => {
    setWhole('gathering');
    const pages = await wholeGuide();
    flushSync(() => setWhole(pages));
    await picturesIn(body.current);
    window.print();
    setWhole(undefined);
  };
  return (
    <aside
      className="guide"
      aria-label={words.name}
      onKeyDown={({ key }) => {
        if (key === 'Escape') openGuide(undefined);
      }}
    >
      <div className="guide-tools">
        <button type="button" onClick={() => openGuide(contentsPage)}>
          {words.contents}
        </button>
        <button type="button" onClick={() => window.print()}>
          {words.printPage}
        </button>
        <button type="button" onClick={() => void printWhole()}>
          {words.printWhole}
        </button>
        <button type="button" onClick={bringHintsBack}>
          {words.hintsAgain}
        </button>
        <button type="button" className="guide-close" onClick={() => openGuide(undefined)}>
          {words.close}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <div className="guide-body" ref={body} tabIndex={0}>
        {whole === 'gathering' ? <p role="status">{words.gathering}</p> : null}
        {page === 'none' ? <p>{words.noPage}</p> : null}
        {Array.isArray(whole) ? (
          whole.map((one: Page, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the guide never changes while it is printed
            <article key={at} className="guide-page">
              <GuideBlocks blocks={one} />
            </article>
          ))
        ) : page === undefined || page === 'none' ? null : (
          <GuideBlocks blocks={page} />
        )}
      </div>
    </aside>
  );
};
