package org.hedgerow.web.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.resource.InputStreamSource;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Order;
import org.hedgerow.lexicon.Position;
import org.hedgerow.lexicon.Status;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.DecisionKind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** The document itself: that it is sound, and that its words are those of the program. */
class DocumentTest {
  /**
   * The schema of OpenAPI 3.1 documents, with the dialect of their schemas, by the OpenAPI
   * Initiative; carried in the jar of vertx-openapi under the same path.
   */
  private static final String META = "https://spec.openapis.org/oas/3.1/schema-base/2022-10-07";

  private static final ApiDocument DOCUMENT = ApiDocument.published();
  private static final Place SCHEMAS = DOCUMENT.root().child("components").child("schemas");

  @Test
  void isOpenApi31() {
    assertThat(metaBreaches(DOCUMENT.root().node())).isEmpty();
  }

  @Test
  void whatIsNoOpenApi31IsCaught() {
    ObjectNode wrong = (ObjectNode) DOCUMENT.root().node().deepCopy();
    ((ObjectNode) wrong.at("/paths/~1health~1live/get/responses/200")).put("$reff", "x");
    ((ObjectNode) wrong.at("/components/schemas/Spelling")).put("type", "word");
    wrong.remove("info");
    assertThat(metaBreaches(wrong))
        .anyMatch(error -> error.toString().contains("info"))
        .anyMatch(error -> error.toString().contains("/components/schemas/Spelling"));
  }

  private static List<Error> metaBreaches(JsonNode document) {
    Schema meta =
        SchemaRegistry.withDialects(
                List.of(Dialects.getDraft202012(), Dialects.getOpenApi31()),
                builder ->
                    builder.resourceLoaders(loaders -> loaders.add(iri -> carried(iri.toString()))))
            .getSchema(SchemaLocation.of(META));
    return meta.validate(document);
  }

  private static @Nullable InputStreamSource carried(String address) {
    String resource = address.replace("https:/", "");
    return resource.startsWith("/spec.openapis.org/")
        ? () -> DocumentTest.class.getResourceAsStream(resource)
        : null;
  }

  @Test
  void everyReferenceLeadsSomewhere() {
    assertThat(references()).isNotEmpty().allMatch(Place::exists);
  }

  @Test
  void everyComponentIsUsed() {
    Set<String> used = new HashSet<>(references().stream().map(Place::pointer).toList());
    Place components = DOCUMENT.root().child("components");
    Place schemes = components.child("securitySchemes");
    DOCUMENT
        .root()
        .all()
        .filter(place -> place.pointer().matches(".*/security/[0-9]+"))
        .flatMap(place -> place.names().stream())
        .forEach(name -> used.add(schemes.pointer() + "/" + name));
    assertThat(components.names())
        .allSatisfy(
            kind ->
                assertThat(components.child(kind).names())
                    .allMatch(
                        name -> used.contains(components.child(kind).pointer() + "/" + name)));
  }

  private static List<Place> references() {
    return DOCUMENT
        .root()
        .all()
        .filter(place -> place.node().has("$ref"))
        .map(Place::target)
        .toList();
  }

  @Test
  void everyExampleIsAsItsSchemaSays() {
    Schemas schemas = new Schemas(DOCUMENT);
    List<Place> shown = DOCUMENT.root().all().filter(DocumentTest::showsExamples).toList();
    assertThat(shown)
        .hasSizeGreaterThan(20)
        .allSatisfy(
            place ->
                assertThat(examples(place))
                    .allSatisfy(
                        value -> assertThat(schemas.breaches(place.schema(), value)).isEmpty()));
  }

  private static boolean showsExamples(Place place) {
    return place.schema().exists() && place.child("examples").exists();
  }

  private static List<JsonNode> examples(Place place) {
    Place examples = place.child("examples");
    return examples.names().stream()
        .map(name -> examples.child(name).child("value").node())
        .toList();
  }

  @Test
  void everyExampleOfASchemaIsAsItSays() {
    Schemas schemas = new Schemas(DOCUMENT);
    List<Place> shown =
        SCHEMAS.all().filter(place -> place.node().path("examples").isArray()).toList();
    assertThat(shown)
        .isNotEmpty()
        .allSatisfy(
            schema ->
                assertThat(schema.node().path("examples"))
                    .allSatisfy(value -> assertThat(schemas.breaches(schema, value)).isEmpty()));
  }

  @Test
  void everyObjectIsClosed() {
    assertThat(SCHEMAS.all().filter(place -> place.child("type").says("object")))
        .hasSizeGreaterThan(20)
        .allMatch(place -> place.child("additionalProperties").node().isBoolean());
  }

  @Test
  void everyRequiredMemberIsThere() {
    assertThat(SCHEMAS.all().filter(place -> place.child("type").says("object")))
        .allSatisfy(
            place ->
                assertThat(place.child("properties").names())
                    .containsAll(texts(place.child("required").node())));
  }

  @Test
  void everyPathDeclaresItsParameters() {
    Place paths = DOCUMENT.root().child("paths");
    assertThat(paths.names())
        .allSatisfy(
            path ->
                assertThat(operations(paths.child(path)))
                    .isNotEmpty()
                    .allSatisfy(
                        operation ->
                            assertThat(operation.parameters("path"))
                                .extracting(Parameter::name)
                                .isEqualTo(PathTemplate.of(path).names())));
  }

  @Test
  void everyOperationHasANameOfItsOwn() {
    Place paths = DOCUMENT.root().child("paths");
    Stream<String> names =
        paths.names().stream()
            .flatMap(path -> operations(paths.child(path)).stream())
            .map(operation -> operation.place().child("operationId").node().asString());
    assertThat(names).doesNotHaveDuplicates().hasSizeGreaterThan(18);
  }

  private static List<Operation> operations(Place path) {
    return path.names().stream().map(method -> new Operation(path.child(method))).toList();
  }

  @Test
  void everyProblemIsSomeAnswer() {
    List<String> all = words("ProblemType");
    Set<String> answered =
        DOCUMENT
            .root()
            .all()
            .filter(place -> place.pointer().contains("/x-problem-types/"))
            .map(place -> "/docs/problems#" + place.node().asString())
            .collect(Collectors.toSet());
    assertThat(answered).containsExactlyInAnyOrderElementsOf(all);
  }

  @Test
  void speaksTheWordsOfTheProgram() {
    assertThat(words("FindingCode")).isEqualTo(labels(FindingCode.values()));
    assertThat(words("CorrespondenceClass")).isEqualTo(labels(CorrespondenceClass.values()));
    assertThat(words("Status")).isEqualTo(labels(Status.values()));
    assertThat(words("ContributionState")).isEqualTo(labels(ContributionState.values()));
    assertThat(words("ContributionKind")).isEqualTo(labels(ContributionKind.values()));
    assertThat(words("DecisionKind")).isEqualTo(labels(DecisionKind.values()));
    assertThat(words("Position")).isEqualTo(labels(Position.values()));
    assertThat(words("Sort")).isEqualTo(labels(Order.values()));
    assertThat(Set.copyOf(texts(verdicts()))).isEqualTo(Set.copyOf(labels(Verdict.values())));
  }

  @Test
  void namesEveryRule() {
    assertThat(words("RuleSwitchName")).isEqualTo(labels(Switch.values()));
  }

  /** Many generators drop what stands beside a reference. */
  @Test
  void nothingStandsBesideAReference() {
    assertThat(DOCUMENT.root().all().filter(place -> place.node().has("$ref")))
        .allSatisfy(place -> assertThat(place.names()).containsExactly("$ref"));
  }

  @Test
  void everyChoiceOfSchemasSaysWhichItIs() {
    assertThat(SCHEMAS.all().filter(place -> place.child("oneOf").exists()))
        .hasSizeGreaterThan(1)
        .allSatisfy(
            place ->
                assertThat(place.child("discriminator").child("mapping").names())
                    .hasSameSizeAs(place.child("oneOf").node()));
  }

  @Test
  void everyInvariantIsOfASchema() {
    assertThat(SCHEMAS.names()).containsAll(Invariants.schemas());
  }

  /** A set has no order, and generated clients refuse what is in it twice. */
  @Test
  void noListIsASet() {
    assertThat(DOCUMENT.root().all().filter(place -> place.node().has("uniqueItems"))).isEmpty();
  }

  @Test
  void everyOperationSaysWhatAnyRequestCanMeet() {
    Place paths = DOCUMENT.root().child("paths");
    assertThat(
            paths.names().stream().flatMap(path -> operations(paths.child(path)).stream()).toList())
        .allSatisfy(
            operation ->
                assertThat(List.of(400, 414, 431))
                    .allMatch(status -> operation.answer(status).isPresent()));
  }

  @Test
  void readsTheRulesAsTheProgramWritesThem() {
    Schemas schemas = new Schemas(DOCUMENT);
    JsonNode written = StringNode.valueOf(ReadingRules.DEFAULT.label());
    assertThat(schemas.breaches(SCHEMAS.child("AllRules"), written)).isEmpty();
    assertThat(schemas.breaches(SCHEMAS.child("RuleList"), written)).isEmpty();
  }

  private static JsonNode verdicts() {
    return SCHEMAS.child("Check").child("properties").child("verdict").child("enum").node();
  }

  private static List<String> words(String schema) {
    Place words = SCHEMAS.child(schema);
    Place open = words.child("x-extensible-enum");
    return texts((open.exists() ? open : words.child("enum")).node());
  }

  private static List<String> texts(JsonNode list) {
    return list.valueStream().map(JsonNode::asString).toList();
  }

  private static List<String> labels(Enum<?>[] constants) {
    return Arrays.stream(constants)
        .map(each -> each.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .toList();
  }
}
