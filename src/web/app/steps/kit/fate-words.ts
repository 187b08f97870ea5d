import { spoken } from '../../../language/spoken.ts';
import { en } from './fate-words.en.ts';

export const words = spoken({ en });
