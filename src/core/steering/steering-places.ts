import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import { splitDotted } from '../boat/ids.ts';
import { limitValue } from '../boat/limit-value.ts';
import type { LetGo, SteeringPlace } from '../boat/steering.ts';
import type { LetGoEntry, SteeringEntry } from '../drives-shape.ts';
import { letGoKinds } from '../facts/steering-figures.ts';
import type { DrivePair } from './drive-pairs.ts';

/** Straight from one place to another, m. */
const awayM = (one: Place | undefined, other: Place | undefined): number =>
  one === undefined || other === undefined
    ? Number.POSITIVE_INFINITY
    : Math.hypot(one.xM - other.xM, one.yM - other.yM, one.zM - other.zM);

/** The units whose power a breaker takes away: the computers, and pilots that are one unit with their drive. */
const poweredKit = (pairs: readonly DrivePair[]): ReadonlySet<string> =>
  new Set(pairs.map(({ computer, driveKit }) => computer?.kit ?? driveKit));

const feedsPilot = (index: BoatIndex, pairs: readonly DrivePair[], circuit: string): boolean => {
  const { kit: panel, part } = splitDotted(circuit);
  const fed = index.panels.get(panel)?.circuits.find(({ id }) => id === part)?.feeds ?? [];
  const powered = poweredKit(pairs);
  return fed.some((target) => target.includes('.') && powered.has(splitDotted(target).kit));
};

type WhyNot = NonNullable<LetGoEntry['whyNot']>;

/** Why a way does not count, gravest first; a lever counts whatever the drive does without power. */
const whyNotOf = (
  index: BoatIndex,
  pairs: readonly DrivePair[],
  { way, at, far, isHere }: { way: LetGo; at: string; far: boolean; isHere: boolean },
): WhyNot | undefined => {
  const { needsNetwork, takesPowerAway } = letGoKinds[way.how];
  if (needsNetwork) return 'needs-the-network';
  if (far) return 'out-of-reach';
  if (!isHere && index.places.get(at)?.reach !== 'open') return 'behind-a-panel';
  if (way.circuit !== undefined && !feedsPilot(index, pairs, way.circuit)) return 'feeds-no-pilot';
  const holds = pairs.some(({ sheet }) => sheet.drive.whenPowerIsLost === 'holds');
  return holds && takesPowerAway ? 'holds-without-power' : undefined;
};

const letGoEntry = (
  index: BoatIndex,
  pairs: readonly DrivePair[],
  { place }: SteeringPlace,
  way: LetGo,
): LetGoEntry => {
  const panel = way.circuit === undefined ? undefined : index.panels.get(splitDotted(way.circuit).kit)?.place;
  const at = way.at ?? panel ?? place;
  const away = awayM(index.places.get(place), index.places.get(at));
  const far = away > limitValue(index.boat, 'steering-reach') + 1e-9;
  const whyNot = whyNotOf(index, pairs, { way, at, far, isHere: at === place });
  return {
    how: way.how,
    at,
    awayM: away,
    counts: whyNot === undefined,
    ...(whyNot === undefined ? {} : { whyNot }),
  };
};

/**
 * Every place the boat is steered from with what frees the helm from the pilot there. A key on a screen does not count, for
 * it needs the network; a switch or breaker only where the drives aboard let go without power. None where no pilot is aboard.
 */
export const steeringPlaces = (index: BoatIndex, pairs: readonly DrivePair[]): SteeringEntry[] =>
  pairs.length === 0
    ? []
    : (index.boat.steering ?? []).map((place) => {
        const ways = place.letsGo.map((way) => letGoEntry(index, pairs, place, way));
        return { place: place.place, by: place.by, ways, free: ways.some(({ counts }) => counts) };
      });

/** Whether a lever within reach frees the helm at every steering place, whatever holds it. */
export const leversEverywhere = (steering: readonly SteeringEntry[]): boolean =>
  steering.length > 0 && steering.every(({ ways }) => ways.some(({ how, counts }) => how === 'lever' && counts));
