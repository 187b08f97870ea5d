import type { Protocol } from '../../core/boat/sheet.ts';

/** What each language is called in a sentence. */
export const languageWords: Readonly<Record<Protocol, string>> = {
  nmea2000: 'NMEA 2000',
  nmea0183: 'NMEA 0183',
  ethernet: 'Ethernet',
  'single-wire': 'single wire',
  analog: 'analog',
  'engine-can': 'engine bus',
  modbus: 'Modbus',
  coax: 'coax',
  video: 'video',
  audio: 'audio',
  usb: 'USB',
  wifi: 'Wi-Fi',
  dc: 'DC',
};
