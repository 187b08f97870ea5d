import type { Work } from '../../../src/core/boat/work.ts';

/** Her crew, the ship’s electrician, two riggers and a yard: bridge and safety in spring, the rest in the autumn refit. */
export const bonxieWork: Work = {
  starts: [
    { phase: 1, on: '2027-03-01' },
    { phase: 2, on: '2027-10-04' },
  ],
  hoursADay: 8,
  restDays: ['sun'],
  hands: [
    { id: 'electrician', name: 'the ship’s electrician', is: 'professional', can: ['electrics', 'radio'] },
    { id: 'mate', name: 'the mate', is: 'helper', pace: 1.3, can: ['aloft'] },
    { id: 'rigger', name: 'the rigger', is: 'professional', can: ['aloft'] },
    { id: 'technician', name: 'the technician of the station', is: 'professional', can: ['aloft', 'radio'] },
    { id: 'yard', name: 'the yard', is: 'professional', can: ['yard'] },
  ],
  ashore: [{ from: '2027-10-18', to: '2027-10-29' }],
  // she lies at her quay, and goes to the yard and back
  moves: [
    { from: '2027-10-16', to: '2027-10-16' },
    { from: '2027-10-30', to: '2027-10-30' },
  ],
  essentials: [
    { function: 'bilge-pump', on: ['house-a'] },
    { function: 'engine-start', on: ['start'] },
    { function: 'engine-stop', on: ['start'] },
    { function: 'gas-alarm', none: true },
    { function: 'high-water-alarm', on: ['house-b'] },
    { function: 'horn', none: true },
    { function: 'navigation-lights', on: ['p24'] },
    { function: 'shore-charging', on: ['house-b'] },
    { function: 'steering', none: true },
  ],
};
