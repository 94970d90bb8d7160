// What the page holds ready for a part that does not come.
import { tools } from '../../offline/tools.ts';

/** Repair, and the record as a file; nothing where boot.ts did not arrive. */
export const wayOut = () => (tools && !tools.hidden ? tools : undefined);
