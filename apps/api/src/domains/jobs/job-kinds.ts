/** What a kind of job makes, by the name of its task. A kind that is not listed makes nothing that has an address. */
interface JobKind {
  subject: string;
  folder: string;
  /** Where the finished thing is read, below the subject's own address. */
  result: string;
}

const KINDS: Readonly<Record<string, JobKind>> = {
  'compute-plan': { subject: 'plan', folder: '/v1/plans', result: '/result' },
  'render-document': { subject: 'document', folder: '/v1/documents', result: '/file' },
  'export-garden': { subject: 'export', folder: '/v1/exports', result: '/file' },
};

export interface JobSubject {
  type: string;
  id: string;
  self: string;
  result: string;
}

/** A job has the id of what it makes. */
export const subjectOf = (kind: string, id: string): JobSubject | null => {
  const known = KINDS[kind];
  return known ? { type: known.subject, id, self: `${known.folder}/${id}`, result: `${known.folder}/${id}${known.result}` } : null;
};
