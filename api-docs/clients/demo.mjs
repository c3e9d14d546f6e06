// Starts a fresh demo, runs commands against it one after another, and stops it.
// node demo.mjs JAR FOLDER COMMAND…   Commands find HEDGEROW (the address), TOKEN and REVIEWER, and COOKIE, the
// session of the administrator, in their environment.
import { spawn, spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";

const [jar, folder, ...commands] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });

const demo = spawn("java", ["-jar", jar, "serve", "--demo", "--port", "0", "--data", `${folder}/data`], {
  stdio: ["ignore", "pipe", "inherit"],
});
const ended = new Promise((resolve) => demo.once("exit", resolve));

let printed = "";
const ready = new Promise((resolve, reject) => {
  demo.stdout.on("data", (text) => {
    printed += text;
    const address = /ready at (http:\/\/\S+?)\/?\s/.exec(printed);
    if (address) resolve(address[1]);
  });
  ended.then(() => reject(new Error(`The demo ended before it was ready:\n${printed}`)));
  setTimeout(() => reject(new Error("The demo isn't ready after five minutes.")), 300_000).unref();
});

/** Signs in as one of the demo's people, and makes a token. */
async function signIn(address, name, role) {
  const password = new RegExp(`^  ${name} +(\\S.*?)  +\\S`, "m").exec(printed)[1];
  const cookies = {};
  const cookie = () => Object.entries(cookies).map((each) => each.join("=")).join("; ");
  const ask = async (path, options = {}) => {
    const headers = { ...options.headers, Cookie: cookie() };
    const answer = await fetch(address + path, { redirect: "manual", ...options, headers });
    for (const set of answer.headers.getSetCookie()) {
      const [key, value] = set.split(";", 1)[0].split("=");
      cookies[key] = value;
    }
    return answer;
  };
  const formToken = async (path) => /name="form-token" value="([^"]+)"/.exec(await (await ask(path)).text())[1];
  await ask("/sign-in", {
    method: "POST",
    body: new URLSearchParams({ name, password, "form-token": await formToken("/sign-in") }),
  });
  const made = await ask("/api/v1/account/tokens", {
    method: "POST",
    headers: { "Content-Type": "application/json", "Hedgerow-Form-Token": await formToken("/account") },
    body: JSON.stringify({ label: "clients", role }),
  });
  if (made.status !== 201) throw new Error(`No token for ${name}: ${await made.text()}`);
  return { token: (await made.json()).token, cookie: cookie() };
}

try {
  const address = await ready;
  const administrator = await signIn(address, "adaeze", "administrator");
  const reviewer = await signIn(address, "tomasz", "reviewer");
  const env = {
    ...process.env,
    HEDGEROW: address,
    TOKEN: administrator.token,
    REVIEWER: reviewer.token,
    COOKIE: administrator.cookie,
  };
  for (const command of commands) {
    const { status } = spawnSync(command, { shell: true, stdio: "inherit", env });
    if (status !== 0) throw new Error(`It failed with ${status}: ${command}`);
  }
} catch (problem) {
  console.error(problem.message);
  process.exitCode = 1;
} finally {
  demo.kill("SIGTERM");
  await ended;
}
