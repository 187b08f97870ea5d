import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { Stretch, StripOfBus } from './strip-nodes.ts';

/**
 * The id of the short piece of trunk between two tees at one place, which is no line of its own: it lights with the way
 * of a reading that passes both.
 *
 * @example teePieceId('nav', ['gnss.n2k', 'ais.n2k']) // 'tees:nav/ais.n2k~nav/gnss.n2k'
 */
export const teePieceId = (bus: string, tees: readonly [string, string]): string =>
  `tees:${tees
    .map((tee) => `${bus}/${tee}`)
    .sort(byCodeUnit)
    .join('~')}`;

/** The trunk between two neighbours on a strip. */
export interface TrunkPiece {
  /** the node it begins at */
  readonly from: number;
  readonly about: readonly string[];
  readonly guessed: boolean;
  /** absent between two tees at one place */
  readonly stretch?: Stretch;
}

/** Every piece of the trunk of a bus, from left to right. */
export const trunkPieces = ({ bus, nodes, stretches }: StripOfBus): TrunkPiece[] => {
  const stretchAfter = new Map(stretches.map((stretch) => [stretch.afterNode, stretch]));
  return nodes.slice(1).map((next, from): TrunkPiece => {
    const stretch = stretchAfter.get(from);
    if (stretch !== undefined) return { from, about: stretch.about, guessed: stretch.guessed, stretch };
    const tees = [nodes[from]?.tee, next.tee];
    const [one, other] = tees;
    const id = one === undefined || other === undefined ? [] : [teePieceId(bus.id, [one, other])];
    return { from, about: [bus.id, ...id], guessed: false };
  });
};
