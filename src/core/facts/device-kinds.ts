/** What a device calls itself in its NAME, in plain words (source: pgn-database). */
export interface DeviceKind {
  /** kind as on a sheet */
  readonly kind: string;
  readonly words: string;
}

type Row = readonly [classCode: number, functionCode: number, kind: string, words: string];

/** Numbers as in the CANboat PGN database, words our own. */
const rows: readonly Row[] = [
  [10, 130, 'tool', 'diagnostic tool'],
  [10, 140, 'tool', 'bus recorder'],
  [20, 110, 'alarm', 'alarm sounder'],
  [20, 130, 'beacon', 'emergency beacon'],
  [20, 135, 'mob-unit', 'man-overboard unit'],
  [20, 140, 'recorder', 'voyage recorder'],
  [20, 150, 'camera', 'camera'],
  [25, 130, 'gateway', 'computer gateway'],
  [25, 131, 'gateway', 'bus to analog gateway'],
  [25, 132, 'gateway', 'analog to bus gateway'],
  [25, 133, 'gateway', 'serial gateway'],
  [25, 135, 'converter', 'NMEA 0183 converter'],
  [25, 136, 'gateway', 'network gateway'],
  [25, 137, 'gateway', 'wireless gateway'],
  [25, 140, 'gateway', 'router'],
  [25, 150, 'gateway', 'bridge'],
  [25, 160, 'gateway', 'bus repeater'],
  [30, 130, 'power-monitor', 'event monitor'],
  [30, 140, 'power-control', 'load controller'],
  [30, 141, 'power-control', 'power input'],
  [30, 150, 'power-control', 'power controller'],
  [35, 140, 'engine', 'generator engine'],
  [35, 141, 'alternator', 'alternator'],
  [35, 142, 'solar', 'solar panel'],
  [35, 143, 'wind-generator', 'wind generator'],
  [35, 144, 'fuel-cell', 'fuel cell'],
  [35, 145, 'bus-supply', 'bus power supply'],
  [35, 151, 'generator', 'AC generator'],
  [35, 152, 'power-monitor', 'AC bus monitor'],
  [35, 153, 'power-monitor', 'shore power monitor'],
  [35, 154, 'power-monitor', 'AC output monitor'],
  [35, 160, 'charger', 'battery charger'],
  [35, 161, 'charger', 'charger and inverter'],
  [35, 162, 'inverter', 'inverter'],
  [35, 163, 'dc-converter', 'DC converter'],
  [35, 170, 'battery-monitor', 'battery monitor'],
  [35, 180, 'gateway', 'engine gateway'],
  [40, 130, 'pilot-head', 'steering control'],
  [40, 140, 'pilot-head', 'steering mode control'],
  [40, 150, 'pilot-computer', 'pilot computer'],
  [40, 155, 'rudder-sensor', 'rudder sensor'],
  [40, 160, 'heading-sensor', 'heading sensor'],
  [40, 170, 'trim-tabs', 'trim tabs'],
  [40, 180, 'attitude-control', 'attitude control'],
  [50, 130, 'engine-monitor', 'engine-room monitor'],
  [50, 140, 'engine', 'engine'],
  [50, 141, 'alternator', 'alternator'],
  [50, 150, 'engine', 'engine controller'],
  [50, 151, 'generator', 'AC generator'],
  [50, 155, 'engine', 'motor'],
  [50, 160, 'gateway', 'engine gateway'],
  [50, 165, 'gearbox', 'gearbox'],
  [50, 170, 'engine-control', 'throttle and shift control'],
  [50, 180, 'actuator', 'actuator'],
  [50, 190, 'gateway', 'gauge interface'],
  [50, 200, 'instrument', 'large gauge'],
  [50, 210, 'instrument', 'small gauge'],
  [60, 130, 'depth-sensor', 'depth sensor'],
  [60, 135, 'depth-sensor', 'depth and speed sensor'],
  [60, 136, 'depth-sensor', 'depth, speed and temperature sensor'],
  [60, 140, 'heading-sensor', 'attitude sensor'],
  [60, 145, 'position-antenna', 'position sensor'],
  [60, 150, 'position-antenna', 'position sensor'],
  [60, 155, 'speed-sensor', 'speed sensor'],
  [60, 160, 'turn-sensor', 'rate-of-turn sensor'],
  [60, 170, 'display', 'navigation system'],
  [60, 175, 'display', 'navigation system'],
  [60, 190, 'display', 'navigation display'],
  [60, 195, 'ais', 'AIS'],
  [60, 200, 'radar', 'radar'],
  [60, 201, 'camera', 'infrared camera'],
  [60, 205, 'display', 'chart display'],
  [60, 210, 'display', 'chart display'],
  [60, 220, 'direction-finder', 'direction finder'],
  [60, 230, 'display', 'voyage display'],
  [70, 130, 'beacon', 'emergency beacon'],
  [70, 140, 'ais', 'AIS'],
  [70, 150, 'radio', 'DSC radio'],
  [70, 160, 'radio', 'data radio'],
  [70, 170, 'radio', 'satellite terminal'],
  [70, 180, 'radio', 'MF and HF radio'],
  [70, 190, 'vhf-radio', 'VHF radio'],
  [75, 130, 'temperature-sensor', 'temperature sensor'],
  [75, 140, 'pressure-sensor', 'pressure sensor'],
  [75, 150, 'tank-adapter', 'tank sender'],
  [75, 160, 'flow-sensor', 'flow sensor'],
  [75, 170, 'humidity-sensor', 'humidity sensor'],
  [80, 130, 'clock', 'clock'],
  [80, 140, 'recorder', 'voyage recorder'],
  [80, 150, 'instrument', 'instrument'],
  [80, 160, 'instrument', 'instrument display'],
  [80, 170, 'sensor-box', 'sensor box'],
  [80, 180, 'weather-sensor', 'weather instrument'],
  [80, 190, 'sensor', 'sensor'],
  [80, 200, 'converter', 'NMEA 0183 converter'],
  [85, 130, 'wind-sensor', 'wind and weather sensor'],
  [85, 160, 'water-sensor', 'water sensor'],
  [90, 130, 'climate', 'climate control'],
  [100, 130, 'deck-equipment', 'catch scale'],
  [110, 130, 'switch-panel', 'button panel'],
  [110, 135, 'switch-panel', 'switch panel'],
  [110, 140, 'gateway', 'analog interface'],
  [120, 130, 'display', 'display'],
  [120, 140, 'alarm', 'alarm sounder'],
  [125, 130, 'audio', 'audio player'],
  [125, 140, 'audio', 'audio control'],
];

const classRows: readonly (readonly [classCode: number, kind: string, words: string])[] = [
  [10, 'tool', 'system tool'],
  [20, 'safety', 'safety unit'],
  [25, 'gateway', 'gateway'],
  [30, 'power-control', 'power distribution unit'],
  [35, 'generator', 'power source'],
  [40, 'steering', 'steering unit'],
  [50, 'engine', 'propulsion unit'],
  [60, 'navigation', 'navigation unit'],
  [70, 'radio', 'radio'],
  [75, 'sensor', 'sensor interface'],
  [80, 'instrument', 'instrument'],
  [85, 'weather-sensor', 'weather sensor'],
  [90, 'climate', 'cabin sensor'],
  [100, 'deck-equipment', 'deck equipment'],
  [110, 'switch-panel', 'control panel'],
  [120, 'display', 'display'],
  [125, 'audio', 'audio unit'],
];

/** A sender without a NAME is told by the first of these it sends (source: practice-sent-messages). */
const byMessage: readonly (readonly [pgn: number, kind: string, words: string])[] = [
  [129_038, 'ais', 'AIS'],
  [129_039, 'ais', 'AIS'],
  [127_237, 'pilot-computer', 'pilot'],
  [129_284, 'display', 'navigation display'],
  [129_029, 'position-antenna', 'position sensor'],
  [129_025, 'position-antenna', 'position sensor'],
  [127_250, 'heading-sensor', 'heading sensor'],
  [128_267, 'depth-sensor', 'depth sensor'],
  [128_259, 'speed-sensor', 'speed sensor'],
  [130_306, 'wind-sensor', 'wind sensor'],
  [127_245, 'rudder-sensor', 'rudder sensor'],
  [127_488, 'gateway', 'engine gateway'],
  [127_505, 'tank-adapter', 'tank sender'],
  [127_508, 'battery-monitor', 'battery monitor'],
];

const keyOf = ({ classCode, functionCode }: DeviceCodes): number => classCode * 256 + functionCode;

const byCodes: ReadonlyMap<number, DeviceKind> = new Map(
  rows.map(([classCode, functionCode, kind, words]) => [keyOf({ classCode, functionCode }), { kind, words }]),
);
const byClass: ReadonlyMap<number, DeviceKind> = new Map(
  classRows.map(([classCode, kind, words]) => [classCode, { kind, words }]),
);

/** The two codes of a NAME that tell what a device is. */
export interface DeviceCodes {
  readonly classCode: number;
  readonly functionCode: number;
}

/**
 * What a device is, by the codes of its NAME, else by what it sends. Never a maker's word.
 *
 * @example deviceKind({ classCode: 60, functionCode: 145 }, []) // { kind: 'position-antenna', words: 'position sensor' }
 */
export const deviceKind = (codes: DeviceCodes | undefined, sentPgns: Iterable<number>): DeviceKind => {
  const named = codes === undefined ? undefined : (byCodes.get(keyOf(codes)) ?? byClass.get(codes.classCode));
  if (named !== undefined) return named;
  const sent = new Set(sentPgns);
  const row = byMessage.find(([pgn]) => sent.has(pgn));
  return row === undefined ? { kind: 'unknown', words: 'unknown device' } : { kind: row[1], words: row[2] };
};
