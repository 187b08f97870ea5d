import { spoken } from '../../language/spoken.ts';
import { en } from './away-words.en.ts';

export const words = spoken({ en });
