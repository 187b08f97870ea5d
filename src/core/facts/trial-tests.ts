import type { SourceKey } from './sources.ts';

/** One thing to try at the dock or at sea once the work is done. */
export interface TrialTest {
  readonly id: string;
  readonly does: string;
  readonly expect: string;
  /** kinds of unit without which there is nothing to try; absent where every boat does it */
  readonly kinds?: readonly string[];
  /** trials at sea that come before it, where the boat has what they try */
  readonly needs?: readonly string[];
  readonly source: SourceKey;
}

const pilots = ['pilot', 'pilot-computer'] as const;

/** Before a panel is shut: each of these at each new cable. */
export const beforeClosing: readonly string[] = [
  'continuity',
  'polarity',
  'insulation',
  'volts at the load',
  'fuse as listed',
  'terminators',
  'standing waves of the antenna',
  'each joint tugged',
  'photo',
];
export const beforeClosingSource: SourceKey = 'practice-trial-order';

/** At the dock, everything fitted and closed. */
export const dockTrials: readonly TrialTest[] = [
  {
    id: 'readings',
    does: 'Look for every reading on every screen it is needed at',
    expect: 'all there',
    source: 'practice-trial-order',
  },
  {
    id: 'second-source',
    does: 'Pull the first source of each vital reading',
    expect: 'the second takes over',
    source: 'practice-trial-order',
  },
  {
    id: 'alarms',
    does: 'Set off an alarm',
    expect: 'heard at the helm and at the berth',
    source: 'practice-trial-order',
  },
  {
    id: 'dsc-position',
    does: 'Read the position the radio would send',
    expect: 'that of the boat, with the time',
    kinds: ['vhf-radio', 'mfhf-radio'],
    source: 'practice-trial-order',
  },
  {
    id: 'radio-check',
    does: 'Make a radio check off channel 16; never press the distress key for a test, a test call to another station does it',
    expect: 'answered, clear',
    kinds: ['vhf-radio', 'mfhf-radio'],
    source: 'practice-trial-order',
  },
  {
    id: 'ais-read-back',
    does: 'Have another boat read your AIS',
    expect: 'name, number, position and size are right',
    kinds: ['ais'],
    source: 'practice-trial-order',
  },
  {
    id: 'pilot-sense',
    does: 'Let the pilot turn the rudder: sense, end stops, direction of the drive',
    expect: 'port is port; it stops before the stops',
    kinds: pilots,
    source: 'practice-trial-order',
  },
  {
    id: 'pilot-let-go',
    does: 'Disengage the pilot every way there is',
    expect: 'the helm is free each time',
    kinds: pilots,
    source: 'practice-trial-order',
  },
  {
    id: 'noise',
    does: 'Switch lights, chargers and fridges on and off, one at a time',
    expect: 'no reading jumps, no noise on the radio',
    source: 'practice-trial-order',
  },
  {
    id: 'led-noise',
    does: 'LED lights off, quiet channel, squelch just silent; then LED lights on',
    expect: 'still silent; noise means VHF and AIS hear less too',
    kinds: ['vhf-radio', 'ais'],
    source: 'uscg-led-noise',
  },
];

/** At sea, in this order: each step needs the ones before it. */
export const seaTrials: readonly TrialTest[] = [
  {
    id: 'heading',
    does: 'Swing the heading sensor in circles, then align it on a transit',
    expect: 'what is left is 3° or less (3° are 97 m in a mile)',
    kinds: ['heading-sensor'],
    source: 'practice-trial-order',
  },
  {
    id: 'compass',
    does: 'Swing the steering compass, and fill in the card',
    expect: 'a deviation card for each compass',
    kinds: ['steering-compass'],
    needs: ['heading'],
    source: 'practice-trial-order',
  },
  {
    id: 'depth',
    does: 'Prove the depth with a lead line and set its offset',
    expect: 'the same from the surface or the keel, as set',
    kinds: ['depth-sensor', 'sounder', 'transducer'],
    source: 'practice-trial-order',
  },
  {
    id: 'log',
    does: 'Run a known distance both ways; take the mean of the two speeds, never of the times',
    expect: 'new factor = old factor × true ÷ indicated',
    kinds: ['speed-sensor'],
    needs: ['heading'],
    source: 'practice-trial-order',
  },
  {
    id: 'wind',
    does: 'Read the wind angle on both tacks, same trim, four to six tacks',
    expect: 'offset = (port − starboard) ÷ 2; positive is turned to port',
    kinds: ['wind-sensor'],
    needs: ['heading', 'log'],
    source: 'practice-trial-order',
  },
  {
    id: 'pilot-free',
    does: 'Disengage the pilot first, in open water; then centre the rudder reading',
    expect: 'the helm is free; 0° amidships',
    kinds: pilots,
    needs: ['heading'],
    source: 'practice-trial-order',
  },
  {
    id: 'pilot-tuned',
    does: 'Turn 40° with the pilot, gain and counter-rudder; then 90°; wind mode last',
    expect: 'it swings past by 5° or less',
    kinds: pilots,
    needs: ['pilot-free', 'wind'],
    source: 'practice-trial-order',
  },
  {
    id: 'radar',
    does: 'Align the radar: line, range, sectors that do not send, overlay',
    expect: 'a known mark lies where the chart has it',
    kinds: ['radar'],
    needs: ['heading'],
    source: 'practice-trial-order',
  },
  {
    id: 'range',
    does: 'Ask for the range of VHF and AIS; press the man-overboard key',
    expect: 'as reckoned; a mark on every screen',
    source: 'practice-trial-order',
  },
  {
    id: 'pull-a-breaker',
    does: 'Pull the breaker of a bus',
    expect: 'what dies is what “What goes dark” says',
    source: 'practice-trial-order',
  },
  {
    id: 'heading-again',
    does: 'Swing the heading sensor again with the engine in another state',
    expect: 'the same within 3°',
    kinds: ['heading-sensor'],
    needs: ['heading'],
    source: 'practice-trial-order',
  },
];
