package org.hedgerow.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;

import java.util.List;

/** Changes the bytes of a body, written as one character each. */
final class TextMutation {
  private final Dice dice;

  TextMutation(Dice dice) {
    this.dice = dice;
  }

  String mutated(String body) {
    int place = dice.below(body.length() + 1);
    String before = body.substring(0, place);
    String after = body.substring(place);
    return switch (dice.below(17)) {
      case 0 -> "";
      case 1 -> before;
      case 2 -> after;
      case 3 -> body + "x";
      case 4 -> body + body;
      case 5 -> "\u00ef\u00bb\u00bf" + body;
      case 6 -> new String(body.getBytes(UTF_16), ISO_8859_1);
      case 7 -> before + "\u0000" + after;
      case 8 -> before + "\u00ff" + after;
      case 9 -> before + "\"" + after;
      case 10 -> before + dice.any(Nasty.ENCODINGS) + after;
      case 11 -> "[".repeat(dice.any(List.of(50, 1100, 50_000))) + body;
      case 12 -> body.replace("\":\"", "\":\"\\ud800");
      case 13 -> body.replaceFirst("\\{\"(\\w+)\":", "{\"$1\":1,\"$1\":");
      case 14 -> body.replaceFirst(":[0-9]+", ":" + "9".repeat(2000));
      case 15 -> "{\"a\":".repeat(1500) + body;
      default -> before + (char) dice.below(256) + after;
    };
  }
}
