import { html, nothing, type TemplateResult } from 'lit';
import type { InspectView } from '../../bridge/protocol';
import { go } from '../frame/start';
import '../kit/button';
import '../kit/primary';
import { words } from '../words';
import { familyLink } from './family-link';
import './findings';
import '../measures/measures';
import './routes-left';
import { familyName, familyWords } from './said';
import { open } from './stand';
import './verdict';

/** What a part comes to, with all that it rests on, and the way on; `to` turns to a question. */
export function result(part: string, view: InspectView, cautions: TemplateResult, to: (at: string) => void): TemplateResult {
  const say = words().judge;
  const known = familyWords(view.family);
  return html`<div class="body judge-body">${cautions}
      <h2 class="unseen" tabindex="-1">${view.single_use ? say.singleUse : say.verdict[view.verdict]}</h2>
      ${familyLink(part, familyName(view.family, view.own_families))}
      <asf-verdict .view=${view}></asf-verdict>
      ${known ? html`<p class="reckoned">${say.again} ${known.again} ${known.note}</p>` : nothing}
      <asf-routes-left .view=${view}></asf-routes-left>
      <asf-findings .view=${view} @asf-question=${(event: CustomEvent<{ question: string }>) => { to(event.detail.question); }}></asf-findings>
      <asf-measures .view=${view}></asf-measures>
      <asf-button icon="add" word=${say.addOwn} @click=${() => { to('own'); }}></asf-button></div>
    <div class="foot">${wayOn(part, view, to)}</div>`;
}

function wayOn(part: string, view: InspectView, to: (at: string) => void): TemplateResult {
  const say = words().judge;
  const next = view.next === undefined ? undefined : view.asked[view.next];
  if (!next) return html`<asf-primary verb=${say.toRoutes} cost=${say.toRoutesCost} key="Enter" @click=${() => { go(`#/routes/${part}`); }}></asf-primary>`;
  return html`<asf-primary verb=${say.goOn} cost=${say.open(open(view))} key="Enter" @click=${() => { to(next.question); }}></asf-primary>
    <asf-button icon="route" word=${say.toRoutes} href=${`#/routes/${part}`}></asf-button>`;
}
