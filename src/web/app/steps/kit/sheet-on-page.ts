import type { SheetPoints } from '../../sheet/route-drag.ts';

/** The drawing that stands on the page now, and where the places of the boat lie on it. */
interface SheetOnPage {
  readonly frame: HTMLElement;
  readonly points: SheetPoints;
}

let now: SheetOnPage | undefined;

/** Says which drawing stands on the page; none while she is shown as a list or otherwise. */
export const setSheetOnPage = (sheet: SheetOnPage | undefined): void => {
  now = sheet;
};

/** The drawing that something from the margin can be let go at. */
export const sheetOnPage = (): SheetOnPage | undefined => now;
