// Scottish sounds for spans whose southern British sounds are settled. The Scottish voice is believed wherever it says what the lexical
// sets lead to expect; elsewhere (it leaves out an r now and then, and weakens vowels after rules of its own) the southern sounds are
// turned into Scottish ones.
import { alternatives } from './lexical-sets.mjs';
import { laidOut } from './variants.mjs';

const FROM_SOUTHERN = {
  iː: 'i', e: 'ɛ', æ: 'a', ɑː: 'a', ɒ: 'ɔ', ɔː: 'ɔ', ʊ: 'ʉ', uː: 'ʉ', eɪ: 'e', əʊ: 'o', aʊ: 'ʌʉ', eə: 'e', ɪə: 'i', ʊə: 'ʉ',
};

/** The vowel of NURSE is three vowels, as it is spelt: fern, bird, fur. */
const NURSE = [[/^e/, 'ɛ'], [/^[iy]/, 'ɪ'], [/./, 'ʌ']];

const RHOTIC = /[ɹɝɚ]/;
const VOWEL_AND_R = /[ɝɚ]|.ɹ$|\+ɹ$/;

/** The Scottish pronunciation for southern pieces, one a span; `says` is what the voice says, or empty. */
export function scottishOf(spans, southern, says) {
  const voice = says.length > 0 ? laidOut('en-GB-scotland', spans, says)?.pieces : undefined;
  return spans.flatMap((span, index) => scottishPiece(span, southern[index], voice?.[index]));
}

function scottishPiece(span, southern, voice) {
  const ways = alternatives('en-GB-scotland', span);
  const inSouth = alternatives('en-GB', span);
  if (voice?.expected && sameStrength(southern, voice.sounds)) return voice.sounds;
  const rank = inSouth.findIndex((way) => way.join(' ') === southern.join(' '));
  return rank === 0 ? ways[0] : turned(span, southern);
}

/** Whether both say a weak vowel, or neither does. */
function sameStrength(southern, scottish) {
  const weak = (sounds) => sounds.some((sound) => sound === 'ə') && !sounds.some((sound) => /^(ɪ|ʊ|aɪ|aʊ|ʌʉ|i|ʉ)$/.test(sound));
  return weak(southern) === weak(scottish);
}

function turned(span, southern) {
  const sounds = ` ${southern.join(' ')}`.replace(/ ɪ ə$/, RHOTIC.test(span.sounds + (span.after?.sounds ?? '')) ? ' i' : ' i ə').replace(/ ʊ ə$/, ' ʉ').split(' ').filter((sound) => sound !== '');
  const scottish = sounds.map((sound) => (sound === 'ɜː' ? nurse(span) : FROM_SOUTHERN[sound] ?? sound));
  return VOWEL_AND_R.test(span.sounds) && scottish.at(-1) !== 'ɹ' ? [...scottish, 'ɹ'] : scottish;
}

function nurse(span) {
  return NURSE.find(([letters]) => letters.test(span.letters))[1];
}
