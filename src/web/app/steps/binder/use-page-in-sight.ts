import { type RefObject, useEffect, useState } from 'react';

/** Which page one reads: the last that begins above the middle of the window. `of` is what the pages are of. */
export const usePageInSight = (scroll: RefObject<HTMLElement | null>, of: unknown): number => {
  const [page, setPage] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other papers are other elements to look at
  useEffect(() => {
    const root = scroll.current;
    if (root === null) return undefined;
    const look = (): void => {
      const middle = root.scrollTop + root.clientHeight / 2;
      const leaves = [...root.querySelectorAll<HTMLElement>('.binder-leaf')];
      const last = leaves.findLast((leaf) => leaf.offsetTop <= middle) ?? leaves[0];
      setPage(Number(last?.dataset.page ?? 0));
    };
    look();
    root.addEventListener('scroll', look, { passive: true });
    return () => root.removeEventListener('scroll', look);
  }, [scroll, of]);
  return page;
};
