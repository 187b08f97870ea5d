import type { Spacing } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { takenFor } from '../../facts/antenna-figures.ts';
import { radioMhz } from '../../facts/coax.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import { acrossM, apartM, middleUpM, type Upright } from '../upright.ts';
import { coupledDbm, isolationOf, sideBySideDb } from './isolation.ts';
import type { RadioAntenna } from './radio-antennas.ts';
import { aisVerdict, positionVerdict } from './spacing-verdict.ts';

interface Antenna extends Upright {
  readonly unit: string;
  readonly is: SiteEntry['is'];
  readonly gainDbi: number;
  /** the most that any radio sends by it; nothing where none does */
  readonly powerW: number;
  readonly isAis: boolean;
}

const antennaOf = (
  index: BoatIndex,
  { unit, is, place, aerial }: SiteEntry,
  on: readonly RadioAntenna[],
): Antenna[] => {
  const at = index.places.get(place);
  if (at === undefined || aerial === undefined) return [];
  const own = on.filter(({ antenna }) => antenna === unit);
  return [
    {
      unit,
      is,
      xM: at.xM,
      yM: at.yM,
      fromM: at.zM,
      toM: aerial.topM,
      gainDbi: aerial.gainDbi ?? takenFor.gainDbi.value,
      powerW: Math.max(0, ...own.map(({ use }) => use.powerW ?? 0)),
      isAis: own.some(({ radio }) => index.sheetOf.get(radio.split('.')[0] ?? '')?.kind === 'ais'),
    },
  ];
};

const betweenRadios = (index: BoatIndex, one: Antenna, other: Antenna): Spacing => {
  const { boat } = index;
  const [distanceM, across, upM] = [apartM(one, other), acrossM(one, other), middleUpM(one, other)];
  const what = one.isAis || other.isAis ? ('ais' as const) : ('radios' as const);
  const limits = {
    shipM: limitValue(boat, 'ais-to-radio-antenna'),
    shipUpM: limitValue(boat, 'ais-over-radio-antenna'),
    apartM: limitValue(boat, 'radio-antennas-apart'),
  };
  // what stands at one spot has no formula
  const isOne = across === 0 && upM === 0;
  const air = { mhz: radioMhz.voice.value, gainsDbi: [one.gainDbi, other.gainDbi] } as const;
  const parted = isolationOf({ ...air, acrossM: isOne ? takenFor.whipM.value : across, upM });
  const levelDb = sideBySideDb({ ...air, acrossM: limits.shipM });
  const graded = aisVerdict({ distanceM, acrossM: across, upM, isolationDb: parted.isolationDb, levelDb }, limits);
  // books part two voice antennas by the shorter distance only
  const isApart = what === 'radios' && graded.verdict === 'advice';
  return {
    one: one.unit,
    other: other.unit,
    what,
    distanceM,
    acrossM: across,
    upM,
    ...parted,
    coupledDbm: coupledDbm(Math.max(one.powerW, other.powerW), parted.isolationDb),
    ...(isApart ? { verdict: 'ok' as const, limitM: limits.apartM } : graded),
  };
};

const toPosition = (index: BoatIndex, own: Antenna, senders: readonly Antenna[]): Spacing[] => {
  const nearest = senders
    .map((sender) => ({ sender, distanceM: apartM(own, sender) }))
    .sort((one, other) => one.distanceM - other.distanceM)[0];
  if (nearest === undefined) return [];
  const { sender, distanceM } = nearest;
  const limits = {
    warnM: limitValue(index.boat, 'position-antenna-warn'),
    adviceM: limitValue(index.boat, 'position-antenna-advice'),
  };
  return [
    {
      one: own.unit,
      other: sender.unit,
      what: 'position',
      distanceM,
      acrossM: acrossM(own, sender),
      upM: middleUpM(own, sender),
      how: 'slant',
      ...positionVerdict(distanceM, limits),
    },
  ];
};

/** Every two radio antennas of which one sends, and every position antenna with the nearest that sends; in order of the sites. */
export const antennaSpacings = (
  index: BoatIndex,
  sites: readonly SiteEntry[],
  on: readonly RadioAntenna[],
): Spacing[] => {
  const antennas = sites.flatMap((site) => antennaOf(index, site, on));
  const radios = antennas.filter(
    ({ is, unit }) => is === 'radio-antenna' && on.some(({ antenna }) => antenna === unit),
  );
  const senders = radios.filter(({ powerW }) => powerW > 0);
  return antennas.flatMap((one) => {
    if (one.is === 'position-antenna') return toPosition(index, one, senders);
    const at = radios.indexOf(one);
    return at < 0
      ? []
      : radios
          .slice(at + 1)
          .filter((other) => one.powerW > 0 || other.powerW > 0)
          .map((other) => betweenRadios(index, one, other));
  });
};
