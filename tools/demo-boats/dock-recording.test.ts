import { expect, test } from 'vitest';
import { startWatch } from '../../src/core/proof/compare/watch.ts';
import { startRecordingReader } from '../../src/core/proof/readers/recording-reader.ts';
import { plannedBoat } from '../../tests/recordings/planned-boat.ts';
import { dockRecording } from './dock-recording.ts';

test('Gannet’s recording at the dock tells the four things that are not as planned, and nothing else', () => {
  const { index, plan } = plannedBoat('gannet');
  const watch = startWatch({ boat: index.boat, plan });
  const reader = startRecordingReader({ onFrame: watch.takeFrame });
  reader.push(dockRecording());
  reader.end();
  const found = watch.report().findings.map(({ check, about }) => `${check}: ${about.join(' ')}`);
  expect([...new Set(found)]).toEqual([
    'depth-offset-wrong: depth-bus',
    'instance-shared: eng-gw-port eng-gw-stbd nav',
    'unit-doubtful: eng-gw-stbd',
    'unit-silent: shunt',
    'unit-unknown: nav',
    'wrong-instance: eng-gw-stbd',
  ]);
});
