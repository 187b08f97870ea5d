/** A heap: what comes first by `order` is taken first; equals come in an order that hangs only on how they were put in. */
export class Heap<Entry> {
  readonly #order: (one: Entry, other: Entry) => number;
  readonly #entries: Entry[] = [];

  constructor(order: (one: Entry, other: Entry) => number) {
    this.#order = order;
  }

  get first(): Entry | undefined {
    return this.#entries[0];
  }

  push(entry: Entry): void {
    const entries = this.#entries;
    let at = entries.length;
    entries.push(entry);
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = entries[above];
      if (parent === undefined || this.#order(entry, parent) >= 0) break;
      entries[at] = parent;
      at = above;
    }
    entries[at] = entry;
  }

  pop(): Entry | undefined {
    const entries = this.#entries;
    const first = entries[0];
    const last = entries.pop();
    if (last === undefined || entries.length === 0) return first;
    let at = 0;
    for (let below = this.#lesserChild(0); below < entries.length; below = this.#lesserChild(at)) {
      const child = entries[below];
      if (child === undefined || this.#order(last, child) <= 0) break;
      entries[at] = child;
      at = below;
    }
    entries[at] = last;
    return first;
  }

  /** Where the child of an entry stands that comes first; past the end where it has none. */
  #lesserChild(at: number): number {
    const left = 2 * at + 1;
    const [one, other] = [this.#entries[left], this.#entries[left + 1]];
    return one !== undefined && other !== undefined && this.#order(other, one) < 0 ? left + 1 : left;
  }
}
