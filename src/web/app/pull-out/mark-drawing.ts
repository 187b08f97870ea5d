import type { Plan } from '../../../core/plan-shape.ts';
import type { PulledOut } from '../../../papers/lists/pull-out.ts';

type Mark = 'out' | 'dark' | 'still' | 'doubt';

/** What stands for something on a drawing is marked by an attribute, which the page does not write itself. */
const attribute = 'data-out';

interface Marking {
  readonly out: ReadonlySet<string>;
  readonly dark: ReadonlySet<string>;
  readonly still: ReadonlySet<string>;
  readonly doubtful: ReadonlySet<string>;
  readonly lines: ReadonlySet<string>;
  /** the lines of each bus */
  readonly buses: ReadonlyMap<string, readonly string[]>;
  readonly units: ReadonlySet<string>;
}

const unitOf = (id: string, units: ReadonlySet<string>): string | undefined => {
  const [kit = ''] = id.split('.');
  return units.has(kit) ? kit : undefined;
};

/** How one shape looks: cables by the lines it stands for, all else by its units. */
const markOf = (
  ids: readonly string[],
  { out, dark, still, doubtful, lines, buses, units }: Marking,
): Mark | undefined => {
  if (ids.some((id) => out.has(id))) return 'out';
  const cables = ids.flatMap((id) => (lines.has(id) ? [id] : (buses.get(id) ?? [])));
  if (cables.length > 0) {
    if (cables.every((id) => still.has(id))) return 'still';
    return cables.some((id) => [...doubtful].some((bus) => id.includes(bus)) && !/^feed/.test(id))
      ? 'doubt'
      : undefined;
  }
  const own = ids.flatMap((id) => unitOf(id, units) ?? []);
  return own.length > 0 && own.every((id) => dark.has(id)) ? 'dark' : undefined;
};

/** Lets a drawing go dark where it would with something pulled out; gives what lights it again. */
export const markDrawing = (
  frame: HTMLElement,
  plan: Plan,
  pulled: PulledOut,
  kit: ReadonlySet<string>,
): (() => void) => {
  const marking: Marking = {
    out: new Set(pulled.ids),
    dark: new Set(pulled.entry.dark),
    still: new Set(pulled.entry.still),
    doubtful: new Set(pulled.entry.doubtful ?? []),
    lines: new Set(plan.lines.map(({ id }) => id)),
    buses: new Map(plan.joins.flatMap(({ bus, lines }) => (bus === undefined ? [] : [[bus, lines]]))),
    units: kit,
  };
  const marked: Element[] = [];
  for (const element of frame.querySelectorAll('[data-about]')) {
    const mark = markOf((element.getAttribute('data-about') ?? '').split(' '), marking);
    if (mark === undefined) continue;
    element.setAttribute(attribute, mark);
    marked.push(element);
  }
  return () => {
    for (const element of marked) element.removeAttribute(attribute);
  };
};
