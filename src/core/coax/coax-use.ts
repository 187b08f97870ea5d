import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port } from '../boat/sheet.ts';
import { takenFor } from '../facts/antenna-figures.ts';
import { radioMhz } from '../facts/coax.ts';

/** What a coax between a radio and an antenna carries. */
export interface CoaxUse {
  readonly mhz: number;
  /** absent where nothing is sent, or nobody knows how much */
  readonly powerW?: number;
}

/** Below this a run on a boat loses so little that it is not reckoned: short wave. */
const leastMhz = 50;

/** Readings of a radio in the band of marine VHF; only AIS makes it the AIS frequency. */
const heardBy = (port: Port): 'ais' | 'voice' | undefined => {
  const heard = new Set((port.hears ?? []).map(({ reading }) => reading));
  if (heard.has('dsc-calls') || heard.has('audio')) return 'voice';
  return heard.has('ais-targets') ? 'ais' : undefined;
};

/** What the coax socket `kit.port` of a radio carries in the band of marine VHF; absent for position, short wave and what is no radio. */
export const coaxUse = (index: BoatIndex, { kit, port }: { kit: string; port: string }): CoaxUse | undefined => {
  const sheet = index.sheetOf.get(kit);
  const own = sheet?.ports.find(({ id }) => id === port);
  if (sheet === undefined || own?.protocol !== 'coax' || own.role === 'talk') return undefined;
  const heard = heardBy(own);
  if (heard === undefined || sheet.kind === 'mfhf-radio') return undefined;
  const mhz = sheet.transmits?.mhz ?? radioMhz[heard].value;
  if (mhz < leastMhz) return undefined;
  const powerW = sheet.transmits?.powerW ?? (sheet.kind === 'vhf-radio' ? takenFor.radioW.value : undefined);
  return { mhz, ...(powerW === undefined ? {} : { powerW }) };
};
