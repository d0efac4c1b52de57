import { html, nothing, type TemplateResult } from 'lit';
import type { Lack, RefitAssembly } from '../../bridge/protocol';
import '../kit/icon';
import { words } from '../words';
import { hours } from '../words/format';
import { lackLines } from './lacks';
import { dayWords } from './when';

/** How an assembly stands, as it is sorted: what waits for nothing but oneself is not blocked by others. */
export type Stand = 'ready' | 'own' | 'blocked' | 'refitted';

export function standOf({ state, lacks }: RefitAssembly): Stand {
  return state === 'blocked' && lacks.every(({ own }) => own) ? 'own' : state;
}

const ICONS = { ready: 'proved', own: 'rework', blocked: 'timer', refitted: 'kept' } as const satisfies Record<Stand, string>;

/** "blocked by 2, earliest 15 Mar". */
export function standWords(line: RefitAssembly): string {
  const say = words().refit;
  const stand = standOf(line);
  if (stand === 'ready' || stand === 'refitted') return say.states[stand];
  // What is still to be ordered or decided begins a wait that nobody knows yet.
  const when = line.earliest && stand === 'blocked' ? say.earliest(dayWords(line.earliest)) : line.no_date ? say.noDate : '';
  return [stand === 'own' ? say.ownBy(line.lacks.length) : say.blockedBy(line.lacks.length), when].filter(Boolean).join(', ');
}

/** The state of an assembly: a shape and its words. */
export function standLine(line: RefitAssembly): TemplateResult {
  return html`<span class="rf-stand"><asf-icon name=${ICONS[standOf(line)]} size="20"></asf-icon><b>${standWords(line)}</b></span>`;
}

/** As many boxes as parts, filled for what is on; too many to tell apart become one bar. */
export function partBoxes({ parts, fitted, tried }: RefitAssembly): TemplateResult {
  if (parts > 40) return html`<span class="rf-bar" aria-hidden="true"><span .style=${`width:${(fitted / parts) * 100}%`}></span></span>`;
  return html`<span class="rf-count" aria-hidden="true">${Array.from({ length: parts }, (_, i) => html`<span class="rf-box ${i < fitted ? 'rf-box-fitted' : i < fitted + tried ? 'rf-box-tried' : ''}"></span>`)}</span>`;
}

/** "5 of 14 on, 1 on for trial, 1 h 20 min of work left (starting value)". */
export function progressWords(line: RefitAssembly): string {
  const say = words().refit;
  const { fitted, parts, tried, minutes, starting, nowhere } = line;
  const left = fitted < parts ? say.left(hours(minutes)) : '';
  return [say.fitted(fitted, parts), tried ? say.tried(tried) : '', left ? `${left}${starting ? ` (${say.starting})` : ''}` : '', nowhere ? say.nowhere(nowhere) : ''].filter(Boolean).join(' · ');
}

/** One assembly on the first page of Refit. */
export function assemblyRow(line: RefitAssembly, most: number): TemplateResult {
  const say = words().refit;
  return html`<div class="rf-assembly"><a class="rf-assembly-link" href=${`#/refit/${line.id}`}>
      <span class="rf-assembly-name"><b>${line.name || say.noName}</b>${line.side ? html` <b class="rf-side">${words().sides[line.side]}</b>` : nothing}</span>
      ${standLine(line)}${partBoxes(line)}
      <span class="second">${progressWords(line)}${line.reference?.is_kept ? ` · ${say.isReference}` : nothing}</span></a>
    ${lackLines(line.lacks, most, (lack) => addressOf(lack, line))}</div>`;
}

/** Where a lack is mended: the step of its part, else the assembly. */
export function addressOf({ part }: Lack, { id }: RefitAssembly): string {
  return part ? `#/refit/${id}?step=${part}` : `#/refit/${id}`;
}
