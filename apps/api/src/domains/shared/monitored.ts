import { Reply } from '../../platform/http/reply.js';

/**
 * Adds where the job of an accepted request can be watched (RFC 8288, relation "monitor"), and when to ask again while it
 * is not done. A job has the id of what it makes.
 */
export const monitored = (reply: Reply): Reply => {
  const id = reply.answer.location?.split('/').at(-1);
  if (id === undefined) return reply;
  const again = reply.answer.status === 202 ? { 'Retry-After': '1' } : {};
  return new Reply(reply.answer, reply.text, { ...again, ...reply.headers, Link: `</v1/jobs/${id}>; rel="monitor"` });
};
