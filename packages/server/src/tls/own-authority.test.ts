import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ownAddresses, reachedBy } from './addresses.ts';
import { fingerprintOf, ownCertificate } from './own-authority.ts';

const day = 24 * 60 * 60_000;
const now = new Date('2026-11-25T15:00:00.000Z');
const at = { names: ['bench', 'bench.local', 'localhost'], addresses: ['127.0.0.1', '192.0.2.7', 'fd00::7'] };
const later = (days: number): Date => new Date(now.getTime() + days * day);

let folder = '';
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'brinewright-tls-')), 'certificates');
});
afterEach(() => rmSync(join(folder, '..'), { recursive: true, force: true }));

const leafOf = (cert: string): X509Certificate => new X509Certificate(cert);

test('the leaf is signed by the authority, for every name and address, and for 397 days', async () => {
  const made = await ownCertificate(folder, at, now);
  const leaf = leafOf(made.cert);
  const authority = new X509Certificate(made.authority);
  expect(leaf.checkIssued(authority)).toBe(true);
  expect(leaf.verify(authority.publicKey)).toBe(true);
  expect(authority.ca).toBe(true);
  expect(leaf.ca).toBe(false);
  for (const name of at.names) expect(leaf.checkHost(name)).toBe(name);
  for (const address of at.addresses) expect(leaf.checkIP(address)).toBe(address);
  expect(leaf.checkHost('elsewhere.example')).toBeUndefined();
  expect((Date.parse(leaf.validTo) - Date.parse(leaf.validFrom)) / day).toBeCloseTo(397, 3);
  expect(leaf.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
});

test('the fingerprint shown is the one that Node computes of the authority', async () => {
  const { authority, fingerprint } = await ownCertificate(folder, at, now);
  expect(fingerprint).toBe(new X509Certificate(authority).fingerprint256);
  expect(fingerprintOf(authority)).toBe(fingerprint);
});

test('authority and leaf stay as long as they serve', async () => {
  const first = await ownCertificate(folder, at, now);
  expect(await ownCertificate(folder, at, later(360))).toEqual(first);
});

test('before it ends the leaf is renewed by the same authority, so that devices go on trusting it', async () => {
  const first = await ownCertificate(folder, at, now);
  const renewed = await ownCertificate(folder, at, later(370));
  expect(renewed.authority).toBe(first.authority);
  expect(renewed.cert).not.toBe(first.cert);
  expect(Date.parse(leafOf(renewed.cert).validTo)).toBeGreaterThan(later(700).getTime());
});

test('an address that is new gets a new leaf', async () => {
  const first = await ownCertificate(folder, at, now);
  const moved = { ...at, addresses: [...at.addresses, '198.51.100.9'] };
  const second = await ownCertificate(folder, moved, now);
  expect(second.authority).toBe(first.authority);
  expect(leafOf(second.cert).checkIP('198.51.100.9')).toBe('198.51.100.9');
});

test('keys are for the eyes of their owner only', async () => {
  const { key } = await ownCertificate(folder, at, now);
  for (const name of ['authority.key', 'authority.crt', 'leaf.key', 'leaf.crt'])
    expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
  expect(statSync(folder).mode & 0o777).toBe(0o700);
  expect(readFileSync(join(folder, 'leaf.key'), 'utf8')).toBe(key);
});

test('the certificate is for the addresses of this machine and the one that was asked for', () => {
  const own = ownAddresses('127.0.0.9');
  expect(own.addresses).toContain('127.0.0.9');
  expect(own.addresses).toContain('127.0.0.1');
  expect(own.names).toContain('localhost');
  expect(ownAddresses('0.0.0.0').addresses).not.toContain('0.0.0.0');
  expect(reachedBy('127.0.0.9')).toEqual(['127.0.0.9']);
  expect(reachedBy('0.0.0.0')).not.toContain('0.0.0.0');
});
