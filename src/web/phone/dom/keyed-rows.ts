/** A row of a list: `mark` tells all that it is drawn from, so that it is drawn anew only where that is another. */
export interface Row {
  readonly key: string;
  readonly mark: string;
  readonly draw: () => HTMLElement;
}

interface Drawn {
  readonly mark: string;
  readonly element: HTMLElement;
}

const drawnIn = new WeakMap<HTMLElement, Map<string, Drawn>>();

/** Where the finger or the keyboard was in a row that is drawn anew, it is put back. */
const refocus = (old: HTMLElement | undefined, made: HTMLElement): void => {
  const active = document.activeElement;
  if (old === undefined || active === null || !old.contains(active)) return;
  const part = active.getAttribute('data-part');
  const same = part === null ? null : made.querySelector<HTMLElement>(`[data-part="${CSS.escape(part)}"]`);
  queueMicrotask(() => same?.focus());
};

/** Puts rows into a list, each in its place; a row that is as it was is not touched, so that what is typed in it stays. */
export const putRows = (list: HTMLElement, rows: readonly Row[]): void => {
  const before = drawnIn.get(list) ?? new Map<string, Drawn>();
  const now = new Map<string, Drawn>();
  for (const { key, mark, draw } of rows) {
    const old = before.get(key);
    const kept = old?.mark === mark ? old : { mark, element: draw() };
    if (kept !== old) refocus(old?.element, kept.element);
    now.set(key, kept);
  }
  for (const [key, { element }] of before) if (now.get(key)?.element !== element) element.remove();
  let next = list.firstElementChild;
  for (const { element } of now.values()) {
    if (element === next) next = next.nextElementSibling;
    else list.insertBefore(element, next);
  }
  drawnIn.set(list, now);
};
