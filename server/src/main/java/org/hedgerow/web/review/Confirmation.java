package org.hedgerow.web.review;

/** What was just done, as the address after it says. */
final class Confirmation {
  private Confirmation() {}

  static String of(String done) {
    return switch (done) {
      case "saved" -> "Saved.";
      case "submitted" -> "Sent. A reviewer will look at it; you can take it back until then.";
      case "taken-back" -> "Taken back. It is a draft again.";
      case "discarded" -> "The draft is gone.";
      case "approve" -> "Approved: it is in the bank.";
      case "vote" -> "Approved by you. Another reviewer must agree before it is in the bank.";
      case "return" -> "Returned with your comment.";
      case "decline" -> "Declined.";
      case "overrule" -> "Overruled. The reason stays on the entry.";
      case "withdraw" -> "Taken out of the bank again.";
      case "reopen" -> "Opened again: it waits for a decision.";
      default -> "";
    };
  }
}
