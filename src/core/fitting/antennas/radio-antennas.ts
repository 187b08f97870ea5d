import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import { type CoaxUse, coaxUse } from '../../coax/coax-use.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { lineId } from '../../ways/line-entry.ts';

interface Socket {
  readonly kit: string;
  readonly port: string;
}

/** A radio in the band of marine VHF with the antenna it is joined to, whether a cable can lead there or not. */
export interface RadioAntenna {
  /** `kit.port` */
  readonly radio: string;
  readonly use: CoaxUse;
  readonly antenna: string;
  /** units between them, and the lines by id, from the radio on */
  readonly through: readonly string[];
  readonly lines: readonly string[];
}

/** A splitter or an arrester at most, one behind the other: more is a ring in the boat file. */
const mostThrough = 4;

const plugName = (index: BoatIndex, { kit, port }: Socket): string =>
  `${kit}.${index.sheetOf.get(kit)?.ports.find(({ id }) => id === port)?.onPlug ?? port}`;

/** The coax socket from which a unit passes on what it gives at another. */
const passedFrom = (index: BoatIndex, { kit, port }: Socket): string | undefined => {
  const sheet = index.sheetOf.get(kit);
  const from = sheet?.turns?.find(({ toPort }) => toPort === port)?.fromPort;
  return sheet?.ports.some(({ id, protocol }) => id === from && protocol === 'coax') === true ? from : undefined;
};

const routeFrom = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  socket: Socket,
  through: readonly string[] = [],
): Pick<RadioAntenna, 'antenna' | 'through' | 'lines'> | undefined => {
  const join = joins.find(({ members }) => members.some((m) => m.kit === socket.kit && m.port === socket.port));
  const far = join?.members.find(({ kit, as }) => kit !== socket.kit && as !== 'listen');
  if (far === undefined || through.length > mostThrough) return undefined;
  const line = lineId({ kind: 'coax', ends: [plugName(index, socket), plugName(index, far)] });
  const port = passedFrom(index, far);
  if (port === undefined) return { lines: [line], antenna: far.kit, through };
  const rest = routeFrom(index, joins, { kit: far.kit, port }, [...through, far.kit]);
  return rest === undefined ? undefined : { ...rest, lines: [line, ...rest.lines] };
};

/** Every radio in the band of marine VHF that is joined to an antenna when the work is done, by radio. */
export const radioAntennas = (index: BoatIndex, joins: readonly StandingJoin[]): RadioAntenna[] => {
  const last = lastPhase(index.boat);
  const coaxJoins = joins.filter(({ kind }) => kind === 'coax');
  return index.boat.kit
    .filter((unit) => isAboard(unit, last) && index.sheetOf.get(unit.id)?.kind !== 'antenna-splitter')
    .flatMap(({ id }) => (index.sheetOf.get(id)?.ports ?? []).map((port) => ({ kit: id, port: port.id })))
    .flatMap((socket): RadioAntenna[] => {
      const use = coaxUse(index, socket);
      const route = use === undefined ? undefined : routeFrom(index, coaxJoins, socket);
      return use === undefined || route === undefined ? [] : [{ radio: `${socket.kit}.${socket.port}`, use, ...route }];
    })
    .sort((one, other) => byCodeUnit(one.radio, other.radio));
};
