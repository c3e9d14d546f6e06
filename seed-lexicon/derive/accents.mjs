// Pronunciations in southern British and Scottish English: what espeak-ng's voices say, laid beside what the American pronunciation
// and Wells's lexical sets lead to expect; where they disagree, rules, a person's decision, or both ways. See espeak-ng/SOURCE.md.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { readTable, writeTable, byCodeUnit } from './lib/table.mjs';
import { readPronunciations } from './lib/seed.mjs';
import { VOICES, readLine } from './lib/espeak.mjs';
import { spansOf, halved, laidOut, joined } from './lib/variants.mjs';
import { judge, believes } from './lib/judgement.mjs';
import { scottishOf } from './lib/scottish.mjs';
import { downloads, seed } from './lib/arguments.mjs';

/** SCOWL's size up to which a word is common enough; 50 is commonness 2. */
const LARGEST_SIZE = 50;
const SOURCE = { VOICE: 'espeak-ng', BOTH_SOURCES: 'lexical-sets', HAND: 'hand' };

const american = readAmerican(`${downloads}/american.tsv`);
const decisions = new Map(readTable(`${seed}/espeak-ng/decisions.tsv`).map(([word, southern, scottish, reason]) => [word, { southern, scottish, reason }]));
const withTrap = new Set(readTable(`${seed}/espeak-ng/trap.tsv`).map(([word]) => word));
const words = commonWords();
const southernVoice = speak('en-GB');
const scottishVoice = speak('en-GB-scotland');

const rows = { 'en-GB': [], 'en-GB-scotland': [] };
const disagreements = [];
const tally = { words: words.length, admissible: 0, rules: 0, hand: 0, undecided: 0, alone: 0 };
words.forEach((word, index) => {
  for (const { southern, scottish, source } of ways(word, southernVoice[index], scottishVoice[index])) {
    rows['en-GB'].push([word, southern.join(' '), source]);
    rows['en-GB-scotland'].push([word, scottish.join(' '), source]);
  }
});

for (const [accent, list] of Object.entries(rows)) {
  writeTable(
    `${seed}/espeak-ng/${accent}.tsv`,
    [`Pronunciations of common words in ${accent}, the usual one first. Written by derive/accents.mjs; correct decisions.tsv instead. See SOURCE.md.`],
    ['word', 'sounds', 'source'],
    unique(list));
}
writeTable(
  `${seed}/espeak-ng/disagreements.tsv`,
  ['Words of which the voice says letters otherwise than the lexical sets lead to expect, and what was decided. See SOURCE.md.'],
  ['word', 'size', 'voice', 'sets', 'where', 'decision', 'reason'],
  disagreements);
console.log(`accents: ${JSON.stringify(tally)}`);

function commonWords() {
  const inBank = readPronunciations(seed);
  const common = readTable(`${seed}/scowl/commonness.tsv`).filter(([word, size]) => Number(size) <= LARGEST_SIZE && inBank.has(word));
  const decided = [...decisions.keys()].filter((word) => inBank.has(word));
  return [...new Set([...common.map(([word]) => word), ...decided])].sort(byCodeUnit);
}

/** One word a line is one utterance each: no word changes for the sake of another. */
function speak(accent) {
  const { voice } = VOICES[accent];
  const output = execFileSync('espeak-ng', ['-q', '-x', '--sep= ', '-v', voice], { input: words.join('\n') + '\n', encoding: 'utf8', maxBuffer: 1 << 26 });
  const lines = output.split('\n').filter((line) => line.trim() !== '');
  if (lines.length !== words.length) throw new Error(`espeak-ng wrote ${lines.length} lines for ${words.length} words`);
  return lines.map((line) => readLine(line, VOICES[accent]));
}

/** word → its American pronunciations that count, with their spans; written by the program's ListAlignments. */
function readAmerican(path) {
  const byWord = new Map();
  for (const line of readFileSync(path, 'utf8').trim().split('\n')) {
    const [word, arpabet, aside, alignment] = line.split('\t');
    if (!byWord.has(word)) byWord.set(word, []);
    if (alignment && !aside) byWord.get(word).push({ arpabet, alignment });
  }
  return byWord;
}

/** How a word is said: a list of { southern, scottish, source }. */
function ways(word, southernSays, scottishSays) {
  const nearest = nearestAmerican(word, halved(southernSays));
  const decision = decisions.get(word);
  if (!nearest) {
    tally.alone++;
    return decision?.southern ? byHand(word, decision, undefined) : [{ southern: southernSays, scottish: scottishSays, source: SOURCE.VOICE }];
  }
  const { spans } = nearest;
  const pieces = withTrap.has(word) ? nearest.pieces.map((piece, index) => trapped(piece, spans[index])) : nearest.pieces;
  const where = pieces.flatMap((piece, index) => (piece.expected ? [] : [disagreement(spans[index], piece)]));
  const judged = where.map(judge);
  const bySets = () => pieces.map((piece) => (piece.expected ? piece.sounds : piece.usual));
  const byVoice = () => pieces.map((piece) => piece.sounds);
  const byRules = () => pieces.map((piece, index) => (piece.expected || judge(disagreement(spans[index], piece))?.side === believes.VOICE ? piece.sounds : piece.usual));
  const way = (chosen, source) => ({ southern: joined(spans, chosen), scottish: scottishOf(spans, chosen, scottishSays), source });
  const note = (decided, reason) => {
    if (where.length > 0) disagreements.push([word, sizeOf(word), southernSays.join(' '), joined(spans, bySets()).join(' '), where.join(', '), decided, reason]);
  };
  if (decision) {
    tally.hand++;
    note('by hand', decision.reason);
    if (decision.southern === 'voice') return [way(byVoice(), SOURCE.VOICE)];
    if (decision.southern === 'sets') return [way(bySets(), SOURCE.BOTH_SOURCES)];
    if (decision.southern === 'both') return [way(byVoice(), SOURCE.VOICE), way(bySets(), SOURCE.BOTH_SOURCES)];
    return byHand(word, decision, american.get(word));
  }
  if (where.length === 0) {
    tally.admissible++;
    return [way(byVoice(), SOURCE.VOICE)];
  }
  if (judged.every((each) => each)) {
    tally.rules++;
    note(judged.map((each) => each.side).join(', '), [...new Set(judged.map((each) => each.reason))].join('; '));
    return [way(byRules(), judged.every((each) => each.side === believes.VOICE) ? SOURCE.VOICE : SOURCE.BOTH_SOURCES)];
  }
  tally.undecided++;
  note('both', '');
  return [way(byVoice(), SOURCE.VOICE), way(bySets(), SOURCE.BOTH_SOURCES)];
}

function byHand(word, { southern, scottish }, pronunciations) {
  const inScotland = scottish ? scottish.split('|') : [];
  return southern.split('|').map((text, index) => {
    const said = text.trim().split(' ');
    if (inScotland[index]) return { southern: said, scottish: inScotland[index].trim().split(' '), source: SOURCE.HAND };
    if (!pronunciations?.length) throw new Error(`decisions.tsv: ${word} needs its Scottish sounds`);
    const { spans, pieces } = nearestAmerican(word, halved(said));
    return { southern: said, scottish: scottishOf(spans, pieces.map((piece) => piece.sounds), []), source: SOURCE.HAND };
  });
}

/** The a of TRAP where the voice says that of BATH. */
function trapped(piece, span) {
  return span.sounds === 'æ' && piece.sounds.join() === 'ɑː' ? { ...piece, sounds: ['æ'] } : piece;
}

/** The American pronunciation that the sounds are nearest to, and the sounds laid out over its spans. */
function nearestAmerican(word, said) {
  const laid = (american.get(word) ?? []).map((each) => {
    const spans = spansOf(each);
    return { spans, ...laidOut('en-GB', spans, said) };
  });
  return laid.reduce((best, each) => (!best || each.cost < best.cost ? each : best), undefined);
}

function disagreement(span, piece) {
  return `${span.before ? '' : '^'}${span.letters}:${span.sounds}${span.stress}→${piece.sounds.join('+') || '∅'}`;
}

function sizeOf(word) {
  sizeOf.sizes ??= new Map(readTable(`${seed}/scowl/commonness.tsv`).map(([each, size]) => [each, size]));
  return sizeOf.sizes.get(word) ?? '';
}

function unique(list) {
  const seen = new Set();
  return list.filter(([word, sounds]) => !seen.has(`${word} ${sounds}`) && seen.add(`${word} ${sounds}`));
}
