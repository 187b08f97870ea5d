import type { Page } from 'playwright-core';

/**
 * Words that cannot be come to: cut off by a box that does not scroll, or past the edge of the window. What scrolls can be come
 * to; words for the ear only, and those of a drawing, which is zoomed and stands as a list too, are left out.
 */
export const cutWords = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    /** Who cuts a box of words off; undefined where it can be come to. */
    const cutter = (box: DOMRect, one: Element | null): string | undefined => {
      let [across, down] = [true, true];
      for (let part = one; part !== null && (across || down); part = part.parentElement) {
        const { overflowX, overflowY, position } = getComputedStyle(part);
        const edge = part.getBoundingClientRect();
        if (/auto|scroll/.test(overflowX)) across = false;
        if (/auto|scroll/.test(overflowY)) down = false;
        const isPast =
          (across && (box.right > edge.right + 1 || box.left < edge.left - 1)) ||
          (down && (box.bottom > edge.bottom + 2 || box.top < edge.top - 2));
        if (/hidden|clip/.test(`${overflowX} ${overflowY}`) && isPast) return `.${part.className}`;
        if (position === 'fixed') break;
      }
      return across && (box.right > innerWidth + 1 || box.left < -1) ? 'the window' : undefined;
    };
    const cut = new Set<string>();
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    while (texts.nextNode()) {
      const { currentNode: text } = texts;
      const one = text.parentElement;
      if (one === null || text.nodeValue?.trim() === '') continue;
      if (one.closest('.unseen, .skip, svg, script, style, select, datalist, textarea') !== null) continue;
      if (!one.checkVisibility({ visibilityProperty: true })) continue;
      // held to a few lines on purpose: picking the row shows all of it
      if (getComputedStyle(one).webkitLineClamp !== 'none') continue;
      range.selectNodeContents(text);
      const by = cutter(range.getBoundingClientRect(), one);
      if (by !== undefined) cut.add(`“${text.nodeValue?.slice(0, 40)}” is cut by ${by}`);
    }
    return [...cut];
  });

/** What scrolls sideways besides drawings, tables and the course line, though the page is narrow (WCAG 2.2, 1.4.10). */
export const sideways = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.body.querySelectorAll<HTMLElement>('*:not(svg *)')]
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(one).overflowX))
      .filter((one) => one.checkVisibility() && !one.matches('input, textarea, select, .course ol'))
      .filter((one) => one.querySelector('table, svg') === null)
      .map((one) => `scrolls sideways: ${one.tagName} .${one.className}`),
  );

/**
 * One of each kind of what the tab key reaches that lies wholly under something else once it has the keyboard (WCAG 2.2, 2.4.11).
 * What is higher than the window, and what the list of commands covers until it shuts by that very key, are left out.
 */
export const hiddenFocus = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const isSeen = (one: Element): boolean => {
      const { left, top, width, height } = one.getBoundingClientRect();
      if (width < 2 || height > innerHeight) return true;
      return [0.1, 0.5, 0.9].some((across) =>
        [0.2, 0.5, 0.8].some((down) => {
          const hit = document.elementFromPoint(left + width * across, top + height * down);
          if (hit === null) return false;
          return (
            one.contains(hit) ||
            hit.contains(one) ||
            hit === one.closest('label') ||
            hit.closest('.waypoint')?.contains(one) === true ||
            hit.closest('.command-finder') !== null
          );
        }),
      );
    };
    const kinds = new Map<string, HTMLElement>();
    for (const one of document.querySelectorAll<HTMLElement>(
      'a[href], button, input, select, textarea, summary, [tabindex="0"]',
    )) {
      if (one.closest('svg, .unseen, .skip') !== null || one.matches(':disabled')) continue;
      const kind = `${one.tagName} .${one.className} in .${one.parentElement?.className}`;
      if (!kinds.has(kind) && one.checkVisibility({ visibilityProperty: true })) kinds.set(kind, one);
    }
    const before = document.activeElement;
    const hidden = [...kinds].flatMap(([kind, one]) => {
      one.focus();
      return document.activeElement === one && !isSeen(one)
        ? [`hidden with the keyboard on it: ${kind} “${one.textContent?.slice(0, 30)}”`]
        : [];
    });
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    scrollTo(0, 0);
    return hidden;
  });

/**
 * Targets under 24 px that come nearer than that to another (WCAG 2.2, 2.5.8). Words in a sentence are excepted there; so is the
 * drawing, all of which is in its list as well.
 */
export const tightTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const leastPx = 23.5;
    const scrollerOf = (one: Element | null): Element | null =>
      one === null || /auto|scroll/.test(getComputedStyle(one).overflowY) ? one : scrollerOf(one.parentElement);
    const boxOf = (one: Element): DOMRect => {
      const own = one.getBoundingClientRect();
      const label = one.closest('label')?.getBoundingClientRect();
      return label !== undefined && label.height > own.height ? label : own;
    };
    const targets = [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary')]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }))
      .filter((one) => one.closest('svg, .unseen, .skip, .term, p, dd, dt, h3') === null)
      .map((one) => ({ one, box: boxOf(one), pane: scrollerOf(one) }))
      .filter(({ box }) => box.width > 1);
    const isSmall = (box: DOMRect): boolean => Math.min(box.width, box.height) < leastPx;
    const middle = (box: DOMRect) => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
    const isNear = (box: DOMRect, other: DOMRect): boolean => {
      const [at, next] = [middle(box), middle(other)];
      if (isSmall(other)) return Math.hypot(at.x - next.x, at.y - next.y) < leastPx;
      const x = Math.max(other.left, Math.min(at.x, other.right));
      const y = Math.max(other.top, Math.min(at.y, other.bottom));
      return Math.hypot(at.x - x, at.y - y) < leastPx / 2;
    };
    return targets
      .filter(({ box }) => isSmall(box))
      .filter(({ one, box, pane }) =>
        targets.some((next) => next.one !== one && next.pane === pane && isNear(box, next.box)),
      )
      .map(
        ({ one, box }) =>
          `too near another: ${one.tagName} .${one.className} “${one.textContent?.slice(0, 30)}” ${Math.round(box.width)} x ${Math.round(box.height)}`,
      );
  });

/** What screen readers would say badly, beyond what axe knows: a table or part without a name, a mark at the head of a name. */
export const badNames = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const nameOf = (one: Element): string =>
      one.getAttribute('aria-label') ??
      document.getElementById(one.getAttribute('aria-labelledby') ?? '')?.textContent ??
      one.querySelector('caption, legend, figcaption, title')?.textContent ??
      '';
    const nameless = [
      ...document.querySelectorAll('table, [role="grid"], [role="img"], [role="group"], fieldset, nav, search, figure'),
    ].filter((one) => one.checkVisibility() && nameOf(one).trim() === '');
    // what a style puts before a name is said with it, unless the style says it is nothing: content: "·" / ""
    const marked = [...document.querySelectorAll('button, a[href], summary')].filter((one) =>
      /^"[^"]+"$/.test(getComputedStyle(one, '::before').content),
    );
    return [
      ...nameless.map((one) => `no name: ${one.tagName} .${one.getAttribute('class')}`),
      ...marked.map((one) => `said with a mark: ${one.textContent}`),
    ];
  });
