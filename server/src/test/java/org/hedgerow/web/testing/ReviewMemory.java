package org.hedgerow.web.testing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditLog;
import org.hedgerow.review.BankStore;
import org.hedgerow.review.Change;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.ContributionStore;
import org.hedgerow.review.CurriculumStore;
import org.hedgerow.review.Decision;
import org.hedgerow.review.DecisionStore;
import org.hedgerow.review.NewDecision;
import org.hedgerow.review.NewPicture;
import org.hedgerow.review.Person;
import org.hedgerow.review.ReviewRepository;
import org.hedgerow.review.ReviewUnitOfWork;
import org.hedgerow.review.Upload;
import org.hedgerow.review.UploadStore;
import org.hedgerow.seed.SeededLexicon;

/** Contributions in memory, over an edition that grows; one transaction after the other. */
public final class ReviewMemory implements ReviewRepository, Editions {
  private final Supplier<Lexicon> first;
  private Shelf shelf = new Shelf();

  public ReviewMemory(Supplier<Lexicon> first) {
    this.first = first;
  }

  @Override
  public synchronized <R> R inTransaction(Function<ReviewUnitOfWork, R> work) {
    Shelf tried = shelf.copy();
    R result = work.apply(new Page(tried, first));
    shelf = tried;
    return result;
  }

  @Override
  public synchronized Lexicon newest() {
    return shelf.editions.isEmpty() ? first.get() : shelf.editions.get(shelf.editions.size() - 1);
  }

  @Override
  public synchronized Optional<Lexicon> at(int number) {
    int index = number - first.get().edition() - 1;
    if (index < -1 || index >= shelf.editions.size()) {
      return Optional.empty();
    }
    return Optional.of(index < 0 ? first.get() : shelf.editions.get(index));
  }

  @Override
  public EditionLog log() {
    return EditionLog.NONE;
  }

  private static final class Shelf {
    private final TreeMap<Integer, Contribution> contributions = new TreeMap<>();
    private final List<Decision> decisions = new ArrayList<>();
    private final Map<String, Upload> uploads = new HashMap<>();
    private final Map<String, Integer> senders = new HashMap<>();
    private final List<Sentence> sentences = new ArrayList<>(SeededLexicon.get().sentences().all());
    private final List<Lexicon> editions = new ArrayList<>();
    private Changes changes = Changes.NONE;
    private int lastId;

    Shelf copy() {
      Shelf copy = new Shelf();
      copy.contributions.putAll(contributions);
      copy.decisions.addAll(decisions);
      copy.uploads.putAll(uploads);
      copy.senders.putAll(senders);
      copy.sentences.clear();
      copy.sentences.addAll(sentences);
      copy.editions.addAll(editions);
      copy.changes = changes;
      copy.lastId = lastId;
      return copy;
    }
  }

  private record Page(Shelf shelf, Supplier<Lexicon> first)
      implements ReviewUnitOfWork, ContributionStore, DecisionStore, UploadStore, BankStore {
    @Override
    public ContributionStore contributions() {
      return this;
    }

    @Override
    public DecisionStore decisions() {
      return this;
    }

    @Override
    public UploadStore uploads() {
      return this;
    }

    @Override
    public void add(Upload upload, int accountId, Instant now) {
      shelf.uploads.put(upload.id(), upload);
      shelf.senders.put(upload.id(), accountId);
    }

    private static boolean shows(Contribution contribution, String upload) {
      return contribution.state() != ContributionState.DRAFT
          && contribution.proposal() instanceof NewPicture picture
          && picture.upload().equals(upload);
    }

    @Override
    public Optional<Upload> visible(String id, int accountId) {
      return Optional.ofNullable(shelf.uploads.get(id))
          .filter(
              upload ->
                  Objects.equals(shelf.senders.get(id), accountId)
                      || shelf.contributions.values().stream().anyMatch(each -> shows(each, id)));
    }

    @Override
    public Optional<Upload> find(String id) {
      return Optional.ofNullable(shelf.uploads.get(id));
    }

    @Override
    public BankStore bank() {
      return this;
    }

    @Override
    public CurriculumStore curriculum() {
      return new CurriculumStore() {
        @Override
        public Curriculum current() {
          return shelf.changes.curriculum().orElseGet(SeededLexicon::curriculum);
        }

        @Override
        public int publish(Curriculum changed, String summary, Actor by, Instant at) {
          int edition = newest().edition() + 1;
          shelf.changes =
              shelf.changes.and(
                  new Changes(
                      List.of(), Set.of(), Optional.of(changed), List.of(), Optional.empty()));
          shelf.editions.add(first.get().edition(edition, shelf.changes));
          return edition;
        }
      };
    }

    @Override
    public AuditLog audit() {
      return entry -> {};
    }

    @Override
    public Contribution add(Content content, Person author, Instant now) {
      Contribution draft =
          new Contribution(
              ++shelf.lastId,
              content,
              ContributionState.DRAFT,
              1,
              author,
              now,
              now,
              Optional.empty(),
              List.of(),
              List.of(),
              OptionalInt.empty());
      save(draft);
      return draft;
    }

    @Override
    public Optional<Contribution> find(int id) {
      return Optional.ofNullable(shelf.contributions.get(id));
    }

    @Override
    public Optional<Contribution> lock(int id) {
      return find(id);
    }

    @Override
    public void save(Contribution contribution) {
      shelf.contributions.put(contribution.id(), contribution);
    }

    @Override
    public void remove(int id) {
      shelf.contributions.remove(id);
    }

    @Override
    public List<Contribution> find(ContributionQuery query) {
      return shelf.contributions.descendingMap().values().stream()
          .filter(
              each ->
                  each.state() != ContributionState.DRAFT
                      || each.author().accountId() == query.viewerId())
          .filter(each -> query.states().isEmpty() || query.states().contains(each.state()))
          .filter(each -> query.kind().filter(kind -> kind != each.kind()).isEmpty())
          .filter(
              each ->
                  query.authorId().orElse(each.author().accountId()) == each.author().accountId())
          .filter(each -> query.serves().isEmpty() || each.serves().contains(query.serves().get()))
          .filter(
              each -> query.about().filter(it -> !it.equals(each.proposal().subject())).isEmpty())
          .filter(each -> each.id() < query.before().orElse(Integer.MAX_VALUE))
          .limit(query.limit())
          .toList();
    }

    @Override
    public Map<String, List<Contribution>> undecided(int authorId, Set<String> subjects) {
      return shelf.contributions.values().stream()
          .filter(
              each ->
                  each.state() == ContributionState.SUBMITTED
                      || each.state() == ContributionState.DRAFT)
          .filter(each -> each.author().accountId() == authorId)
          .filter(each -> subjects.contains(each.proposal().subject()))
          .collect(Collectors.groupingBy(each -> each.proposal().subject()));
    }

    @Override
    public void lockAuthor(int authorId) {
      // One transaction at a time.
    }

    @Override
    public Map<String, List<Contribution>> waitingAbout(Set<String> subjects) {
      return shelf.contributions.values().stream()
          .filter(each -> each.state() == ContributionState.SUBMITTED)
          .filter(each -> subjects.contains(each.proposal().subject()))
          .collect(Collectors.groupingBy(each -> each.proposal().subject()));
    }

    @Override
    public Decision add(Contribution on, NewDecision decision, Person by, Instant at) {
      Decision added =
          new Decision(
              shelf.decisions.size() + 1,
              on.id(),
              on.revision(),
              decision.kind(),
              by,
              at,
              decision.comment(),
              decision.overruled(),
              decision.edition());
      shelf.decisions.add(added);
      return added;
    }

    @Override
    public List<Decision> on(int contributionId) {
      return shelf.decisions.stream()
          .filter(each -> each.contributionId() == contributionId)
          .toList();
    }

    @Override
    public void lock() {
      // One transaction comes after the other anyway.
    }

    @Override
    public Optional<Word> word(String spelling) {
      return newest().word(spelling);
    }

    private Lexicon newest() {
      return shelf.editions.isEmpty()
          ? first.get()
          : at(first.get().edition() + shelf.editions.size());
    }

    private Lexicon at(int edition) {
      int index = edition - first.get().edition() - 1;
      return index < 0 ? first.get() : shelf.editions.get(index);
    }

    @Override
    public Optional<Word> word(String spelling, int edition) {
      return at(edition).word(spelling);
    }

    @Override
    public Optional<Sentence> sentence(String text) {
      return shelf.sentences.stream().filter(each -> each.text().equals(text)).findFirst();
    }

    @Override
    public Optional<Sentence> sentence(String text, int edition) {
      return sentence(text);
    }

    @Override
    public int publish(Change change, String summary, Actor by, int contributionId, Instant at) {
      int edition = newest().edition() + 1;
      List<Word> words = change.words().stream().map(word -> since(word, edition)).toList();
      shelf.sentences.addAll(change.sentences());
      shelf.sentences.removeIf(each -> change.withdrawnSentences().contains(each.text()));
      shelf.changes =
          shelf.changes.and(
              new Changes(
                  words,
                  Set.copyOf(change.withdrawnWords()),
                  Optional.empty(),
                  change.pictures(),
                  Optional.of(new Sentences(shelf.sentences))));
      shelf.editions.add(first.get().edition(edition, shelf.changes));
      return edition;
    }

    private static Word since(Word word, int edition) {
      return new Word(
          word.spelling(),
          word.status(),
          word.commonness(),
          edition,
          word.tags(),
          word.pronunciations());
    }
  }
}
