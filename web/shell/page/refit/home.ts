import { html, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { ReadyView, RefitAssembly } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Naming } from '../problems/naming';
import { today } from '../today';
import { words } from '../words';
import { assemblyRow, standOf, type Stand } from './assembly-row';
import './evening';
import { lastStep } from './last-step';

const GROUPS: readonly Stand[] = ['ready', 'own', 'blocked', 'refitted'];
/** So much of what stands in the way is told here; all of it with the assembly. */
const MOST = 3;

/** What can go on today, what blocks the rest and until when; what is still loose; what fits into the evening. */
@customElement('asf-refit-home')
export class RefitHome extends LightElement {
  private readonly live = new Live(this, 'ready', () => ({ ask: 'ready', today: today() }));
  private readonly naming = new Naming(this);
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().refit;
    const { view } = this.live;
    const head = html`<asf-head .name=${say.title} .second=${view?.assemblies.length ? say.count(view.assemblies.length) : ''} .cells=${[this.keeping.cell]}></asf-head>`;
    if (!view) return html`${head}`;
    if (view.assemblies.length === 0 && view.in_no_assembly === 0) return html`${head}<div class="body"><asf-empty .first=${say.none.first} .then=${say.none.then}><asf-button icon="teardown" word=${say.none.go} href="#/teardown"></asf-button></asf-empty>${this.ways(view)}</div>`;
    return html`${head}<div class="body rf-home"><div class="rf-home-list">${GROUPS.map((stand) => this.group(stand, view))}${this.outside(view)}${this.circles(view)}</div>
      <div class="rf-home-beside">${this.ways(view)}<asf-evening></asf-evening></div></div>${this.foot(view)}`;
  }

  private group(stand: Stand, { assemblies }: ReadyView): TemplateResult | typeof nothing {
    const lines = assemblies.filter((line) => standOf(line) === stand);
    if (lines.length === 0) return nothing;
    return html`<asf-section .label=${words().refit.groups[stand]} .count=${words().refit.count(lines.length)}><ul>${lines.map((line) => html`<li>${assemblyRow(line, MOST)}</li>`)}</ul></asf-section>`;
  }

  private outside({ in_no_assembly }: ReadyView): TemplateResult | typeof nothing {
    const say = words().refit.outside;
    return in_no_assembly ? html`<asf-section .label=${say.title}><p class="reckoned">${say.lead}</p><asf-button icon="list" word=${say.line(in_no_assembly)} href="#/refit/none"></asf-button></asf-section>` : nothing;
  }

  private circles({ circles }: ReadyView): TemplateResult | typeof nothing {
    const say = words().refit.circles;
    if (circles.length === 0) return nothing;
    return html`<asf-section .label=${say.title}>${circles.map((circle) => {
      const named = circle.parts.map((id) => this.naming.of(id));
      return html`<p class="reckoned">${say.said(named.map(({ name }) => name || words().parts.noName), circle)}</p><ul class="rf-circle">${circle.parts.map((id, i) => html`<li><a href=${`#/refit/${id}`}>${named[i]?.name || words().parts.noName}</a></li>`)}</ul>`;
    })}</asf-section>`;
  }

  /** The other pages of Refit. */
  private ways({ loose, unchecked, lowering, road }: ReadyView): TemplateResult {
    const say = words().refit;
    const gate = road.done ? say.gates.onTheRoad : lowering.done ? say.gates.lowered : '';
    return html`<nav class="rf-ways" aria-label=${say.title}>
      <a class="rf-loose" href="#/refit/loose"><asf-icon name="loose"></asf-icon><span><b>${say.loose.title}: ${loose.length ? say.loose.count(loose.length) : say.loose.none}</b>${unchecked.length ? html`<br><span class="second">${say.loose.open(unchecked.length)}</span>` : nothing}</span><asf-icon name="next" size="20"></asf-icon></a>
      <a class="rf-loose" href="#/refit/commissioning"><asf-icon name="gauge"></asf-icon><span><b>${words().commissioning.title}</b>${gate ? html`<br><span class="second">${gate}</span>` : nothing}</span><asf-icon name="next" size="20"></asf-icon></a></nav>`;
  }

  /** Where one was, else the assembly that is begun and ready, else the first that can begin. */
  private foot({ assemblies }: ReadyView): TemplateResult | typeof nothing {
    const say = words().refit;
    const last = lastStep();
    const line = assemblies.find(({ id, state }) => id === last?.assembly && state !== 'refitted') ?? next(assemblies);
    if (!line) return nothing;
    const isLast = line.id === last?.assembly;
    const name = [line.name || say.noName, line.side ? words().sides[line.side] : ''].filter(Boolean).join(' ');
    return html`<div class="foot"><a class="cut primary rf-go" href=${isLast && last ? `#/refit/${last.assembly}?step=${last.part}` : `#/refit/${line.id}?step=next`}>
      <span class="primary-verb">${isLast || line.fitted > 0 ? say.goOn : say.begin}</span><span class="primary-cost">${isLast ? say.resume(name) : name}</span></a></div>`;
  }
}

function next(assemblies: readonly RefitAssembly[]): RefitAssembly | undefined {
  const ready = assemblies.filter((line) => standOf(line) === 'ready');
  return ready.find(({ fitted }) => fitted > 0) ?? ready[0] ?? assemblies.find(({ fitted, state }) => fitted > 0 && state === 'blocked') ?? assemblies.find((line) => standOf(line) === 'own');
}

declare global { interface HTMLElementTagNameMap { 'asf-refit-home': RefitHome } }
