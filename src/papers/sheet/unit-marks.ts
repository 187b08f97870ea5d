import { isOpen } from '../../core/accepted-findings.ts';
import type { Boat, Kit, Place } from '../../core/boat/boat-schema.ts';
import type { Finding, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import { shortLabels } from './short-label.ts';

/** One unit as the drawing knows it. */
export interface UnitMark {
  readonly number: number;
  readonly kit: Kit;
  readonly place: Place;
  readonly label: string;
  /** the label with what is told of the unit where it stands, such as its volts; else the label */
  readonly told: string;
  /** ids that light this mark: the unit and its lines' ends */
  readonly about: readonly string[];
  /** findings that want a person's eye: danger, fault or doubt */
  readonly findings: readonly string[];
  /** has a tee on a bus */
  readonly onBus: boolean;
}

/** The unit an id is about: the id itself, `kit.port`, or an end of a line `kind:end~end`. */
const unitsNamed = (id: string): string[] => {
  const ends = id.includes('~') ? id.slice(id.indexOf(':') + 1).split('~') : [id];
  return ends.map((end) => end.slice(end.indexOf('/') + 1).split(/[.#@]/)[0] ?? end);
};

const findingsByUnit = (findings: readonly Finding[]): ReadonlyMap<string, readonly string[]> => {
  const byUnit = new Map<string, string[]>();
  for (const finding of findings) {
    if (finding.level === 'advice') continue;
    for (const unit of new Set(finding.about.flatMap(unitsNamed))) {
      byUnit.set(unit, [...(byUnit.get(unit) ?? []), finding.id]);
    }
  }
  return byUnit;
};

const unitsOnBus = (plan: Plan): ReadonlySet<string> =>
  new Set(plan.buses.flatMap((bus) => bus.walk.flatMap((step) => step.tees)).map((tee) => tee.split('.')[0] ?? tee));

/** From the stern forward, then from below upwards, then from port to starboard, then by id. */
const sternFirst = (a: { kit: Kit; place: Place }, b: { kit: Kit; place: Place }): number =>
  a.place.xM - b.place.xM ||
  a.place.zM - b.place.zM ||
  a.place.yM - b.place.yM ||
  byCodeUnit(a.place.id, b.place.id) ||
  byCodeUnit(a.kit.id, b.kit.id);

/** The units that stay or come, numbered from the stern forward, so that the numbers rise with the axis. */
export const unitMarks = ({
  boat,
  index,
  plan,
  tells = new Map(),
}: {
  boat: Boat;
  index: DrawnBoat;
  plan: Plan;
  /** more words to the label of a unit, by kit id */
  tells?: ReadonlyMap<string, string>;
}): UnitMark[] => {
  const aboard = boat.kit
    .filter((kit) => kit.fate !== 'goes')
    .flatMap((kit) => {
      const place = index.places.get(kit.place);
      return place === undefined ? [] : [{ kit, place }];
    })
    .sort(sternFirst);
  const labels = shortLabels(
    aboard.map(({ kit }) => kit),
    index.sheetOf,
  );
  const findings = findingsByUnit(plan.findings.filter(isOpen));
  const onBus = unitsOnBus(plan);
  return aboard.map(({ kit, place }, order) => ({
    number: order + 1,
    kit,
    place,
    label: labels.get(kit.id) ?? kit.id,
    told: [labels.get(kit.id) ?? kit.id, ...(tells.has(kit.id) ? [tells.get(kit.id)] : [])].join(', '),
    about: [kit.id],
    findings: findings.get(kit.id) ?? [],
    onBus: onBus.has(kit.id),
  }));
};
