import type { AskedView, InspectView } from '../../bridge/protocol';
import { words } from '../words';
import type { CheckWords } from '../words/checks';
import type { FamilyWords } from '../words/families';
import type { FeatureWords } from '../words/features';

/** The words of a family of the tables; nothing for one of the user's own, or one written by a newer version. */
export function familyWords(code: string | undefined): FamilyWords | undefined {
  return of(words().families, code);
}

/** What a family is called, by its code or by the id of one of the user's own. */
export function familyName(code: string | undefined, own: InspectView['own_families']): string {
  return familyWords(code)?.name ?? own.find(({ id }) => id === code)?.values.name ?? '';
}

/** The words of a question: of the tables, or the user's own. */
export function checkWords({ question, text }: Pick<AskedView, 'question' | 'text'>): CheckWords {
  const known = of<CheckWords>(words().checks, question);
  const own = text ?? question;
  return known ?? { name: own, ask: own, how: '', small: '', outcomes: words().ownOutcomes };
}

/** The word of an answer. */
export function answerWord(asked: Pick<AskedView, 'question' | 'text'>, outcome: string): string {
  return checkWords(asked).outcomes[outcome] ?? outcome;
}

/** What was answered, or that it was left out; empty while it is open. */
export function answerSaid(asked: AskedView): string {
  return asked.answer ? answerWord(asked, asked.answer) : asked.skipped ? words().judge.skipped : '';
}

/** What is measured; a word of the user's own stands for itself. */
export function featureWords(feature: string): FeatureWords {
  return of(words().features, feature) ?? { name: feature, where: '' };
}

/** How many questions have an answer. */
export function answered({ asked }: InspectView): number {
  return asked.filter(({ answer }) => answer !== undefined).length;
}

function of<T>(all: Readonly<Record<string, T>>, code: string | undefined): T | undefined {
  return code !== undefined && Object.hasOwn(all, code) ? all[code] : undefined;
}
