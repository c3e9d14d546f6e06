package org.hedgerow.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.AuditLog;
import org.hedgerow.operations.Role;

/** Keeps contributions in memory, one transaction after another. */
final class MemoryReviewRepository implements ReviewRecords, ReviewRepository {
  private final TreeMap<Integer, Contribution> contributions = new TreeMap<>();
  private final List<Decision> decisions = new ArrayList<>();
  private final Map<String, Upload> uploads = new HashMap<>();
  private final Map<String, Integer> senders = new HashMap<>();
  private final List<AuditEntry> audit = new ArrayList<>();
  private final MemoryBank bank = new MemoryBank();
  private int accounts;
  private int begun;

  @Override
  public synchronized <R> R inTransaction(Function<ReviewUnitOfWork, R> work) {
    Map<Integer, Contribution> before = new TreeMap<>(contributions);
    int decided = decisions.size();
    int recorded = audit.size();
    int edition = bank.newest();
    try {
      return work.apply(new Page());
    } catch (RuntimeException failure) {
      contributions.clear();
      contributions.putAll(before);
      decisions.subList(decided, decisions.size()).clear();
      audit.subList(recorded, audit.size()).clear();
      bank.returnTo(edition);
      throw failure;
    }
  }

  @Override
  public ReviewRepository book() {
    return this;
  }

  @Override
  public Account account(String name, String displayName, Role role) {
    return new Account(++accounts, name, displayName, role, true, Instant.EPOCH);
  }

  @Override
  public int newestEdition() {
    return bank.newest();
  }

  @Override
  public List<String> audit() {
    return audit.stream().map(each -> each.actor().name() + " " + each.action()).toList();
  }

  @Override
  public String auditInFull() {
    return audit.toString();
  }

  private final class Page implements ReviewUnitOfWork {
    @Override
    public ContributionStore contributions() {
      return new Contributions();
    }

    @Override
    public DecisionStore decisions() {
      return new Decisions();
    }

    @Override
    public UploadStore uploads() {
      return new Uploads();
    }

    @Override
    public BankStore bank() {
      return bank;
    }

    @Override
    public CurriculumStore curriculum() {
      return bank.curriculum();
    }

    @Override
    public AuditLog audit() {
      return audit::add;
    }
  }

  private final class Contributions implements ContributionStore {
    @Override
    public Contribution add(Content content, Person author, Instant now) {
      Contribution draft =
          new Contribution(
              ++begun,
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
      contributions.put(draft.id(), draft);
      return draft;
    }

    @Override
    public Optional<Contribution> find(int id) {
      return Optional.ofNullable(contributions.get(id));
    }

    @Override
    public Optional<Contribution> lock(int id) {
      return find(id);
    }

    @Override
    public void save(Contribution contribution) {
      contributions.put(contribution.id(), contribution);
    }

    @Override
    public void remove(int id) {
      contributions.remove(id);
    }

    @Override
    public List<Contribution> find(ContributionQuery query) {
      return contributions.values().stream()
          .filter(each -> isWanted(each, query))
          .sorted(Comparator.comparing(Contribution::id).reversed())
          .limit(query.limit())
          .toList();
    }

    private static boolean isWanted(Contribution each, ContributionQuery query) {
      int author = each.author().accountId();
      return (each.state() != ContributionState.DRAFT || author == query.viewerId())
          && (query.states().isEmpty() || query.states().contains(each.state()))
          && query.kind().stream().allMatch(each.kind()::equals)
          && query.authorId().stream().allMatch(id -> id == author)
          && query.serves().stream().allMatch(each.serves()::contains)
          && query.about().stream().allMatch(each.proposal().subject()::equals)
          && query.before().stream().allMatch(id -> each.id() < id);
    }

    @Override
    public Map<String, List<Contribution>> undecided(int authorId, Set<String> subjects) {
      return contributions.values().stream()
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
      return contributions.values().stream()
          .filter(each -> each.state() == ContributionState.SUBMITTED)
          .filter(each -> subjects.contains(each.proposal().subject()))
          .collect(Collectors.groupingBy(each -> each.proposal().subject()));
    }
  }

  private final class Decisions implements DecisionStore {
    @Override
    public Decision add(Contribution on, NewDecision decision, Person by, Instant at) {
      Decision added =
          new Decision(
              decisions.size() + 1,
              on.id(),
              on.revision(),
              decision.kind(),
              by,
              at,
              decision.comment(),
              decision.overruled(),
              decision.edition());
      decisions.add(added);
      return added;
    }

    @Override
    public List<Decision> on(int contributionId) {
      return decisions.stream().filter(each -> each.contributionId() == contributionId).toList();
    }
  }

  private final class Uploads implements UploadStore {
    @Override
    public void add(Upload upload, int accountId, Instant now) {
      uploads.putIfAbsent(upload.id(), upload);
      senders.putIfAbsent(upload.id(), accountId);
    }

    private static boolean shows(Contribution contribution, String upload) {
      return contribution.state() != ContributionState.DRAFT
          && contribution.proposal() instanceof NewPicture picture
          && picture.upload().equals(upload);
    }

    @Override
    public Optional<Upload> visible(String id, int accountId) {
      return find(id)
          .filter(
              upload ->
                  Objects.equals(senders.get(id), accountId)
                      || contributions.values().stream().anyMatch(each -> shows(each, id)));
    }

    @Override
    public Optional<Upload> find(String id) {
      return Optional.ofNullable(uploads.get(id));
    }
  }
}
