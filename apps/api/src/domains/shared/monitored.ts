import { Reply } from '../../platform/http/reply.js';

/** Adds where the job of an accepted request can be watched (RFC 8288, relation "monitor"). A job has the id of what it makes. */
export const monitored = (reply: Reply): Reply => {
  const id = reply.answer.location?.split('/').at(-1);
  return id === undefined ? reply : new Reply(reply.answer, reply.text, { ...reply.headers, Link: `</v1/jobs/${id}>; rel="monitor"` });
};
