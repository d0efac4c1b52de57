import type { Query } from '../bridge/protocol';

/** Members of questions that name one record. */
const NAMING = ['id', 'part', 'photo', 'assembly', 'place'] as const;

/** Whether a text can be the id of a record at all; addresses are typed and cut short. */
export function isId(text: string): boolean {
  return /^[0-9a-f]{32}$/.test(text);
}

/** Whether a question names something by what no record can have as its id: the answer is known without asking. */
export function namesNothing(query: Query): boolean {
  return NAMING.some((member) => {
    const named: unknown = Reflect.get(query, member);
    return typeof named === 'string' && !isId(named);
  });
}
