import { isAboard, lastPhase } from '../../boat/phase.ts';
import { aisFields } from '../../facts/fitting-limits.ts';
import type { TypedEntry } from '../../settings-sheet-shape.ts';
import { masked } from '../../walk-round/masked.ts';
import { aisAntenna } from './ais-antenna.ts';
import { aisName } from './ais-name.ts';
import { aisDraughtField, aisSize } from './ais-size.ts';
import { type OwnSet, ownSets } from './own-sets.ts';
import type { SheetInput, Wanted } from './sheet-input.ts';
import { whoMayEnter } from './who-may-enter.ts';

const whoOf = (input: SheetInput, { is }: OwnSet): Pick<TypedEntry, 'mayEnter'> => {
  const { flag } = input.index.boat.papers ?? {};
  const who = whoMayEnter({ is, ...(flag === undefined ? {} : { flag }) });
  return who === 'anyone' ? {} : { mayEnter: who };
};

const sizes = (input: SheetInput, set: OwnSet): Wanted[] => {
  const { boat, places, kit } = input.index;
  const who = whoOf(input, set);
  const row = (what: TypedEntry['what']) => ({ id: `${set.unit.id}:${what}`, kit: set.unit.id, what, ...who });
  const place = places.get(kit.get(aisAntenna(input, set.unit.id) ?? '')?.place ?? '');
  if (place === undefined) return [{ ...row('ais-bow'), missing: 'position-antenna' }];
  const { lengthM, beamM } = boat.hull;
  const size = aisSize({ lengthM, beamM, fromBowM: lengthM - place.xM, fromPortM: beamM / 2 + place.yM });
  const whole = (what: TypedEntry['what'], valueM: number): Wanted => ({
    ...row(what),
    is: valueM,
    shown: { figure: String(valueM), in: 'm' },
    how: 'drawn',
  });
  return [
    whole('ais-bow', size.bowM),
    whole('ais-stern', size.sternM),
    whole('ais-port', size.portM),
    whole('ais-starboard', size.starboardM),
  ];
};

const draught = (input: SheetInput, { unit, is }: OwnSet): Wanted[] => {
  if (is !== 'ais-class-a') return [];
  const draftM = aisDraughtField(input.index.boat.hull.draftM) * aisFields.draughtStepM;
  return [
    {
      id: `${unit.id}:ais-draught`,
      kit: unit.id,
      what: 'ais-draught',
      is: draftM,
      shown: { figure: draftM.toFixed(1), in: 'm' },
    },
  ];
};

const names = (input: SheetInput, set: OwnSet): Wanted[] => {
  const { boat } = input.index;
  const kit = set.unit.id;
  const who = whoOf(input, set);
  const callSign = boat.papers?.callSign;
  const name: Wanted = {
    id: `${kit}:ais-name`,
    kit,
    what: 'ais-name',
    shown: { figure: aisName(boat.papers?.shipName ?? boat.name), in: '' },
    ...who,
  };
  const sign = { id: `${kit}:ais-call-sign`, kit, what: 'ais-call-sign', ...who } as const;
  return [
    name,
    callSign === undefined
      ? { ...sign, missing: 'call-sign' }
      : { ...sign, shown: { figure: masked(callSign.slice(0, aisFields.callSignChars)), in: '' } },
  ];
};

/** The nine digits, covered but for their last two, once a second person has read them back. */
const number = (input: SheetInput, set: OwnSet): Wanted => {
  const given = input.index.boat.papers?.number;
  const row = {
    id: `${set.unit.id}:ship-number`,
    kit: set.unit.id,
    what: 'ship-number',
    ...whoOf(input, set),
  } as const;
  if (given === undefined) return { ...row, missing: 'ship-number' };
  const shown = { figure: masked(given.digits), in: '' };
  return given.readBackBy === undefined ? { ...row, shown, missing: 'read-back' } : { ...row, shown };
};

/** What makes each of the ship's own sets known as hers: number, name, call sign, and the size block of the AIS. */
export const radioEntries = (input: SheetInput): Wanted[] => {
  const last = lastPhase(input.index.boat);
  return ownSets(input.index)
    .filter(({ unit }) => isAboard(unit, last))
    .flatMap((set) => [
      number(input, set),
      ...(set.is === 'radio' ? [] : [...sizes(input, set), ...draught(input, set), ...names(input, set)]),
    ]);
};
