import type { Boat } from '../../core/boat/boat-schema.ts';
import { type BoatLog, emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { antennaList } from '../antennas/antenna-list.ts';
import { coaxList } from '../antennas/coax-list.ts';
import { energyList } from '../energy/energy-list.ts';
import { labelList } from '../labels/label-list.ts';
import { testList } from '../proof/test-list.ts';
import { paperList } from '../settings-sheet/paper-list.ts';
import { typedList } from '../settings-sheet/typed-list.ts';
import { pairList } from '../sources/pair-list.ts';
import { settingList } from '../sources/setting-list.ts';
import { sourceList } from '../sources/source-list.ts';
import type { ListTable } from '../table/list-table.ts';
import { trafficList } from '../traffic/traffic-list.ts';
import { orderDateList } from '../work/order-date-list.ts';
import { workList } from '../work/work-list.ts';
import { blackoutList } from './blackout-list.ts';
import { buyingList } from './buying-list.ts';
import { cableSchedule } from './cable-schedule.ts';
import { driveList } from './drive-list.ts';
import { feedList } from './feed-list.ts';
import { fitList } from './fit-list.ts';
import { keptSettingList } from './kept-setting-list.ts';
import { kitList } from './kit-list.ts';
import { loadList } from './load-list.ts';
import { openingList } from './opening-list.ts';
import { panelList } from './panel-list.ts';
import { phaseList } from './phase-list.ts';
import { pinList } from './pin-list.ts';
import { plateList } from './plate-list.ts';
import { sensorList } from './sensor-list.ts';
import { spareList } from './spare-list.ts';
import { tapeList } from './tape-list.ts';
import { teeList } from './tee-list.ts';
import { terminalList } from './terminal-list.ts';

/** Every list there is of a plan, in the order in which they are read: the files of `plan --out`, the workbook, the binder. */
export const planLists = (boat: Boat, plan: Plan, log: BoatLog = emptyLog): readonly ListTable[] =>
  [
    cableSchedule,
    teeList,
    (own: Boat, planned: Plan) => labelList(own, planned),
    kitList,
    settingList,
    paperList,
    typedList,
    keptSettingList,
    pinList,
    pairList,
    terminalList,
    panelList,
    feedList,
    loadList,
    sourceList,
    driveList,
    energyList,
    blackoutList,
    trafficList,
    buyingList,
    tapeList,
    spareList,
    antennaList,
    coaxList,
    openingList,
    fitList,
    plateList,
    sensorList,
    phaseList,
    (own: Boat, planned: Plan) => workList(own, planned, log),
    orderDateList,
    (own: Boat, planned: Plan) => testList(own, planned, log),
  ].map((list) => list(boat, plan));
