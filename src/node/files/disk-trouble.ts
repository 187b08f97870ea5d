import { UserError } from '../../core/boat/user-error.ts';

/** What the operating system has against a file. Nothing is wrong with what was to be written: it is to be kept and tried again. */
export class DiskTrouble extends UserError {}
