import type { ReadyLength } from '../prices/price-list.ts';

/** Cable made up aboard: a price by the metre, and of the plugs for both its ends, in hundredths of the currency. */
export interface MadeUp {
  readonly costPerM: number;
  readonly endsCost: number;
}

/** One piece of a line: ready-made as sold, or made up to its length. */
export interface Piece {
  readonly mm: number;
  readonly made: boolean;
}

/** What a line is made of, longest piece first, and its cost in hundredths of the currency. */
export interface Pieces {
  readonly pieces: readonly Piece[];
  readonly cost: number;
}

/** Cost of cable made up to a length, with its ends, hundredths of the currency, rounded up. */
export const madeUpCost = ({ mm, made }: { readonly mm: number; readonly made: MadeUp }): number =>
  made.endsCost + Math.ceil((made.costPerM * mm) / 1000);

/** What pieces are together, mm. */
export const boughtMm = ({ pieces }: Pick<Pieces, 'pieces'>): number => pieces.reduce((sumMm, { mm }) => sumMm + mm, 0);

/** Of equal cost the fewest pieces, then the least too long, then the longer pieces first. */
const isBetter = (one: Pieces, other: Pieces | undefined): boolean => {
  if (other === undefined || one.cost !== other.cost) return other === undefined || one.cost < other.cost;
  if (one.pieces.length !== other.pieces.length) return one.pieces.length < other.pieces.length;
  if (boughtMm(one) !== boughtMm(other)) return boughtMm(one) < boughtMm(other);
  const differs = one.pieces.findIndex((piece, n) => piece.mm !== other.pieces[n]?.mm);
  return differs >= 0 && (one.pieces[differs]?.mm ?? 0) > (other.pieces[differs]?.mm ?? 0);
};

/**
 * The cheapest pieces that cover a length, mm: ready-made ones plugged into one another, or one made up to that length.
 * Exact: every choice that could be cheaper is tried. Absent where nothing can be bought. `mostMm`: what ready-made pieces
 * together may not be longer than.
 *
 * @example piecesFor({ neededMm: 2300, ready: [{ mm: 500, cost: 1400 }, { mm: 2000, cost: 2000 }] })?.cost // 3400
 */
export const piecesFor = ({
  neededMm,
  ready,
  made,
  mostMm = Number.POSITIVE_INFINITY,
}: {
  readonly neededMm: number;
  readonly ready: readonly ReadyLength[];
  readonly made?: MadeUp;
  readonly mostMm?: number;
}): Pieces | undefined => {
  const sizes = [...ready].sort((one, other) => other.mm - one.mm || one.cost - other.cost);
  // What a millimetre costs at least with the sizes from here on: no way to cover the rest is cheaper.
  const leastPerMm = sizes.map((_, from) => Math.min(...sizes.slice(from).map(({ mm, cost }) => cost / mm)));
  let best: Pieces | undefined =
    made === undefined
      ? undefined
      : { pieces: [{ mm: neededMm, made: true }], cost: madeUpCost({ mm: neededMm, made }) };

  const search = (from: number, restMm: number, soFar: Pieces): void => {
    if (restMm <= 0) {
      if (boughtMm(soFar) <= mostMm && soFar.pieces.length > 0 && isBetter(soFar, best)) best = soFar;
      return;
    }
    const size = sizes[from];
    const least = soFar.cost + restMm * (leastPerMm[from] ?? Number.POSITIVE_INFINITY);
    if (size === undefined || least > (best?.cost ?? Number.POSITIVE_INFINITY) + 1e-6) return;
    for (let count = Math.ceil(restMm / size.mm); count >= 0; count -= 1) {
      const more = Array.from({ length: count }, (): Piece => ({ mm: size.mm, made: false }));
      search(from + 1, restMm - count * size.mm, {
        pieces: [...soFar.pieces, ...more],
        cost: soFar.cost + count * size.cost,
      });
    }
  };
  search(0, Math.max(1, neededMm), { pieces: [], cost: 0 });
  return best;
};
