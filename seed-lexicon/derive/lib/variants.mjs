// Lays a pronunciation beside the spans of the American one: which of its sounds belong to which letters, and where they are not
// what the lexical sets lead to expect.
import { alternatives } from './lexical-sets.mjs';

const VOWEL = /^[ɪɛæɑɔʊiuʌəɝɚeaoɒɜʉ]/;
const CENTRING = { ɪə: ['ɪ', 'ə'], ʊə: ['ʊ', 'ə'] };
const LONGEST_PIECE = 4;
/** So that of two pieces that are both expected the likelier one is taken. */
const LESS_LIKELY = 0.01;

/** The spans of an American alignment such as "h:h urr:ɝ y:i", each with its stress and its neighbours. */
export function spansOf({ arpabet, alignment }) {
  const stresses = arpabet.match(/\d/g) ?? [];
  const spans = alignment.split(' ').map((text) => {
    const [letters, sounds] = text.split(':');
    const stress = sounds.split('+').some((sound) => VOWEL.test(sound)) ? stresses.shift() : '';
    return { letters, sounds, stress };
  });
  return spans.map((span, index) => Object.assign(span, { before: spans[index - 1], after: spans[index + 1] }));
}

/** The centring diphthongs may belong to two spans ("idea"), so they are compared in two halves. */
export const halved = (sounds) => sounds.flatMap((sound) => CENTRING[sound] ?? [sound]);

/** One piece of a pronunciation a span: { sounds, expected, usual }; cost grows with what is not expected. */
export function laidOut(accent, spans, said) {
  const ways = spans.map((span) => alternatives(accent, span));
  let best = new Map([[0, { cost: 0, pieces: [] }]]);
  for (const each of ways) best = extended(best, each, said);
  return best.get(said.length);
}

function extended(paths, ways, said) {
  const longer = new Map();
  for (const [from, { cost, pieces }] of paths) {
    for (let to = from; to <= Math.min(said.length, from + LONGEST_PIECE); to++) {
      const piece = pieceOf(said.slice(from, to), ways);
      const total = cost + piece.cost;
      if (!longer.has(to) || total < longer.get(to).cost) longer.set(to, { cost: total, pieces: [...pieces, piece] });
    }
  }
  return longer;
}

function pieceOf(sounds, ways) {
  const rank = ways.findIndex((way) => way.join(' ') === sounds.join(' '));
  const cost = rank >= 0 ? rank * LESS_LIKELY : 1 + Math.min(...ways.map((way) => distance(way, sounds)));
  return { sounds, expected: rank >= 0, usual: ways[0], cost };
}

function distance(expected, said) {
  const shared = Math.min(expected.length, said.length);
  let sum = 0.8 * Math.abs(expected.length - said.length);
  for (let index = 0; index < shared; index++) {
    if (expected[index] !== said[index]) sum += VOWEL.test(expected[index]) === VOWEL.test(said[index]) ? 0.3 : 2;
  }
  return sum;
}

/**
 * The sounds of the pieces as one pronunciation. Two halves that belong to an r are one vowel again; elsewhere they are two vowels, as
 * spelling has them: "idea".
 */
export function joined(spans, pieces) {
  const sounds = [];
  pieces.forEach((piece, index) => {
    const holdsR = /[ɹɝɚ]/.test(spans[index].sounds) || /^rr?$/.test(spans[index].after?.letters ?? '');
    const whole = ` ${piece.join(' ')} `;
    sounds.push(...(holdsR ? whole.replace(/ ɪ ə /, ' ɪə ').replace(/ ʊ ə /, ' ʊə ') : whole.replace(/ ɪ ə /, ' iː ə ').replace(/ ʊ ə /, ' uː ə ')).split(' ').filter((sound) => sound !== ''));
    if (pieces[index + 1]?.[0] !== 'ə') return;
    if (/^(ɪ|i|iː)$/.test(sounds.at(-1))) sounds[sounds.length - 1] = spans[index].stress === '1' ? 'iː' : 'i';
    if (sounds.at(-1) === 'ʊ') sounds[sounds.length - 1] = 'uː';
  });
  return sounds;
}
