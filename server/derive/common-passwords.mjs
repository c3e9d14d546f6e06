// Writes the hashes of common passwords of eight characters or more; called by common-passwords.sh.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync, copyFileSync } from "node:fs";
import { createRequire } from "node:module";
import { resolve } from "node:path";

const SHORTEST = 8;
const BYTES = 6;
const [, , old, fresh, target] = process.argv;

// What people of a place like ours would think of first; by hand.
const PLACES = ["hedgerow", "phonogram", "phonics", "reading", "teacher", "teaching", "school", "classroom", "wordbank"];
const ENDS = ["", "1", "12", "123", "1234", "12345", "!", "1!", "123!", "2024", "2025", "2026", "2027"];

const lists = createRequire(import.meta.url)(resolve(old, "lib/frequency_lists.js"));
const passwords = new Set([
  ...lists.passwords,
  ...JSON.parse(readFileSync(resolve(fresh, "src/passwords.json"), "utf8")),
  ...PLACES.flatMap((word) => ENDS.map((end) => word + end)),
]);

const hashes = new Set();
for (const password of passwords) {
  const plain = password.normalize("NFKC").trim().toLowerCase();
  if ([...plain].length >= SHORTEST) {
    hashes.add(createHash("sha256").update(plain, "utf8").digest("hex").slice(0, 2 * BYTES));
  }
}
writeFileSync(resolve(target, "hashes"), Buffer.from([...hashes].sort().join(""), "hex"));
copyFileSync(resolve(fresh, "LICENSE.txt"), resolve(target, "LICENSE.txt"));
console.log(`${hashes.size} passwords`);
