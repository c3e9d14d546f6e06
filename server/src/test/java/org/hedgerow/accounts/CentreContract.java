package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of a centre's choices wherever they are kept. */
public abstract class CentreContract {
  private AccountServices services;

  /** One of a centre about which nobody said anything. */
  protected abstract AccountRepository book();

  @BeforeEach
  void open() {
    services = AccountServices.of(book(), new PlainHash(), new SettableClock());
  }

  private Centre change(Optional<String> name, Optional<Integer> approvals) {
    return services
        .centre()
        .change(Actor.OPERATOR, new CentreEdit(name, approvals), centre -> true);
  }

  private List<AuditRecord> records() {
    return services.audit().find(Actor.OPERATOR, AuditQuery.newest(50)).items();
  }

  @Test
  void hasNoNameAndOneApprovalAtFirst() {
    assertThat(services.centre().read()).isEqualTo(Centre.UNNAMED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Hawthorn", "مركز الزعرور", "山楂中心", "x", " ab  c "})
  void isCalledAsItLikes(String name) {
    change(Optional.of(name), Optional.empty());
    assertThat(services.centre().read().name()).contains(name.strip().replaceAll(" +", " "));
    assertThat(services.centre().read().approvals()).isEqualTo(1);
  }

  @Test
  void recordsOnlyWhatChanged() {
    change(Optional.of("Hawthorn"), Optional.empty());
    change(Optional.of("Hawthorn"), Optional.of(2));
    Centre last = change(Optional.of("Hawthorn"), Optional.of(2));
    assertThat(last.version()).isEqualTo(3);
    assertThat(records())
        .extracting(AuditRecord::action)
        .containsExactly("centre.changed", "centre.changed");
    assertThat(records().get(0).before()).isEqualTo(Map.of("approvals", 1));
    assertThat(records().get(0).after()).isEqualTo(Map.of("approvals", 2));
    assertThat(records().get(1).before()).isEqualTo(Map.of("name", ""));
    assertThat(records().get(1).after()).isEqualTo(Map.of("name", "Hawthorn"));
  }

  @Test
  void refusesWhatMakesNoSense() {
    for (String name : List.of("", "  ", "x".repeat(81), "Haw\u202Ethorn", "a\u0000b")) {
      assertThatThrownBy(() -> change(Optional.of(name), Optional.empty()))
          .isInstanceOf(RejectedException.class);
    }
    for (int approvals : new int[] {-1, 0, 3}) {
      assertThatThrownBy(() -> change(Optional.empty(), Optional.of(approvals)))
          .isInstanceOf(RejectedException.class);
    }
    assertThat(services.centre().read()).isEqualTo(Centre.UNNAMED);
    assertThat(records()).isEmpty();
  }

  @Test
  void whoeverIsLateChangesNothing() {
    Centre seen = services.centre().read();
    change(Optional.of("Hawthorn"), Optional.empty());
    assertThatThrownBy(
            () ->
                services
                    .centre()
                    .change(
                        Actor.OPERATOR,
                        new CentreEdit(Optional.of("Blackthorn"), Optional.of(2)),
                        seen::equals))
        .isInstanceOf(StaleUpdateException.class)
        .hasMessageContaining("“Hawthorn”");
    assertThat(services.centre().read().name()).contains("Hawthorn");
    assertThat(records()).hasSize(1);
  }

  @Test
  void isForAdministratorsOnly() {
    assertThatThrownBy(
            () ->
                services
                    .centre()
                    .change(
                        Actor.VISITOR,
                        new CentreEdit(Optional.of("Blackthorn"), Optional.empty()),
                        centre -> true))
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void anotherServerLearnsWhatChanged() {
    try (CachedCentre here = new CachedCentre(services.centre());
        CachedCentre there = new CachedCentre(services.centre())) {
      here.change(
          Actor.OPERATOR,
          new CentreEdit(Optional.of("Hawthorn"), Optional.empty()),
          centre -> true);
      assertThat(here.name()).isEqualTo("Hawthorn");
      assertThat(there.name()).isEmpty();
      there.look();
      assertThat(there.name()).isEqualTo("Hawthorn");
    }
  }
}
