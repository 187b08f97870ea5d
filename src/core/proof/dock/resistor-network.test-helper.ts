/** Resistance between pairs of nodes of a network of resistors: the conductance matrix, the last node held, inverted. */
export class Resistors {
  readonly #size: number;
  readonly #matrix: Float64Array;

  constructor(nodes: number) {
    this.#size = nodes;
    this.#matrix = new Float64Array(nodes * nodes);
    // a meter's own insulation to everything, so that no part of the network floats
    for (let node = 0; node < nodes; node += 1) this.#add(node, node, 1e-9);
  }

  #add(row: number, column: number, siemens: number): void {
    this.#matrix[row * this.#size + column] = (this.#matrix[row * this.#size + column] ?? 0) + siemens;
  }

  join(a: number, b: number, ohm: number): void {
    this.#add(a, a, 1 / ohm);
    this.#add(b, b, 1 / ohm);
    this.#add(a, b, -1 / ohm);
    this.#add(b, a, -1 / ohm);
  }

  /** ohm between pairs of nodes, by one elimination for all of them */
  between(pairs: readonly (readonly [a: number, b: number])[]): number[] {
    const size = this.#size;
    const wide = size + pairs.length;
    const m = new Float64Array(size * wide);
    for (let row = 0; row < size; row += 1) {
      m.set(this.#matrix.subarray(row * size, (row + 1) * size), row * wide);
      for (const [turn, [a, b]] of pairs.entries()) m[row * wide + size + turn] = Number(row === a) - Number(row === b);
    }
    for (let p = 0; p < size; p += 1) eliminate(m, { p, size, wide });
    return pairs.map(([a, b], turn) => {
      const at = (row: number): number => (m[row * wide + size + turn] ?? 0) / (m[row * wide + row] ?? 1);
      return at(a) - at(b);
    });
  }
}

/** Takes one column out of every other row (Gauss and Jordan). */
const eliminate = (m: Float64Array, { p, size, wide }: { p: number; size: number; wide: number }): void => {
  const pivot = m[p * wide + p] ?? 1;
  for (let row = 0; row < size; row += 1) {
    const factor = row === p ? 0 : (m[row * wide + p] ?? 0) / pivot;
    if (factor === 0) continue;
    for (let column = p; column < wide; column += 1)
      m[row * wide + column] = (m[row * wide + column] ?? 0) - factor * (m[p * wide + column] ?? 0);
  }
};
