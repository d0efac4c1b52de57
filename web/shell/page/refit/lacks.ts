import { html, nothing, type TemplateResult } from 'lit';
import type { Lack } from '../../bridge/protocol';
import '../kit/icon';
import { tagFigures } from '../parts/tag-figures';
import { words } from '../words';
import { capital } from '../words/format';
import { lackWhen } from './when';

/** What of a lack is its own name: hardware and consumables are called themselves, the part stands by its tag. */
const OWN_NAME = new Set<Lack['why']>(['hardware', 'consumable']);

/** "0147 Wheel bearing: on order, from 15 Mar". Without its subject where that stands above already. */
export function lackWords(lack: Lack, subject = true): TemplateResult {
  const say = words().refit.lacks;
  const what = say.what[lack.why](lack);
  const when = lackWhen(lack);
  return html`${subject ? subjectOf(lack) : nothing}${what}${when ? html`, <b>${when}</b>` : nothing}`;
}

function subjectOf({ why, tag, name, part }: Lack): TemplateResult | typeof nothing {
  const say = words().refit;
  if (part === undefined) return html`<b>${capital(say.lacks.wholeAssembly)}</b>: `;
  const called = [tag === undefined ? '' : tagFigures(tag), OWN_NAME.has(why) ? '' : name || words().parts.noName].filter(Boolean).join(' ');
  return called ? html`<b>${called}</b>: ` : nothing;
}

/** Drawn for a lack: a hand's work is half done, what waits for others is shut. Never alone: the words stand beside it. */
export function lackIcon({ own, no_date }: Lack): 'rework' | 'timer' | 'not-proved' {
  if (own) return 'rework';
  return no_date ? 'not-proved' : 'timer';
}

/** The first few of what stands in the way, each a line that leads to its part; the rest counted. */
export function lackLines(all: readonly Lack[], most: number, addressOf: (lack: Lack) => string | undefined): TemplateResult | typeof nothing {
  if (all.length === 0) return nothing;
  const shown = all.length === most + 1 ? all : all.slice(0, most);
  const rest = all.length - shown.length;
  return html`<ul class="rf-lacks">${shown.map((lack) => html`<li>${line(lack, addressOf(lack))}</li>`)}${rest > 0 ? html`<li class="rf-lack"><span></span><span class="second">${words().refit.lacks.more(rest)}</span></li>` : nothing}</ul>`;
}

function line(lack: Lack, address: string | undefined): TemplateResult {
  const inside = html`<asf-icon name=${lackIcon(lack)} size="20"></asf-icon><span class="rf-lack-words">${lackWords(lack)}</span>`;
  return address ? html`<a class="rf-lack" href=${address}>${inside}</a>` : html`<span class="rf-lack">${inside}</span>`;
}
