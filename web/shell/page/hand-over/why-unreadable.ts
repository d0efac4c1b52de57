/** Why a file could not be read as a job file, with what the system said of it where that helps. */
export interface Unreadable {
  why: 'not-a-zip' | 'not-a-job-file' | 'damaged' | 'outside' | 'other';
  detail: string;
}

/** What a thrown thing says of a file. The workers throw a problem as JSON; nothing of that form is for people. */
export function whyUnreadable(error: unknown): Unreadable {
  const said = detailOf(error);
  const problem = parsed(said);
  if (problem === undefined) return { why: 'other', detail: said };
  const values = member(problem, 'values');
  const why = member(values, 'why');
  if (why === 'not-a-zip' || why === 'not-a-job-file') return { why, detail: '' };
  if (why === 'outside') return { why, detail: text(member(values, 'detail')) };
  return { why: member(problem, 'code') === 'damaged' ? 'damaged' : 'other', detail: '' };
}

// A call that failed in a worker carries its code apart from its words.
function detailOf(error: unknown): string {
  const failure = member(error, 'failure');
  if (failure !== undefined) return text(member(failure, 'detail'));
  return error instanceof Error ? error.message : String(error);
}

function parsed(said: string): unknown {
  try {
    const read: unknown = JSON.parse(said);
    return typeof read === 'object' && read !== null ? read : undefined;
  } catch {
    return undefined;
  }
}

function member(of: unknown, name: string): unknown {
  return typeof of === 'object' && of !== null ? Reflect.get(of, name) as unknown : undefined;
}

function text(value: unknown): string {
  return typeof value === 'string' ? value : '';
}
