// The project's rules and details as the catalogue has them, for tests. Rules come in the files'
// order, details in the engine's.
import { readdirSync, readFileSync } from 'node:fs';

const project = new URL('../../', import.meta.url);
const dir = new URL('rules-content/rules/', project);
const json = (f) => JSON.parse(readFileSync(new URL(f, dir), 'utf8'));

export const read = (f) => readFileSync(new URL(f, project), 'utf8');
export const rules = readdirSync(dir)
  .filter((f) => f !== 'details.json' && f !== 'groups.json')
  .flatMap(json);
export const groups = json('groups.json');
export const details = [{ id: '' }, ...json('details.json')];

export const rule = (id) => rules.find((r) => r.id === id);
export const detail = (id) => details.findIndex((d) => d.id === id);
