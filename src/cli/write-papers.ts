import type { Boat } from '../core/boat/boat-schema.ts';
import type { BoatLog } from '../core/log/boat-log.ts';
import type { Plan } from '../core/plan-shape.ts';
import { drawingPng } from '../node/drawing-png.ts';
import { writeSet } from '../node/files/write-set.ts';
import type { GivenOut } from '../papers/binder/given-out.ts';
import { toSvg } from '../papers/drawing/to-svg.ts';
import { energyChart } from '../papers/energy/energy-chart.ts';
import { energyPaper } from '../papers/energy/energy-text.ts';
import { type BinderDrawing, binderDrawings } from '../papers/framed/binder-drawings.ts';
import { labelList } from '../papers/labels/label-list.ts';
import { lineDiagram } from '../papers/lanes/line-diagram.ts';
import { backboneText } from '../papers/lists/backbone-text.ts';
import { blackoutPaper } from '../papers/lists/blackout-text.ts';
import { drivePaper } from '../papers/lists/drive-text.ts';
import { findingsText } from '../papers/lists/findings-text.ts';
import { panelPaper } from '../papers/lists/panel-text.ts';
import { phasesPaper } from '../papers/lists/phases-text.ts';
import { planLists } from '../papers/lists/plan-lists.ts';
import { powerPaper } from '../papers/lists/power-text.ts';
import { securityPaper } from '../papers/lists/remote-text.ts';
import { shoppingText } from '../papers/lists/shopping-list.ts';
import { tapeText } from '../papers/lists/tape-text.ts';
import type { PaperName } from '../papers/pages/paper-sizes.ts';
import { oneLine } from '../papers/power/one-line.ts';
import { boatSheet } from '../papers/sheet/boat-sheet.ts';
import { pairsPaper, settingsPaper, sourcesPaper } from '../papers/sources/sources-text.ts';
import { tableCsv } from '../papers/table/table-csv.ts';
import { tablesJson } from '../papers/table/tables-json.ts';
import { workbook } from '../papers/table/workbook.ts';
import { trafficPaper } from '../papers/traffic/traffic-text.ts';
import { walkRoundPage } from '../papers/walk-round/walk-round-page.ts';
import { binderAtTerminal } from './binder-at-terminal.ts';
import { type LabelsWish, labelPapers } from './labels-at-terminal.ts';
import { templatePapers } from './templates-at-terminal.ts';

/** A landscape A3 sheet, the size a yard prints and pins up. */
const sheetSize = { widthMm: 420, heightMm: 297 };

/** The chart of a day's energy, as wide as the text on a page of A4. */
const energySheet = ({ name }: Boat) => ({ widthMm: 170, heading: `The energy of a day, ${name}` });

/** The power drawing, a file a page. */
const powerSheets = (boat: Boat, plan: Plan): [name: string, text: string][] => {
  const pages = oneLine({ boat, plan, ...sheetSize });
  return pages.map((page, at) => [pages.length === 1 ? 'power.svg' : `power-${at + 1}.svg`, toSvg(page, 'paper')]);
};

/** The drawings of the binder, each a sheet of paper, as drawings and as pictures of them. */
const drawingSheets = async (
  drawings: readonly BinderDrawing[],
): Promise<[name: string, content: string | Uint8Array][]> => {
  const files: [name: string, content: string | Uint8Array][] = [];
  for (const { name, drawing } of drawings) {
    files.push([`drawings/${name}.svg`, toSvg(drawing, 'paper')], [`drawings/${name}.png`, await drawingPng(drawing)]);
  }
  return files;
};

/**
 * Writes the papers of one plan to a folder, made when missing, all of them or none, and returns their file names.
 *
 * @throws UserError when the folder cannot be written to; papers that are in it are then as they were
 */
export const writePapers = async ({
  folder,
  boat,
  plan,
  paper,
  given,
  labels,
  log,
}: {
  folder: string;
  boat: Boat;
  plan: Plan;
  paper: PaperName;
  /** what every sheet says of itself */
  given: GivenOut;
  labels: LabelsWish;
  /** what was found, ticked and noted aboard */
  log: BoatLog;
}): Promise<string[]> => {
  const wish = { ...labels, ...(given.dateIso === undefined ? {} : { dateIso: given.dateIso }) };
  const lists = planLists(boat, plan, log).map((list) => (list.id === 'labels' ? labelList(boat, plan, wish) : list));
  const drawings = binderDrawings({ boat, plan, paper, ...given });
  const papers: ReadonlyMap<string, string | Uint8Array> = new Map<string, string | Uint8Array>([
    ['binder.pdf', await binderAtTerminal({ boat, plan, drawings, paper, log, ...given })],
    ...(await labelPapers({
      boat,
      plan,
      paper,
      wish,
    })),
    ['plan.json', `${JSON.stringify(plan, undefined, 2)}\n`],
    ['findings.txt', findingsText(boat, plan.findings)],
    ['backbone.txt', backboneText(boat, plan)],
    ['sources.txt', sourcesPaper(boat, plan)],
    ['settings.txt', settingsPaper(boat, plan)],
    ['pairs.txt', pairsPaper(boat, plan)],
    ['traffic.txt', trafficPaper(boat, plan)],
    ['power.txt', powerPaper(boat, plan)],
    ['panels.txt', panelPaper(boat, plan)],
    ['steering.txt', drivePaper(boat, plan)],
    ['energy.txt', energyPaper(boat, plan)],
    ['energy.svg', toSvg(energyChart({ boat, plan, ...energySheet(boat) }), 'paper')],
    ['blackouts.txt', blackoutPaper(boat, plan)],
    ['security.txt', securityPaper(boat, plan)],
    ['shopping.txt', shoppingText(boat, plan)],
    ['tape.txt', tapeText(boat, plan)],
    ...lists.map((list): [string, string] => [`${list.id}.csv`, tableCsv(list)]),
    ['lists.json', tablesJson(lists)],
    ['lists.xlsx', workbook(lists)],
    ['walk-round.html', walkRoundPage(boat)],
    ['phases.txt', phasesPaper(boat, plan)],
    ...powerSheets(boat, plan),
    ...(await drawingSheets(drawings)),
    ['lines.svg', toSvg(lineDiagram({ boat, plan, widthMm: sheetSize.widthMm }), 'paper')],
    ...(await templatePapers({
      boat,
      plan,
      paper,
      ...(given.dateIso === undefined ? {} : { dateIso: given.dateIso }),
    })),
    ['boat.svg', toSvg(boatSheet({ boat, plan, ...sheetSize }).drawing, 'paper')],
  ]);
  await writeSet(folder, papers);
  return [...papers.keys()];
};
