import { headingSiting } from '../../facts/heading-figures.ts';

/**
 * What sliding a heading sensor 30 cm each way says of a place, by how much the heading changes: 5° or less is good, over
 * 10° it goes elsewhere.
 *
 * @example probeVerdict(8) // 'doubtful'
 */
export const probeVerdict = (changeDeg: number): 'good' | 'doubtful' | 'move' => {
  const deg = Math.abs(changeDeg);
  if (deg <= headingSiting.probeGood.value) return 'good';
  return deg > headingSiting.probeMove.value ? 'move' : 'doubtful';
};
