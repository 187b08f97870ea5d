import type { Kit, Need } from '../boat/boat-schema.ts';
import { isAboard } from '../boat/phase.ts';
import { derivedReadings } from '../facts/derived-readings.ts';
import type { Break } from './nearest-break.ts';
import type { Reaches } from './reaches.ts';
import type { Refit } from './refit.ts';
import { type WayIn, waysInto } from './ways-in.ts';
import { unitWords, type WhyNot } from './why-words.ts';

const changesOf = ({ index }: Refit): number[] =>
  [...new Set(index.boat.kit.flatMap(({ fate, phase = 1 }) => (fate === 'stays' ? [] : [phase])))].sort(
    (a, b) => a - b,
  );

/** A need that is met in another phase than the one asked about. */
interface MetElsewhere {
  readonly phase: number;
  readonly way: WayIn;
  /** units on its way that are not aboard in the phase asked about, source first; never empty */
  readonly absent: readonly [Kit, ...Kit[]];
}

/** What a need rests on beside its own way: what its maker works it out from, and variation for a heading. */
const besides = (now: Reaches, need: Need, way: WayIn): Need[] => {
  const maker = way.kit[0] ?? need.at;
  const parts = (derivedReadings.get(need.reading) ?? [])
    .flatMap(({ from }) => from)
    .filter((reading) => !now.has(maker, reading))
    .map((reading) => ({ reading, at: maker, must: true }));
  const isVariationShort = need.reading === 'heading' && !now.has(need.at, 'variation');
  return isVariationShort ? [...parts, { reading: 'variation', at: need.at, must: true }] : parts;
};

/** The way a need takes where it is met; for one that hangs on another reading, the way of that one. */
const absentOn = (now: Reaches, then: Reaches, need: Need): Omit<MetElsewhere, 'phase'> | undefined => {
  const [way] = waysInto(then, need);
  if (way === undefined) return undefined;
  const { index, phase } = now.network;
  const units = [...new Set(way.kit)].flatMap((kit) => index.kit.get(kit) ?? []);
  const [first, ...others] = units.filter((unit) => !isAboard(unit, phase));
  if (first !== undefined) return { way, absent: [first, ...others] };
  for (const part of besides(now, need, way)) {
    const found = absentOn(now, then, part);
    if (found !== undefined) return found;
  }
  return undefined;
};

const metIn = (refit: Refit, now: Reaches, need: Need, phases: readonly number[]): MetElsewhere | undefined => {
  for (const phase of phases) {
    const found = absentOn(now, refit.reachesIn(phase), need);
    if (found !== undefined) return { phase, ...found };
  }
  return undefined;
};

/** The port by which an absent unit gives the reading on, and where to. */
const linkFrom = ({ way, absent: [unit] }: MetElsewhere): Pick<WhyNot['link'], 'from' | 'to'> => {
  const at = way.kit.lastIndexOf(unit.id);
  const [from, to] = [way.ports[at], way.ports[at + 1]];
  return { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
};

/** Whether what is left of an old way says nothing better: it breaks among its own units, with no port to join instead. */
const isRemnant = ({ way }: MetElsewhere, found: Break | undefined): boolean => {
  if (found === undefined) return true;
  const isCurable = found.broken === 'not-joined' && found.to !== undefined;
  return !isCurable && way.kit.includes(found.at.source.kit);
};

const namesOf = (refit: Refit, { absent }: MetElsewhere): string =>
  absent.map(({ id }) => unitWords(refit.index, id)).join(' and ');

/**
 * Why a need is not met yet, where the refit itself brings what it lacks in a later phase. `meanwhile` is what comes in
 * until then and is not good enough.
 */
export const comesLater = (refit: Refit, now: Reaches, need: Need, meanwhile?: WhyNot): WhyNot | undefined => {
  const { phase } = now.network;
  const later = changesOf(refit).filter((change) => change > phase);
  const met = metIn(refit, now, need, later);
  if (met === undefined) return undefined;
  const isOne = met.absent.length === 1;
  const how = meanwhile === undefined ? '' : ' as it is needed';
  const until = meanwhile === undefined ? '.' : `; until then, ${meanwhile.says}`;
  return {
    link: { broken: 'comes-later', ...linkFrom(met) },
    says: `${namesOf(refit, met)}, which ${isOne ? 'brings' : 'bring'} it${how}, ${isOne ? 'comes' : 'come'} aboard in phase ${met.phase}${until}`,
    cures:
      phase < 1
        ? []
        : [`Fit ${namesOf(refit, met)} in phase ${phase} already, or do without until phase ${met.phase}.`],
  };
};

/**
 * Why a need is met no more, where a unit of its way leaves with the refit and nothing takes its place. `found` is where
 * the reading breaks now: a new source that is not joined is the better reason.
 */
export const sourceLeaves = (refit: Refit, now: Reaches, need: Need, found: Break | undefined): WhyNot | undefined => {
  const earlier = changesOf(refit)
    .filter((change) => change <= now.network.phase)
    .map((change) => change - 1)
    .reverse();
  const met = metIn(refit, now, need, earlier);
  if (met === undefined || !isRemnant(met, found)) return undefined;
  const [places, leave] = met.absent.length === 1 ? ['its place', 'leaves'] : ['their place', 'leave'];
  return {
    link: { broken: 'source-leaves', ...linkFrom(met) },
    says: `${namesOf(refit, met)}, which brought it, ${leave} in phase ${met.phase + 1}, and nothing takes ${places}.`,
    cures: [`Keep ${namesOf(refit, met)}, or fit another way for it.`],
  };
};
