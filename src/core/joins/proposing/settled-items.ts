import type { Choice } from './cheapest-choice.ts';

/** An item that may still be taken or left out, one that is taken, one that is left out. */
export type Mark = 'open' | 'in' | 'out';

/** Items settled so far, with what each settling brings; every change can be taken back. */
export class SettledItems {
  readonly marks: Mark[];
  readonly #choice: Choice;
  readonly #trail: number[] = [];
  readonly #paid: number[];
  readonly #limitsOf: number[][];
  readonly #neverOf: number[][];
  readonly #taken: number[];
  cost = 0;

  constructor(choice: Choice) {
    this.#choice = choice;
    this.marks = choice.items.map(() => 'open');
    this.#paid = choice.bases.map(() => 0);
    this.#limitsOf = choice.items.map(() => []);
    this.#neverOf = choice.items.map(() => []);
    this.#taken = choice.limits.map(() => 0);
    choice.limits.forEach(({ of }, at) => {
      for (const item of of) this.#limitsOf[item]?.push(at);
    });
    choice.never.forEach((list, at) => {
      for (const item of list) this.#neverOf[item]?.push(at);
    });
  }

  get height(): number {
    return this.#trail.length;
  }

  /** What an item would cost now. */
  price(item: number): number {
    const { cost, on } = this.#choice.items[item] ?? { cost: 0, on: [] };
    return on.reduce((sum, base) => sum + (this.isPaid(base) ? 0 : (this.#choice.bases[base] ?? 0)), cost);
  }

  isPaid(base: number): boolean {
    return (this.#paid[base] ?? 0) > 0;
  }

  /** Leaves an item out; false where that cannot be. */
  leave(item: number): boolean {
    if (this.marks[item] !== 'open') return this.marks[item] === 'out';
    this.marks[item] = 'out';
    this.#trail.push(item);
    return true;
  }

  /** Takes an item, and leaves out what may no longer be taken beside it; false where that cannot be. */
  take(item: number): boolean {
    if (this.marks[item] !== 'open') return this.marks[item] === 'in';
    this.cost += this.price(item);
    this.marks[item] = 'in';
    this.#trail.push(item);
    for (const base of this.#choice.items[item]?.on ?? []) this.#paid[base] = (this.#paid[base] ?? 0) + 1;
    for (const at of this.#limitsOf[item] ?? []) this.#taken[at] = (this.#taken[at] ?? 0) + 1;
    return this.#leaveFull(item) && this.#leaveLast(item);
  }

  #leaveFull(item: number): boolean {
    for (const at of this.#limitsOf[item] ?? []) {
      const limit = this.#choice.limits[at];
      const taken = this.#taken[at] ?? 0;
      if (limit === undefined || taken < limit.most) continue;
      if (taken > limit.most) return false;
      for (const other of limit.of) if (this.marks[other] === 'open') this.leave(other);
    }
    return true;
  }

  #leaveLast(item: number): boolean {
    for (const at of this.#neverOf[item] ?? []) {
      const list = this.#choice.never[at] ?? [];
      if (list.some((other) => this.marks[other] === 'out')) continue;
      const open = list.filter((other) => this.marks[other] === 'open');
      if (open.length === 0) return false;
      if (open.length === 1 && open[0] !== undefined) this.leave(open[0]);
    }
    return true;
  }

  backTo(height: number): void {
    while (this.#trail.length > height) {
      const item = this.#trail.pop() ?? 0;
      if (this.marks[item] === 'in') this.#giveUp(item);
      this.marks[item] = 'open';
    }
  }

  #giveUp(item: number): void {
    for (const base of this.#choice.items[item]?.on ?? []) this.#paid[base] = (this.#paid[base] ?? 0) - 1;
    for (const at of this.#limitsOf[item] ?? []) this.#taken[at] = (this.#taken[at] ?? 0) - 1;
    this.cost -= this.price(item);
  }
}
