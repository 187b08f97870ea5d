import type { BoatIndex } from '../boat/boat-index.ts';
import type { CompassFeed } from '../compass-shape.ts';
import { compassLaying } from '../facts/compass-figures.ts';
import type { LineEntry } from '../plan-shape.ts';
import type { FeedEntry } from '../power-shape.ts';
import { compassDeviation } from './compass-deviation.ts';
import { compassSafeDistance } from './compass-safe-distance.ts';
import { wireFieldUt } from './wire-field.ts';

type Laying = Pick<CompassFeed, 'laid' | 'laidBy'>;

/** The circuit in the boat file says it, else the cable that is aboard; what the plan buys has two cores. */
export const layingOf = (index: BoatIndex, feed: FeedEntry, line: Pick<LineEntry, 'kept'>): Laying => {
  const circuit = index.panels.get(feed.panel)?.circuits.find(({ id }) => id === feed.circuit);
  if (circuit?.laid !== undefined) return { laid: circuit.laid, laidBy: 'file' };
  const cores = (line.kept ?? []).flatMap((cable) => index.cables.get(cable)?.conductors ?? []);
  if (cores.length > 0) return { laid: Math.min(...cores) === 1 ? 'single' : 'pair', laidBy: 'cable' };
  return { laid: 'pair', laidBy: 'plan' };
};

/** How far apart the two wires of a pair lie, m: in one thin cable, or side by side. */
const spacingM = ({ areaMm2 }: Pick<FeedEntry, 'areaMm2'>): number =>
  (areaMm2 !== undefined && areaMm2 <= compassLaying.thinUpTo.value
    ? compassLaying.thinSpacing
    : compassLaying.thickSpacing
  ).value;

/** What a feed does to a steering compass at a distance, with its largest steady current. */
export const feedAtCompass = ({
  feed,
  laying,
  distanceM: measuredM,
  horizontalUt,
}: {
  readonly feed: FeedEntry;
  readonly laying: Laying;
  readonly distanceM: number;
  readonly horizontalUt: number;
}): CompassFeed => {
  // no wire comes nearer to the card than the bowl lets it
  const distanceM = Math.max(measuredM, compassLaying.nearest.value);
  const wire = {
    currentA: feed.loadA,
    ...(laying.laid === 'single' ? {} : { pairSpacingM: spacingM(feed) }),
  };
  const fieldUt = wireFieldUt({ ...wire, distanceM });
  const safe = compassSafeDistance({ ...wire, compass: 'steering' });
  return {
    line: feed.line,
    to: feed.to,
    currentA: feed.loadA,
    distanceM,
    ...laying,
    fieldUt,
    deviationDeg: compassDeviation({ fieldUt, horizontalUt }).squareDeg,
    keepM: safe.shownM,
    tooNear: fieldUt > safe.limitFieldUt,
  };
};
