// WordNet's senses with what they are used for: how often tagged texts mean them, and what they are kinds of.
import { readFileSync } from 'node:fs';

const FOLDER = 'wordnet/net/sf/extjwnl/data/wordnet/wn31';
const POS_OF_SENSE_KEY = { 1: 'noun', 2: 'verb', 3: 'adjective', 4: 'adverb', 5: 'adjective' };
const FILES = { noun: 'noun', verb: 'verb', adjective: 'adj', adverb: 'adv' };

// WordNet's lexicographer files by number, from its manual page lexnames(5WN); from memory.
const CLASSES = [
  'all', 'pert', 'all', 'tops', 'act', 'animal', 'artifact', 'attribute', 'body', 'cognition', 'communication', 'event', 'feeling',
  'food', 'group', 'location', 'motive', 'object', 'person', 'phenomenon', 'plant', 'possession', 'process', 'quantity', 'relation',
  'shape', 'state', 'substance', 'time', 'body', 'change', 'cognition', 'communication', 'competition', 'consumption', 'contact',
  'creation', 'emotion', 'motion', 'perception', 'possession', 'social', 'stative', 'weather', 'ppl',
];

export function readSenseIndex(downloads) {
  return new SenseIndex(`${downloads}/${FOLDER}`);
}

class SenseIndex {
  /** lemma → senses, each { pos, kind, synset, number, count } */
  #senses = new Map();
  /** pos and synset → { words, hypernyms, attributes, similar } */
  #synsets = new Map();

  constructor(folder) {
    for (const line of lines(`${folder}/index.sense`)) this.#addSense(line);
    for (const [pos, file] of Object.entries(FILES)) {
      for (const line of lines(`${folder}/data.${file}`)) this.#addSynset(pos, line);
    }
  }

  #addSense(line) {
    const [key, synset, number, count] = line.split(' ');
    const [lemma, rest] = key.split('%');
    const [type, file] = rest.split(':');
    const sense = { pos: POS_OF_SENSE_KEY[type], kind: CLASSES[Number(file)], synset, number: Number(number), count: Number(count) };
    this.#senses.set(lemma, [...(this.#senses.get(lemma) ?? []), sense]);
  }

  #addSynset(pos, line) {
    if (line.startsWith(' ')) return;
    const fields = line.split(' | ')[0].split(' ');
    const count = parseInt(fields[3], 16);
    const words = Array.from({ length: count }, (_, index) => fields[4 + 2 * index].replace(/\(\w+\)$/, ''));
    const pointers = { '@': [], '@i': [], '=': [], '&': [] };
    for (let at = 4 + 2 * count + 1; at + 3 < fields.length; at++) {
      if (pointers[fields[at]] && /^\d{8}$/.test(fields[at + 1])) pointers[fields[at]].push(fields[at + 1]);
    }
    const instance = pointers['@i'].length > 0;
    this.#synsets.set(`${pos} ${fields[0]}`, {
      words, instance, hypernyms: [...pointers['@'], ...pointers['@i']], attributes: pointers['='], similar: pointers['&'],
    });
  }

  /** Senses of a lemma that aren't single people and places, WordNet's order within a part of speech. */
  senses(lemma) {
    return (this.#senses.get(lemma) ?? [])
      .filter((sense) => !this.#synset(sense)?.instance)
      .sort((left, right) => left.number - right.number);
  }

  #synset({ pos, synset }) {
    return this.#synsets.get(`${pos} ${synset}`);
  }

  /** The words of everything that a sense is a kind of, itself first. */
  kinds({ pos, synset }) {
    const found = [];
    const open = [synset];
    const seen = new Set(open);
    while (open.length > 0) {
      const { words, hypernyms } = this.#synsets.get(`${pos} ${open.shift()}`);
      found.push(...words);
      hypernyms.filter((each) => !seen.has(each)).forEach((each) => { seen.add(each); open.push(each); });
    }
    return found;
  }

  /** The nouns for what an adjective says something about: color, size. */
  attributes(sense) {
    const own = this.#synset(sense);
    const heads = own.similar.map((each) => this.#synsets.get(`adjective ${each}`)).filter(Boolean);
    return [own, ...heads]
      .flatMap(({ attributes }) => attributes)
      .flatMap((each) => this.#synsets.get(`noun ${each}`)?.words ?? []);
  }
}

function lines(path) {
  return readFileSync(path, 'latin1').split('\n').filter((line) => line !== '');
}
