import { gzipSync } from 'fflate';
import { recordBus } from './invented-bus.ts';
import { candumpBytes, csvBytes, garbage, pcapBytes, pcapngBytes } from './write-recording.ts';

const sentences = [
  '$SDDPT,12.3,-1.5*4E',
  '$IIMWV,338,R,13.41,N,A*2C',
  '(1700000000.250000) $IIHDT,,T*0C',
  '2026-05-01T12:00:00.250Z $GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A*1A',
  '1777636800.250 !AIVDM,1,1,,A,11mg=5@P10w?sm0O2dL8@Ovt0000,0*33',
  '\\s:r3,c:1777636800*52\\$SDDPT,12.3,-1.5*4E',
  '!AIVDM,2,1,3,B,55NBjP01mtGIL@CW;SM<D60P5Ld000000000000P0`<3557l0<50@kk@K5h@,0*00',
  '!AIVDM,2,2,3,B,00000000000,2*24',
  '$GPRMC,120000.00,A,5415.00,N,01030.00,W,6.4,211.3,010526,4.2,W,A*00',
  '$GPGGA,120000.00,5415.00,N,01030.00,W,1,08,1.0,3.2,M,45.0,M,,',
  '# a comment',
];

const longMessage = `2026-05-01T12:00:00.300Z,6,129794,43,255,75,${Array.from({ length: 75 }, (_unused, at) => at.toString(16).padStart(2, '0')).join(',')}\n`;

/** Lines of every form that is read, mixed. */
export const soundLines = (): Uint8Array => {
  const bus = recordBus({ seconds: 1 }).slice(0, 100);
  const texts = [
    candumpBytes(bus),
    candumpBytes(bus.slice(0, 40), { style: 'old-angle' }),
    candumpBytes(bus.slice(0, 40), { style: 'old-columns', lineEnd: '\r\n' }),
    csvBytes(bus),
    csvBytes(bus.slice(0, 40), { between: '-', millis: false }),
    garbage(longMessage),
    garbage(`${sentences.join('\r\n')}\r\n`.repeat(8)),
  ];
  return Uint8Array.from(texts.flatMap((text) => [...text]));
};

/** A short recording of each form that is a file. */
export const soundFiles = (frames = 60): readonly Uint8Array[] => {
  const bus = recordBus({ seconds: 1 }).slice(0, frames);
  return [
    pcapBytes(bus),
    pcapBytes(bus, { littleEndian: false, nanoseconds: true }),
    pcapngBytes(bus),
    pcapngBytes(bus, { littleEndian: false, resolution: 9 }),
    pcapngBytes(bus, { simple: true }),
    gzipSync(candumpBytes(bus)),
    gzipSync(pcapngBytes(bus)),
  ];
};
