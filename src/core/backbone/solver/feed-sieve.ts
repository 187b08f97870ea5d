import { baseCost } from './base-cost.ts';
import { type DropTable, dropTable } from './drop-table.ts';
import type { Ground, LeadOption } from './ground.ts';
import { slack } from './moment-bound.ts';
import { fitting } from './sweep-field.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/** How often prices are moved before a feed passes. */
const rounds = 16;

/** One feed lead, what it leaves of the volts, and the prices that ruled it out last. */
interface Mesh {
  readonly lead: LeadOption;
  readonly leadFine: number;
  /** the most that moments of both legs may add up to, milliampere millimetre */
  readonly mostMoment: number;
  /** prices of a unit of moment and of a millimetre of drop as bought */
  ofMoment: number;
  ofMm: number;
}

/**
 * Sorts out feeds that volts and currents rule out for layouts under a cost. With y_k the length of trunk between feed and
 * device k, at least the shortest there is, and I its current:
 * - device k alone loses lead + 2 R I_k (y_k + drop),
 * - the farthest device of each leg loses lead + 2 R sum(I y) of that leg, so over both legs R sum(I y) is at most what one
 *   device may lose; with this limit and the one on all drops priced, some feeds cost too much,
 * - each device loads one leg at least, so all together are at most two legs' current.
 */
export class FeedSieve {
  readonly #ground: Ground;
  readonly #meshes: readonly Mesh[];
  readonly #dearest: number;
  readonly #drops: DropTable;
  readonly #away: Float64Array;
  /** what the drops chosen at the present prices add up to */
  #value = 0;
  #moment = 0;
  #allMm = 0;

  constructor(ground: Ground, leads: readonly LeadOption[]) {
    const { problem, grade, devices } = ground;
    const allMa = devices.reduce((sum, { ma }) => sum + ma, 0);
    const leastMv = Math.min(...devices.map(({ minMv }) => minMv));
    this.#ground = ground;
    this.#dearest = dearest(ground);
    this.#drops = dropTable(ground);
    this.#away = new Float64Array(ground.waysAt.length);
    this.#meshes = (allMa > 2 * grade.maxMa ? [] : leads).map((lead): Mesh => {
      const leadFine = 2 * problem.feed.leadMicroOhmPerM * lead.maxMm * allMa;
      const mostMoment = ((problem.feed.mv - leastMv) * fineInMv - leadFine) / grade.microOhmPerM;
      return { lead, leadFine, mostMoment, ofMoment: 0, ofMm: 0 };
    });
  }

  /** The feeds that are left, on the places that `times` (how often the trunk runs through each way) leads to. */
  feedsFor({
    times,
    trunkCost,
    under,
  }: {
    readonly times: Uint8Array;
    /** what the trunk costs at least */
    readonly trunkCost: number;
    readonly under: number;
  }): readonly LeadOption[] {
    const base = baseCost(this.#ground) + trunkCost;
    const most = Math.min(under, this.#dearest + 1);
    return this.#meshes.filter((mesh) => this.#passes({ mesh, times, base, most })).map(({ lead }) => lead);
  }

  #passes({
    mesh,
    times,
    base,
    most,
  }: {
    readonly mesh: Mesh;
    readonly times: Uint8Array;
    readonly base: number;
    readonly most: number;
  }): boolean {
    const mostMm = this.#ground.problem.limits.dropsMm;
    const cost = base + mesh.lead.cost;
    if (mesh.mostMoment < 0 || cost >= most) return false;
    this.#measureFrom(mesh.lead.place, times);
    let { ofMoment, ofMm } = mesh;
    for (let round = 0; round < rounds; round += 1) {
      this.#choose({ mesh, ofMoment, ofMm });
      const value = cost + this.#value - ofMoment * mesh.mostMoment - ofMm * mostMm;
      if (value > most - slack) {
        mesh.ofMoment = ofMoment;
        mesh.ofMm = ofMm;
        return false;
      }
      // Slopes in shares of the limits, so that millimetres and moments weigh alike; a price of 0 cannot fall.
      const momentOver = this.#moment / mesh.mostMoment - 1;
      const mmOver = this.#allMm / mostMm - 1;
      const momentSlope = ofMoment > 0 ? momentOver : Math.max(0, momentOver);
      const mmSlope = ofMm > 0 ? mmOver : Math.max(0, mmOver);
      const square = momentSlope ** 2 + mmSlope ** 2;
      if (square === 0) return true;
      const step = (most - value) / square;
      ofMoment = Math.max(0, ofMoment + (step * momentSlope) / mesh.mostMoment);
      ofMm = Math.max(0, ofMm + (step * mmSlope) / mostMm);
    }
    return true;
  }

  /** The least priced drop of each device; the value is infinite where one has none. */
  #choose({ mesh, ofMoment, ofMm }: { readonly mesh: Mesh; readonly ofMoment: number; readonly ofMm: number }): void {
    const { devices, grade, problem } = this.#ground;
    const { start, place, cost, boughtMm: bought } = this.#drops;
    let [value, moment, allMm] = [0, 0, 0];
    for (let device = 0; device < devices.length; device += 1) {
      const { ma, minMv } = devices[device] ?? { ma: 0, minMv: 0 };
      const mostMm = ((problem.feed.mv - minMv) * fineInMv - mesh.leadFine) / (2 * grade.microOhmPerM * ma);
      let least = Number.POSITIVE_INFINITY;
      let best = 0;
      for (let drop = start[device] ?? 0; drop < (start[device + 1] ?? 0); drop += 1) {
        const awayMm = this.#away[place[drop] ?? 0] ?? 0;
        const boughtMm = bought[drop] ?? 0;
        if (awayMm + boughtMm > mostMm) continue;
        const priced = (cost[drop] ?? 0) + ofMoment * ma * awayMm + ofMm * boughtMm;
        if (priced < least) [least, best] = [priced, drop];
      }
      value += least;
      moment += ma * (this.#away[place[best] ?? 0] ?? 0);
      allMm += bought[best] ?? 0;
    }
    this.#value = value;
    this.#moment = moment;
    this.#allMm = allMm;
  }

  /** Least longest length of used ways from a place to every other; infinite where none leads there. */
  #measureFrom(from: number, times: Uint8Array): void {
    const { ways, waysAt } = this.#ground;
    const away = this.#away.fill(Number.POSITIVE_INFINITY);
    away[from] = 0;
    const waiting = [from];
    for (let next = 0; next < waiting.length; next += 1) {
      const here = waiting[next] ?? 0;
      for (const number of waysAt[here] ?? []) {
        const way = ways[number];
        if (way === undefined || times[number] === 0) continue;
        const there = way.a === here ? way.b : way.a;
        const mm = (away[here] ?? 0) + way.maxMm;
        if (mm >= (away[there] ?? 0)) continue;
        away[there] = mm;
        waiting.push(there);
      }
    }
  }
}

/** No layout of a ground costs more. */
const dearest = (ground: Ground): number => {
  const drops = ground.devices.map((device) => Math.max(0, ...fitting(ground, device).map(({ cost }) => cost)));
  const trunk = ground.ways.reduce((sum, { cost, most }) => sum + cost * most, 0);
  const lead = Math.max(0, ...ground.leads.map(({ cost }) => cost));
  return drops.reduce((sum, cost) => sum + cost, baseCost(ground) + trunk + lead);
};
