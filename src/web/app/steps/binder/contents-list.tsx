import { type ReactNode, useEffect, useRef } from 'react';
import type { Bookmark } from '../../../../papers/pages/page-shape.ts';
import type { BinderPart } from '../../../../papers/pages/parts-of.ts';
import { words } from './words.ts';

/** The contents of what is read, beside its pages; the chapter in sight shows what is in it. */
export const ContentsList = ({
  bookmarks,
  parts,
  inSight,
  onGo,
}: {
  bookmarks: readonly Bookmark[];
  parts: readonly BinderPart[];
  /** the page one reads */
  inSight: number;
  onGo: (to: Pick<Bookmark, 'page' | 'topMm'>) => void;
}): ReactNode => {
  const list = useRef<HTMLOListElement>(null);
  const here = parts.find(({ first, last }) => first <= inSight && inSight <= last);
  const title = here?.title;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another chapter scrolls into sight in a long list
  useEffect(() => {
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [title]);
  const shown = bookmarks.filter(
    ({ level, page }) => level === 0 || (here !== undefined && here.first <= page && page <= here.last),
  );
  return (
    <nav className="binder-contents" aria-label={words.contents}>
      <ol ref={list}>
        {shown.map((mark) => (
          <li key={`${mark.page} ${mark.topMm} ${mark.title}`} className={mark.level === 0 ? 'chapter' : 'heading'}>
            <button
              type="button"
              aria-current={mark.level === 0 && mark.title === title ? 'true' : undefined}
              onClick={() => onGo(mark)}
            >
              <span>{mark.title}</span>
              <span className="figure">{mark.page + 1}</span>
            </button>
          </li>
        ))}
      </ol>
      {/* the same where there is no room for a list */}
      <select
        aria-label={words.goTo}
        value={title ?? ''}
        onChange={({ currentTarget: { value } }) => {
          const part = parts.find((one) => one.title === value);
          onGo({ page: part?.first ?? 0, topMm: 0 });
        }}
      >
        <option value="">{words.cover}</option>
        {parts.map((part) => (
          <option key={part.title}>{part.title}</option>
        ))}
      </select>
    </nav>
  );
};
