// Where the page of a lesson is; lines are those to lead back to, as an address after #.
import { page } from '../../edition/files.ts';

export const lessonPath = (id: string, lines = '') => page(`lessons/${id}.html${lines}`);
