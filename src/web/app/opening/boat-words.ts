import { spoken } from '../../language/spoken.ts';
import { en } from './boat-words.en.ts';

export const words = spoken({ en });
