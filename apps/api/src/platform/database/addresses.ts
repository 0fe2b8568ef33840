/** Where the database is and as whom, once it is known: from the environment, or from the embedded server. */
export interface Addresses {
  /** Role that owns nothing: requests. */
  url: string;
  /** Role that owns the tables: migrations. */
  ownerUrl: string;
  /** Queue connection of the job runner. */
  queueUrl: string;
}

export const ADDRESSES = Symbol('database addresses');
