import type { Hanging, Hook } from './hang-tees.ts';

/** Costs are whole, so what is less than one under a cost cannot be under it; a little is left for rounding. */
export const slack = 0.95;

const rounds = 16;

/**
 * A cost that no tees for one place of the feed are under, with the moments of both legs (sum of current times length of
 * trunk from the feed) priced: for any prices p >= 0 the sum over devices of the least of drop cost + p I y, less p times
 * the most moment of a leg, is a lower bound. `raise` looks for prices that make it high.
 */
export class MomentBound {
  /** price of moment on either leg, thousandths of a hundredth per millimetre milliampere */
  #fore = 0;
  #rear = 0;
  readonly #hangings: readonly Hanging[];
  readonly #mostMoment: number;
  readonly #cost: number;

  constructor({
    hangings,
    mostMoment,
    cost,
  }: {
    readonly hangings: readonly Hanging[];
    readonly mostMoment: number;
    /** what everything but the drops costs */
    readonly cost: number;
  }) {
    this.#hangings = hangings;
    this.#mostMoment = mostMoment;
    this.#cost = cost;
  }

  /** What the allowed moments are worth, taken off. */
  get offset(): number {
    return -(this.#fore + this.#rear) * this.#mostMoment;
  }

  price({ option, awayMm, side }: Hook, ma: number): number {
    return option.cost + (side > 0 ? this.#fore : this.#rear) * awayMm * ma;
  }

  least({ hooks, device }: Hanging): number {
    let least = Number.POSITIVE_INFINITY;
    for (const hook of hooks) least = Math.min(least, this.price(hook, device.ma));
    return least;
  }

  /** False when it is shown that nothing costs less than `under`. */
  raise(under: number): boolean {
    if (this.#mostMoment < 0) return false;
    let best = { value: Number.NEGATIVE_INFINITY, fore: 0, rear: 0 };
    for (let round = 0; round < rounds; round += 1) {
      const { value, fore, rear } = this.#measure();
      if (value > under - slack) return false;
      if (value > best.value) best = { value, fore: this.#fore, rear: this.#rear };
      const foreOver = this.#fore > 0 ? fore - this.#mostMoment : Math.max(0, fore - this.#mostMoment);
      const rearOver = this.#rear > 0 ? rear - this.#mostMoment : Math.max(0, rear - this.#mostMoment);
      const square = foreOver ** 2 + rearOver ** 2;
      if (square === 0) break;
      const aim = Number.isFinite(under) ? under : value * 1.2;
      this.#fore = Math.max(0, this.#fore + ((aim - value) / square) * foreOver);
      this.#rear = Math.max(0, this.#rear + ((aim - value) / square) * rearOver);
    }
    this.#fore = best.fore;
    this.#rear = best.rear;
    return true;
  }

  /** The bound at the prices as they are, and the moments of the tees that give it. */
  #measure(): { value: number; fore: number; rear: number } {
    let value = this.#cost + this.offset;
    let [fore, rear] = [0, 0];
    for (const { hooks, device } of this.#hangings) {
      let best: Hook | undefined;
      let least = Number.POSITIVE_INFINITY;
      for (const hook of hooks) {
        const price = this.price(hook, device.ma);
        if (price < least) [least, best] = [price, hook];
      }
      value += least;
      if (best !== undefined && best.side > 0) fore += best.awayMm * device.ma;
      if (best !== undefined && best.side < 0) rear += best.awayMm * device.ma;
    }
    return { value, fore, rear };
  }
}
