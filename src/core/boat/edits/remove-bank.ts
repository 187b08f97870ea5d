import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveWork } from './leave-work.ts';
import { withoutPhotos } from './without-photos.ts';

/** Takes a battery bank out; refused while a panel is fed from it. What charged it charges what is left. */
export const removeBank = defineEdit({
  id: 'remove-bank',
  params: z.strictObject({ bank: idSchema }),
  title: ({ bank }) => `Take bank ${bank} out.`,
  change: (boat, { bank }) => {
    findInBoat(boat.supply.banks, bank, 'bank');
    const fed = boat.supply.panels.find(({ from }) => from === bank);
    if (fed !== undefined) {
      throw new UserError({
        says: `Panel ${fed.id} is fed from bank ${bank}.`,
        whatToDo: `Feed ${fed.id} from another bank first.`,
      });
    }
    const { supply } = boat;
    supply.banks = supply.banks.filter(({ id }) => id !== bank);
    const charged = supply.chargers
      ?.map((charger) => ({ ...charger, charges: charger.charges.filter((one) => one !== bank) }))
      .filter(({ charges }) => charges.length > 0);
    if (charged === undefined || charged.length === 0) delete supply.chargers;
    else supply.chargers = charged;
    withoutPhotos(boat, (of) => of === bank);
    leaveWork(boat, (id) => id === bank);
  },
});
