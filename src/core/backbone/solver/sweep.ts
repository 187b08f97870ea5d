import type { Ground } from './ground.ts';
import { RowTable } from './row-table.ts';
import type { Purse } from './search-trunks.ts';
import type { ServedGroup } from './sweep-field.ts';
import { noRank, type PlaceServes, placeServes, type SweepLayer, sweepLayers } from './sweep-layers.ts';

/** The node a complete trunk leads to. */
export const complete = -1;

/**
 * Every trunk of a boat as a path through a graph without rings: node 0 is no way decided, nodes of one layer have the same
 * ways decided, an arc decides how often the trunk runs through the next way, and `complete` is the end of every path.
 * Arcs of a node stand together. What an arc adds is counted apart, so that one graph serves every grade of cable.
 */
export interface TrunkGraph {
  readonly layers: readonly SweepLayer[];
  /** first node of each layer, and one past the last node of all */
  readonly layerStart: readonly number[];
  readonly arcStart: Int32Array;
  readonly arcTo: Int32Array;
  readonly arcTimes: Uint8Array;
  readonly arcDropMm: Int32Array;
  readonly arcBoughtMm: Int32Array;
  readonly arcLead: Float64Array;
}

const alive = 0;
const dead = 1;
const closed = 2;

/**
 * Builds the graph of all trunks by a sweep over the ways. What must be known of the ways decided so far: which places of
 * the frontier hang together, their parity, how many odd places lie behind, and the best place so far of each group that
 * may yet find a better one. Nothing when the purse is empty before the sweep is through.
 */
export const sweepTrunks = ({
  ground,
  groups,
  purse,
}: {
  readonly ground: Ground;
  readonly groups: readonly ServedGroup[];
  readonly purse: Purse;
}): TrunkGraph | undefined => {
  if (groups.some(({ places }) => places.length >= noRank - 1)) return undefined;
  return new Sweep(ground, groups).run(purse);
};

class Sweep {
  readonly #groups: readonly ServedGroup[];
  readonly #layers: readonly SweepLayer[];
  readonly #serves: readonly PlaceServes[];
  readonly #isEnd: readonly boolean[];
  readonly #wantsSpare: readonly boolean[];
  readonly #part: Uint8Array;
  readonly #odd: Uint8Array;
  /** 0 when nothing better can come, else rank + 1, or one past the last rank while nobody serves */
  readonly #rank: Uint8Array;
  readonly #better: Uint8Array;
  #oddBehind = 0;
  #passedEnd = 0;
  #dropMm = 0;
  #boughtMm = 0;
  #lead = 0;
  readonly #arcs = new ArcList();

  constructor(ground: Ground, groups: readonly ServedGroup[]) {
    this.#groups = groups;
    this.#layers = sweepLayers(ground, groups);
    this.#serves = placeServes(ground, groups);
    this.#isEnd = ground.problem.places.map(({ end }) => end);
    const spares = new Set(ground.spares.map(({ place }) => place));
    this.#wantsSpare = ground.problem.places.map((_, place) => spares.has(place));
    this.#part = new Uint8Array(ground.waysAt.length);
    this.#odd = new Uint8Array(ground.waysAt.length);
    this.#rank = new Uint8Array(groups.length);
    this.#better = new Uint8Array(groups.length);
  }

  run(purse: Purse): TrunkGraph | undefined {
    let table = new RowTable(1, 1);
    table.numberOf(new Uint8Array(1));
    const layerStart = [0];
    let first = 0;
    for (const layer of this.#layers) {
      const next = new RowTable(layer.after.length + 1 + layer.openAfter.length, 2 * table.count);
      const nextFirst = first + table.count;
      layerStart.push(nextFirst);
      for (let node = 0; node < table.count; node += 1) {
        this.#arcs.startNode();
        this.#leave({ layer, rows: table.rows, at: node * table.width, next, nextFirst });
      }
      purse.left -= next.count;
      if (purse.left <= 0) return undefined;
      first = nextFirst;
      table = next;
    }
    this.#arcs.startNode();
    return { layers: this.#layers, layerStart, ...this.#arcs.packed() };
  }

  /** All arcs of one node. */
  #leave({
    layer,
    rows,
    at,
    next,
    nextFirst,
  }: {
    readonly layer: SweepLayer;
    readonly rows: Uint8Array;
    readonly at: number;
    readonly next: RowTable;
    readonly nextFirst: number;
  }): void {
    const row = new Uint8Array(next.width);
    for (let times = layer.least; times <= layer.most; times += 1) {
      this.#read({ layer, rows, at });
      if (times > 0) this.#use(layer, times);
      const state = this.#forget(layer);
      if (state === dead) continue;
      let to = complete;
      if (state === alive) {
        if (!this.#settle(layer)) continue;
        this.#write(layer, row);
        to = nextFirst + next.numberOf(row);
      }
      this.#arcs.add({ to, times, dropMm: this.#dropMm, boughtMm: this.#boughtMm, lead: this.#lead });
    }
  }

  #read({ layer, rows, at }: { readonly layer: SweepLayer; readonly rows: Uint8Array; readonly at: number }): void {
    this.#part[layer.a] = 0;
    this.#part[layer.b] = 0;
    this.#odd[layer.a] = 0;
    this.#odd[layer.b] = 0;
    let from = at;
    for (const place of layer.before) {
      const byte = rows[from++] ?? 0;
      this.#part[place] = byte >> 1;
      this.#odd[place] = byte & 1;
    }
    const flags = rows[from++] ?? 0;
    this.#oddBehind = flags & 3;
    this.#passedEnd = flags >> 2;
    for (const group of layer.open) this.#rank[group] = (this.#groups[group]?.places.length ?? 0) + 1;
    for (const group of layer.openBefore) this.#rank[group] = rows[from++] ?? 0;
    this.#dropMm = 0;
    this.#boughtMm = 0;
    this.#lead = 0;
  }

  #use(layer: SweepLayer, times: number): void {
    this.#touch(layer, layer.a);
    this.#touch(layer, layer.b);
    const gone = this.#part[layer.b] ?? 0;
    const kept = this.#part[layer.a] ?? 0;
    if (gone !== kept) for (const place of layer.around) if (this.#part[place] === gone) this.#part[place] = kept;
    if (times % 2 === 0) return;
    this.#odd[layer.a] = 1 - (this.#odd[layer.a] ?? 0);
    this.#odd[layer.b] = 1 - (this.#odd[layer.b] ?? 0);
  }

  /** The trunk comes to a place: it hangs by itself until ways join it to others, and serves whom it is best for. */
  #touch(layer: SweepLayer, place: number): void {
    if (this.#part[place] !== 0) return;
    this.#part[place] = layer.around.length + (place === layer.a ? 1 : 2);
    if (this.#isEnd[place] === true) this.#passedEnd = 1;
    const serves = this.#serves[place];
    if (serves === undefined) return;
    for (let n = 0; n < serves.groups.length; n += 1) this.#serve(serves.groups[n] ?? 0, serves.ranks[n] ?? 0);
  }

  #serve(number: number, rank: number): void {
    const group = this.#groups[number];
    const before = this.#rank[number] ?? 0;
    if (group === undefined || rank + 1 >= before) return;
    const had = before <= group.places.length ? before - 1 : -1;
    this.#rank[number] = rank + 1;
    this.#dropMm += (group.dropMm[rank] ?? 0) - (group.dropMm[had] ?? 0);
    this.#boughtMm += (group.boughtMm[rank] ?? 0) - (group.boughtMm[had] ?? 0);
    this.#lead += (group.leadCost[rank] ?? 0) - (group.leadCost[had] ?? 0);
  }

  #forget(layer: SweepLayer): number {
    for (const place of layer.forgotten) {
      const part = this.#part[place] ?? 0;
      if (part === 0) {
        if (this.#wantsSpare[place] === true) return dead;
        continue;
      }
      if (this.#odd[place] === 1) {
        this.#oddBehind += 1;
        if (this.#isEnd[place] !== true || this.#oddBehind > 2) return dead;
      }
      this.#part[place] = 0;
      this.#odd[place] = 0;
      const state = this.#partsLeft(layer, part);
      if (state === closed) return this.#mayClose(layer, place) ? closed : dead;
      if (state === dead) return dead;
    }
    return alive;
  }

  /** Whether the part that was just left goes on, is the whole trunk, or is cut off for good. */
  #partsLeft(layer: SweepLayer, part: number): number {
    let others = false;
    for (const place of layer.around) {
      if (this.#part[place] === part) return alive;
      others ||= this.#part[place] !== 0;
    }
    return others ? dead : closed;
  }

  #mayClose(layer: SweepLayer, lastPlace: number): boolean {
    if (!layer.mayClose || (this.#oddBehind === 0 && this.#passedEnd === 0)) return false;
    // Places still on the frontier are off the trunk, and so is one forgotten after the last place of the trunk.
    if (layer.after.some((place) => this.#wantsSpare[place] === true)) return false;
    const behind = layer.forgotten.slice(layer.forgotten.indexOf(lastPlace) + 1);
    if (behind.some((place) => this.#wantsSpare[place] === true)) return false;
    const isServed = (group: number): boolean => (this.#rank[group] ?? 0) <= (this.#groups[group]?.places.length ?? 0);
    return layer.open.every(isServed);
  }

  /** Settles the groups that nothing better can come for; false where one is left that nobody can serve. */
  #settle(layer: SweepLayer): boolean {
    const better = this.#better;
    better.set(layer.rankToCome);
    for (const place of layer.after) {
      if (this.#part[place] !== 0) continue;
      const serves = this.#serves[place];
      if (serves === undefined) continue;
      for (let n = 0; n < serves.groups.length; n += 1) {
        const group = serves.groups[n] ?? 0;
        const rank = serves.ranks[n] ?? 0;
        if (rank < (better[group] ?? 0)) better[group] = rank;
      }
    }
    for (const group of layer.open) if (!this.#settleGroup(group)) return false;
    return true;
  }

  #settleGroup(group: number): boolean {
    const rank = this.#rank[group] ?? 0;
    const better = this.#better[group] ?? noRank;
    if (better === noRank && rank > (this.#groups[group]?.places.length ?? 0)) return false;
    if (rank <= better) this.#rank[group] = 0;
    return true;
  }

  /** Writes the state down, parts of the trunk numbered in the order of their first places. */
  #write(layer: SweepLayer, row: Uint8Array): void {
    let at = 0;
    let parts = 0;
    for (const place of layer.after) {
      const part = this.#part[place] ?? 0;
      if (part === 0) {
        row[at++] = 0;
        continue;
      }
      let number = 0;
      for (let n = 0; n < at && number === 0; n += 1) {
        if (this.#part[layer.after[n] ?? 0] === part) number = (row[n] ?? 0) >> 1;
      }
      if (number === 0) number = ++parts;
      row[at++] = 2 * number + (this.#odd[place] ?? 0);
    }
    row[at++] = this.#oddBehind + 4 * this.#passedEnd;
    for (const group of layer.openAfter) row[at++] = this.#rank[group] ?? 0;
  }
}

/** Arcs in growing lists. */
class ArcList {
  #count = 0;
  #nodes = 0;
  #start = new Int32Array(1024);
  #to = new Int32Array(1024);
  #times = new Uint8Array(1024);
  #dropMm = new Int32Array(1024);
  #boughtMm = new Int32Array(1024);
  #lead = new Float64Array(1024);

  startNode(): void {
    if (this.#nodes === this.#start.length) this.#start = grown(this.#start, Int32Array);
    this.#start[this.#nodes] = this.#count;
    this.#nodes += 1;
  }

  add(arc: Readonly<Record<'to' | 'times' | 'dropMm' | 'boughtMm' | 'lead', number>>): void {
    if (this.#count === this.#to.length) {
      this.#to = grown(this.#to, Int32Array);
      this.#times = grown(this.#times, Uint8Array);
      this.#dropMm = grown(this.#dropMm, Int32Array);
      this.#boughtMm = grown(this.#boughtMm, Int32Array);
      this.#lead = grown(this.#lead, Float64Array);
    }
    this.#to[this.#count] = arc.to;
    this.#times[this.#count] = arc.times;
    this.#dropMm[this.#count] = arc.dropMm;
    this.#boughtMm[this.#count] = arc.boughtMm;
    this.#lead[this.#count] = arc.lead;
    this.#count += 1;
  }

  packed(): Omit<TrunkGraph, 'layers' | 'layerStart'> {
    return {
      arcStart: this.#start.subarray(0, this.#nodes),
      arcTo: this.#to.subarray(0, this.#count),
      arcTimes: this.#times.subarray(0, this.#count),
      arcDropMm: this.#dropMm.subarray(0, this.#count),
      arcBoughtMm: this.#boughtMm.subarray(0, this.#count),
      arcLead: this.#lead.subarray(0, this.#count),
    };
  }
}

const grown = <List extends Int32Array | Uint8Array | Float64Array>(
  list: List,
  Make: new (length: number) => List,
): List => {
  const more = new Make(2 * list.length);
  more.set(list);
  return more;
};
