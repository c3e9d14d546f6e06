// The prefix un-, which the dictionary writes reduced and a teacher says in full: "unlock" is un and lock.
import { writeTable, byCodeUnit } from './lib/table.mjs';
import { readPronunciations, readSizes } from './lib/seed.mjs';
import { seed } from './lib/arguments.mjs';

const REDUCED = 'AH0 N ';
const CAREFUL = 'AH2 N ';

const pronunciations = readPronunciations(seed);
const sizes = readSizes(seed);

const rows = [...pronunciations]
  .filter(([word]) => word.startsWith('un') && sizes.has(word.slice(2)))
  .flatMap(([word, variants]) => variants.filter((sounds) => isPrefixed(word, sounds)).map((sounds) => [word, sounds, CAREFUL + sounds.slice(REDUCED.length)]))
  .sort(([left], [right]) => byCodeUnit(left, right));
const count = writeTable(
  `${seed}/cmudict/careful.tsv`,
  ['How a teacher says a pronunciation of the dictionary that has its prefix un- reduced. See SOURCE.md.'],
  ['word', 'sounds', 'careful'],
  rows);
console.log(`careful: ${count} pronunciations`);

/** Whether the rest of the word sounds as the word that it is. */
function isPrefixed(word, sounds) {
  const rest = pronunciations.get(word.slice(2)) ?? [];
  return sounds.startsWith(REDUCED) && rest.some((alone) => unstressed(alone) === unstressed(sounds.slice(REDUCED.length)));
}

function unstressed(sounds) {
  return sounds.replace(/[12]/g, '1');
}
