import type { DropTable } from './drop-table.ts';
import type { Ground, LeadOption } from './ground.ts';
import type { Purse } from './search-trunks.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/** How often the price of drops is moved before the bound is taken as it is. */
const rounds = 8;

/**
 * How much moment (current times length of trunk from the feed, milliampere millimetre, both legs) the tees must have at
 * least when the trunk comes to each place no earlier than told, and how much it may be. With y_p the least length of trunk
 * to place p and any price q >= 0 of a millimetre of drop,
 *
 * moment >= sum over devices of the least of I y_p + q drop_p, less q times the most that all drops may measure.
 *
 * The farthest device of a leg loses lead + 2 R moment of that leg, so R moment of both legs + lead is at most what a device
 * may lose. Prices are whole: every sum is exact.
 */
export class LeastMoment {
  readonly #ground: Ground;
  readonly #drops: DropTable;
  readonly #purse: Purse;
  readonly #leadFine: number;
  readonly #mayLose: number;
  /** how far trunk and drop may lead to each device if it hung there alone */
  readonly #mostMm: Float64Array;
  /** price of a millimetre of drop, milliampere; the last that was good is the first to be tried */
  #price: number;
  #allMm = 0;

  constructor({
    ground,
    drops,
    lead,
    purse,
  }: {
    readonly ground: Ground;
    readonly drops: DropTable;
    readonly lead: LeadOption;
    readonly purse: Purse;
  }) {
    const { problem, grade, devices } = ground;
    const allMa = devices.reduce((sum, { ma }) => sum + ma, 0);
    const leadFine = 2 * problem.feed.leadMicroOhmPerM * lead.maxMm * allMa;
    this.#ground = ground;
    this.#drops = drops;
    this.#purse = purse;
    this.#leadFine = leadFine;
    this.#mayLose = (problem.feed.mv - Math.min(...devices.map(({ minMv }) => minMv))) * fineInMv;
    this.#mostMm = Float64Array.from(
      devices,
      ({ ma, minMv }) => ((problem.feed.mv - minMv) * fineInMv - leadFine) / (2 * grade.microOhmPerM * ma),
    );
    this.#price = Math.round(allMa / devices.length);
  }

  /** The least moment in shares of what is allowed, as far as a few prices show it: over 1 no tees keep the volts. */
  share(awayMm: Float64Array): number {
    const mostMm = this.#ground.problem.limits.dropsMm;
    // A price from `high` on leaves the drops within their limit, one up to `low` does not.
    let [price, low, high] = [this.#price, -1, Number.POSITIVE_INFINITY];
    let best = 0;
    for (let round = 0; round < rounds; round += 1) {
      this.#purse.left -= 1;
      const share = this.#shareOf(this.#priced(awayMm, price) - price * mostMm);
      if (share > best) {
        best = share;
        this.#price = price;
      }
      if (share > 1) break;
      if (this.#allMm > mostMm) low = price;
      else high = price;
      if (high - low <= 1) break;
      price = high === Number.POSITIVE_INFINITY ? 2 * price + 1 : (low + high) >> 1;
    }
    return best;
  }

  #shareOf(moment: number): number {
    const fine = this.#ground.grade.microOhmPerM * moment + this.#leadFine;
    // Whole numbers are compared, so that rounding cannot make too much of what is just allowed.
    return fine > this.#mayLose ? Number.POSITIVE_INFINITY : (fine - this.#leadFine) / (this.#mayLose - this.#leadFine);
  }

  /** The least of moment and priced drop over the drops of each device, added; infinite where a device has no drop left. */
  #priced(awayMm: Float64Array, price: number): number {
    const { start, place, boughtMm } = this.#drops;
    const { devices } = this.#ground;
    let [sum, allMm] = [0, 0];
    for (let device = 0; device < devices.length; device += 1) {
      const ma = devices[device]?.ma ?? 0;
      const mostMm = this.#mostMm[device] ?? 0;
      let [least, leastMm] = [Number.POSITIVE_INFINITY, 0];
      const end = start[device + 1] ?? 0;
      for (let drop = start[device] ?? 0; drop < end; drop += 1) {
        const mm = boughtMm[drop] ?? 0;
        const trunkMm = awayMm[place[drop] ?? 0] ?? 0;
        const priced = ma * trunkMm + price * mm;
        if (priced < least && trunkMm + mm <= mostMm) [least, leastMm] = [priced, mm];
      }
      sum += least;
      allMm += leastMm;
    }
    this.#allMm = allMm;
    return sum;
  }
}
