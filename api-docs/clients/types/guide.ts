// The guide's calls with the types that openapi-typescript makes.
import createClient from "openapi-fetch";
import type { paths } from "./document";

declare const process: { env: Record<string, string | undefined>; exitCode: number };

function expect<T>(value: T | undefined, condition: (value: T) => boolean, what: string): T {
  if (value === undefined || !condition(value)) throw new Error(`types: ${what}`);
  return value;
}

async function guide(): Promise<void> {
  const baseUrl = process.env.HEDGEROW!;
  const visitor = createClient<paths>({ baseUrl, querySerializer: { array: { style: "form", explode: true } } });
  const member = createClient<paths>({ baseUrl, headers: { Authorization: `Bearer ${process.env.TOKEN}` } });

  const list = await visitor.GET("/api/v1/words", { params: { query: { phonogram: "oa", accent: ["en-US", "en-GB"], limit: 5 } } });
  expect(list.data, (data) => typeof data !== "string" && data.words.length === 5 && data.query.accent.length === 2, "a list in two accents");
  const word = await visitor.GET("/api/v1/words/{spelling}", { params: { path: { spelling: "wool" } } });
  expect(word.data, (data) => data.word.pronunciations[0].spans.length === 3, "a word");
  const checks = await visitor.POST("/api/v1/word-checks", { body: { words: ["boat"], phonogram: "oa" } });
  expect(checks.data, (data) => data.checks[0].verdict === "pass", "checks");

  const sent = await member.POST("/api/v1/contributions", {
    body: {
      proposal: { kind: "word", spelling: "groaner", pronunciations: [{ accent: "en-US", sounds: "G R OW N ER" }] },
      submit: true,
    },
  });
  const made = expect(sent.data, (data) => data.state === "submitted", JSON.stringify(sent.error));
  const read = await member.GET("/api/v1/contributions/{id}", { params: { path: { id: made.id } } });
  expect(
    read.data,
    ({ proposal }) => proposal.kind === "word" && proposal.pronunciations?.[0].sounds === "G R OW N ER",
    "the sounds of a contribution",
  );

  const wrong = await visitor.GET("/api/v1/words", { params: { query: { phonogram: "ao" } } });
  expect(wrong.error, (problem) => problem.type === "/docs/problems#unknown-phonogram", "a problem");
  console.log("The types for TypeScript (openapi-typescript) work.");
}

guide().catch((problem) => {
  console.error(problem);
  process.exitCode = 1;
});
