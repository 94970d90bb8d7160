// What stands in place of a module in the one file offers all that the site's own does: a line that
// does not hold does not compile. Nothing here is run.
import * as filesInFile from '../../app/edition/files.one.ts';
import * as files from '../../app/edition/files.ts';
import * as keepingInFile from '../../app/edition/keeping.one.ts';
import * as keeping from '../../app/edition/keeping.ts';
import * as pagesInFile from '../../app/edition/pages.one.ts';
import * as pages from '../../app/edition/pages.ts';
import * as refetchInFile from '../../app/offline/refetch.one.ts';
import * as refetch from '../../app/offline/refetch.ts';
import * as repairInFile from '../../app/offline/repair.one.ts';
import * as repair from '../../app/offline/repair.ts';

export const same: [typeof files, typeof keeping, typeof pages, typeof refetch, typeof repair] = [
  filesInFile,
  keepingInFile,
  pagesInFile,
  refetchInFile,
  repairInFile,
];
