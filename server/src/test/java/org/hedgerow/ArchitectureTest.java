package org.hedgerow;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.InstantSource;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentMap;

/** The arrows between packages point downwards only, and the core stays pure. */
@AnalyzeClasses(packages = "org.hedgerow", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String[] PURE = {
    "org.hedgerow.phonics..",
    "org.hedgerow.reading..",
    "org.hedgerow.curriculum..",
    "org.hedgerow.lexicon..",
    "org.hedgerow.sentences.."
  };

  private static final String[] INPUT_OUTPUT = {
    "java.io..",
    "java.nio.file..",
    "java.nio.channels..",
    "java.net..",
    "java.sql..",
    "javax.sql..",
    "java.util.logging..",
    "org.slf4j.."
  };

  private static final String[] FRAMEWORKS = {
    "ch.qos..",
    "com.fasterxml..",
    "com.zaxxer..",
    "gg.jte..",
    "io.javalin..",
    "io.micrometer..",
    "jakarta..",
    "org.eclipse.jetty..",
    "org.flywaydb..",
    "org.jdbi..",
    "org.postgresql..",
    "picocli.."
  };

  private static final String WEB = "org.hedgerow.web.";

  private static final Set<String> COMPUTING =
      Set.of("compute", "computeIfAbsent", "computeIfPresent", "merge");

  @ArchTest
  static final ArchRule arrowsPointDownwards =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("app")
          .definedBy("org.hedgerow.app..")
          .layer("web")
          .definedBy("org.hedgerow.web..")
          .layer("store")
          .definedBy("org.hedgerow.store..")
          .layer("seed")
          .definedBy("org.hedgerow.seed..")
          .layer("seed lexicon")
          .definedBy("org.hedgerow.seedlexicon..")
          .layer("materials")
          .definedBy("org.hedgerow.materials..")
          .layer("review")
          .definedBy("org.hedgerow.review..")
          .layer("pictures")
          .definedBy("org.hedgerow.pictures..")
          .layer("accounts")
          .definedBy("org.hedgerow.accounts..")
          .layer("operations")
          .definedBy("org.hedgerow.operations..")
          .layer("sentences")
          .definedBy("org.hedgerow.sentences..")
          .layer("lexicon")
          .definedBy("org.hedgerow.lexicon..")
          .layer("curriculum")
          .definedBy("org.hedgerow.curriculum..")
          .layer("reading")
          .definedBy("org.hedgerow.reading..")
          .layer("phonics")
          .definedBy("org.hedgerow.phonics..")
          .whereLayer("app")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("web")
          .mayOnlyBeAccessedByLayers("app")
          .whereLayer("store")
          .mayOnlyBeAccessedByLayers("app")
          .whereLayer("seed")
          .mayOnlyBeAccessedByLayers("app")
          .whereLayer("seed lexicon")
          .mayOnlyBeAccessedByLayers("app", "seed")
          .whereLayer("materials")
          .mayOnlyBeAccessedByLayers("app", "web", "store", "seed")
          .whereLayer("review")
          .mayOnlyBeAccessedByLayers("app", "web", "store", "seed")
          .whereLayer("pictures")
          .mayOnlyBeAccessedByLayers("app", "web", "store", "seed", "materials", "review")
          .whereLayer("accounts")
          .mayOnlyBeAccessedByLayers("app", "web", "store", "seed", "materials", "review")
          .whereLayer("operations")
          .mayOnlyBeAccessedByLayers(
              "app", "web", "store", "seed", "materials", "review", "accounts")
          .whereLayer("sentences")
          .mayOnlyBeAccessedByLayers(
              "app", "web", "store", "seed", "materials", "review", "accounts")
          .whereLayer("lexicon")
          .mayOnlyBeAccessedByLayers(
              "app",
              "web",
              "store",
              "seed",
              "materials",
              "review",
              "accounts",
              "pictures",
              "sentences")
          .whereLayer("curriculum")
          .mayOnlyBeAccessedByLayers(
              "app",
              "web",
              "store",
              "seed",
              "materials",
              "review",
              "accounts",
              "sentences",
              "lexicon")
          .whereLayer("reading")
          .mayOnlyBeAccessedByLayers(
              "app",
              "web",
              "store",
              "seed",
              "materials",
              "review",
              "accounts",
              "sentences",
              "lexicon",
              "curriculum")
          .whereLayer("phonics")
          .mayOnlyBeAccessedByLayers(
              "app",
              "web",
              "store",
              "seed",
              "materials",
              "review",
              "accounts",
              "sentences",
              "lexicon",
              "curriculum",
              "reading");

  @ArchTest
  static final ArchRule packagesFormNoCycles =
      slices().matching("org.hedgerow.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule roomsOfTheStoreFormNoCycles =
      slices().matching("org.hedgerow.store.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule theDatabaseIsOpenedOutOfItsParts =
      noClasses()
          .that()
          .resideInAnyPackage("org.hedgerow.store.database", "org.hedgerow.store.embedded")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.hedgerow.store");

  @ArchTest
  static final ArchRule theCoreDoesNoInputOrOutput =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(INPUT_OUTPUT)
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule theCoreKnowsNoFramework =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(FRAMEWORKS)
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule theCoreHasNoClock =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(Clock.class, InstantSource.class)
          .orShould()
          .callMethodWhere(describe("the time of day is asked for", ArchitectureTest::asksForTime))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule onlyTheStoreTalksToTheDatabase =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.hedgerow.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.zaxxer..",
              "java.sql..",
              "javax.sql..",
              "org.flywaydb..",
              "org.jdbi..",
              "org.postgresql..");

  @ArchTest
  static final ArchRule onlyTheWebSpeaksHttp =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.hedgerow.web..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty..");

  /** The rooms of the web layer that users would name. */
  private static final Set<String> SUBJECTS =
      Set.of(
          "words",
          "phonograms",
          "sentences",
          "curriculum",
          "editions",
          "needs",
          "review",
          "people",
          "pictures",
          "docs");

  /** What the subjects share. */
  private static final Set<String> KIT =
      Set.of("http", "query", "page", "view", "chart", "edge", "problems", "security");

  /** Which puts the subjects together. */
  private static final String SITE = "site";

  @ArchTest
  static void subjectsOfTheWebKnowTheKitAndNotEachOther(JavaClasses classes) {
    for (String subject : SUBJECTS) {
      noneKnows(Set.of(subject), others(subject), classes);
    }
  }

  @ArchTest
  static void theKitOfTheWebKnowsNoSubject(JavaClasses classes) {
    noneKnows(KIT, others(""), classes);
  }

  @ArchTest
  static void everyRoomOfTheWebIsASubjectOrPartOfTheKit(JavaClasses classes) {
    Set<String> rooms = new TreeSet<>(SUBJECTS);
    rooms.addAll(KIT);
    rooms.add(SITE);
    assertThat(
            classes.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith(WEB))
                .map(name -> name.substring(WEB.length())))
        .isSubsetOf(rooms);
  }

  private static Set<String> others(String subject) {
    Set<String> others = new TreeSet<>(SUBJECTS);
    others.remove(subject);
    others.add(SITE);
    return others;
  }

  private static void noneKnows(Set<String> rooms, Set<String> unknown, JavaClasses classes) {
    noClasses()
        .that()
        .resideInAnyPackage(packages(rooms))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages(unknown))
        .check(classes);
  }

  private static String[] packages(Set<String> rooms) {
    return rooms.stream().map(room -> WEB + room + "..").toArray(String[]::new);
  }

  @ArchTest
  static final ArchRule onlyTheAppReadsTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.hedgerow.app..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  /** Whoever waits for a thread of the common pool waits for all that these threads wait for. */
  @ArchTest
  static final ArchRule nothingIsDoneByParallelStreams =
      noClasses()
          .should()
          .callMethodWhere(describe("a stream is parallel", ArchitectureTest::isParallel));

  /** See {@link org.hedgerow.caching.ComputingCache}. */
  @ArchTest
  static final ArchRule nothingIsComputedInsideACache =
      noClasses()
          .should()
          .callMethodWhere(describe("a cache computes", ArchitectureTest::computesInside));

  @ArchTest
  static final ArchRule cachesDoNotUseTheCommonPool =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.hedgerow.caching")
          .should()
          .callMethod(Caffeine.class, "newBuilder");

  private static boolean isParallel(JavaMethodCall call) {
    return call.getTarget().getName().startsWith("parallel")
        && call.getTargetOwner().getPackageName().startsWith("java.util");
  }

  /** By an interface of Caffeine, or in a concurrent map, by whichever type it is called. */
  private static boolean computesInside(JavaMethodCall call) {
    String method = call.getTarget().getName();
    if (call.getTargetOwner().getPackageName().equals(Caffeine.class.getPackageName())) {
      return method.startsWith("get") && call.getTarget().getRawParameterTypes().size() > 1;
    }
    return COMPUTING.contains(method)
        && (call.getTargetOwner().isAssignableTo(ConcurrentMap.class)
            || (call.getTargetOwner().isAssignableTo(Map.class)
                && makesConcurrentMaps(call.getOriginOwner())));
  }

  private static boolean makesConcurrentMaps(JavaClass user) {
    return user.getConstructorCallsFromSelf().stream()
        .anyMatch(call -> call.getTargetOwner().isAssignableTo(ConcurrentMap.class));
  }

  private static boolean asksForTime(JavaMethodCall call) {
    String owner = call.getTargetOwner().getPackageName();
    String method = call.getTarget().getName();
    return (owner.equals("java.time") && method.equals("now"))
        || Set.of("currentTimeMillis", "nanoTime").contains(method);
  }
}
