/** The kinds of cable there are, apart from the schema so that a page can list them without it. */
export const lineKinds = [
  'trunk',
  'drop',
  'ethernet',
  'pair',
  'single-wire',
  'analog',
  'engine-can',
  'modbus',
  'coax',
  'video',
  'audio',
  'usb',
  'feed',
  'feeder',
] as const;
