// The catalogue and the passage index as the sources build them: `npm test` builds the site before
// the tests run.
import { readdirSync, readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { course } from '../node_modules/.out/app/plan/course.js';
import { Phrases } from '../node_modules/.out/app/plan/phrases.js';

const data = new URL('../node_modules/.site/data/', import.meta.url);
const names = readdirSync(data);
const file = (start) =>
  gunzipSync(
    readFileSync(
      new URL(
        names.find((n) => n.startsWith(start)),
        data,
      ),
    ),
  );

export const catalogue = JSON.parse(file('catalogue.'));
export const phrases = new Phrases(new Uint8Array(file('passages.')));

/** The course of the real lessons, or of others. */
export const courseOf = (lessons = catalogue.lessons) => course(phrases, { ...catalogue, lessons });
