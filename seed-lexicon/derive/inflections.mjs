// Inflected forms and their bases, from spelling rules, WordNet's lemmas and exceptions, and CMUdict's sounds.
import { readTable, writeTable, byCodeUnit, PLAIN } from './lib/table.mjs';
import { readWordNet } from './lib/wordnet.mjs';
import { withS, withEd, withIng, withEr, withEst } from './lib/spelling.mjs';
import { fits } from './lib/sounds.mjs';
import { verbKinds } from './lib/irregular.mjs';
import { readPronunciations, readSizes } from './lib/seed.mjs';
import { downloads, seed } from './lib/arguments.mjs';

const RULES = [
  { pos: 'noun', kinds: ['plural'], ending: 's', forms: withS },
  { pos: 'verb', kinds: ['third-person'], ending: 's', forms: withS },
  { pos: 'verb', kinds: ['past', 'participle'], ending: 'ed', forms: withEd },
  { pos: 'verb', kinds: ['gerund'], ending: 'ing', forms: withIng },
  { pos: 'adj', kinds: ['comparative'], ending: 'er', forms: withErIfComparable },
  { pos: 'adj', kinds: ['superlative'], ending: 'est', forms: withEst },
];

const wordNet = readWordNet(downloads);
const pronunciations = readPronunciations(seed);
const sizes = readSizes(seed);
const known = (word) => pronunciations.has(word) || sizes.has(word);

const rows = new Map();
const misfits = [];
for (const rule of RULES) basesFor(rule.pos).forEach((base) => addRegular(rule, base));
for (const pos of ['noun', 'verb', 'adj', 'adv']) addExceptions(pos);
applyDecisions();

const count = writeTable(
  `${seed}/inflections/inflections.tsv`,
  ['Inflected forms and their bases; a form may have several. See SOURCE.md.',
   'own-lemma is "yes" where WordNet has the form as a noun or verb of its own.'],
  ['form', 'base', 'kind', 'regularity', 'own-lemma'],
  [...rows.values()].sort((left, right) => byCodeUnit(key(left), key(right)))
    .map(({ form, base, kind, regularity }) => [form, base, kind, regularity, isWordOfItsOwn(form) ? 'yes' : '']));
console.log(`inflections: ${count} rows, ${new Set([...rows.values()].map(({ form }) => form)).size} forms`);
if (process.env.SHOW_MISFITS) console.log(misfits.join('\n'));

/** Adjectives don't count: "kept" and "tired" are listed as adjectives, and forms of "keep" and "tire" to every reader. */
function isWordOfItsOwn(form) {
  return wordNet.hasLemma('noun', form) || wordNet.hasLemma('verb', form);
}

function basesFor(pos) {
  const shortest = pos === 'adj' ? 3 : 2;
  const listed = [...wordNet.senses[pos].keys()].filter((lemma) => lemma.length >= shortest && PLAIN.test(lemma) && known(lemma));
  // Words too new for WordNet ("barista") make plurals too; short ones are mostly pronouns and the like.
  const newer = pos === 'noun' ? [...sizes.keys()].filter((word) => word.length > 4 && !wordNet.knows(word)) : [];
  return [...listed, ...newer];
}

function addRegular({ kinds, ending, forms }, base) {
  for (const form of forms(base).filter((candidate) => candidate !== base && known(candidate))) {
    if (soundsFit(base, form, ending)) kinds.forEach((kind) => add(form, base, kind, 'regular'));
    else misfits.push(`${form}\t${base}\t${kinds[0]}`);
  }
}

/** An adjective without a superlative makes no comparative: "owner" is no more "own". */
function withErIfComparable(base) {
  return withEst(base).some(known) ? withEr(base) : [];
}

/**
 * Where the dictionary lacks one of the two, the spelling alone decides; and also where the form could be nothing else
 * ("mouths", whose base ends in another sound).
 */
function soundsFit(base, form, ending) {
  if (!pronunciations.has(base) || !pronunciations.has(form)) return true;
  if (fits(pronunciations.get(base), pronunciations.get(form), ending)) return true;
  return base.length > 2 && sizes.has(form) && !wordNet.isLemma(form);
}

function addExceptions(pos) {
  for (const [form, bases] of wordNet.exceptions[pos]) {
    bases
      .filter((base) => base !== form && PLAIN.test(form) && PLAIN.test(base) && known(form) && wordNet.hasLemma(pos, base))
      .forEach((base) => kindsOf(pos, form, base).forEach((kind) => addUnlessRegular(form, base, kind)));
  }
}

function kindsOf(pos, form, base) {
  if (pos === 'noun') return ['plural'];
  if (pos === 'verb') return verbKinds(form, base, wordNet);
  return [/(st|most)$/.test(form) ? 'superlative' : 'comparative'];
}

function addUnlessRegular(form, base, kind) {
  const bySpelling = RULES.filter((rule) => rule.kinds.includes(kind)).some((rule) => rule.forms(base).includes(form));
  if (!bySpelling) add(form, base, kind, 'irregular');
}

function applyDecisions() {
  for (const [form, base, kind, decision] of readTable(`${seed}/inflections/decisions.tsv`)) {
    if (decision === 'no') remove(form, base, kind);
    else put({ form, base, kind, regularity: decision });
  }
}

/** A star stands for any base or kind. */
function remove(form, base, kind) {
  const doomed = [...rows.values()].filter(
    (row) => row.form === form && (base === '*' || row.base === base) && (kind === '*' || row.kind === kind));
  if (doomed.length === 0) throw new Error(`inflections/decisions.tsv forbids what nothing makes: ${form}, ${base}, ${kind}`);
  doomed.forEach((row) => rows.delete(key(row)));
}

function add(form, base, kind, regularity) {
  const row = { form, base, kind, regularity };
  if (!rows.has(key(row))) put(row);
}

function put(row) {
  rows.set(key(row), row);
}

function key({ form, base, kind }) {
  return `${form}\t${base}\t${kind}`;
}
