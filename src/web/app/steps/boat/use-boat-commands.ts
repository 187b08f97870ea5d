import { useMemo, useSyncExternalStore } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import type { Command } from '../../commands/command.ts';
import { useCommands } from '../../commands/use-commands.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { newPlace, newSplit, newWay } from './boat-edits.ts';
import { focusOnName } from './focus-on-name.ts';
import { takeTool } from './place-hand.ts';
import { words } from './words.ts';

interface On {
  readonly boat: Boat;
  readonly lights: LightStore;
  readonly edit: MakeEdits;
}

const unless = (isSo: boolean, whyNot: string): Pick<Command, 'whyNot'> => (isSo ? {} : { whyNot });

const toolCommands: readonly Command[] = (['move', 'place', 'way', 'split'] as const).map((tool) => ({
  id: `boat-tool-${tool}`,
  group: 'change',
  says: words.toolCommand[tool],
  short: words.tool[tool],
  foundBy: words.toolFoundBy,
  ...(tool === 'move' ? { keys: ['Escape'] } : {}),
  run: () => takeTool(tool),
}));

const makeNew = ({ lights, edit }: On, made: ReturnType<typeof newSplit>): void => {
  if (made === undefined) return;
  edit([made.edit]);
  lights.pick([made.id]);
  focusOnName(made.id);
};

const changeCommands = (on: On, picked: ReadonlySet<string>): Command[] => {
  const { boat, lights, edit } = on;
  const places = boat.places.filter(({ id }) => picked.has(id));
  const ways = boat.ways.filter(({ id }) => picked.has(id));
  const [one, other] = places;
  const [way] = ways;
  return [
    {
      id: 'add-place-amidships',
      group: 'change',
      says: words.addAmidships,
      short: words.addAmidshipsShort,
      run: () => makeNew(on, newPlace(boat, {})),
    },
    {
      id: 'join-picked-places',
      group: 'change',
      says: words.joinPicked,
      short: words.joinPickedShort,
      ...unless(places.length === 2, words.needTwoPlaces),
      run: () => {
        if (one === undefined || other === undefined) return;
        const made = newWay(boat, [one.id, other.id]);
        edit([made.edit]);
        lights.pick([made.id]);
      },
    },
    {
      id: 'split-picked-way',
      group: 'change',
      says: words.splitPicked,
      short: words.splitPickedShort,
      ...unless(ways.length === 1, words.needWay),
      run: () => {
        if (way !== undefined) makeNew(on, newSplit(boat, way, 0.5));
      },
    },
    {
      id: 'one-way-of-two',
      group: 'change',
      says: words.oneWay,
      short: words.oneWayShort,
      ...unless(places.length === 1, words.needOnePlace),
      run: () => {
        if (one !== undefined) edit([{ edit: 'join-ways', params: { place: one.id } }]);
      },
    },
    {
      id: 'remove-picked',
      group: 'change',
      says: words.remove,
      short: words.removeShort,
      keys: ['Delete', 'Backspace'],
      ...unless(places.length + ways.length > 0, words.needPick),
      run: () => {
        // first the ways: those that go with a place are then gone already
        const lone = ways.filter(({ ends }) => !ends.some((end) => picked.has(end)));
        edit([
          ...lone.map(({ id }) => ({ edit: 'remove-way', params: { way: id } }) as const),
          ...places.map(({ id }) => ({ edit: 'remove-place', params: { place: id } }) as const),
        ]);
      },
    },
    {
      id: 'pick-every-place',
      group: 'show',
      says: words.pickAll,
      run: () => lights.pick(boat.places.map(({ id }) => id)),
    },
    {
      id: 'let-go-of-picked',
      group: 'show',
      says: words.letGo,
      short: words.letGoShort,
      ...unless(picked.size > 0, words.needPick),
      run: () => lights.pick([]),
    },
  ];
};

/** Offers all that can be done to the places and ways of a boat, by what is picked of them. */
export const useBoatCommands = ({ boat, lights, edit }: On): void => {
  const picked = useSyncExternalStore(lights.subscribe, lights.picked);
  useCommands(
    useMemo(() => [...toolCommands, ...changeCommands({ boat, lights, edit }, picked)], [boat, lights, edit, picked]),
  );
};
