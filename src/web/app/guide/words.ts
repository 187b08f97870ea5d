import { spoken } from '../../language/spoken.ts';
import { en } from './words.en.ts';

export const words = spoken({ en });
