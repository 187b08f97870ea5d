import type { BoatIndex } from '../boat/boat-index.ts';
import { splitDotted } from '../boat/ids.ts';
import { keptCables, lineId } from '../ways/line-entry.ts';
import { oneAfterOther, pinnedStart } from '../ways/pinned-routes.ts';
import type { LineRoute, Router } from '../ways/routes.ts';

interface Ask {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: string;
}

/** The plug of a unit that its port on a bus is on: the end of its drop. */
export const plugOfPort = (index: BoatIndex, id: string): string => {
  const { kit, part: port } = splitDotted(id);
  return `${kit}.${index.sheetOf.get(kit)?.ports.find((entry) => entry.id === port)?.onPlug ?? port}`;
};

/**
 * The settled ways of the drop to a port (`kit.port`), from the unit to where they lead; absent where none are settled, they
 * start elsewhere, or a kept drop lies there. Wherever its tee stands, the drop takes these ways first.
 */
export const settledDrop = ({ index, router, bus }: Ask, id: string): LineRoute | undefined => {
  const plug = plugOfPort(index, id);
  const from = index.kit.get(splitDotted(id).kit)?.place;
  const line = lineId({ kind: 'drop', ends: [bus, plug] });
  if (from === undefined || index.boat.pins?.routes === undefined) return undefined;
  const isKept = keptCables({ index, serves: [bus], kind: 'drop' }).some((cable) =>
    [cable.from.at, cable.to.at].includes(plug),
  );
  return isKept ? undefined : pinnedStart(router, index.boat, { line, from });
};

/** The lead of a bus from its panel to its feed tee: the settled ways of it first, as far as they lead, then the shortest. */
export const feedRoute = (
  { index, router, bus }: Ask,
  { panel, to }: { readonly panel: { readonly id: string; readonly place: string }; readonly to: string },
): LineRoute | undefined => {
  const line = lineId({ kind: 'feed', ends: [bus, panel.id] });
  const first = pinnedStart(router, index.boat, { line, from: panel.place });
  const rest = router.between({ kind: 'feed', from: first?.places.at(-1) ?? panel.place, to });
  return first === undefined || rest === undefined ? rest : oneAfterOther(first, rest);
};
