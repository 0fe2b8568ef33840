import { generateKeyPairSync, sign } from 'node:crypto';

// A certificate of X.509 (RFC 5280) in its DER form, made here so that no key lies in the repository.

const der = (tag: number, ...parts: readonly Uint8Array[]): Buffer => {
  const content = Buffer.concat(parts);
  const length = content.length < 128 ? [content.length] : content.length < 256 ? [0x81, content.length] : [0x82, content.length >> 8, content.length & 255];
  return Buffer.concat([Buffer.from([tag, ...length]), content]);
};
const sequence = (...parts: readonly Uint8Array[]): Buffer => der(0x30, ...parts);
const oid = (...bytes: readonly number[]): Buffer => der(0x06, Buffer.from(bytes));
const ECDSA_WITH_SHA256 = sequence(oid(0x2a, 0x86, 0x48, 0xce, 0x3d, 0x04, 0x03, 0x02));
const utcTime = (at: Date): Buffer =>
  der(
    0x17,
    Buffer.from(
      at
        .toISOString()
        .replaceAll(/[-:T]|\.\d+/g, '')
        .slice(2),
    ),
  );

/** A self-signed certificate for one name, good for a day, with its key. */
export const certificateFor = (name: string): { key: string; cert: string } => {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const subject = sequence(der(0x31, sequence(oid(0x55, 0x04, 0x03), der(0x0c, Buffer.from(name)))));
  const names = der(0x04, sequence(der(0x82, Buffer.from(name))));
  const day = 86_400_000;
  const toBeSigned = sequence(
    der(0xa0, der(0x02, Buffer.from([2]))),
    der(0x02, Buffer.from([1])),
    ECDSA_WITH_SHA256,
    subject,
    sequence(utcTime(new Date(Date.now() - day)), utcTime(new Date(Date.now() + day))),
    subject,
    publicKey.export({ type: 'spki', format: 'der' }),
    der(0xa3, sequence(sequence(oid(0x55, 0x1d, 0x11), names))),
  );
  const signature = der(0x03, Buffer.from([0]), sign('sha256', toBeSigned, privateKey));
  const bytes = sequence(toBeSigned, ECDSA_WITH_SHA256, signature);
  const cert = `-----BEGIN CERTIFICATE-----\n${(bytes.toString('base64').match(/.{1,64}/g) ?? []).join('\n')}\n-----END CERTIFICATE-----\n`;
  return { key: privateKey.export({ type: 'pkcs8', format: 'pem' }) as string, cert };
};
