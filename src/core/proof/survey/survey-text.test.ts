import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes, garbage } from '../../../../tests/recordings/write-recording.ts';
import { textLines } from '../../units/text-lines.ts';
import { surveyText } from './survey-text.ts';

const bus = recordBus({ seconds: 20 });
const report = surveyRecording(candumpBytes(bus));
const text = surveyText(report);

describe('the survey in words', () => {
  test('reads as a person would tell it', () => {
    expect(text).toMatchInlineSnapshot(`
      "2054 frames in 20.0 s: 1144 messages from 9 senders.
      Load 5.8 % of what the bus can carry, 6.6 % if every frame took its longest.
      Fullest second (0 s from the start): 13.1 %.

      Senders (LEN = load on the bus in steps of 50 mA)
       No.  address  LEN  what it is and sends
         1        3    ?  display
                          1 maker's own message
         2       20    3  position sensor
                          position every 100 ms; course and speed over ground every
                          250 ms; time and date every 1 s; GNSS Sats in View every 1 s
         3       35    2  attitude sensor
                          heading every 100 ms; rate of turn every 100 ms
         4       36    1  depth, speed and temperature sensor
                          speed through water every 1 s; depth every 1 s; water
                          temperature 0 every 2 s
         5       37    1  depth, speed and temperature sensor
                          speed through water every 1 s; water temperature 0 every
                          2 s; depth without data
         6       50    1  battery monitor
                          battery 1 every 1.5 s
         7       51    1  battery monitor
                          battery 1 every 1.5 s
         8       52    ?  tank sender
                          fuel level 0 every 2.5 s; fuel level 1 every 2.5 s
         9       77    ?  wind sensor (no claim seen)
                          apparent wind every 100 ms

      Last values heard (to tell like units apart)
      - No. 2: course and speed over ground 6.8 kn, 180.0° true
      - No. 3: heading 132.9° magnetic, variation not told
      - No. 4: speed through water 6.1 kn; depth 12.34 m below the transducer, 10.89 m
        below the keel; water temperature 0: 15.0 °C
      - No. 5: speed through water 6.1 kn; water temperature 0: 15.0 °C
      - No. 6: battery 1: 12.78 V, -12.5 A
      - No. 7: battery 1: 12.78 V, -12.5 A
      - No. 8: fuel level 0: 50 %, of 120 L; fuel level 1: 50 %, of 120 L
      - No. 9: apparent wind 15.0 kn, 80.0° to port

      One instance, several senders
      - battery (127508), instance 1: No. 6 and 7
      - water temperature (130316), instance 0: No. 4 and 5

      One reading, several senders
      - speed through water: No. 4 and 5

      What is not known
      - LEN adds up to 9, which is 0.45 A at least: 3 senders did not tell it (No. 1,
        8 and 9).
      - No claim was seen from No. 9: known by address only, which may change with the
        next start.

      What to do next
      1. Record from the moment the bus is switched on, and let the recorder ask
         everyone for claims (60928) and product information (126996).
      2. Give each of the senders on a shared instance its own, then record again.
      3. For each doubled reading choose the main source on the displays.
      4. Find each number aboard, and put it in its place in the draft.
      "
    `);
  });

  test('keeps to 80 columns', () => {
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('shows makers’ texts only when asked, and serials never', () => {
    expect(text).not.toContain('POSITION SENSOR');
    const asked = surveyText(report, { makerTexts: true });
    expect(asked).toContain('position sensor, calls itself "POSITION SENSOR"');
    expect(asked).not.toContain('000042');
    for (const { name } of report.senders) if (name !== undefined) expect(asked).not.toContain(name.hex);
  });

  test('says that a recording without times gives no load', () => {
    const timeless = surveyText(surveyRecording(candumpBytes(bus, { style: 'old-angle' })));
    expect(timeless).toContain('tells no time');
    expect(timeless).not.toMatch(/every \d/);
    expect(timeless).toContain('1. Record again with times');
  });

  test('tells a jump of the clock and what could not be read', () => {
    const jumped = bus.map((frame, at) => (at < 900 ? frame : { ...frame, timeUs: frame.timeUs + 1.2e12 }));
    const bytes = Uint8Array.from([...candumpBytes(jumped), ...garbage('one\ntwo\n')]);
    const told = surveyText(surveyRecording(bytes));
    expect(told).toContain('13.9 days on');
    expect(told).toContain('2 lines of the recording could not be read.');
  });

  test('says what to do with a recording that holds no frame', () => {
    expect(surveyText(surveyRecording(new Uint8Array(0)))).toBe(
      'No frame was found. The recording is empty.\nRecord the bus again as candump text or pcap.\n',
    );
    expect(surveyText(surveyRecording(garbage('one\n')))).toContain('None of its 1 line is a frame.');
  });

  test('no text of a device can move the cursor or colour the terminal', () => {
    const escaped = structuredClone(report.senders).map((sender) =>
      sender.product === undefined
        ? sender
        : { ...sender, product: { ...sender.product, model: 'A\u001b[31mB\u009bC' } },
    );
    const shown = surveyText({ ...report, senders: escaped }, { makerTexts: true });
    expect(shown).toContain('"A?[31mB?C"');
  });

  test('breaking lines loses no word', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 40 }), (words) => {
        const lines = textLines(words.join(' '), { width: 30, lead: '  - ' });
        expect(lines.join(' ').slice(4).split(/ +/)).toEqual(words);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(30);
      }),
    );
  });
});
