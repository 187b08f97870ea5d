import { byCodeUnit } from '../boat/ids.ts';

/** Things that are one piece, named by the first of each. */
export class Groups {
  readonly #above = new Map<string, string>();

  of(id: string): string {
    const above = this.#above.get(id);
    return above === undefined || above === id ? id : this.of(above);
  }

  tie(one: string, other: string): void {
    const [a, b] = [this.of(one), this.of(other)].sort(byCodeUnit);
    if (a !== undefined && b !== undefined && a !== b) this.#above.set(b, a);
  }
}
