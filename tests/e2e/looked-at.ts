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

/** By how much more than its window a page holds whose parts scroll by themselves, px: then it can be scrolled away, to white. */
export const pastFootPx = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollHeight - document.documentElement.clientHeight);

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

/**
 * Words too faint on what they stand on, by the ratio that WCAG 2.2 asks for (1.4.3: 4.5, of large letters 3). Looked for by
 * colour and ground of each element, not by what lies over what, so that it takes a hundredth of the time of the whole check:
 * what overlaps is the same in every light, and is looked at by day.
 */
export const faintWords = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    type Colour = readonly [red: number, green: number, blue: number, alpha: number];
    const read = (text: string): Colour => {
      const [red = 0, green = 0, blue = 0, alpha = 1] = (text.match(/[\d.]+/g) ?? []).map(Number);
      return [red, green, blue, alpha];
    };
    const over = ([r, g, b, a]: Colour, [under, middle, last]: Colour): Colour => [
      r * a + under * (1 - a),
      g * a + middle * (1 - a),
      b * a + last * (1 - a),
      1,
    ];
    const light = (colour: Colour): number => {
      const [red = 0, green = 0, blue = 0] = colour.slice(0, 3).map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const ratio = (one: Colour, other: Colour): number => {
      const [low = 0, high = 0] = [light(one), light(other)].sort((a, b) => a - b);
      return (high + 0.05) / (low + 0.05);
    };
    /** What an element stands on; undefined where it is a picture. */
    const groundOf = (element: Element | null): Colour | undefined => {
      if (element === null) return [255, 255, 255, 1];
      const style = getComputedStyle(element);
      if (style.backgroundImage !== 'none') return undefined;
      const own = read(style.backgroundColor);
      if (own[3] === 1) return own;
      const under = groundOf(element.parentElement);
      return under === undefined ? undefined : over(own, under);
    };
    const hasWords = (element: Element): boolean =>
      [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      );
    const opacityOf = (element: Element | null): number =>
      element === null ? 1 : Number(getComputedStyle(element).opacity) * opacityOf(element.parentElement);
    const faint = new Set<string>();
    for (const one of document.body.querySelectorAll<HTMLElement>('*:not(svg *, script, style, option)')) {
      if (!hasWords(one) || one.closest('.unseen, :disabled, [aria-disabled="true"], [hidden]') !== null) continue;
      if (!one.checkVisibility({ visibilityProperty: true })) continue;
      const ground = groundOf(one);
      if (ground === undefined) continue;
      const style = getComputedStyle(one);
      const [red, green, blue, alpha] = read(style.color);
      const seen = ratio(over([red, green, blue, alpha * opacityOf(one)], ground), ground);
      const sizePx = Number.parseFloat(style.fontSize);
      const isLarge = sizePx >= 24 || (sizePx >= 18.66 && Number(style.fontWeight) >= 700);
      if (seen < (isLarge ? 3 : 4.5)) {
        faint.add(`${one.tagName} .${one.className} “${one.textContent?.trim().slice(0, 30)}” ${seen.toFixed(2)}`);
      }
    }
    return [...faint];
  });
