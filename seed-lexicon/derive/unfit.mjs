// Words unfit for children of four to six: two published lists, corrected and much enlarged by hand, with inflected forms.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { readTable, writeTable, byCodeUnit, PLAIN } from './lib/table.mjs';
import { downloads, seed } from './lib/arguments.mjs';

const REASONS = new Set(
  ['swearing', 'insult', 'slur', 'sexual', 'violence', 'weapons', 'death', 'drugs-alcohol', 'body', 'crime', 'fear', 'grown-up']);
// The published lists don't say why a word is on them.
const LISTED = 'listed';
// cuss rates 0 for "unlikely to be meant as a profanity"; those words count only if the decisions say so.
const LEAST_RATING = 1;

const naughty = JSON.parse(readFileSync(`${downloads}/naughty-words/en.json`, 'utf8'));
const { cuss } = await import(pathToFileURL(`${downloads}/cuss/index.js`));

const decisions = new Map(readTable(`${seed}/unfit/decisions.tsv`).map(([word, decision, reason]) => [word, { decision, reason }]));
checkDecisions();

const unfit = new Map();
for (const word of [...naughty, ...Object.keys(cuss).filter((key) => cuss[key] >= LEAST_RATING)]) {
  if (PLAIN.test(word) && !decisions.has(word)) unfit.set(word, LISTED);
}
for (const [word, { decision, reason }] of decisions) if (decision === 'unfit') unfit.set(word, reason);
addForms();

const rows = [...unfit].sort(([left], [right]) => byCodeUnit(left, right));
const count = writeTable(
  `${seed}/unfit/unfit.tsv`,
  ['Words unfit for children of four to six, kept out of every default list. See SOURCE.md.',
   '"listed" stands for a word of a published list that nobody classed by hand.'],
  ['word', 'reason'],
  rows);
console.log(`unfit: ${count} words`);

/** A form is as unfit as its base; only forms of more than one base need all of them unfit ("dying", of die and of dye). */
function addForms() {
  const bases = new Map();
  for (const [form, base] of readTable(`${seed}/inflections/inflections.tsv`)) {
    bases.set(form, new Set([...(bases.get(form) ?? []), base]));
  }
  const inherited = [...bases]
    .filter(([form]) => !decisions.has(form) && !unfit.has(form))
    .map(([form, of]) => [form, [...of].map((base) => unfit.get(base))])
    .filter(([, reasons]) => reasons.every((reason) => reason !== undefined));
  inherited.forEach(([form, [reason]]) => unfit.set(form, reason));
}

function checkDecisions() {
  for (const [word, { decision, reason }] of decisions) {
    if (!['unfit', 'fit'].includes(decision)) throw new Error(`unfit/decisions.tsv: ${word} is neither unfit nor fit but ${decision}`);
    if (decision === 'unfit' && !REASONS.has(reason)) throw new Error(`unfit/decisions.tsv: ${word} has an unknown reason: ${reason}`);
  }
}
