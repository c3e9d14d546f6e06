// What earlier steps wrote.
import { readTable } from './table.mjs';

/** word → its pronunciations */
export function readPronunciations(seed) {
  const pronunciations = new Map();
  for (const [word, sounds] of readTable(`${seed}/cmudict/pronunciations.tsv`)) {
    if (!pronunciations.has(word)) pronunciations.set(word, []);
    pronunciations.get(word).push(sounds);
  }
  return pronunciations;
}

/** word → SCOWL size */
export function readSizes(seed) {
  return new Map(readTable(`${seed}/scowl/commonness.tsv`).map(([word, size]) => [word, Number(size)]));
}
