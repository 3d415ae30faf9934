import { dated, type Sheet } from '@brinewright/papers';

/** What changed since it last worked, and who worked on it last, as far as it was told. */
export const toldBefore = (sheet: Sheet): readonly string[] => {
  const { changed, changes = [], lastWork } = sheet.visit.history ?? {};
  const said = changed === undefined ? changes.map((id) => changeName(sheet, id)) : [sheet.text(changed)];
  const told = said.map((what) => sheet.word('app.find.changed', { what }));
  return [...told, ...(lastWork === undefined ? [] : [workSaid(sheet, lastWork)])];
};

const changeName = ({ family, text }: Sheet, id: string): string => {
  const found = family?.changes.find((one) => one.id === id);
  return found === undefined ? id : text(found.title);
};

type LastWork = NonNullable<NonNullable<Sheet['visit']['history']>['lastWork']>;

const workSaid = (sheet: Sheet, { by, when, what }: LastWork): string => {
  const parts = [
    when === undefined ? undefined : dated(sheet, when),
    by,
    what === undefined ? undefined : sheet.text(what),
  ].filter((part) => part !== undefined);
  return sheet.word('app.find.last-work', { work: parts.join(', ') });
};
