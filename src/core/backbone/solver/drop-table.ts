import type { Ground } from './ground.ts';
import { fitting } from './sweep-field.ts';

/** The drops within the limit of one drop, of all devices one after another: `start` of each device, then what each drop is. */
export interface DropTable {
  readonly start: Int32Array;
  readonly place: Int32Array;
  readonly cost: Float64Array;
  readonly boughtMm: Float64Array;
}

/** Lists that are read millions of times, side by side. */
export const dropTable = (ground: Ground): DropTable => {
  const drops = ground.devices.map((device) => fitting(ground, device));
  const start = [0];
  for (const { length } of drops) start.push((start.at(-1) ?? 0) + length);
  return {
    start: Int32Array.from(start),
    place: Int32Array.from(drops.flat(), ({ place }) => place),
    cost: Float64Array.from(drops.flat(), ({ cost }) => cost),
    boughtMm: Float64Array.from(drops.flat(), ({ boughtMm }) => boughtMm),
  };
};
