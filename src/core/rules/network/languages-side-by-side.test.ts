import { expect, test } from 'vitest';
import { anEye, aSwitch } from '../../joins/network-boat.test-helper.ts';
import { languagesSideBySide } from './languages-side-by-side.ts';
import { findsOnNetwork } from './network-case.test-helper.ts';

const found = findsOnNetwork(languagesSideBySide);

const screen = (dialect: string) => anEye('helm', undefined, { dialect });
const cables = ['hub.p1 one.eth', 'hub.p2 two.eth'];

test('two generations of one maker’s language on a switch pass', () => {
  expect(found({ hub: aSwitch('locker'), one: screen('maker-a/1'), two: screen('maker-a/2') }, cables)).toEqual([]);
});

test('two makers on a switch are a doubt about both units', () => {
  const [finding] = found({ hub: aSwitch('locker'), one: screen('maker-a/1'), two: screen('maker-b/1') }, cables);
  expect(finding).toMatchObject({ level: 'doubt', about: ['one', 'two'] });
});
