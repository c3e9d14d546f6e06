package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.ValidationError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions in the words of an address: what they mean, and what is said of those that don't. */
class WordRequestTest {

  private static final String DEFAULT_RULES =
      "doubled,ck,tch-as-ch,s-as-z,n-before-k,x,no-reduced-vowels,no-inflected-forms";

  private final Lexicon lexicon = SeededLexicon.get();

  @Test
  void fillsInEveryDefault() {
    assertThat(read("phonogram=oa").resolved())
        .hasToString(
            "phonogram=oa&value=1&accent=en-US&commonness=2&status=any&picturable=0&pictured=false&rules="
                + DEFAULT_RULES
                + "&sort=default&limit=50");
  }

  @Test
  void readsItsOwnAnswersAgain() {
    QueryString resolved =
        read("taught=oo,sh1&shape=CVC&letters=5-7&syllables=1&sound=OW&position=end&include="
                + "inflected,names&picturable=2&pictured=true&part-of-speech=noun&meaning=food,animal"
                + "&mark=starter&rules=no-ck,reduced-vowels&status=seeded&sort=letters&limit=7")
            .resolved();
    assertThat(read(resolved.toString()).resolved()).hasToString(resolved.toString());
    assertThat(resolved.get("sound")).contains("oʊ");
    assertThat(resolved.get("shape")).contains("cvc");
    assertThat(resolved.get("include")).contains("names,inflected");
    assertThat(resolved.get("meaning")).contains("animal,food");
    assertThat(resolved.get("mark")).contains("starter");
    assertThat(resolved.get("taught")).contains("oo,sh");
    assertThat(resolved.get("rules"))
        .contains("doubled,no-ck,tch-as-ch,s-as-z,n-before-k,x,reduced-vowels,no-inflected-forms");
  }

  @Test
  void tellsOneQuestionInOneWay() {
    assertThat(read("taught=oo3,oo2,oo1&letters=3&phonogram=Sh&value=1").resolved())
        .hasToString(read("phonogram=sh&letters=3-3&taught=oo").resolved().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          phonogram=ao                   | UNKNOWN_PHONOGRAM  | phonogram  | oa
          phonogram=i_e                  | UNKNOWN_PHONOGRAM  | phonogram  | i-e
          phonogram=💩                   | UNKNOWN_PHONOGRAM  | phonogram  |
          phonogram=oo&value=9           | UNKNOWN_VALUE      | value      | 3
          phonogram=oa&value=0           | UNKNOWN_VALUE      | value      | 1
          phonogram=oa&value=two         | INVALID_PARAMETER  | value      |
          phonogram=oa&value=99999999999 | INVALID_PARAMETER  | value      |
          value=1                        | INVALID_PARAMETER  | value      |
          phonogram=                     | INVALID_PARAMETER  | phonogram  |
          rime=zzyzx                     | INVALID_PARAMETER  | rime       |
          rime=c4t                       | INVALID_WORD       | rime       |
          accent=en-UK                   | UNKNOWN_ACCENT     | accent     | en-US
          accent=en-US,                  | UNKNOWN_ACCENT     | accent     | en-US
          sound=sh                       | UNKNOWN_SOUND      | sound      | ʃ
          sound=ʘ                        | UNKNOWN_SOUND      | sound      |
          sound=k s                      | INVALID_PARAMETER  | sound      |
          shape=cvx                      | UNKNOWN_SHAPE      | shape      | cvc
          shape=kitten                   | UNKNOWN_SHAPE      | shape      |
          letters=0                      | INVALID_PARAMETER  | letters    |
          letters=5-3                    | INVALID_PARAMETER  | letters    |
          letters=sàt                    | INVALID_PARAMETER  | letters    |
          syllables=many                 | INVALID_PARAMETER  | syllables  |
          position=start                 | INVALID_PARAMETER  | position   |
          phonogram=oa&position=last     | INVALID_PARAMETER  | position   |
          commonness=6                   | INVALID_PARAMETER  | commonness |
          status=Approved                | INVALID_PARAMETER  | status     | approved
          include=name                   | INVALID_PARAMETER  | include    | names
          picturable=4                   | INVALID_PARAMETER  | picturable |
          pictured=yes                   | INVALID_PARAMETER  | pictured   |
          part-of-speech=nown            | INVALID_PARAMETER  | part-of-speech | noun
          meaning=animals                | INVALID_PARAMETER  | meaning    | animal
          meaning=animal,                | INVALID_PARAMETER  | meaning    |
          mark=started                   | INVALID_PARAMETER  | mark       | starter
          differs-in=en-US               | INVALID_PARAMETER  | differs-in |
          differs-in=en-XX               | UNKNOWN_ACCENT     | differs-in | en-US
          rules=no-doubles               | UNKNOWN_RULE       | rules      | no-doubled
          rules=ck,no-ck                 | INVALID_PARAMETER  | rules      |
          taught=sh,hc                   | UNKNOWN_PHONOGRAM  | taught     | ch
          taught=oo7                     | UNKNOWN_VALUE      | taught     | 3
          sort=length                    | INVALID_PARAMETER  | sort       |
          limit=501                      | INVALID_PARAMETER  | limit      |
          limit=+5                       | INVALID_PARAMETER  | limit      |
          phonograms=oa                  | UNKNOWN_PARAMETER  | phonograms | phonogram
          q=oa                           | UNKNOWN_PARAMETER  | q          |
          sort=default&sort=letters      | REPEATED_PARAMETER | sort       |
          after=abc                      | INVALID_CURSOR     | after      |
          after=AAAAAQAAAAEAAAAB         | INVALID_CURSOR     | after      |
          """)
  void saysWhatIsWrongAndWhatIsNearest(
      String query, ProblemType type, String parameter, String nearest) {
    List<ValidationError> errors = errors(query);
    assertThat(errors).hasSize(1);
    assertThat(errors.get(0).type()).isEqualTo(type);
    assertThat(errors.get(0).parameter()).isEqualTo(parameter);
    assertThat(errors.get(0).nearest()).isEqualTo(Optional.ofNullable(nearest));
    assertThat(errors.get(0).message()).contains(nearest == null ? "." : nearest);
  }

  @Test
  void findsAllFaultsOfAQuestion() {
    assertThat(errors("phonogram=ao&accent=xx&limit=0&sorted=no"))
        .extracting(ValidationError::parameter)
        .containsExactlyInAnyOrder("sorted", "phonogram", "accent", "limit");
  }

  @Test
  void repeatsNothingThatCannotBeSeen() {
    assertThat(errors("phonogram=%00%E2%80%AE%0A").get(0).message())
        .doesNotContain("\u0000", "\u202e", "\n");
    assertThat(errors("phonogram=" + "a".repeat(3000)).get(0).message()).hasSizeLessThan(200);
  }

  @Test
  void goesThroughAListByItsCursors() {
    List<Word> words = new ArrayList<>();
    Optional<String> after = Optional.of("");
    while (after.isPresent()) {
      WordList page = WordList.find(lexicon, read("phonogram=oa&limit=7" + after.get()));
      words.addAll(page.words());
      after = page.next().map("&after="::concat);
    }
    WordList whole = WordList.find(lexicon, read("phonogram=oa&limit=500"));
    assertThat(words).isEqualTo(whole.words()).hasSize(whole.total()).hasSizeGreaterThan(40);
  }

  @Test
  void takesACursorToNoOtherList() {
    String next = WordList.find(lexicon, read("phonogram=oa&limit=7")).next().orElseThrow();
    assertThat(read("phonogram=oa&limit=50&after=" + next).offset()).isEqualTo(7);
    assertThat(errors("phonogram=ee&limit=7&after=" + next).get(0).type())
        .isEqualTo(ProblemType.INVALID_CURSOR);
  }

  @Test
  void findsTheWordsThatSayASound() {
    assertThat(spellings("sound=ɑ&taught=oo&limit=500")).contains("hot").doesNotContain("dog");
    assertThat(spellings("sound=ʃ&limit=500")).contains("ship", "chef").doesNotContain("sip");
    assertThat(spellings("sound=AY&position=end&letters=3")).contains("pie", "sky");
  }

  @Test
  void findsTheWordsOfAPhonogramThatAlsoSayASound() {
    assertThat(spellings("phonogram=ee&sound=p&limit=500"))
        .contains("sleep", "keep")
        .doesNotContain("feet");
  }

  /**
   * Words that rhyme by letters as well; that <em>was</em> and <em>gas</em>, <em>have</em> and
   * <em>cave</em>, <em>bear</em> and <em>hair</em> don't is from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "rime=cat, 'cat hat mat flat', 'what can cap'",
    "rime=gas, gas, was",
    "rime=cake&phonogram=a-e, 'lake snake make', 'cave break'",
    "rime=cave&phonogram=a-e, 'wave save', have",
    "rime=bear&rules=reduced-vowels&taught=air;ear, pear, 'hair fear'",
    "rime=ring&phonogram=ng, 'king sing', 'song bang'"
  })
  void findsWordsThatEndAlike(String query, String alike, String others) {
    assertThat(spellings(query.replace(';', ',') + "&limit=500"))
        .contains(alike.split(" "))
        .doesNotContain(others.split(" "));
  }

  private List<String> spellings(String query) {
    return WordList.find(lexicon, read(query)).words().stream().map(Word::spelling).toList();
  }

  private WordRequest read(String query) {
    return WordRequest.read(lexicon, new Parameters(parsed(query), WordParameters.NAMES));
  }

  private List<ValidationError> errors(String query) {
    return catchThrowableOfType(InvalidQueryException.class, () -> read(query)).errors();
  }

  private static Map<String, List<String>> parsed(String query) {
    Map<String, List<String>> parameters = new LinkedHashMap<>();
    Arrays.stream(query.split("&", -1))
        .map(pair -> pair.split("=", 2))
        .forEach(
            pair ->
                parameters.computeIfAbsent(pair[0], x -> new ArrayList<>()).add(decoded(pair[1])));
    return parameters;
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
  }
}
