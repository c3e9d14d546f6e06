package org.hedgerow.sentences;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Verdict;

/**
 * Judges sentences: every word, how often the phonogram comes up, the form. Remembers the words it
 * judged; safe for use by several threads.
 */
public final class SentenceChecker {

  private final SentenceStandard standard;
  private final WordJudge judge;
  private final SentenceRules rules;
  private final Replacements replacements;

  public SentenceChecker(Lexicon lexicon, SentenceStandard standard) {
    this.standard = standard;
    this.judge = new WordJudge(lexicon, standard);
    this.rules = new SentenceRules(standard);
    this.replacements = new Replacements(lexicon, standard, judge);
  }

  /**
   * @param text one sentence, of any length and script
   */
  public SentenceCheck check(String text) {
    List<JudgedToken> tokens = Tokenizer.tokens(text).stream().map(this::judged).toList();
    int targets = (int) tokens.stream().filter(each -> each.is(TokenJudgement.TARGET)).count();
    List<SentenceFinding> findings = rules.find(tokens, targets);
    boolean lacking = targets < standard.minimumTargets();
    Set<String> present =
        tokens.stream().map(token -> plain(token.token().text())).collect(toUnmodifiableSet());
    return new SentenceCheck(
        text,
        verdict(tokens, findings),
        targets,
        tokens.stream().map(token -> withReplacements(token, present, lacking)).toList(),
        findings);
  }

  private JudgedToken judged(Token token) {
    return new JudgedToken(
        token,
        token.kind() == Token.Kind.WORD
            ? Optional.of(judge.judge(plain(token.text())))
            : Optional.empty(),
        List.of());
  }

  private JudgedToken withReplacements(JudgedToken token, Set<String> present, boolean lacking) {
    return token.is(TokenJudgement.BLOCKED) || token.isGuessed()
        ? new JudgedToken(
            token.token(),
            token.word(),
            replacements.of(plain(token.token().text()), present, lacking))
        : token;
  }

  /** In lower case, with the apostrophe of typewriters. */
  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('\u2019', '\'');
  }

  private static Verdict verdict(List<JudgedToken> tokens, List<SentenceFinding> findings) {
    List<Verdict> all = new ArrayList<>();
    tokens.forEach(token -> token.word().ifPresent(word -> all.add(word.verdict())));
    findings.forEach(finding -> all.add(finding.code().verdict()));
    return Stream.concat(Stream.of(Verdict.PASS), all.stream()).reduce(Verdict.PASS, Verdict::and);
  }
}
