package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The two lists that keep words out, held against words written down from memory. */
final class NamesAndUnfitDataTest {
  /** Words of first readers and picture cards, from memory. */
  private static final Set<String> CHILDRENS_WORDS =
      Set.of(
          ("cat dog hat bat rat mat pan fan van can map cap tap bag tag jam ham bed net pet hen pen leg peg egg bell"
                  + " shell ship shop fish dish chip chin chick duck sock rock clock block black truck brick king ring"
                  + " wing swing sun bus bug mug rug cup pup nut hut tub drum plum pig wig bin pin lip zip six box fox"
                  + " log frog mop top pot dot cot rain train snail tail boat goat coat road soap toad tree bee sheep"
                  + " feet queen green leaf seal beach moon spoon boot book hook foot light night knight knee knife"
                  + " lamb comb thumb bone rose nose home stone cone cake lake gate plane bike kite five slide cube"
                  + " tune mule star car farm shark fork horse corn bird girl shirt nurse purse turtle cow owl crown"
                  + " cloud house mouse boy toy coin point paw claw straw sauce whale wheel cheese peach chair bear"
                  + " pear witch ghost fairy bang ball doll teddy bunny kitty puppy mark bill jack frank china turkey"
                  + " hill fat cross fight dark cut blood poison robin holly ivy daisy lily poppy ray joey dice hump"
                  + " dong puss pansy shoot god bonfire cockerel peacock titmouse hello")
              .split(" ", -1));

  /**
   * Words no teacher puts on a card for a child of five, from memory; the worst are left out of
   * this page.
   */
  private static final Set<String> NOT_FOR_CHILDREN =
      Set.of(
          ("gun guns bomb bombed kill killed killing murder corpse coffin hell damn idiot stupid dumb moron sex sexy"
                  + " naked nude rape drunk beer wine rum gin whisky vodka cigar tobacco heroin cocaine drug drugs"
                  + " suicide torture terror terrorist slave hangman bum butt piss crap cock dick tit bitch bastard"
                  + " gamble casino noose stab strangle war rifle pistol bullet dead die died dying")
              .split(" ", -1));

  private static final Set<String> NAMES =
      Set.of("adam", "mary", "john", "peter", "london", "smithson", "monday", "french");

  private final SeedLexicon seed = SeedLexicon.bundled();
  private final List<String> nameList = seed.names().stream().map(NameRow::word).toList();
  private final List<String> unfitList = seed.unfit().stream().map(UnfitRow::word).toList();
  private final Set<String> names = Set.copyOf(nameList);
  private final Set<String> unfit = Set.copyOf(unfitList);

  @Test
  void areSortedWithoutRepetition() {
    Ordered.assertStrictly(nameList);
    Ordered.assertStrictly(unfitList);
  }

  @Test
  void namesComeFromTheDictionary() {
    Set<String> dictionary =
        seed.dictionary().stream().map(DictionaryEntry::word).collect(Collectors.toSet());

    assertThat(dictionary.containsAll(names)).isTrue();
  }

  @Test
  void leaveChildrensWordsAlone() {
    assertThat(CHILDRENS_WORDS).noneMatch(names::contains).noneMatch(unfit::contains);
  }

  @Test
  void leaveTheCommonestWordsAloneAsNames() {
    assertThat(seed.commonness())
        .filteredOn(row -> row.size() == 10 && names.contains(row.word()))
        .extracting(CommonnessRow::word)
        .containsExactly("french");
  }

  @Test
  void keepOutWhatTheyAreFor() {
    assertThat(NAMES).allMatch(names::contains);
    assertThat(NOT_FOR_CHILDREN).allMatch(unfit::contains);
  }
}
