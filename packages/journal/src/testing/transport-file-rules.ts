import { describe, expect, it } from 'vitest';
import { sha256Hex } from '../entry/seal.ts';
import { answerIn, type OpenWay } from './transport-suite.ts';

/** A1: files are named by their content. */
export const transportFileRules = (open: OpenWay): void => {
  describe('files', () => {
    it('go and come whole, and as often as they are sent (A1)', async () => {
      const { transport } = await open();
      const bytes = Uint8Array.from({ length: 60_000 }, (_, at) => (at * at + 7 * at) % 251);
      const hash = sha256Hex(bytes);
      expect(answerIn(await transport.sendFile(hash, bytes))).toBe('durable');
      expect(answerIn(await transport.sendFile(hash, bytes))).toBe('durable');
      expect(answerIn(await transport.fetchFile(hash))).toEqual(bytes);
    });

    it('are refused where they are not what their name says, and are not there then (A1)', async () => {
      const { transport } = await open();
      const hash = sha256Hex(new Uint8Array([1, 2, 3]));
      expect(answerIn(await transport.sendFile(hash, new Uint8Array([1, 2, 4])))).toBe('refused');
      expect(answerIn(await transport.fetchFile(hash))).toBeUndefined();
      expect(answerIn(await transport.sendFile(hash, new Uint8Array([1, 2, 3])))).toBe('durable');
    });

    it('that are not there are nothing, which is an answer', async () => {
      const { transport } = await open();
      expect(await transport.fetchFile('b'.repeat(64))).toEqual({ state: 'answered', value: undefined });
    });
  });
};
