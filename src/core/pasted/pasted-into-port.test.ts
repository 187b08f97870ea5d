import { expect, test } from 'vitest';
import type { Port } from '../boat/sheet.ts';
import { pastedIntoPort } from './pasted-into-port.ts';
import { readPasted } from './read-pasted.ts';

const messages = (text: string) => readPasted(text).flatMap(({ found }) => found);

const bus: Port = { id: 'n2k', protocol: 'nmea2000', role: 'both', hears: [{ pgn: 129025 }] };
const out: Port = { id: 'out', protocol: 'nmea0183', role: 'talk', sends: [{ sentence: 'DPT', everyMs: 1000 }] };

test('what is sent and what is heard go into their lists, each once', () => {
  const { port, taken, whyNot } = pastedIntoPort(bus, messages('Tx 127250 10 Hz\nRx 129025\nT/R 126992'), 'hears');
  expect(port.sends).toEqual([{ pgn: 127250, everyMs: 100 }, { pgn: 126992 }]);
  expect(port.hears).toEqual([{ pgn: 129025 }, { pgn: 126992 }]);
  expect([taken, whyNot]).toEqual([3, []]);
});

test('where neither text nor port says which way, the person does', () => {
  expect(pastedIntoPort(bus, messages('127250'), 'hears').port.hears).toContainEqual({ pgn: 127250 });
  expect(pastedIntoPort(bus, messages('127250'), 'sends').port.sends).toEqual([{ pgn: 127250 }]);
  expect(pastedIntoPort(out, messages('MTW'), 'hears').port.sends).toContainEqual({ sentence: 'MTW' });
});

test('an interval that is read takes the place of the one before', () => {
  expect(pastedIntoPort(out, messages('DPT 500 ms'), 'sends').port.sends).toEqual([{ sentence: 'DPT', everyMs: 500 }]);
});

test('what the port does not speak and the way it does not go stay out, with the reason', () => {
  const { port, taken, whyNot } = pastedIntoPort(out, messages('127250\nReceived\n$GPRMC'), 'sends');
  expect([port, taken]).toEqual([out, 0]);
  expect(whyNot).toEqual(['PGN 127250 is no message of the port out.', 'RMC is heard, and the port out only sends.']);
});
