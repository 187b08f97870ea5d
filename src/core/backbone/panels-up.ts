import type { BoatIndex } from '../boat/boat-index.ts';
import type { Panel } from '../boat/supply.ts';

/** What a panel hangs on, nearest first, up to the bank or the converter. */
export const panelsUp = (index: BoatIndex, panel: Panel): { panels: readonly Panel[]; source: string } => {
  const panels = [panel];
  let above = panel.from;
  for (let next = index.panels.get(above); next !== undefined && !panels.includes(next); ) {
    panels.push(next);
    above = next.from;
    next = index.panels.get(above);
  }
  return { panels, source: above };
};
