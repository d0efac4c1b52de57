import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { british } from './british';
import { costing } from './costing';

const PAGE = join(import.meta.dirname, '..');

/** The code that speaks these words. */
function speaking(): string {
  const files = readdirSync(PAGE, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && !file.startsWith('words'));
  return files.map((file) => readFileSync(join(PAGE, file), 'utf8')).filter((code) => code.includes('.costing')).join('\n');
}

/** Members that no code names; those of a group that is looked up by a computed member are all named by its type. */
function unspoken(group: object, code: string, path = ''): string[] {
  return Object.entries(group).flatMap(([member, value]: [string, unknown]) => {
    const here = `${path}${member}`;
    if (new RegExp(`\\.${member}\\[`).test(code)) return [];
    if (typeof value === 'object' && value !== null) return unspoken(value, code, `${here}.`);
    return new RegExp(`\\.${member}\\b|\\['${member}'\\]`).test(code) ? [] : [here];
  });
}

test('every word about costs is said somewhere', () => {
  expect(unspoken(costing(british), speaking())).toEqual([]);
});

test('a word that nobody says is found', () => {
  expect(unspoken({ said: 'a', unsaid: 'b', by: { kind: 'c' }, group: { one: 'd' } }, 'say.said; say.by[kind]; say.group.two')).toEqual(['unsaid', 'group.one']);
});
