import { indexBoat } from './boat-index.ts';
import type { BoatProblem } from './boat-problem.ts';
import type { Boat } from './boat-schema.ts';
import { checkChanges } from './checks/check-changes.ts';
import { checkDays } from './checks/check-days.ts';
import { checkIds } from './checks/check-ids.ts';
import { checkJoins } from './checks/check-joins.ts';
import { checkLinks, knownIn, linkTo } from './checks/check-links.ts';
import { checkMeasures } from './checks/check-measures.ts';
import { checkOpenings } from './checks/check-openings.ts';
import { checkPhotos } from './checks/check-photos.ts';
import { checkProved } from './checks/check-proved.ts';
import { checkRemote } from './checks/check-remote.ts';
import { checkSheet } from './checks/check-sheet.ts';
import { checkSources } from './checks/check-sources.ts';
import { checkSteering } from './checks/check-steering.ts';
import { checkSupply } from './checks/check-supply.ts';
import { checkWork } from './checks/check-work.ts';
import { keptFor } from './kept-for.ts';
import type { Sheet } from './sheet.ts';

/** What is wrong in each sheet, from the sheet on; an edit leaves nearly every sheet of a boat as it was. */
const wrongIn = keptFor((sheet: Sheet) => checkSheet(sheet, []));

const checkSheets = ({ sheets }: Boat): BoatProblem[] =>
  sheets.flatMap((sheet, at) =>
    wrongIn(sheet).map((problem) => ({ ...problem, path: ['sheets', at, ...problem.path] })),
  );

const checkUnitSheets = (boat: Boat): BoatProblem[] => {
  const sheets = new Map(boat.sheets.map((sheet) => [sheet.id, sheet]));
  return boat.kit.flatMap((unit, at) => {
    const path = ['kit', at];
    const sheet = sheets.get(unit.sheet);
    return sheet === undefined
      ? linkTo(sheets, { id: unit.sheet, what: 'sheet', path: [...path, 'sheet'] })
      : checkChanges(unit, sheet, path);
  });
};

/**
 * What the schema cannot see in a boat file: ids given twice, references that lead nowhere, sheets and joins that cannot
 * be. Empty for a boat that holds together. Sheets that are wrong in themselves are told of before what rests on them.
 * Unknown lines and findings in labels and accepted are no problem here.
 */
export const checkReferences = (boat: Boat): BoatProblem[] => {
  const ids = checkIds(boat);
  if (ids.length > 0) return ids;
  const sheets = [...checkSheets(boat), ...checkUnitSheets(boat)];
  if (sheets.length > 0) return sheets;
  const known = knownIn(indexBoat(boat));
  return [
    ...checkLinks(known),
    ...checkJoins(known),
    ...checkSources(known),
    ...checkProved(known),
    ...checkSupply(known),
    ...checkDays(boat),
    ...checkSteering(known),
    ...checkRemote(known),
    ...checkOpenings(known),
    ...checkPhotos(known),
    ...checkMeasures(known),
    ...checkWork(known),
  ];
};
