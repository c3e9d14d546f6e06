// The guide's calls through the client that openapi-generator makes for TypeScript.
import { ChecksApi, Configuration, EditionsApi, PlanningApi, ResponseError, ReviewApi, SentencesApi, SoundsApi, WordsApi } from "./client/index";

declare const process: { env: Record<string, string | undefined>; exitCode: number };

function expect(condition: boolean, what: string): void {
  if (!condition) throw new Error(`fetch: ${what}`);
}

async function guide(): Promise<void> {
  const basePath = process.env.HEDGEROW;
  const visitor = new Configuration({ basePath });
  const member = new Configuration({ basePath, accessToken: process.env.TOKEN });
  const reviewer = new Configuration({ basePath, accessToken: process.env.REVIEWER });

  const words = new WordsApi(visitor);
  const list = await words.listWords({ phonogram: "oa", accent: ["en-US", "en-GB"], taught: ["sh", "ch"], limit: 5 });
  expect(list.words.length === 5 && list.total > 5 && typeof list.next === "string", "a list");
  expect(list.words.every((word) => word.pronunciations.length > 0), "pronunciations of a list");
  const rest = await words.listWords({ phonogram: "oa", accent: ["en-US", "en-GB"], taught: ["sh", "ch"], limit: 5, after: list.next });
  expect(rest.words[0].spelling !== list.words[0].spelling, "the rest of a list");
  expect((await words.getWord({ spelling: "wool" })).word.spelling === "wool", "a word");
  expect((await words.listPhonograms({})).phonograms.length > 50, "phonograms");

  const checks = new ChecksApi(visitor);
  const judged = await checks.checkWords({ wordChecksRequest: { words: ["boat", "mishap"], phonogram: "oa" } });
  expect(judged.checks[0].verdict === "pass" && judged.checks[1].findings.length > 0, "checks");
  const aligned = await checks.alignWord({ alignmentRequest: { spelling: "moat", sounds: "M OW T" } });
  expect(aligned.aligned && aligned.spans.length === 3, "an alignment");

  const sentences = new SentencesApi(visitor);
  const checked = await sentences.checkSentence({ sentenceChecksRequest: { text: "The goat sat by the tree.", phonogram: "oa" } });
  expect(checked.targets === 1, "a sentence");
  const drafts = await sentences.composeSentences({ sentenceDraftsRequest: { phonogram: "oa", count: 2, seed: 7 } });
  expect(drafts.sentences.length === 2, "drafts");
  await sentences.listSentences({ phonogram: "oa", value: 1 });

  expect((await new SoundsApi(visitor).listSounds({ accent: "en-GB" })).sounds.length > 40, "sounds of British English");
  expect((await new SoundsApi(visitor).getSound({ sound: "OW" })).spellings.length > 3, "a sound");
  const planning = new PlanningApi(visitor);
  expect((await planning.listRules({})).rules[0].switches.length >= 8, "rules");
  expect((await planning.listSequences({})).sequences.length > 1, "sequences");
  expect((await planning.listSightWords({})).sightWords.length > 0, "sight words");
  expect((await planning.listNeeds({})).needs.length > 50, "needs");
  const editions = await new EditionsApi(visitor).listEditions({ limit: 2 });
  expect(editions.editions.length === 2 && typeof editions.next === "string", "editions");

  const review = new ReviewApi(member);
  const sent = await review.addContribution({
    newContribution: {
      proposal: { kind: "word", spelling: "moaner", pronunciations: [{ accent: "en-US", sounds: "M OW N ER" }] },
      wantedFor: "oa 1",
      submit: true,
    },
  });
  expect(sent.state === "submitted", "a contribution");
  const read = await review.getContribution({ id: sent.id });
  expect(read.proposal.kind === "word" && read.proposal.pronunciations?.[0].sounds === "M OW N ER", "the sounds of a contribution");
  const decided = await new ReviewApi(reviewer).decideMany({
    newDecisions: { decisions: [{ contribution: sent.id, revision: 1, decision: "approve" }, { contribution: 1, revision: 99, decision: "approve" }] },
  });
  expect(decided.results[0].outcome === "decided" && decided.results[1].outcome === "refused", "decisions");
  const picture = await (await fetch(`${basePath}/api/v1/words?pictured=true&limit=1`)).json();
  const svg = await (await fetch(basePath + picture.words[0].picture.href)).blob();
  expect((await review.sendPicture({ file: svg })).mediaType === "image/svg+xml", "a picture");

  const problem = await words.listWords({ phonogram: "ao" }).catch((thrown: ResponseError) => thrown.response.json());
  expect((problem as { type: string }).type === "/docs/problems#unknown-phonogram", "a problem");
  console.log("The client for TypeScript (openapi-generator) works.");
}

guide().catch((problem) => {
  console.error(problem);
  process.exitCode = 1;
});
