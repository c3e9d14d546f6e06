// What other accents say where General American says a sound for some letters: Wells's lexical sets, as an opinion on every
// pronunciation that does not come from the program it judges. Source of the sets: J. C. Wells, Accents of English
// (Cambridge University Press, 1982), vol. 1 ch. 2 and 3, vol. 2 ch. 4 and 5.2; what belongs to which set is read off spelling and
// American sound. Alternatives are separated by '|', the likeliest first; "(ɹ)" is an r that is only said before a vowel.
//
// A span: { letters, sounds (joined by '+'), stress ('1', '2', '0' or ''), before, after (the spans beside it, or undefined) }.

const STRESSED = (span) => span.stress === '1' || span.stress === '2';
const MAIN = (span) => span.stress === '1';
const BEFORE_R = (span) => /^rr?$/.test(span.after?.letters ?? '');
const AFTER_W = (span) => /^(w|wh|qu|u)$/.test(span.before?.letters ?? '');
const AFTER_T_D_N = (span) => /[tdnθ]$/.test(span.before?.sounds ?? '') && /^(u|u-e|ue|ew|eu|ui|iew)$/.test(span.letters);
const AFTER_L_S_Z = (span) => /(l|s|z|ʃ|ʒ)$/.test(span.before?.sounds ?? '') && /^(u|u-e|ue|ew|eu|ui)$/.test(span.letters);
const BEFORE_VOWEL = (span) => /^[ɪɛæɑɔʊiuʌəɝɚeao]/.test(span.after?.sounds ?? '');
const ALWAYS = () => true;

/** Before these consonants southern English may have the broad a of BATH. */
function mayBeBroad(span) {
  const next = span.after?.sounds ?? '';
  const then = span.after?.after?.sounds ?? '';
  return /^(f|s|θ|ð)$/.test(next) || (next === 'n' && /^(s|t|tʃ|d|ʃ)$/.test(then)) || (next === 'm' && then === 'p');
}

// [American sounds, letters, condition, southern British, Scottish]; the first that fits counts.
const RULES = [
  ['aɪ', /^(i|y)$/, (span) => BEFORE_R(span), 'aɪ|aɪ ə', 'aɪ|aɪ ə'],
  ['aɪ', /./, ALWAYS, 'aɪ', 'aɪ'],
  ['eɪ', /./, STRESSED, 'eɪ', 'e'],
  ['eɪ', /./, ALWAYS, 'eɪ|i|ə', 'e|i|ə'],
  ['ɔɪ', /./, ALWAYS, 'ɔɪ', 'ɔɪ'],
  ['aʊ', /./, ALWAYS, 'aʊ', 'ʌʉ'],
  ['oʊ', /^o$/, (span) => span.stress === '0', 'əʊ|ə', 'o|ə'],
  ['oʊ', /./, ALWAYS, 'əʊ', 'o'],
  ['i', /^e?y$/, (span) => !MAIN(span), 'i|iː|j', 'i|j'],
  ['i', /^(ie|i|ee|ay)$/, (span) => !MAIN(span), 'i|iː|ɪ|j', 'i|ɪ|j'],
  ['i', /^e$/, (span) => !MAIN(span), 'ɪ|i|iː|ə|e', 'ɪ|i|ə|ɛ'],
  ['i', /^e$/, BEFORE_R, 'ɪ ə|iː', 'i'],
  ['i', /^(e|i)$/, BEFORE_VOWEL, 'iː|i|ɪ', 'i'],
  ['i', /./, ALWAYS, 'iː', 'i'],
  ['u', /./, (span) => AFTER_T_D_N(span) && STRESSED(span), 'j uː|uː', 'j ʉ|ʉ'],
  ['u', /./, AFTER_T_D_N, 'j uː|j ʊ|j ə|uː|ʊ', 'j ʉ|j ə|ʉ'],
  ['u', /./, AFTER_L_S_Z, 'uː|j uː|ʊ', 'ʉ|j ʉ'],
  ['u', /^u$/, (span) => !STRESSED(span), 'uː|ʊ|ə', 'ʉ|ə'],
  ['u', /./, ALWAYS, 'uː', 'ʉ'],
  ['j+u', /./, MAIN, 'j uː|uː', 'j ʉ|ʉ'],
  ['j+u', /./, ALWAYS, 'j uː|j ʊ|j ə|uː', 'j ʉ|j ə|ʉ'],
  ['j+ə', /./, ALWAYS, 'j ʊ|j ə|j uː', 'j ʉ|j ə'],
  ['j+ə+w', /./, ALWAYS, 'j uː|j ʊ', 'j ʉ'],
  ['j+u+w', /./, ALWAYS, 'j uː|j ʊ', 'j ʉ'],
  ['ə+w', /./, ALWAYS, 'uː|ʊ|ə', 'ʉ|ə'],
  ['u+w', /./, ALWAYS, 'uː|ʊ|ə', 'ʉ|ə'],
  ['j+ʊ', /./, ALWAYS, 'j ʊ ə|j ɔː|j ʊ|j ə', 'j ʉ|j ə'],
  ['j+ʊ+ɹ', /./, ALWAYS, 'j ʊ ə(ɹ)|j ɔː(ɹ)', 'j ʉ ɹ'],
  ['j+ɔ+ɹ', /./, ALWAYS, 'j ʊ ə(ɹ)|j ɔː(ɹ)', 'j ʉ ɹ'],
  ['ʊ+ɹ', /./, ALWAYS, 'ʊ ə(ɹ)|ɔː(ɹ)|j ʊ ə(ɹ)', 'ʉ ɹ|o ɹ|ɔ ɹ|j ʉ ɹ'],
  ['u+ɹ', /./, ALWAYS, 'ʊ ə(ɹ)|ɔː(ɹ)', 'ʉ ɹ'],
  ['ʊ', /^u$/, (span) => BEFORE_R(span) && AFTER_T_D_N(span), 'j ʊ ə|ʊ ə|j ɔː', 'j ʉ|ʉ'],
  ['ʊ', /^u$/, BEFORE_R, 'ʊ ə|ɔː|j ʊ ə', 'ʉ|j ʉ'],
  ['ʊ', /^u$/, (span) => !STRESSED(span), 'ʊ|ə|uː', 'ʉ|ə'],
  ['ʊ', /./, ALWAYS, 'ʊ', 'ʉ'],
  ['ʌ', /^a$/, AFTER_W, 'ɒ', 'ɔ|ʌ'],
  ['ʌ', /^au$/, ALWAYS, 'ɒ', 'ɔ|ʌ'],
  ['ʌ', /./, ALWAYS, 'ʌ', 'ʌ'],
  ['w+ʌ', /./, ALWAYS, 'w ʌ', 'w ʌ'],
  ['æ', /^(au|al)$/, ALWAYS, 'ɑː|æ', 'a'],
  ['æ', /./, (span) => !STRESSED(span), 'æ|ə', 'a|ə'],
  ['æ', /^a$/, mayBeBroad, 'æ|ɑː', 'a'],
  ['æ', /./, ALWAYS, 'æ', 'a'],
  ['w+ɑ', /./, ALWAYS, 'w ɑː|w æ', 'w a'],
  ['w+ɑ+ɹ', /./, ALWAYS, 'w ɑː(ɹ)', 'w a ɹ'],
  ['ɑ', /^(o|ow|ach|e|ou)$/, MAIN, 'ɒ', 'ɔ'],
  ['ɑ', /^(o|ow|ach|e|ou)$/, ALWAYS, 'ɒ|ə|əʊ', 'ɔ|ə|o'],
  ['ɑ', /^(au|aw|awe|augh|ough)$/, ALWAYS, 'ɔː|ɒ', 'ɔ'],
  ['ɑ', /^a$/, AFTER_W, 'ɒ|ɑː', 'ɔ|a'],
  ['ɑ', /^a$/, ALWAYS, 'ɑː|æ|ɒ', 'a|ɔ'],
  ['ɑ', /./, ALWAYS, 'ɑː', 'a'],
  ['ɑ+ɹ', /./, ALWAYS, 'ɑː(ɹ)', 'a ɹ'],
  ['ɔ', /^o$/, (span) => BEFORE_R(span) && !MAIN(span), 'ɔː|ɒ|ə|', 'ɔ|o|ə|'],
  ['ɔ', /^o$/, BEFORE_R, 'ɔː|ɒ', 'o|ɔ'],
  ['ɔ', /^o$/, STRESSED, 'ɒ', 'ɔ'],
  ['ɔ', /^o$/, ALWAYS, 'ɒ|ə', 'ɔ|ə'],
  ['ɔ', /^(ou|au|aw)$/, ALWAYS, 'ɔː|ɒ', 'ɔ'],
  ['ɔ', /^a$/, ALWAYS, 'ɔː|ɒ', 'ɔ|o'],
  ['ɔ', /./, ALWAYS, 'ɔː', 'ɔ'],
  ['ɔ+ɹ', /^owar$/, ALWAYS, 'ə w ɔː|ɔː', 'ə w ɔ ɹ|ɔ ɹ'],
  ['ɔ+ɹ', /^uor$/, ALWAYS, 'ɔː(ɹ)|ʊ ə(ɹ)', 'ɔ ɹ|o ɹ|ʉ ɹ'],
  ['ɔ+ɹ', /^(or|ar)$/, (span) => !STRESSED(span), 'ɔː(ɹ)|ə(ɹ)', 'ɔ ɹ|o ɹ|ə ɹ'],
  ['ɔ+ɹ', /^ar$/, ALWAYS, 'ɔː(ɹ)', 'ɔ ɹ'],
  ['ɔ+ɹ', /^(oar|oor|ore|our)$/, ALWAYS, 'ɔː(ɹ)', 'o ɹ|ɔ ɹ|ʉ ɹ'],
  ['ɔ+ɹ', /./, ALWAYS, 'ɔː(ɹ)', 'ɔ ɹ|o ɹ'],
  ['oʊ+ɹ', /./, ALWAYS, 'ɔː(ɹ)', 'o ɹ|ɔ ɹ'],
  ['ɛ', /^a$/, (span) => BEFORE_R(span) && !MAIN(span), 'ə|eə|æ|', 'ə|e|a|'],
  ['ɛ', /^a$/, BEFORE_R, 'eə|æ|e', 'e|a|ɛ'],
  ['ɛ', /^e$/, (span) => BEFORE_R(span) && !MAIN(span), 'e|ə|eə|', 'ɛ|ə|e|'],
  ['ɛ', /^e$/, (span) => !MAIN(span) && !span.before && /^[nm]/.test(span.after?.sounds ?? ''), 'e|ə', 'ɛ|ə'],
  ['ɛ', /^e$/, (span) => !MAIN(span), 'e|ɪ|ə', 'ɛ|ɪ|ə'],
  ['ɛ', /./, ALWAYS, 'e', 'ɛ'],
  ['ɛ+ɹ', /^er?r$/, ALWAYS, 'ɜː(ɹ)|eə(ɹ)', 'ɛ ɹ|e ɹ'],
  ['ɛ+ɹ', /./, ALWAYS, 'eə(ɹ)', 'e ɹ'],
  ['ɪ', /^(e|i)$/, (span) => BEFORE_R(span) && MAIN(span), 'ɪ ə|ɪ|iː', 'i|ɪ'],
  ['ɪ', /^ee$/, ALWAYS, 'iː', 'i'],
  ['ɪ', /^(e|a|o|u|ai|ei|ie|ia|ou|ay|eo)$/, (span) => !STRESSED(span), 'ɪ|ə|i|iː|e', 'ɪ|ə|i|ɛ'],
  ['ɪ', /./, STRESSED, 'ɪ', 'ɪ'],
  ['ɪ', /./, ALWAYS, 'ɪ|ə|i', 'ɪ|ə|i'],
  ['ɪ+d', /./, ALWAYS, 'ɪ d', 'ɪ d'],
  ['ə+d', /./, ALWAYS, 'ɪ d', 'ɪ d'],
  ['ɪ+z', /./, ALWAYS, 'ɪ z', 'ɪ z'],
  ['ə+z', /./, ALWAYS, 'ɪ z', 'ɪ z'],
  ['ɪ+ɹ', /./, ALWAYS, 'ɪ ə(ɹ)', 'i ɹ'],
  ['i+ɹ', /./, ALWAYS, 'ɪ ə(ɹ)', 'i ɹ'],
  ['ɝ', /^(urr|orr|our|or|ur)$/, BEFORE_VOWEL, 'ʌ ɹ|ɜː ɹ', 'ʌ ɹ'],
  ['ɝ', /^irr?$/, BEFORE_VOWEL, 'ɪ ɹ|ɜː ɹ', 'ɪ ɹ'],
  ['ɝ', /^err?$/, BEFORE_VOWEL, 'ɜː ɹ|e ɹ|ə ɹ', 'ɛ ɹ|ə ɹ'],
  ['ɝ', /^(er|err|ear|ere)$/, STRESSED, 'ɜː(ɹ)', 'ɛ ɹ'],
  ['ɝ', /^(er|err|ear|ere|eur)$/, ALWAYS, 'ɜː(ɹ)|ə(ɹ)', 'ɛ ɹ|ʌ ɹ|ə ɹ'],
  ['ɝ', /^(ir|irr|yr|yrrh)$/, ALWAYS, 'ɜː(ɹ)', 'ɪ ɹ|ʌ ɹ'],
  ['ɝ', /./, ALWAYS, 'ɜː(ɹ)', 'ʌ ɹ'],
  ['ɚ', /^(or|ar|er)$/, BEFORE_VOWEL, 'ə ɹ|ɹ', 'ə ɹ|ɹ'],
  ['ɚ', /^err$/, ALWAYS, 'ə ɹ|e ɹ', 'ə ɹ|ɛ ɹ'],
  ['ɚ', /^arr$/, ALWAYS, 'ə ɹ|æ ɹ', 'ə ɹ|a ɹ'],
  ['ɚ', /^orr$/, ALWAYS, 'ə ɹ|ɒ ɹ', 'ə ɹ|ɔ ɹ'],
  ['ɚ', /^ure$/, ALWAYS, 'ə(ɹ)|j ə(ɹ)|j ʊ ə(ɹ)', 'ə ɹ|j ə ɹ|j ʉ ɹ'],
  ['ɚ', /^ur$/, ALWAYS, 'ə(ɹ)|j ə(ɹ)|j ʊ ə(ɹ)|j ʊ(ɹ)', 'ə ɹ|j ə ɹ|j ʉ ɹ'],
  ['ɚ', /^(or|ar)$/, ALWAYS, 'ə(ɹ)', 'ə ɹ'],
  ['ɚ', /./, ALWAYS, 'ə(ɹ)', 'ə ɹ'],
  ['j+ɚ', /./, ALWAYS, 'j ə(ɹ)|j ʊ ə(ɹ)|j ʊ(ɹ)|ə(ɹ)', 'j ə ɹ|j ʉ ɹ|ə ɹ'],
  ['j+ɝ', /./, ALWAYS, 'j ə(ɹ)|j ʊ ə(ɹ)|j ɜː(ɹ)', 'j ə ɹ|j ʉ ɹ'],
  ['aɪ+ɚ', /./, ALWAYS, 'aɪ ə(ɹ)', 'aɪ ə ɹ|aɪ ɹ'],
  ['aɪ+ɹ', /./, ALWAYS, 'aɪ ə(ɹ)', 'aɪ ə ɹ|aɪ ɹ'],
  ['w+aɪ+ɚ', /./, ALWAYS, 'w aɪ ə(ɹ)', 'w aɪ ə ɹ|w aɪ ɹ'],
  ['w+aɪ+ɹ', /./, ALWAYS, 'w aɪ ə(ɹ)', 'w aɪ ə ɹ|w aɪ ɹ'],
  ['aʊ+ɚ', /./, ALWAYS, 'aʊ ə(ɹ)', 'ʌʉ ə ɹ|ʌʉ ɹ'],
  ['aʊ+ɹ', /./, ALWAYS, 'aʊ ə(ɹ)', 'ʌʉ ə ɹ|ʌʉ ɹ'],
  ['ə+l', /^l$/, ALWAYS, 'ə l|l', 'ə l|l'],
  ['ə+l', /./, ALWAYS, 'ə l', 'ə l'],
  ['ə+m', /./, ALWAYS, 'ə m', 'ə m'],
  ['ə', /^i$/, ALWAYS, 'ɪ|ə|i', 'ɪ|ə|i'],
  ['ə', /^(y|ai|ei|ie|ia|ui)$/, ALWAYS, 'ɪ|ə', 'ɪ|ə'],
  ['ə', /^(a|e)$/, ALWAYS, 'ə|ɪ', 'ə|ɪ'],
  ['ə', /^u$/, AFTER_T_D_N, 'ə|j ʊ|j ə|ʊ', 'ə|j ʉ|ʉ'],
  ['ə', /^u$/, ALWAYS, 'ə|ʊ', 'ə|ʉ'],
  ['ə', /^ua$/, ALWAYS, 'uː ə|ʊ ə|ə', 'ʉ ə|ə'],
  ['ə', /./, ALWAYS, 'ə', 'ə'],
  ['h+w', /^wh$/, ALWAYS, 'w', 'ʍ'],
  ['w', /^wh$/, ALWAYS, 'w', 'ʍ'],
  ['tʃ', /^t$/, ALWAYS, 'tʃ|t j', 'tʃ|t j'],
  ['dʒ', /^d$/, ALWAYS, 'dʒ|d j', 'dʒ|d j'],
  ['ʒ', /^s$/, ALWAYS, 'ʒ|z j', 'ʒ|z j'],
  ['ʃ', /^(s|ss)$/, ALWAYS, 'ʃ|s j', 'ʃ|s j'],
  ['ʃ', /^(t|c)$/, ALWAYS, 'ʃ|s', 'ʃ|s'],
  ['k+s', /^x$/, ALWAYS, 'k s', 'k s'],
  ['ɡ+z', /./, ALWAYS, 'ɡ z|k s', 'ɡ z|k s'],
  ['ŋ', /^n$/, ALWAYS, 'ŋ|n', 'ŋ|n'],
  ['j', /^(i|e)$/, ALWAYS, 'j|i', 'j'],
  ['w', /^u$/, ALWAYS, 'w|uː|ʊ', 'w|ʉ'],
  ['∅', /^(t|d)$/, ALWAYS, '|t|d', '|t|d'],
  ['∅', /^(a|o|i|u|e)$/, ALWAYS, '|ə|ɪ', '|ə|ɪ'],
  ['∅', /./, ALWAYS, '', ''],
  ['ɹ', /./, ALWAYS, '(ɹ)', 'ɹ'],
  ['n+j', /./, ALWAYS, 'n j', 'n j'],
];

const SOUND = 3;
const COLUMN = { 'en-GB': SOUND, 'en-GB-scotland': SOUND + 1 };
const BY_SOUNDS = Map.groupBy ? Map.groupBy(RULES, ([sounds]) => sounds) : grouped();

function grouped() {
  const map = new Map();
  for (const rule of RULES) map.set(rule[0], [...(map.get(rule[0]) ?? []), rule]);
  return map;
}

/** What an accent may say for a span, the likeliest first; each an array of sounds. Sounds without a rule are the same in all accents. */
export function alternatives(accent, span) {
  const rule = BY_SOUNDS.get(span.sounds)?.find(([, letters, holds]) => letters.test(span.letters) && holds(span));
  const text = rule ? rule[COLUMN[accent]] : span.sounds.replaceAll('+', ' ');
  return text.split('|').flatMap((way) => linked(way, span));
}

/** An r that links is there before a vowel and not elsewhere. */
function linked(way, span) {
  const said = way.replace('(ɹ)', BEFORE_VOWEL(span) ? ' ɹ' : '').trim();
  return [said === '' ? [] : said.split(' ')];
}
