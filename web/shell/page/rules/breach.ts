import { html, nothing, type TemplateResult } from 'lit';
import { newId } from '../../bridge/desk';
import type { Command, RuleLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/icon';
import { whoDecides } from '../routes/who-dialog';
import { words } from '../words';
import { breachSaid } from './breach-said';
import { ruleSaid } from './rule-said';

/** What stands against a rule, and its cheapest mend, to be taken with one tap; nothing while it holds. */
export function breachOf(rule: RuleLine): TemplateResult | typeof nothing {
  const said = breachSaid(rule);
  if (!said) return nothing;
  const say = words().rules.breaches;
  const { mend } = rule.breach ?? {};
  return html`<div class="breach"><p class="breach-against"><asf-icon name="caution" size="20"></asf-icon><b>${said.against}</b></p><p class="second">${said.mend}</p>
    ${mend ? html`<asf-button icon="check" word=${say.take} label="${say.take}: ${said.chooses}" @click=${() => { void take(rule, said.chooses); }}></asf-button>` : nothing}</div>`;
}

/** A rule with its breach, for where it arises: the sentence leads to the parts that it is about. */
export function brokenRule(rule: RuleLine): TemplateResult {
  const { before, relation, after } = ruleSaid(rule);
  const { of, other } = rule.record.values;
  const dot = html` <span class="second" aria-hidden="true">·</span> `;
  return html`<li class="broken-rule"><p class="rule-words">${linked(before, rule, rule.subject_part ?? of)}${dot}<b>${relation}</b>${dot}${linked(after, rule, rule.other_part ?? other)}</p>${breachOf(rule)}</li>`;
}

function linked(text: string, { breach }: RuleLine, part: string | undefined): TemplateResult | string {
  return part && breach?.parts.includes(part) ? html`<a href="#/routes/${part}">${text}</a>` : text;
}

/** All that a mend chooses with one stroke, so that one undo takes it back. */
async function take({ breach }: RuleLine, what: string): Promise<void> {
  const who = whoDecides();
  const commands = (breach?.mend?.choices ?? []).map(({ part, quote }): Command => ({ do: 'choose', id: newId(), quote, part, ...(who && { who }) }));
  await carryOut({ do: 'all', commands }, words().rules.breaches.taken(what));
}
