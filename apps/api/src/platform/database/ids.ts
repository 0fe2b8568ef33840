import { v7 } from 'uuid';

/** A new id: UUID version 7, so that ids sort by the time they were made. Never a secret. */
export const newId = (): string => v7();

const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
export const isId = (text: unknown): text is string => typeof text === 'string' && ID.test(text);
