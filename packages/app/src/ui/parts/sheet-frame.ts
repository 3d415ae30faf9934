import { createContext } from 'react';

export type StageMark = {
  readonly id: string;
  readonly name: string;
  readonly number: number;
  readonly state: 'open' | 'begun' | 'done';
  readonly isNow: boolean;
  readonly to: string;
  /** Such as '2 min', on the wide sheet. */
  readonly minutes?: string | undefined;
};

export type TitleBlock = {
  readonly name: string;
  readonly under?: string | undefined;
  /** Shown on the wide sheet only. */
  readonly cells?: readonly { readonly label: string; readonly value: string }[] | undefined;
};

export type RecordPlace = {
  readonly state: 'device' | 'sent' | 'refused';
  readonly counts: { readonly waiting: number; readonly files: number; readonly refused: number };
  readonly to?: string | undefined;
};

/** What a sheet shows around its body; the shell gives it once, a screen need not repeat it. */
export type SheetFrame = {
  readonly title: TitleBlock;
  readonly back?: { readonly to: string; readonly name: string } | undefined;
  readonly record?: RecordPlace | undefined;
  readonly stages?: readonly StageMark[] | undefined;
};

export const SheetContext = createContext<SheetFrame>({ title: { name: '' } });
