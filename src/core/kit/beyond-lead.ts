import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, LineKind, Place } from '../boat/boat-schema.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Port, Sheet } from '../boat/sheet.ts';
import { defaultTail } from '../facts/defaults.ts';
import { lineKindOf } from '../ways/join-lines.ts';
import { makeRouter } from '../ways/routes.ts';
import { tailOf } from '../ways/tails.ts';
import type { WayLength } from '../ways/way-lengths.ts';

/** How far beyond its lead a unit would be from what it is joined to, m: surely, and if the guesses are as wrong as they may be. */
export interface BeyondLead {
  readonly surelyM: number;
  readonly perhapsM: number;
}

/** Where no way is known yet, the length to be had is so many times the straight line: detours, and doubt. */
const wayPerStraight = 2.4;

const saysTo = (one: Port, other: Port): boolean => {
  const says = new Set((one.sends ?? []).map(({ reading }) => reading));
  return (
    one.protocol === other.protocol &&
    (other.hears ?? []).some(({ reading }) => reading !== undefined && says.has(reading))
  );
};

/** The leads of a sheet that may not be made longer, by the port on each. */
const leadsOf = ({ plugs, ports }: Sheet): { readonly port: Port; readonly leadMm: number }[] =>
  plugs.flatMap(({ id, fixedLead, mayExtend }) =>
    fixedLead === undefined || mayExtend === true
      ? []
      : ports.filter(({ onPlug }) => onPlug === id).map((port) => ({ port, leadMm: lengthMm(fixedLead).shortestMm })),
  );

const isFor = (port: Port, { ports }: Sheet): boolean =>
  ports.some((other) => saysTo(port, other) || saysTo(other, port));

/** A lead, and the places of the units it can lead to or from. */
interface Tie {
  readonly kind: LineKind;
  readonly leadMm: number;
  readonly mates: readonly { readonly unit: string; readonly place: Place }[];
}

/** The leads that tie a unit of a sheet to units aboard: its own, and those of others that are for it. */
const tiesOf = (boat: Boat, sheet: Sheet): Tie[] => {
  const sheetOf = new Map(boat.sheets.map((one) => [one.id, one]));
  const placeOf = new Map(boat.places.map((one) => [one.id, one]));
  const aboard = boat.kit
    .filter(({ fate }) => fate !== 'goes')
    .flatMap((unit) => {
      const [own, place] = [sheetOf.get(unit.sheet), placeOf.get(unit.place)];
      return own === undefined || place === undefined ? [] : [{ unit: unit.id, place, sheet: own }];
    });
  const tie = ({ port, leadMm }: ReturnType<typeof leadsOf>[number], mates: typeof aboard): Tie[] => {
    const kind = lineKindOf[port.protocol === 'dc' ? 'nmea2000' : port.protocol];
    return kind === undefined || mates.length === 0 ? [] : [{ kind, leadMm, mates }];
  };
  return [
    ...leadsOf(sheet).flatMap((lead) =>
      tie(
        lead,
        aboard.filter((mate) => isFor(lead.port, mate.sheet)),
      ),
    ),
    ...aboard.flatMap((mate) =>
      leadsOf(mate.sheet)
        .filter(({ port }) => isFor(port, sheet))
        .flatMap((lead) => tie(lead, [mate])),
    ),
  ];
};

const straightMm = (one: Place, other: Place): number =>
  Math.hypot(one.xM - other.xM, one.yM - other.yM, one.zM - other.zM) * 1000 * wayPerStraight;

/**
 * How far beyond the leads that may not be made longer a unit of a sheet would be at each place, from the nearest unit each
 * lead can be for, by the ways of the boat with a tail at either end. Nothing where no lead ties it. Pure.
 */
export const beyondLead = (boat: Boat, sheet: Sheet): ((place: Place) => BeyondLead) => {
  const ties = tiesOf(boat, sheet);
  if (ties.length === 0) return () => ({ surelyM: 0, perhapsM: 0 });
  const index = indexBoat(boat);
  const router = makeRouter(index);
  // nobody has entered a tail yet for what is not aboard
  const tailMm = Math.round(defaultTail.anyUnit.value * 1000);
  const lengthTo = (place: Place, kind: LineKind, mate: Tie['mates'][number]): Omit<WayLength, 'guessed'> => {
    const route = router.cheapest({ kind, from: mate.place.id, to: place.id });
    const mm = straightMm(place, mate.place);
    const ends = [tailOf({ index, kit: mate.unit, kind }), { mm: tailMm, longestMm: tailMm }];
    return [route ?? { mm, longestMm: mm }, ...ends].reduce((sum, part) => ({
      mm: sum.mm + part.mm,
      longestMm: sum.longestMm + part.longestMm,
    }));
  };
  return (place) =>
    ties.reduce<BeyondLead>(
      (sum, { kind, leadMm, mates }) => {
        const lengths = mates.map((mate) => lengthTo(place, kind, mate));
        const beyondM = (part: 'mm' | 'longestMm'): number =>
          Math.max(0, Math.min(...lengths.map((length) => length[part])) - leadMm) / 1000;
        return { surelyM: sum.surelyM + beyondM('mm'), perhapsM: sum.perhapsM + beyondM('longestMm') };
      },
      { surelyM: 0, perhapsM: 0 },
    );
};
