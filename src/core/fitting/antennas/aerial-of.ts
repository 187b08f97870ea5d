import type { Aerial } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit, Place } from '../../boat/boat-schema.ts';
import { limitValue } from '../../boat/limit-value.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { otherStations, takenFor } from '../../facts/antenna-figures.ts';
import { outsideUnits } from '../outside-units.ts';
import { peopleAboard } from '../people.ts';
import { apartM } from '../upright.ts';
import { horizonNm } from './horizon.ts';
import { openSky } from './open-sky.ts';
import { peopleDistanceM } from './people-distance.ts';
import type { RadioAntenna } from './radio-antennas.ts';

/** An antenna whose sheet does not say what it is for, by what its radio hears. */
const usesOf = ({ antenna, kind, ports }: Sheet): Aerial['for'] => {
  if (antenna !== undefined) return [...antenna.for];
  if (kind !== 'radio-antenna') return ['position'];
  const sent = new Set(ports.flatMap((port) => (port.sends ?? []).map(({ reading }) => reading)));
  return sent.has('ais-targets') && !sent.has('audio') ? ['ais'] : ['voice'];
};

const sendsBy = (index: BoatIndex, antenna: string, gainDbi: number, on: readonly RadioAntenna[]): Aerial['sends'] => {
  const limitWPerM2 = limitValue(index.boat, 'radio-power-density');
  const sending = on.flatMap(({ radio, antenna: at, use: { powerW } }) => {
    if (at !== antenna || powerW === undefined) return [];
    const dutyPct = index.sheetOf.get(radio.split('.')[0] ?? '')?.transmits?.dutyPct ?? 100;
    return [{ radio, powerW, peopleM: peopleDistanceM({ powerW, gainDbi, limitWPerM2, dutyPct }) }];
  });
  return sending.sort((one, other) => other.peopleM - one.peopleM)[0];
};

interface Asked {
  readonly index: BoatIndex;
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly place: Place;
  readonly on: readonly RadioAntenna[];
}

const radioAerial = ({ index, unit, sheet, place, on }: Asked): Aerial => {
  const { xM, yM, zM } = place;
  const topM = zM + (sheet.antenna?.lengthM ?? 0);
  const gainDbi = sheet.antenna?.gainDbi ?? takenFor.gainDbi.value;
  const sends = sendsBy(index, unit.id, gainDbi, on);
  const whip = { xM, yM, fromM: zM, toM: topM };
  const near = peopleAboard(index)
    .map((person) => ({ place: person.place, distanceM: apartM(whip, person) }))
    .filter(({ distanceM }) => sends !== undefined && distanceM < sends.peopleM);
  return {
    for: usesOf(sheet),
    topM,
    gainDbi,
    gainBy: sheet.antenna?.gainDbi === undefined ? 'taken' : 'sheet',
    horizonNm: horizonNm('vhf', topM),
    ranges: otherStations.map(({ to, height }) => ({
      to,
      heightM: height.value,
      rangeNm: horizonNm('vhf', topM, height.value),
    })),
    ...(sends === undefined ? {} : { sends }),
    ...(near.length === 0 ? {} : { near }),
  };
};

const positionAerial = ({ index, unit, sheet, place }: Asked): Aerial => {
  const own = outsideUnits(index).find((it) => it.unit.id === unit.id);
  const sky = own === undefined ? [] : openSky(index, own);
  return {
    for: usesOf(sheet),
    topM: place.zM + (sheet.antenna?.lengthM ?? 0),
    inOpen: own !== undefined,
    ...(sky.length === 0 ? {} : { sky }),
  };
};

/** What is reckoned of one antenna of a radio, or of one for position. */
export const aerialOf = (is: 'radio-antenna' | 'position-antenna', asked: Asked): Aerial =>
  is === 'radio-antenna' ? radioAerial(asked) : positionAerial(asked);
