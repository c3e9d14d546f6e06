// What is believed where the voice says a span otherwise than the lexical sets lead to expect. The first rule whose pattern fits the
// disagreement, written letters:American+stress→said (with ^ before it at the start of the word), decides; what no rule decides is undecided, and the bank keeps both ways, so that the
// word needs a look before it comes into a list.

const VOICE = 'voice';
const SETS = 'sets';

const RULES = [
  // Slips of the voice's spelling rules.
  [/^nn?:n→(ŋ|n\+n)$/, SETS, 'n of a prefix is not said ŋ in careful speech'],
  [/^ng:ŋ→ŋ\+ɡ$/, SETS, 'ng of a base that ends in it'],
  [/^\^?[bdfgklmnprtv]+:.+→∅$/, SETS, 'a consonant got lost'],
  [/^[a-z]+:([^→]+)→\1\+(ə|\1)$/, SETS, 'a vowel or a second consonant without a letter'],
  [/^d:t→d$|^d:d→t$|^ed:.*→/, SETS, 'the ending d after the last sound of the base'],
  [/^aw:[ɔɑ]\d→ɔː\+ɹ$/, SETS, 'an r without a letter'],
  [/^ss:z→s$/, SETS, 'ss in scissors and dissolve'],
  [/^s:z→s$/, SETS, 's is voiced: husband, reside, trousers'],
  [/^i:j→ɪ$/, SETS, 'i before a vowel as a consonant: onion'],
  [/^\^?[aeiou]:(ə0|i\d)→∅$/, SETS, 'a vowel got lost'],
  [/^\^?o:w\+ʌ\d→w\+ɒ$/, SETS, 'one and its compounds'],
  [/^o:u0→ʊ$/, SETS, 'to in full'],
  [/^e:ɛ1→ɪ$|^\^e:ɛ1→ɪ$/, SETS, 'e in a stressed syllable: export, preferable'],
  [/^e?y:i[02]→ɪ$/, SETS, 'y as at the end of a word: copycat'],
  [/^e:i1→ɪ$/, SETS, 're- in full: remake'],
  [/^\^a:æ2→ə$/, SETS, 'a in full: abnormality'],
  // The weak syllables that make lists of easy words wrong if they are believed.
  [/^\^u:ə0→ʌ(\+n)?$/, VOICE, 'the prefixes un- and up-'],
  [/^u:ə0→ʌ$/, SETS, 'u is weak'],
  [/^o:ə0→ʌ$/, SETS, 'o is weak'],
  [/^\^?[ao]:ə0→(æ|ɒ)$/, SETS, 'the vowel is weak'],
  [/^e:ə0→e$/, SETS, 'the vowel is weak'],
  [/^u:[ʌʊ]2→ə$/, VOICE, 'a weak last syllable'],
  // What southern England says otherwise than America.
  [/^i:ə0→aɪ$/, VOICE, '-ization and -ile'],
  [/^i:ɪ0→aɪ$/, VOICE, '-isation, dimension'],
  [/^o:ə0→əʊ$/, VOICE, 'the o of a combining form is said in full'],
  [/^a:æ1→ɑː$/, VOICE, 'banana, gala'],
  [/^a:ɑ\d→ɔː$|^al:ɑ\d→ɔː$/, VOICE, 'a before l: fall'],
  [/^e:ɛ1→iː$/, VOICE, 'lever, vegan'],
  [/^e:i1→e$/, VOICE, 'zebra, depot'],
  [/^(ti|si):tʃ→ʃ$/, VOICE, 'no t after n: intention, tension'],
  [/^si:ʒ→ʃ$/, VOICE, 'version'],
  [/^th:θ→ð$/, VOICE, 'with and its compounds, scythe, writhe'],
  [/^o:ɑ1→əʊ$/, VOICE, 'process'],
  [/^o:ʌ1→ɒ$/, VOICE, 'from, hovel'],
  [/^o-e:oʊ1→ɒ$/, VOICE, 'shone'],
  [/^oo:u1→ʊ$/, VOICE, 'sooty'],
  [/^ough:oʊ0→ə$/, VOICE, 'thorough'],
  [/^ch:k→ʃ$|^s:s→∅$|^\^s:s→∅$/, VOICE, 'schedule'],
  [/^(n|c):(n|k)→(n|k)\+j$/, VOICE, 'neural, recuperate'],
  [/^o:oʊ2→ə$|^a:ɛ2→ə$/, VOICE, '-mony'],
  [/^\^?(ur|ir|er|or):ɚ0→ɜː$/, VOICE, 'a full vowel before r: suburb'],
  [/^(er|ir):ɚ0→(ɪ|aɪ)\+ɹ$/, VOICE, 'derive, miracle, direct'],
  [/^\^?(ar|or):ɚ0→(ɑː|ɔː)(\+ɹ)?$/, VOICE, 'a full vowel before r: placard'],
  [/^(ur|ir|er|or|ar):ɚ0→ɜː\+ɹ$/, SETS, 'the vowel is weak'],
  [/^our:ɝ1→ʊ\+ə$/, VOICE, 'tournament'],
  [/^ea:i\d→ɪ\+ə$|^[a-z]+:aɪ\d→aɪ\+ə$/, VOICE, 'two vowels before l or r: real'],
  [/^a:eɪ2→ə$/, VOICE, '-ative'],
  [/^u:ə0→ɪ$/, VOICE, 'minute, lettuce'],
];

/** { side, reason } for one disagreement; undefined where a person must decide. */
export function judge(disagreement) {
  const rule = RULES.find(([pattern]) => pattern.test(disagreement));
  return rule && { side: rule[1], reason: rule[2] };
}

export const believes = { VOICE, SETS };
