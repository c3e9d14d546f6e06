// Words of the dictionary that are known only as names: no list of ordinary words has them.
import { readTable, writeTable, byCodeUnit } from './lib/table.mjs';
import { readWordNet } from './lib/wordnet.mjs';
import { readPronunciations, readSizes } from './lib/seed.mjs';
import { downloads, seed } from './lib/arguments.mjs';

// A listed word behind one of these is a word too ("antifraud", "overbook"), though no list has it.
const PREFIXED = /^(?:anti|counter|mis|non|out|over|re|un|under)(.{5,})$/;
const COMMON_SIZE = 50;

const wordNet = readWordNet(downloads);
const sizes = readSizes(seed);
const words = [...readPronunciations(seed).keys()];
const comments = new Map(readTable(`${seed}/cmudict/comments.tsv`).map(([word, , comment]) => [word, comment]));
const decisions = new Map(readTable(`${seed}/names/decisions.tsv`).map(([word, decision, reason]) => [word, { decision, reason }]));

checkDecisions();
const rows = words.map((word) => [word, reasonFor(word)]).filter(([, reason]) => reason).sort(([left], [right]) => byCodeUnit(left, right));
const count = writeTable(
  `${seed}/names/names.tsv`,
  ['Words of the CMU Pronouncing Dictionary that are known only as names. See SOURCE.md.',
   'unlisted: no list of ordinary words has it. capital: WordNet has it with a capital only.'],
  ['word', 'reason'],
  rows);
console.log(`names: ${count} words`);

/** Why the word counts as a name, or nothing if it doesn't. */
function reasonFor(word) {
  const decided = decisions.get(word);
  if (decided) return decided.decision === 'name' ? `by hand: ${decided.reason}` : undefined;
  if (isOrdinary(word)) return undefined;
  if (/\b(name|place|org|title|foreign)\b/.test(comments.get(word) ?? '')) return `CMUdict notes: ${comments.get(word)}`;
  if (/\babbrev\b/.test(comments.get(word) ?? '')) return undefined;
  const [form] = wordNet.capitalisedForms(word);
  return form ? `capital: ${form.lemma}` : 'unlisted';
}

function isOrdinary(word) {
  const rest = PREFIXED.exec(word)?.[1];
  return sizes.has(word) || wordNet.knows(word) || (rest !== undefined && sizes.get(rest) <= COMMON_SIZE);
}

function checkDecisions() {
  for (const [word, { decision }] of decisions) {
    if (!['name', 'word'].includes(decision)) throw new Error(`names/decisions.tsv: ${word} is neither name nor word but ${decision}`);
  }
}
