// The plain words of the CMU Pronouncing Dictionary, every variant, stress kept.
import { pathToFileURL } from 'node:url';
import { writeTable, byCodeUnit, PLAIN } from './lib/table.mjs';
import { downloads, seed } from './lib/arguments.mjs';

// The other single letters are entries for the names of the letters ("b", B IY1), which are no words.
const ONE_LETTER_WORDS = new Set(['a', 'i', 'o']);

const { dictionary } = await import(pathToFileURL(`${downloads}/cmu-pronouncing-dictionary/index.js`));

const entries = Object.entries(dictionary)
  .map(([key, value]) => ({ ...headOf(key), ...valueOf(value) }))
  .filter(({ word }) => PLAIN.test(word) && (word.length > 1 || ONE_LETTER_WORDS.has(word)))
  .sort((left, right) => byCodeUnit(left.word, right.word) || left.variant - right.variant);

const lines = writeTable(
  `${seed}/cmudict/pronunciations.tsv`,
  ['CMU Pronouncing Dictionary: plain words, one line a variant in the dictionary\'s own order. See SOURCE.md.',
   'Sounds are ARPAbet; a vowel carries its stress: 1 main, 2 second, 0 none.'],
  ['word', 'sounds'],
  entries.map(({ word, sounds }) => [word, sounds]));

const comments = writeTable(
  `${seed}/cmudict/comments.tsv`,
  ['What CMUdict notes behind an entry of a plain word. Variants are counted from 1. See SOURCE.md.'],
  ['word', 'variant', 'comment'],
  entries.filter(({ comment }) => comment).map(({ word, variant, comment }) => [word, String(variant), comment]));

const words = new Set(entries.map(({ word }) => word)).size;
console.log(`cmudict: ${words} words, ${lines} pronunciations, ${comments} comments`);

/** "live(2)" is the second variant of "live". */
function headOf(key) {
  const [, word, variant] = /^(.+?)(?:\((\d+)\))?$/.exec(key);
  return { word, variant: variant ? Number(variant) : 1 };
}

function valueOf(value) {
  const [sounds, comment = ''] = value.split('#').map((part) => part.trim());
  return { sounds: sounds.replace(/\s+/g, ' '), comment };
}
