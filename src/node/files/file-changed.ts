import { UserError } from '../../core/boat/user-error.ts';

/** A save refused because the file no longer holds what was read, or is there though it was to be a new one. */
export class FileChanged extends UserError {}
