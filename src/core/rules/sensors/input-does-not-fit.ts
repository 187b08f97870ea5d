import type { SensorInput } from '../../sensor-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { sensorSites } from './sensor-words.ts';

type Misfit = SensorInput['misfits'][number];

const words: Readonly<Record<Misfit['what'], (misfit: Misfit) => string>> = {
  frequency: ({ gives, takes }) => `the element works at ${gives}, the input at ${takes}`,
  power: ({ gives, takes }) => `the element ${gives}, the input ${takes}`,
  feed: ({ gives, takes }) => `the sensor wants ${gives}, the input feeds it ${takes}`,
  pulses: ({ gives, takes }) => `the wheel gives ${gives}, the input counts ${takes}`,
  vane: ({ gives, takes }) => `the vane speaks ${gives}, the input ${takes}`,
};

/** Two plugs that fit say nothing of what is in the wires. */
export const inputDoesNotFit: Rule = {
  id: 'sensors/input-does-not-fit',
  level: 'fault',
  title: 'A bare sensor is wired to an input that cannot read it.',
  sources: ['practice-converter-inputs'],
  check: ({ index, plan }) =>
    sensorSites({ plan }).flatMap(({ sensor }) =>
      sensor.inputs
        .filter(({ misfits }) => misfits.length > 0)
        .map(({ port, at, misfits }): Observation => {
          const ends = [port, at].map((end) => end.split('.')[0] ?? end);
          const isGuess = ends.some((unit) => index.sheetOf.get(unit)?.source === 'typical');
          return {
            about: ends,
            apart: [port, at].map((end) => end.split('.')[1] ?? end),
            ...(isGuess ? { level: 'doubt' } : {}),
            says: `${unitName(index, at)} cannot read ${unitName(index, port)}: ${misfits.map((misfit) => words[misfit.what](misfit)).join('; ')}.`,
            cure: `${isGuess ? 'Look both up in their manuals. If they say the same, plan' : 'Plan'} a new sensor that the input names, or an input that names this sensor.`,
          };
        }),
    ),
};
