import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.openapitools.client.ApiClient;
import org.openapitools.client.ApiException;
import org.openapitools.client.api.ChecksApi;
import org.openapitools.client.api.EditionsApi;
import org.openapitools.client.api.PlanningApi;
import org.openapitools.client.api.ReviewApi;
import org.openapitools.client.api.SentencesApi;
import org.openapitools.client.api.SoundsApi;
import org.openapitools.client.api.WordsApi;
import org.openapitools.client.model.*;

/** The guide's calls through the client that openapi-generator makes for Java. */
public final class Guide {
  private Guide() {}

  public static void main(String[] arguments) throws Exception {
    words(new WordsApi(client(null)));
    checks(new ChecksApi(client(null)));
    sentences(new SentencesApi(client(null)));
    sounds(new SoundsApi(client(null)));
    planning(new PlanningApi(client(null)));
    editions(new EditionsApi(client(null)));
    contribution(new ReviewApi(client("TOKEN")), new ReviewApi(client("REVIEWER")));
    picture(new WordsApi(client(null)), new ReviewApi(client("TOKEN")));
    System.out.println("The client for Java (openapi-generator) works.");
  }

  /** A client for a visitor, or for whoever's token is in a variable of the environment. */
  private static ApiClient client(String token) {
    ApiClient client = new ApiClient();
    client.updateBaseUri(System.getenv("HEDGEROW"));
    if (token != null) {
      client.setRequestInterceptor(
          request -> request.header("Authorization", "Bearer " + System.getenv(token)));
    }
    return client;
  }

  private static void words(WordsApi words) throws ApiException {
    WordList list = words.listWords(oa().build());
    require(list.getWords().size() == 5 && list.getTotal() > 5, "a list");
    require(list.getQuery().getAccent().size() == 2, "two accents");
    WordList rest = words.listWords(oa().after(list.getNext()).build());
    require(!rest.getWords().get(0).equals(list.getWords().get(0)), "the rest of a list");
    WordAnswer wool =
        words.getWord(WordsApi.APIGetWordRequest.newBuilder().spelling("wool").build());
    require(wool.getWord().getPronunciations().get(0).getSpans().size() == 3, "a word");
    require(
        words
                .listPhonograms(WordsApi.APIListPhonogramsRequest.newBuilder().build())
                .getPhonograms()
                .size()
            > 50,
        "phonograms");
    try {
      words.listWords(WordsApi.APIListWordsRequest.newBuilder().phonogram("ao").build());
      require(false, "a problem");
    } catch (ApiException problem) {
      require(problem.getCode() == 400, "a problem's status");
      require(problem.getResponseBody().contains("#unknown-phonogram"), "a problem's type");
    }
  }

  private static WordsApi.APIListWordsRequest.Builder oa() {
    return WordsApi.APIListWordsRequest.newBuilder()
        .phonogram("oa")
        .accent(List.of("en-US", "en-GB"))
        .taught(List.of("sh", "ch"))
        .limit(5);
  }

  private static void checks(ChecksApi checks) throws ApiException {
    WordChecks judged =
        checks.checkWords(
            ChecksApi.APICheckWordsRequest.newBuilder()
                .wordChecksRequest(
                    new WordChecksRequest().words(List.of("boat", "mishap")).phonogram("oa"))
                .build());
    require(judged.getChecks().get(0).getVerdict() == Check.VerdictEnum.PASS, "a check");
    require(!judged.getChecks().get(1).getFindings().isEmpty(), "findings");
    Alignment aligned =
        checks.alignWord(
            ChecksApi.APIAlignWordRequest.newBuilder()
                .alignmentRequest(new AlignmentRequest().spelling("moat").sounds("M OW T"))
                .build());
    require(aligned.getAligned() && aligned.getSpans().size() == 3, "an alignment");
  }

  private static void sentences(SentencesApi sentences) throws ApiException {
    JudgedSentence judged =
        sentences.checkSentence(
            SentencesApi.APICheckSentenceRequest.newBuilder()
                .sentenceChecksRequest(
                    new SentenceChecksRequest().text("The goat sat by the tree.").phonogram("oa"))
                .build());
    require(judged.getTargets() == 1, "a sentence");
    SentenceDrafts drafts =
        sentences.composeSentences(
            SentencesApi.APIComposeSentencesRequest.newBuilder()
                .sentenceDraftsRequest(
                    new SentenceDraftsRequest().phonogram("oa").count(2).seed(7L))
                .build());
    require(drafts.getSentences().size() == 2, "drafts");
    sentences.listSentences(
        SentencesApi.APIListSentencesRequest.newBuilder().phonogram("oa").value(1).build());
  }

  private static void sounds(SoundsApi sounds) throws ApiException {
    SoundList british =
        sounds.listSounds(SoundsApi.APIListSoundsRequest.newBuilder().accent("en-GB").build());
    require(british.getSounds().size() > 40, "sounds of British English");
    SoundFamily boat =
        sounds.getSound(SoundsApi.APIGetSoundRequest.newBuilder().sound("OW").build());
    require(boat.getSpellings().size() > 3, "a sound");
  }

  private static void planning(PlanningApi planning) throws ApiException {
    require(
        !planning
            .listRules(PlanningApi.APIListRulesRequest.newBuilder().build())
            .getRules()
            .isEmpty(),
        "rules");
    require(
        !planning
            .listSequences(PlanningApi.APIListSequencesRequest.newBuilder().build())
            .getSequences()
            .isEmpty(),
        "sequences");
    require(
        planning.listNeeds(PlanningApi.APIListNeedsRequest.newBuilder().build()).getNeeds().size()
            > 50,
        "needs");
  }

  private static void editions(EditionsApi editions) throws ApiException {
    EditionList list =
        editions.listEditions(EditionsApi.APIListEditionsRequest.newBuilder().limit(2).build());
    require(list.getEditions().size() == 2 && list.getNext() != null, "editions");
  }

  private static void contribution(ReviewApi member, ReviewApi reviewer) throws ApiException {
    WordProposal word =
        new WordProposal()
            .kind(WordProposal.KindEnum.WORD)
            .spelling("shoal")
            .addPronunciationsItem(new Saying().accent("en-US").sounds("SH OW L"));
    Contribution sent =
        member.addContribution(
            ReviewApi.APIAddContributionRequest.newBuilder()
                .newContribution(
                    new NewContribution()
                        .proposal(new Proposal(word))
                        .wantedFor("oa 1")
                        .submit(true))
                .build());
    require(sent.getState() == ContributionState.SUBMITTED, "a contribution");
    Contribution read =
        member.getContribution(
            ReviewApi.APIGetContributionRequest.newBuilder().id(sent.getId()).build());
    String sounds =
        read.getProposal().getWordProposal().getPronunciations().get(0).getSounds();
    require(sounds.equals("SH OW L"), "the sounds of a contribution");
    Contribution decided =
        reviewer.decide(
            ReviewApi.APIDecideRequest.newBuilder()
                .id(sent.getId())
                .ifMatch("\"1\"")
                .newDecision(new NewDecision().decision(DecisionKind.APPROVE))
                .build());
    require(decided.getState() == ContributionState.APPROVED, "a decision");
    DecisionResults late =
        reviewer.decideMany(
            ReviewApi.APIDecideManyRequest.newBuilder()
                .newDecisions(
                    new NewDecisions()
                        .addDecisionsItem(
                            new NumberedDecision()
                                .contribution(sent.getId())
                                .revision(1)
                                .decision(DecisionKind.APPROVE)))
                .build());
    require(
        late.getResults().get(0).getActualInstance() instanceof DecisionRefused,
        "a decision that comes too late");
  }

  private static void picture(WordsApi words, ReviewApi member) throws Exception {
    Picture picture =
        words
            .listWords(
                WordsApi.APIListWordsRequest.newBuilder().pictured(true).limit(1).build())
            .getWords()
            .get(0)
            .getPicture();
    Path file =
        words
            .getPicture(
                WordsApi.APIGetPictureRequest.newBuilder().id(picture.getId()).build())
            .toPath();
    require(Files.size(file) > 0, "a picture");
    Upload upload =
        member.sendPicture(
            ReviewApi.APISendPictureRequest.newBuilder()._file(file.toFile()).build());
    require(upload.getBytes() > 0, "a picture that was sent");
  }

  private static void require(boolean condition, String what) {
    if (!condition) {
      throw new AssertionError(what);
    }
  }
}
