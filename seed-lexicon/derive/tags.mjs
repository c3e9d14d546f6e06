// What words can be, what kinds of things they mean and how well that can be drawn, from WordNet's senses and how often they are used.
import { readTable, writeTable, byCodeUnit } from './lib/table.mjs';
import { readSenseIndex } from './lib/senses.mjs';
import { readPronunciations, readSizes } from './lib/seed.mjs';
import { downloads, seed } from './lib/arguments.mjs';

const COMMON_SIZE = 50;
const PARTS = ['noun', 'verb', 'adjective', 'adverb'];
/** A part of speech or class that fewer uses than these shares fall to is left out. */
const LEAST_SHARE_OF_PART = 0.06;
const LEAST_SHARE_OF_CLASS = 0.15;
/** A noun that is used at least so often beside verbs and adjectives is what a picture shows. */
const LEAST_SHARE_OF_PICTURED_NOUN = 0.3;
const LEAST_SHARE_OF_RIVAL = 0.35;
/** "tops" holds the few words above all classes, "all", "pert" and "ppl" are adjectives and adverbs without any. */
const NO_CLASS = new Set(['tops', 'all', 'pert', 'ppl']);
const PART_OF_KIND = {
  plural: 'noun', 'third-person': 'verb', past: 'verb', participle: 'verb', gerund: 'verb', comparative: 'adjective', superlative: 'adjective',
};

/** A picture of "jump" is one of "jumps" too; children don't see in it that somebody jumped, or that one is taller. */
const HARDER = new Set(['past', 'participle', 'comparative', 'superlative']);

const index = readSenseIndex(downloads);
const sizes = readSizes(seed);
const functions = new Map(readTable(`${seed}/tags/function-words.tsv`).map(([word, also]) => [word, also.split(' ').filter(Boolean)]));
const classes = readTable(`${seed}/tags/picturable.tsv`).map(([part, kind, within, common, known, rare, because]) => (
  { part, kind, within, levels: [Number(common), Number(known), Number(rare)], because }));
const byHand = new Map(readTable(`${seed}/tags/by-hand.tsv`).map(([word, level, because]) => [word, { level: Number(level), because: `by hand: ${because}`, rarer: false }]));
const bases = basesByForm();

const rows = [...readPronunciations(seed).keys()]
  .filter((word) => (sizes.get(word) ?? Infinity) <= COMMON_SIZE)
  .sort(byCodeUnit)
  .map(rowFor)
  .filter(Boolean);
const count = writeTable(
  `${seed}/tags/tags.tsv`,
  ['Parts of speech, meaning classes and picturability of words in common use. See SOURCE.md.',
   'Written by derive/tags.mjs; not for editing by hand: correct by-hand.tsv, picturable.tsv, function-words.tsv or the starter set.'],
  ['word', 'parts', 'uses', 'form-of', 'meanings', 'picturable', 'because', 'rarer'],
  rows);
console.log(`tags: ${count} words`);

function rowFor(word) {
  const { senses, lemma, change } = weighed(word);
  const parts = partsOf(word, senses);
  if (parts.length === 0) return undefined;
  const kept = senses.filter(({ pos }) => parts.includes(pos));
  const meanings = meaningsOf(kept);
  const { level, because, rarer } = parts[0] === 'function'
    ? { level: 0, because: 'a word that holds sentences together', rarer: false }
    : byHand.get(word) ?? picturableOf(word, kept, change);
  const uses = functions.has(word) ? '' : String(kept.reduce((sum, { count }) => sum + count, 0));
  return [word, parts.join(' '), uses, lemma === word ? '' : lemma, meanings.join(' '), String(level), because, rarer ? 'yes' : ''];
}

/** The senses of a word, or of what it is a form of, each with a weight: its uses, and a little more for earlier senses. */
function weighed(word) {
  const forms = bases.get(word) ?? [];
  const own = index.senses(word);
  const [form] = forms;
  const senses = own.length > 0 ? own
    : forms.flatMap(({ base, part }) => index.senses(base).filter(({ pos }) => pos === part));
  return {
    lemma: own.length > 0 || !form ? word : form.base,
    change: own.length > 0 || !form ? '' : form.kind,
    senses: [...new Set(senses)].map((sense) => ({ ...sense, weight: sense.count + 0.5 / sense.number })),
  };
}

function partsOf(word, senses) {
  if (functions.has(word)) return ['function', ...functions.get(word)];
  const all = total(senses);
  return PARTS
    .map((part) => ({ part, share: total(senses.filter(({ pos }) => pos === part)) / all }))
    .filter(({ share }) => share >= LEAST_SHARE_OF_PART)
    .sort((left, right) => right.share - left.share)
    .map(({ part }) => part);
}

function meaningsOf(senses) {
  const classed = senses.filter(({ kind }) => !NO_CLASS.has(kind));
  const all = total(classed);
  const weights = new Map();
  classed.forEach(({ kind, weight }) => weights.set(kind, (weights.get(kind) ?? 0) + weight));
  return [...weights]
    .filter(([, weight]) => weight / all >= LEAST_SHARE_OF_CLASS)
    .sort(([left, one], [right, other]) => other - one || byCodeUnit(left, right))
    .map(([kind]) => kind);
}

/**
 * By the commonest sense; of nouns that are also used otherwise, by the noun, and of its usual senses by the one that can be drawn
 * best: children know the table in the kitchen, adults' prose has more of those with rows and columns.
 */
function picturableOf(word, senses, change) {
  const band = sizes.get(word) <= 20 ? 0 : sizes.get(word) <= 35 ? 1 : 2;
  const nouns = senses.filter(({ pos }) => pos === 'noun');
  const asNoun = total(nouns) / total(senses) >= LEAST_SHARE_OF_PICTURED_NOUN;
  const rules = usual(asNoun ? nouns : senses).map((sense) => ruleFor(sense, word));
  if (rules.length === 0) return { level: 0, because: 'not in WordNet', rarer: false };
  const best = rules.reduce((one, other) => (other.levels[band] > one.levels[band] ? other : one));
  const level = Math.max(0, best.levels[band] - (HARDER.has(change) ? 1 : 0));
  return { level, because: best.because, rarer: best.levels[band] < best.levels[0] };
}

function ruleFor(sense, word) {
  const kinds = new Set(sense.pos === 'adjective' ? index.attributes(sense) : index.kinds(sense));
  const rule = classes.find(({ part, kind, within }) => part === sense.pos && kind === sense.kind && (within === '' || kinds.has(within)));
  if (!rule) throw new Error(`tags/picturable.tsv has no row for ${sense.pos} ${sense.kind} (${word})`);
  return rule;
}

/** The heaviest sense; of a noun also the others that are nearly as usual. */
function usual(senses) {
  const first = heaviest(senses);
  const rivals = senses.filter((sense) => sense !== first && first.pos === 'noun' && sense.pos === 'noun'
    && sense.weight / total(senses) >= LEAST_SHARE_OF_RIVAL);
  return first ? [first, ...rivals] : [];
}

function heaviest(senses) {
  return senses.reduce((best, sense) => (!best || sense.weight > best.weight ? sense : best), undefined);
}

function total(senses) {
  return senses.reduce((sum, { weight }) => sum + weight, 0);
}

function basesByForm() {
  const found = new Map();
  for (const [form, base, kind] of readTable(`${seed}/inflections/inflections.tsv`)) {
    found.set(form, [...(found.get(form) ?? []), { base, kind, part: PART_OF_KIND[kind] }]);
  }
  return found;
}
