import { UserError } from './user-error.ts';

/** A boat file of a version of the format that this program does not know yet; it can be looked at, and not changed. */
export class NewerFile extends UserError {
  readonly version: number;

  constructor({ version, known }: { version: number; known: number }) {
    super({
      says: `This file was made by a newer program: its version is ${version}, and this program knows ${known}.`,
      place: 'version',
      whatToDo: 'Open it with a newer Fairlead; nothing has been changed.',
    });
    this.version = version;
  }
}
