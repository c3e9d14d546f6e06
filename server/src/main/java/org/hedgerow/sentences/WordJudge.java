package org.hedgerow.sentences;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Subject;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;

/**
 * Judges the words of sentences for one phonogram value. A word is a target if it passes as one;
 * else phonetic, or taught, if it passes with no phonogram wanted; else a sight word, unless it
 * holds the letters of the phonogram with another value, for values are never mixed; else blocked.
 * It remembers what it judged; safe for use by several threads.
 */
public final class WordJudge {

  /** What makes a sight word unfit for a sentence: it mixes values, or says the target twice. */
  private static final Set<FindingCode> MIXED =
      Set.of(FindingCode.OTHER_VALUE, FindingCode.REPEATED_TARGET);

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
    return judged.computeIfAbsent(word, this::judgeNew);
  }

  private JudgedWord judgeNew(String word) {
    Subject subject = lexicon.subject(word);
    boolean wanted = !standard.standard().targets().isEmpty();
    Check asTarget = check(subject, standard.standard());
    if (wanted && asTarget.verdict() != Verdict.FAIL) {
      return judged(asTarget, TokenJudgement.TARGET);
    }
    Check asOther = wanted ? check(subject, standard.withoutTarget()) : asTarget;
    if (asOther.verdict() != Verdict.FAIL) {
      return judged(asOther, phoneticOrTaught(subject));
    }
    boolean mixed = asTarget.findings().stream().anyMatch(each -> MIXED.contains(each.code()));
    if (standard.sightWords().contains(word) && !mixed) {
      return new JudgedWord(word, TokenJudgement.SIGHT_WORD, Verdict.PASS, List.of(), false);
    }
    return judged(mixed ? asTarget : asOther, TokenJudgement.BLOCKED);
  }

  private TokenJudgement phoneticOrTaught(Subject subject) {
    return standard.standard().taught().isEmpty()
            || check(subject, standard.withoutTaught()).verdict() != Verdict.FAIL
        ? TokenJudgement.PHONETIC
        : TokenJudgement.TAUGHT;
  }

  private Check check(Subject subject, Standard measure) {
    return checker.check(subject, measure, standard.accents());
  }

  private static JudgedWord judged(Check check, TokenJudgement judgement) {
    return new JudgedWord(
        check.word(), judgement, check.verdict(), check.findings(), check.guessed());
  }
}
