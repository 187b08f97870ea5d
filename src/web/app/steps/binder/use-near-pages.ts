import { type RefObject, useEffect, useState } from 'react';

const none: ReadonlySet<number> = new Set();

const pageOf = (leaf: Element): number => Number(leaf.getAttribute('data-page'));

/** Which pages lie in the window or within a window’s height of it; `of` is what the pages are of. */
export const useNearPages = (scroll: RefObject<HTMLElement | null>, of: unknown): ReadonlySet<number> => {
  const [near, setNear] = useState(none);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other papers are other elements to look at
  useEffect(() => {
    const root = scroll.current;
    if (root === null) return undefined;
    const here = new Set<number>();
    const observer = new IntersectionObserver(
      (entries) => {
        for (const { target, isIntersecting } of entries) {
          if (isIntersecting) here.add(pageOf(target));
          else here.delete(pageOf(target));
        }
        setNear(new Set(here));
      },
      { root, rootMargin: '100% 0px' },
    );
    for (const leaf of root.querySelectorAll('.binder-leaf')) observer.observe(leaf);
    return () => observer.disconnect();
  }, [scroll, of]);
  return near;
};
