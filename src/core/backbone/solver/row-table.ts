const emptySlot = -1;

/** Different rows of bytes, all of one width, numbered in the order they were first met. */
export class RowTable {
  readonly width: number;
  count = 0;
  #rows: Uint8Array;
  #slots: Int32Array;

  constructor(width: number, expected: number) {
    this.width = width;
    this.#rows = new Uint8Array(Math.max(16, expected) * width);
    let size = 64;
    while (size < 2 * expected) size *= 2;
    this.#slots = new Int32Array(size).fill(emptySlot);
  }

  /** All rows, one after another; may be replaced when the table grows. */
  get rows(): Uint8Array {
    return this.#rows;
  }

  /** The number of a row, which is new when it equals the count before the call. */
  numberOf(row: Uint8Array): number {
    const mask = this.#slots.length - 1;
    let slot = this.#hash(row) & mask;
    for (let found = this.#slots[slot] ?? emptySlot; found !== emptySlot; found = this.#slots[slot] ?? emptySlot) {
      if (this.#equals(found, row)) return found;
      slot = (slot + 1) & mask;
    }
    this.#slots[slot] = this.count;
    return this.#append(row);
  }

  #append(row: Uint8Array): number {
    const number = this.count;
    this.count += 1;
    const at = number * this.width;
    if (at + this.width > this.#rows.length) {
      const more = new Uint8Array(2 * this.#rows.length + this.width);
      more.set(this.#rows);
      this.#rows = more;
    }
    for (let n = 0; n < this.width; n += 1) this.#rows[at + n] = row[n] ?? 0;
    if (2 * this.count > this.#slots.length) this.#spread();
    return number;
  }

  #spread(): void {
    const slots = new Int32Array(2 * this.#slots.length).fill(emptySlot);
    const mask = slots.length - 1;
    for (let number = 0; number < this.count; number += 1) {
      const row = this.#rows.subarray(number * this.width, (number + 1) * this.width);
      let slot = this.#hash(row) & mask;
      while (slots[slot] !== emptySlot) slot = (slot + 1) & mask;
      slots[slot] = number;
    }
    this.#slots = slots;
  }

  #hash(row: Uint8Array): number {
    let hash = 0x811c9dc5;
    for (let n = 0; n < this.width; n += 1) hash = Math.imul(hash ^ (row[n] ?? 0), 0x01000193);
    return (hash ^ (hash >>> 15)) >>> 0;
  }

  #equals(number: number, row: Uint8Array): boolean {
    const at = number * this.width;
    for (let n = 0; n < this.width; n += 1) if (this.#rows[at + n] !== row[n]) return false;
    return true;
  }
}
