/**
 * Retry-After in milliseconds: whole seconds or a date (RFC 9110, 10.2.3). A date is taken against the answer's own
 * Date header, so that a wrong clock on this side does no harm. Null when absent or unreadable.
 */
export const retryAfterMs = (headers: Headers): number | null => {
  const value = headers.get('retry-after')?.trim() ?? '';
  if (/^\d{1,9}$/.test(value)) return Number(value) * 1000;
  const [until, now] = [Date.parse(value), Date.parse(headers.get('date') ?? '')];
  return Number.isFinite(until) && Number.isFinite(now) ? Math.max(0, until - now) : null;
};
