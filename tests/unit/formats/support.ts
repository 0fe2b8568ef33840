/** Tells why a check with a real file is left out, once a reason, and stands for the absent file. */
const told = new Set<string>();
export const reported = (reason: string): null => {
  if (!told.has(reason)) process.stdout.write(`skipped: ${reason}\n`);
  told.add(reason);
  return null;
};
