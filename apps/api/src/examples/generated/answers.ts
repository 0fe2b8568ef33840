/** Answers to the examples as the server gave them, with ids and times in place of its own. Written by the test of the examples. */
export const ANSWER_EXAMPLES: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {};
