import { vitalIds } from '../../blackouts-shape.ts';
import { byCodeUnit, splitDotted } from '../../boat/ids.ts';
import { listeningKinds, noisyKinds } from '../../facts/noise-kinds.ts';
import { dockTrials } from '../../facts/trial-tests.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { type DockInput, placeOf } from './dock-input.ts';

const vital: ReadonlySet<string> = new Set(vitalIds);

const pulled = ({ index }: DockInput, kit: string, about: readonly string[]): TestEntry => ({
  id: `dock/pulled:${kit}`,
  group: 'source',
  test: 'pulled',
  kind: 'yes-no',
  about: [kit, ...about],
  ...placeOf(index, kit),
  power: 'on',
  source: 'practice-trial-order',
});

/**
 * Each first source of a vital reading is pulled once: where a second stands by, it takes over at the screens told in `about`.
 * With two radios or more each is switched off once, and another answers.
 */
export const pullTests = (input: DockInput): TestEntry[] => {
  const { plan } = input;
  const screens = new Map<string, Set<string>>();
  for (const { reading, at, primary, backups } of plan.sources) {
    if (!vital.has(reading) || backups.length === 0) continue;
    const { kit } = splitDotted(primary.from);
    screens.set(kit, (screens.get(kit) ?? new Set<string>()).add(at));
  }
  const radios = plan.vitals.find(({ of }) => of === 'radio')?.at ?? [];
  return [
    ...[...screens].map(([kit, at]) => pulled(input, kit, [...at].sort(byCodeUnit))),
    ...(radios.length < 2
      ? []
      : radios.map((kit) =>
          pulled(
            input,
            kit,
            radios.filter((other) => other !== kit),
          ),
        )),
  ].sort((one, other) => byCodeUnit(one.id, other.id));
};

const kindsAboard = ({ index }: DockInput): Map<string, string[]> => {
  const kinds = new Map<string, string[]>();
  for (const { id, fate } of index.boat.kit) {
    const kind = index.sheetOf.get(id)?.kind;
    if (kind === undefined || fate === 'goes') continue;
    kinds.set(kind, [...(kinds.get(kind) ?? []), id]);
  }
  return kinds;
};

/** These stand in the sheet one by one: a test of its own for each reading, each source and each thing that is switched. */
const oneByOne: ReadonlySet<string> = new Set(['readings', 'second-source', 'noise', 'led-noise']);

/** What is tried once on a boat with such kit. */
export const triedTests = (input: DockInput): TestEntry[] => {
  const kinds = kindsAboard(input);
  return dockTrials.flatMap(({ id, kinds: own, source }): TestEntry[] => {
    if (oneByOne.has(id)) return [];
    const about = (own ?? []).flatMap((kind) => kinds.get(kind) ?? []).sort(byCodeUnit);
    if (own !== undefined && about.length === 0) return [];
    return [
      { id: `dock/tried:${id}`, group: 'trial', test: 'tried', kind: 'yes-no', about, what: id, power: 'on', source },
    ];
  });
};

/** With a quiet channel and targets on the screen each thing that may disturb is switched on and off, and the radios listened to. */
export const noiseTests = (input: DockInput): TestEntry[] => {
  const kinds = kindsAboard(input);
  const listening = [...listeningKinds].flatMap((kind) => kinds.get(kind) ?? []).sort(byCodeUnit);
  if (listening.length === 0) return [];
  const chargers = input.plan.banks.flatMap((bank) =>
    bank.chargers.filter(({ kind }) => kind !== 'alternator').map(({ charger }) => charger),
  );
  const units = [...[...noisyKinds].flatMap((kind) => kinds.get(kind) ?? []), ...chargers];
  const switched = [...new Set(units)].sort(byCodeUnit);
  const test = (what: string, source: string): TestEntry => ({
    id: `dock/noise:${what}`,
    group: 'noise',
    test: 'noise',
    kind: 'yes-no',
    about: listening,
    what,
    power: 'on',
    source,
  });
  return [test('lights', 'uscg-led-noise'), ...switched.map((unit) => test(unit, 'practice-trial-order'))];
};
