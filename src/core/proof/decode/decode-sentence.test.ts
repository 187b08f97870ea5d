import { describe, expect, test } from 'vitest';
import { decodeSentence } from './decode-sentence.ts';
import { quantityUnits } from './decoded-value.ts';
import { sentenceChecksum } from './sentence.ts';

const sent = (body: string): string => `$${body}*${sentenceChecksum(body)}`;
/** Values in round numbers: degrees for rad, knots for m/s. */
const told = (body: string): string[] =>
  decodeSentence(sent(body)).map(({ quantity, value, reference, instance, kind }) => {
    const unit: string = quantityUnits[quantity];
    const shown = unit === 'rad' ? (value * 180) / Math.PI : unit === 'm/s' ? (value * 3600) / 1852 : value;
    return [quantity, Number(shown.toFixed(4)), reference, instance, kind].filter((one) => one !== undefined).join(' ');
  });

describe('the values of a sentence', () => {
  test.each<readonly [string, readonly string[]]>([
    ['HEHDT,098.0,T', ['heading 98 true']],
    ['HCHDM,098.0,M', ['heading 98 magnetic']],
    ['HCHDG,101.1,2.0,W,7.1,E', ['heading 101.1 magnetic', 'deviation -2', 'variation 7.1']],
    ['HCHDG,101.1,,,,', ['heading 101.1 magnetic']],
    ['HETHS,98.0,A', ['heading 98 true']],
    ['SDDPT,12.3,-1.5', ['depth 12.3 transducer', 'depth-offset -1.5']],
    ['SDDBT,40.4,f,12.3,M,6.7,F', ['depth 12.3 transducer']],
    ['SDDBT,10.0,f,,M,,F', ['depth 3.048 transducer']],
    ['SDDBS,,f,13.0,M,,F', ['depth 13 surface']],
    ['IIMWV,338,R,13.41,N,A', ['wind-angle 338 apparent', 'wind-speed 13.41 apparent']],
    ['IIMWV,20,T,5.0,M,A', ['wind-angle 20 true-to-bow', 'wind-speed 9.7192 true-to-bow']],
    ['IIVWR,22.0,L,13.4,N,,M,,K', ['wind-angle 338 apparent', 'wind-speed 13.4 apparent']],
    ['IIMWD,270.0,T,274.2,M,10.0,N,,M', ['wind-angle 270 true', 'wind-angle 274.2 magnetic', 'wind-speed 10 true']],
    ['IIVHW,98.0,T,102.2,M,6.10,N,11.3,K', ['heading 98 true', 'heading 102.2 magnetic', 'speed-through-water 6.1']],
    ['IIVHW,,T,,M,6.10,N,11.3,K', ['speed-through-water 6.1']],
    ['IIVLW,10.0,N,1.0,N', ['log 18520', 'trip 1852']],
    ['IIMTW,15.0,C', ['temperature 288.15 0']],
    ['IIRSA,-5.0,A,4.0,A', ['rudder -5 0', 'rudder 4 1']],
    ['IIRSA,-5.0,A,,V', ['rudder -5 0']],
    ['IIRPM,E,1,2400,10.5,A', ['engine-speed 2400 1']],
    ['GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A', ['course 224.4 true', 'course 220.2 magnetic', 'speed-over-ground 5.8']],
    ['GPVTG,224.4,220.2,5.8,10.7', ['course 224.4 true', 'course 220.2 magnetic', 'speed-over-ground 5.8']],
    [
      'GPRMC,120000.50,A,5415.0000,N,01030.0000,W,6.4,211.3,010526,4.2,W,A',
      [
        'unix-time 1777636800.5',
        'latitude 54.25',
        'longitude -10.5',
        'speed-over-ground 6.4',
        'course 211.3 true',
        'variation -4.2',
      ],
    ],
    [
      'GPRMC,120000.50,A,5415.0000,N,01030.0000,W,6.4,211.3,010526,,,A',
      ['unix-time 1777636800.5', 'latitude 54.25', 'longitude -10.5', 'speed-over-ground 6.4', 'course 211.3 true'],
    ],
    ['GPRMC,120000.50,V,5415.0,N,01030.0,W,6.4,211.3,010526,,,N', ['unix-time 1777636800.5']],
    ['GPGGA,120000,5415.0,N,01030.0,W,1,08,1.0,3.2,M,45.0,M,,', ['latitude 54.25', 'longitude -10.5', 'altitude 3.2']],
    ['GPGGA,120000,5415.0,N,01030.0,W,0,00,,,M,,M,,', []],
    ['GPGLL,5415.0,N,01030.0,W,120000,A', ['latitude 54.25', 'longitude -10.5']],
    ['GNGNS,120000,5415.0,N,01030.0,W,AN,08,1.0,3.2,45.0,,', ['latitude 54.25', 'longitude -10.5', 'altitude 3.2']],
    ['GPZDA,120000.50,01,05,2026,00,00', ['unix-time 1777636800.5']],
    ['GPXTE,A,A,0.10,L,N', ['cross-track 185.2']],
    [
      'GPRMB,A,0.10,R,A,B,5416.0,N,01031.0,W,5.0,045.0,4.0,V',
      ['cross-track -185.2', 'waypoint-distance 9260', 'waypoint-bearing 45 true', 'waypoint-closing 4'],
    ],
    [
      'GPAPB,A,A,0.10,R,N,V,V,011.0,M,DEST,012.0,M,013.0,T',
      ['cross-track -185.2', 'waypoint-bearing 12 magnetic', 'heading-to-steer 13 true'],
    ],
    [
      'GPBWC,120000,5416.0,N,01031.0,W,045.0,T,049.2,M,5.0,N,B',
      ['waypoint-bearing 45 true', 'waypoint-bearing 49.2 magnetic', 'waypoint-distance 9260'],
    ],
    ['IIVDR,200.0,T,204.2,M,1.5,N', ['set 200 true', 'set 204.2 magnetic', 'drift 1.5']],
    ['VWVBW,6.1,0.1,A,5.8,0.0,V', ['speed-through-water 6.1']],
    ['TIROT,-6.0,A', ['rate-of-turn -0.0017']],
  ])('%s', (body, expected) => {
    expect(told(body)).toEqual(expected);
  });

  test.each([
    'IIHDT,,T',
    'GPXTE,A,A,,,N',
    'IIVDR,,T,,M,,N',
    'IIMWV,338,R,13.41,N,V',
    'HETHS,98.0,V',
    'IIHDT,361,T',
    'IIHDT,abc,T',
    'PXYZ,1',
    'GPGSV,3,1,11',
    'GPGLL,9930.0,N,01030.0,W,120000,A,',
  ])('%s has no value, or none that can be one', (body) => {
    expect(told(body).filter((one) => !one.startsWith('longitude'))).toEqual([]);
  });

  test('a wrong checksum leaves no value, a missing one does', () => {
    expect(decodeSentence('$SDDPT,12.3,-1.5*00')).toEqual([]);
    expect(decodeSentence('$SDDPT,12.3,-1.5')).toHaveLength(2);
  });
});
