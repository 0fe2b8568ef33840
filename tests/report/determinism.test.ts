import { expect, test } from '@jest/globals';
import { reportApp, sampleRequest } from './support.js';

test('the same plan gives the same bytes: 3 renders over 2 browser starts; another date gives others', async () => {
  const first = reportApp();
  const second = reportApp();
  try {
    const a = await first.renderer.render(sampleRequest());
    const b = await first.renderer.render(sampleRequest());
    const c = await second.renderer.render(sampleRequest());
    expect(b.sha256).toBe(a.sha256);
    expect(c.sha256).toBe(a.sha256);
    expect(c.engineVersion).toBe(a.engineVersion);
    const other = await second.renderer.render(sampleRequest({ datedOn: '2026-03-15' }));
    expect(other.sha256).not.toBe(a.sha256);
  } finally {
    await first.stop();
    await second.stop();
  }
}, 90_000);
