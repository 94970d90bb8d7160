// The rules in the order of the lessons that teach them.
import type { Catalogue, Rule } from '../types.ts';
import { units } from './units.ts';

export const order = (c: Pick<Catalogue, 'rules' | 'lessons'>): Rule[] => units(c).flatMap((u) => u.rules.map((r) => c.rules[r]!));
