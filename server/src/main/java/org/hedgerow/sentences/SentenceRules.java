package org.hedgerow.sentences;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.sentences.SentenceFinding.Code;
import org.hedgerow.sentences.Token.Kind;

/** What a sentence must be beside having words that can be read. */
final class SentenceRules {

  private static final Set<String> FINAL = Set.of(".", "?", "!", "\u2026");

  /** What may follow the final mark: the end of what somebody says. */
  private static final Set<String> CLOSING = Set.of("\"", "'", "\u201d", "\u2019", ")");

  private final SentenceStandard standard;

  SentenceRules(SentenceStandard standard) {
    this.standard = standard;
  }

  List<SentenceFinding> find(List<JudgedToken> tokens, int targets) {
    List<Token> words = words(tokens);
    if (words.isEmpty()) {
      return List.of(whole(Code.NO_WORDS, "There is nothing to read. Type a sentence."));
    }
    List<SentenceFinding> found = new ArrayList<>();
    Stream.of(blocked(tokens), targets(targets), length(words), capital(words), mark(tokens))
        .flatMap(Optional::stream)
        .forEach(found::add);
    tokens.forEach(token -> token(token.token()).ifPresent(found::add));
    return found;
  }

  private static List<Token> words(List<JudgedToken> tokens) {
    return tokens.stream()
        .map(JudgedToken::token)
        .filter(token -> token.kind() == Kind.WORD || token.kind() == Kind.NUMBER)
        .toList();
  }

  private static SentenceFinding whole(Code code, String message) {
    return new SentenceFinding(code, 0, 0, message);
  }

  private static Optional<SentenceFinding> blocked(List<JudgedToken> tokens) {
    String blocked =
        tokens.stream()
            .filter(token -> token.is(TokenJudgement.BLOCKED))
            .map(token -> token.token().text())
            .distinct()
            .limit(5)
            .collect(joining(", "));
    return blocked.isEmpty()
        ? Optional.empty()
        : Optional.of(
            whole(
                Code.BLOCKED_WORDS,
                "A child can't read this yet: %s. Put other words.".formatted(blocked)));
  }

  private Optional<SentenceFinding> targets(int count) {
    int wanted = standard.minimumTargets();
    if (standard.standard().targets().isEmpty() || count >= wanted) {
      return Optional.empty();
    }
    String message =
        "The phonogram %s; %d times are needed. Add %d more %s with it."
            .formatted(
                appears(count), wanted, wanted - count, wanted - count == 1 ? "word" : "words");
    return Optional.of(whole(Code.TOO_FEW_TARGETS, message));
  }

  private static String appears(int count) {
    return count == 0
        ? "doesn't appear"
        : count == 1 ? "appears once" : "appears %d times".formatted(count);
  }

  private Optional<SentenceFinding> length(List<Token> words) {
    int most = standard.maximumWords();
    return words.size() <= most
        ? Optional.empty()
        : Optional.of(
            whole(
                Code.TOO_LONG,
                "It has %d words; a strip has at most %d. Make it shorter, or allow more."
                    .formatted(words.size(), most)));
  }

  private static Optional<SentenceFinding> capital(List<Token> words) {
    Token first = words.get(0);
    return first.kind() == Kind.WORD && Character.isLowerCase(first.text().charAt(0))
        ? Optional.of(
            new SentenceFinding(
                Code.NO_CAPITAL,
                first.start(),
                first.end(),
                "A sentence starts with a capital letter."))
        : Optional.empty();
  }

  private static Optional<SentenceFinding> mark(List<JudgedToken> tokens) {
    int last = tokens.size() - 1;
    while (last > 0 && CLOSING.contains(tokens.get(last).token().text())) {
      last--;
    }
    Token end = tokens.get(last).token();
    return FINAL.contains(end.text())
        ? Optional.empty()
        : Optional.of(
            new SentenceFinding(
                Code.NO_FINAL_MARK,
                end.start(),
                end.end(),
                "A sentence ends with a full stop, a question mark or an exclamation mark."));
  }

  private static Optional<SentenceFinding> token(Token token) {
    return switch (token.kind()) {
      case NUMBER ->
          Optional.of(at(token, Code.NUMBER, "Write numbers as words, so that they are judged."));
      case OTHER ->
          Optional.of(
              at(token, Code.UNREADABLE, "Only letters of English can be read here. Take it out."));
      case WORD, MARK -> Optional.empty();
    };
  }

  private static SentenceFinding at(Token token, Code code, String message) {
    return new SentenceFinding(code, token.start(), token.end(), message);
  }
}
