// Every step is called the same way: node STEP.mjs DOWNLOADS SEED.
export const downloads = required(2, 'the folder with the unpacked packages');
export const seed = required(3, 'the seed folder');

function required(position, meaning) {
  const value = process.argv[position];
  if (!value) throw new Error(`argument ${position - 1} is missing: ${meaning}; run derive.sh instead`);
  return value;
}
