import { useEffect } from 'react';

/** A thing that has the keyboard, then each part round it that can take the keyboard too. */
const chainOf = (target: Element): readonly HTMLElement[] => {
  const chain: HTMLElement[] = target instanceof HTMLElement ? [target] : [];
  for (let part = target.parentElement; part !== null; part = part.parentElement)
    if (part.hasAttribute('tabindex')) chain.push(part);
  return chain;
};

/**
 * Keeps the keyboard where it was when what had it goes: a note that is accepted, a form that is put in, a page that is left.
 * The nearest part it lay in gets it, else the title of the page, and the next stop is not the first of the page again.
 */
export const useKeptKeyboard = (): void => {
  useEffect(() => {
    let chain: readonly HTMLElement[] = [];
    let isWaiting = false;
    const onFocus = ({ target }: FocusEvent): void => {
      if (target instanceof Element) chain = chainOf(target);
    };
    const isLost = (): boolean => chain[0]?.isConnected === false && document.activeElement === document.body;
    const give = (): void => {
      isWaiting = false;
      if (!isLost()) return;
      const next = chain.find(({ isConnected }) => isConnected) ?? document.querySelector<HTMLElement>('h1');
      next?.focus({ preventScroll: true });
    };
    const onChange = (): void => {
      if (isWaiting || !isLost()) return;
      isWaiting = true;
      // a part that knows better where the keyboard belongs says so in the meantime
      requestAnimationFrame(() => setTimeout(give));
    };
    const observer = new MutationObserver(onChange);
    observer.observe(document.body, { childList: true, subtree: true });
    document.addEventListener('focusin', onFocus);
    return () => {
      observer.disconnect();
      document.removeEventListener('focusin', onFocus);
    };
  }, []);
};
