import * as z from 'zod';
import { waters } from '../facts/waters.ts';

/** How many other ships her receiver is planned to hear; absent: those of a busy harbour. */
export const watersSchema = z.enum(waters);
