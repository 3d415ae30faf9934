import type { Fits } from '@brinewright/equipment';
import type { Gap, Stage } from '@brinewright/service';
import type { Issue, Message } from '@brinewright/words';
import { capital, hanging, paragraph, stacked } from '../text/lines.ts';
import { placeText, type View } from '../view.ts';

/** What is missing, each once. */
export const gapLines = (view: View, gaps: readonly Gap[]): string[] =>
  distinct(gaps.map(({ message }) => view.say(message))).flatMap((gap) =>
    hanging(`${view.word('cli.to-settle')} `, gap).flat(),
  );

export const issueLines = (view: View, issues: readonly Issue[]): string[] =>
  distinct(issues.map((issue) => issueText(view, issue))).flatMap((text) => hanging('', text));

const issueText = (view: View, issue: Issue): string => {
  const mend = issue.mend === undefined ? '' : ` ${view.say(issue.mend)}`;
  const name = capital(view.word(`equipment.severity.${issue.severity}`));
  return `${name}: ${view.say(issue.message)}${mend}${placeText(view, issue)}`;
};

export const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts)];

/** A stage as far as it can be said, then what would settle the rest, then what is odd about its inputs. */
export const staged = <T>(view: View, stage: Stage<T>, show: (value: T) => string[]): string[] =>
  stacked(
    stage.state === 'done' ? show(stage.value) : [],
    gapLines(view, stage.gaps),
    issueLines(view, stage.issues),
  );

export const sentences = (view: View, messages: readonly Message[]): string[] =>
  messages.flatMap((one) => paragraph(view.say(one)));

export const featureTitle = ({ family, text }: View, feature: string): string => {
  const found = family?.features.find(({ id }) => id === feature);
  return found === undefined ? feature : text(found.title);
};

export const valueTitle = ({ family, text }: View, feature: string, value: string): string => {
  const found = family?.features.find(({ id }) => id === feature)?.values.find(({ id }) => id === value);
  return found === undefined ? value : text(found.title);
};

/** 'Body size: slim or broad; Water it is made for: cold'. */
export const fitsText = (view: View, fits: Fits): string =>
  Object.entries(fits)
    .map(([feature, values]) => {
      const names = values.map((value) => valueTitle(view, feature, value));
      return `${featureTitle(view, feature)}: ${names.join(` ${view.word('cli.or')} `)}`;
    })
    .join('; ');

/** An operation, test or tell of the definition by its own words. */
export const orderOf = ({ family, text }: View, id: string): string => {
  const found = family?.operations.find((operation) => operation.id === id);
  return found === undefined ? id : text(found.order);
};

export const askOfTell = ({ family, text }: View, id: string): string => {
  const found = family?.tells.find((tell) => tell.id === id);
  return found === undefined ? id : text(found.ask);
};
