import { pictureFolder } from './picture-folder.ts';

/** The hashes of the pictures beside a boat file; undefined for one that came by the standard input and has nothing beside it. */
export const picturesBeside = async (boatPath: string): Promise<ReadonlySet<string> | undefined> =>
  boatPath === '-' ? undefined : pictureFolder(boatPath).hashes();
