import { NewerFile } from '../../core/boat/newer-file.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { goodState } from '../../node/files/good-state.ts';
import { loadBoat, printMoment } from '../../node/files/load-boat.ts';
import { recoverBoat } from '../../node/files/recover-boat.ts';

/** Why a boat file cannot be read; undefined where it can. */
const damageOf = async (file: string): Promise<UserError | undefined> => {
  try {
    await loadBoat(file);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

/**
 * `fairlead restore FILE`: puts the newest backup that can be read in the place of a boat file that cannot, and sets the
 * damaged file aside. A file that can be read, or that a newer program wrote, is left as it is.
 */
export const restore = async (file: string): Promise<void> => {
  const damage = await damageOf(file);
  if (damage === undefined) {
    process.stdout.write(
      `${file} can be read as it is; nothing was changed. Earlier states are restored in the app.\n`,
    );
    return;
  }
  if (damage instanceof NewerFile) throw damage;
  const good = await goodState(file);
  if (good === undefined) {
    throw new UserError({
      says: `${damage.says.replace(/\.$/, '')}, and there is no backup that can be read.`,
      ...(damage.place === undefined ? {} : { place: damage.place }),
      whatToDo: damage.whatToDo,
    });
  }
  const { aside } = await recoverBoat({ path: file, text: good.text });
  process.stdout.write(`${file} is back to how she was until ${printMoment(good.untilMs)}, from ${good.path}.\n`);
  if (aside !== undefined) process.stdout.write(`The damaged file is kept as ${aside}.\n`);
};
