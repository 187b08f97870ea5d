import type { Page } from 'playwright-core';

/** What can be pressed, typed in or stepped to with the tab key. */
const reached = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/** A finger wants so much in each direction, by look and by feel. */
const fingerPx = 44;

/**
 * Targets too small for a finger. Words inside a sentence are left out, as their line sets their height, and so is the
 * drawing, which is zoomed and stands as a list as well. A field may lie in a label that is large enough.
 */
export const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    ([all, leastPx]) =>
      [...document.querySelectorAll<HTMLElement>(all)].flatMap((one) => {
        const isSeen = one.checkVisibility({ visibilityProperty: true }) && one.closest('.unseen') === null;
        if (!isSeen || one.closest('svg, p, dd, h3, .term') !== null) return [];
        const boxes = [one, one.closest('label') ?? one].map((part) => part.getBoundingClientRect());
        const heightPx = Math.max(...boxes.map(({ height }) => height));
        const isSmall = heightPx > 1 && heightPx < leastPx - 0.5;
        return isSmall ? [`${one.tagName} .${one.className} “${one.textContent?.slice(0, 30)}” ${heightPx} px`] : [];
      }),
    [reached, fingerPx] as const,
  );

/** One of each kind of what the tab key reaches that looks the same with the keyboard on it as without. */
export const unseenFocus = async (page: Page): Promise<readonly string[]> => {
  // from now on the browser takes it that a keyboard is at work
  await page.keyboard.press('Shift');
  return page.evaluate((all) => {
    const look = (one: Element): string =>
      [one, one.parentElement, one.closest('li'), one.closest('.sheet-pane'), ...one.querySelectorAll('*')]
        .filter((part) => part !== null)
        .map((part) => {
          const style = getComputedStyle(part);
          const line = style.outlineStyle === 'none' ? '' : `${style.outlineWidth} ${style.outlineColor}`;
          return [line, style.boxShadow, style.backgroundColor, style.stroke, style.strokeWidth, style.fill].join();
        })
        .join(';');
    const kinds = new Map(
      [...document.querySelectorAll<HTMLElement | SVGElement>(all)]
        .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches(':disabled'))
        .map((one) => [`${one.tagName} .${one.getAttribute('class')}`, one]),
    );
    const before = document.activeElement;
    const unseen = [...kinds].flatMap(([kind, one]) => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      const without = look(one);
      one.focus({ preventScroll: true });
      return document.activeElement === one && look(one) === without ? [kind] : [];
    });
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    return unseen;
  }, reached);
};

/** By how much the page is wider than its window, px. */
export const pastEdgePx = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Findings and steps of the job that say what they are by colour alone: whose level or state no word tells. */
export const toldByColourAlone = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const levels = ['danger', 'fault', 'doubt', 'advice'];
    const wordless = [...document.querySelectorAll('.note')].filter((note) => {
      const level = levels.find((one) => note.classList.contains(one));
      return level === undefined || !note.querySelector('.note-code')?.textContent?.startsWith(level);
    });
    const states = [...document.querySelectorAll('.waypoint')].filter(
      (one) => !/, (done|open|not in this version)$/.test(one.textContent ?? ''),
    );
    const here = document.querySelectorAll('.waypoint.here [aria-current="step"]').length;
    const pressed = [...document.querySelectorAll('.waypoint.here')].length;
    return [...wordless, ...states]
      .map((one) => one.textContent ?? '')
      .concat(here === pressed ? [] : ['which step this is']);
  });
