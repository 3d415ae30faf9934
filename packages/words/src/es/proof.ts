import type { proofEn } from '../en/proof.ts';
import type { Translation } from '../translation.ts';
export const proofEs = {} as const satisfies Translation<typeof proofEn>;
