import { shortestRoutes } from '../../network/shortest-route.ts';
import type { Ground, GroundDevice, LeadOption } from './ground.ts';
import { fitting } from './sweep-field.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/**
 * The feed leads that volts and currents do not rule out whatever the layout. With y_k the length of trunk between feed and
 * device k, at least the shortest there is, and I its current:
 * - device k alone loses lead + 2 R I_k (y_k + drop),
 * - the farthest device of each leg loses lead + 2 R sum(I y) of that leg, so over both legs R sum(I y) is at most what one
 *   device may lose,
 * - each device loads one leg at least, so all together are at most two legs' current.
 */
export const fedFrom = (ground: Ground): readonly LeadOption[] => {
  const { problem, grade, devices } = ground;
  const allMa = devices.reduce((sum, { ma }) => sum + ma, 0);
  if (allMa > 2 * grade.maxMa) return [];
  const edges = ground.ways.map(({ id, a, b, maxMm }) => ({ id, a: `${a}`, b: `${b}`, mm: maxMm }));
  const leastMv = Math.min(...devices.map(({ minMv }) => minMv));
  return ground.leads.filter((lead) => {
    const routes = shortestRoutes({ edges, from: `${lead.place}` });
    const leadFine = 2 * problem.feed.leadMicroOhmPerM * lead.maxMm * allMa;
    const least = (device: GroundDevice, weigh: (awayMm: number, boughtMm: number) => number): number =>
      Math.min(
        ...fitting(ground, device).map(({ place, boughtMm }) =>
          weigh(routes.get(`${place}`)?.mm ?? Number.POSITIVE_INFINITY, boughtMm),
        ),
      );
    const leftFine = (minMv: number): number => (problem.feed.mv - minMv) * fineInMv - leadFine;
    const moment = devices.reduce((sum, device) => sum + device.ma * least(device, (awayMm) => awayMm), 0);
    if (grade.microOhmPerM * moment > leftFine(leastMv)) return false;
    return devices.every((device) => {
      const alone = least(device, (awayMm, boughtMm) => awayMm + boughtMm);
      return 2 * grade.microOhmPerM * device.ma * alone <= leftFine(device.minMv);
    });
  });
};
