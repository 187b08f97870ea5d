import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { neighbourKind, neighbourName } from '../heading/near-words.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { checkWords, inputFact } from './sensor-rows.ts';

const verdicts = { ok: 'right', bad: 'not right', ask: 'to be measured' } as const;
const headingVerdicts = { good: 'right', doubtful: 'doubtful', not: 'not right' } as const;

/** Compasses, heading sensors and sensors in the hull and aloft: what is looked at for each, a row a thing. */
export const sensorList = (boat: Boat, plan: Plan): ListTable => {
  const names = cardBoat(boat);
  const nameOf = (id: string): string => names.kit.get(id)?.name ?? id;
  const compass = plan.compass.flatMap(({ compass: id, units, feeds }): ListCell[][] => [
    ...units.map(({ unit, distanceM, safeM, tooNear }) => [
      nameOf(id),
      `from ${nameOf(unit)}`,
      distanceM,
      'm',
      safeM,
      tooNear ? 'not right' : 'right',
      undefined,
    ]),
    ...feeds
      .filter(({ tooNear }) => tooNear)
      .map(({ to, distanceM, keepM }) => [
        nameOf(id),
        `from the feed of ${names.buses.get(to)?.name ?? nameOf(to.split('.')[0] ?? to)}`,
        distanceM,
        'm',
        keepM,
        'not right',
        undefined,
      ]),
  ]);
  const heading = plan.sites.flatMap(({ unit, heading: site }): ListCell[][] =>
    (site?.near ?? []).map((near) => [
      nameOf(unit),
      `from ${neighbourName(names, near)} (${neighbourKind(near)})`,
      near.distanceM,
      'm',
      near.leastM,
      headingVerdicts[near.verdict],
      undefined,
    ]),
  );
  const sensors = plan.sites.flatMap(({ unit, sensor }): ListCell[][] => [
    ...(sensor?.checks ?? []).map(({ check, measured, limit, unit: in_, verdict }) => [
      nameOf(unit),
      checkWords[check],
      measured,
      in_,
      limit,
      verdicts[verdict],
      undefined,
    ]),
    ...(sensor?.inputs ?? []).map((input) => [
      nameOf(unit),
      inputFact(names, input),
      undefined,
      undefined,
      undefined,
      input.misfits.length > 0 ? 'not right' : 'right',
      undefined,
    ]),
  ]);
  return {
    id: 'sensors',
    title: 'Compasses and sensors where they stand',
    says: 'What each compass, heading sensor and sensor keeps from, and how it sits. Measure once more before a hole is made.',
    columns: [
      { id: 'unit', head: 'unit', share: 1.6, once: true },
      { id: 'check', head: 'looked at', share: 2.4 },
      { id: 'measured', head: 'is', kind: 'figure', digits: 2, share: 0.7 },
      { id: 'in', head: 'in', share: 0.5 },
      { id: 'limit', head: 'should be', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'verdict', head: 'so', share: 1 },
      { id: 'seen', head: 'measured aboard', kind: 'blank', share: 1 },
    ],
    rows: [...compass, ...heading, ...sensors],
    empty: 'No compass and no sensor is aboard.',
  };
};
