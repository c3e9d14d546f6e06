package org.hedgerow.sentences;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;

/**
 * Judges the words of sentences for one phonogram value. A word is a target if it passes as one;
 * else phonetic, or taught, if it passes with no phonogram wanted; else a sight word, unless it
 * holds the letters of the phonogram with another value, for values are never mixed; else blocked.
 * A word that nobody knows how to say, such as a letter by itself, is no target. It remembers what
 * it judged; safe for use by several threads.
 */
public final class WordJudge {

  /** What makes a sight word unfit for a sentence: it mixes values, or says the target twice. */
  private static final Set<FindingCode> MIXED =
      Set.of(FindingCode.OTHER_VALUE, FindingCode.REPEATED_TARGET);

  public static final char APOSTROPHE = '\'';
  private static final String OWNER = "'s";

  private final Lexicon lexicon;
  private final SentenceStandard standard;
  private final WordChecker checker;
  private final Map<String, JudgedWord> judged = new ConcurrentHashMap<>();

  public WordJudge(Lexicon lexicon, SentenceStandard standard) {
    this.lexicon = lexicon;
    this.standard = standard;
    this.checker = new WordChecker(lexicon.catalogue());
  }

  /**
   * @param word in lower case
   */
  public JudgedWord judge(String word) {
    JudgedWord known = judged.get(word);
    if (known == null) {
      known = judgeNew(word);
      judged.put(word, known);
    }
    return known;
  }

  /** The same, but not remembered. */
  public JudgedWord judgeOnce(String word) {
    JudgedWord known = judged.get(word);
    return known == null ? judgeNew(word) : known;
  }

  private JudgedWord judgeNew(String word) {
    if (word.indexOf(APOSTROPHE) >= 0) {
      return shortened(word);
    }
    CheckedWord subject = lexicon.subject(word);
    return subject.name().isEmpty() ? judge(subject) : name(subject);
  }

  private JudgedWord judge(CheckedWord subject) {
    boolean wanted = !standard.standard().targets().isEmpty();
    Check asTarget = check(subject, standard.standard());
    if (wanted && !subject.pronunciations().isEmpty() && asTarget.verdict() != Verdict.FAIL) {
      return judged(asTarget, TokenJudgement.TARGET);
    }
    Check asOther = wanted ? check(subject, standard.withoutTarget()) : asTarget;
    boolean mixed = asTarget.findings().stream().anyMatch(each -> MIXED.contains(each.code()));
    boolean sight = standard.sightWords().contains(subject.spelling()) && !mixed;
    if (asOther.verdict() == Verdict.PASS || (!sight && asOther.verdict() == Verdict.LOOK)) {
      return judged(asOther, phoneticOrTaught(subject));
    }
    return sight
        ? sightWord(subject.spelling())
        : judged(mixed ? asTarget : asOther, TokenJudgement.BLOCKED);
  }

  private static JudgedWord sightWord(String word) {
    return new JudgedWord(word, TokenJudgement.SIGHT_WORD, Verdict.PASS, List.of(), false);
  }

  /** A name is judged by its letters, and a person must look how it is said. */
  private JudgedWord name(CheckedWord subject) {
    JudgedWord judged = judge(subject.unnamed());
    List<Finding> findings = new ArrayList<>(judged.findings());
    findings.add(Finding.ofWord(FindingCode.NAME, "a name; look whether the child can read it"));
    return new JudgedWord(
        judged.word(),
        judged.judgement(),
        judged.verdict().and(Verdict.LOOK),
        findings,
        judged.guessed());
  }

  /** A sight word such as <em>don't</em>, or something of somebody's: <em>the toad's</em>. */
  private JudgedWord shortened(String word) {
    if (standard.sightWords().contains(word)) {
      return sightWord(word);
    }
    if (word.endsWith(OWNER)) {
      JudgedWord owner = judge(word.substring(0, word.length() - OWNER.length()));
      return new JudgedWord(
          word, owner.judgement(), owner.verdict(), owner.findings(), owner.guessed());
    }
    return new JudgedWord(
        word,
        TokenJudgement.BLOCKED,
        Verdict.FAIL,
        List.of(
            Finding.ofWord(
                FindingCode.IRREGULAR,
                "a shortened form, whose letters don't say its sounds; write it in full")),
        false);
  }

  private TokenJudgement phoneticOrTaught(CheckedWord subject) {
    return standard.standard().taught().isEmpty()
            || check(subject, standard.withoutTaught()).verdict() != Verdict.FAIL
        ? TokenJudgement.PHONETIC
        : TokenJudgement.TAUGHT;
  }

  private Check check(CheckedWord subject, Standard measure) {
    return checker.check(subject, measure, standard.accents());
  }

  private static JudgedWord judged(Check check, TokenJudgement judgement) {
    return new JudgedWord(
        check.word(), judgement, check.verdict(), check.findings(), check.guessed());
  }
}
