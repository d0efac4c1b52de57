import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { AssemblyLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { go } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/primary';
import '../kit/side';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../styles/assemblies.css';
import { endOf } from '../teardown/side-of';
import { words } from '../words';
import { answered, CHECKS } from '../before/checks';
import './early';
import { early } from './early';
import './form';
import { assemblyGone } from './gone';

/** All assemblies, each after the one it is inside; several may stand open. */
@customElement('asf-place-assemblies')
export class AssembliesPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  /** The one being changed; `new` for one more. */
  @state() private editing: AssemblyLine | 'new' | null = journal.typedBefore('assembly:new') === null ? null : 'new';
  /** Kept whole as the reference, and about to be stripped. */
  @state() private asking: AssemblyLine | null = null;
  @state() private hand: string | null = journal.inHand(desk.current() ?? '').assembly;

  private readonly live = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override render(): TemplateResult {
    const text = words().assemblies;
    const { id } = this.address;
    if (id && this.live.view && !this.live.view.assemblies.some(({ record }) => record.id === id)) return html`<asf-head .name=${text.title} back="#/assemblies"></asf-head>${assemblyGone()}`;
    const lines = (this.live.view?.assemblies ?? []).filter(({ record }) => !record.struck);
    return html`<asf-head .name=${text.title} .second=${this.head.view?.job.values.name ?? ''} back="#/teardown"
        .cells=${[{ id: 'job', word: words().places.job, icon: 'settings' as const, href: '#/job', label: `${words().places.job}: ${this.head.view?.job.values.name ?? ''}` }]}></asf-head>
      <div class="body">
        ${this.live.view && lines.length === 0 ? html`<asf-empty .first=${text.none.first} .then=${text.none.then}></asf-empty>` : nothing}
        <ul class="as-list">${lines.map((line) => this.line(line))}</ul>
        ${lines.length > 0 ? html`<asf-button class="as-none" word=${text.withoutAssembly} pressed=${this.hand === null ? 'true' : 'false'} @click=${() => { this.take(null); }}></asf-button>` : nothing}
      </div>
      <div class="foot"><asf-primary verb=${text.add} cost=${text.addCost} @click=${() => { this.editing = 'new'; }}></asf-primary></div>
      <asf-dialog .open=${this.editing !== null} .label=${this.editing === 'new' || !this.editing ? text.add : text.changeName(this.editing.record.values.name ?? text.unnamed)}
        .body=${html`<asf-assembly-form .line=${this.editing === 'new' ? null : this.editing} .others=${lines} .vehicle=${this.live.view?.vehicles[0]?.id ?? null}
          @asf-made=${(event: CustomEvent<{ id: string }>) => { this.made(event.detail.id); }}></asf-assembly-form>`}
        @asf-close=${() => { this.editing = null; journal.typed('assembly:new'); }}></asf-dialog>
      <asf-early .line=${this.asking} @asf-strip=${() => { const id = this.asking?.record.id; this.asking = null; if (id) this.take(id); }} @asf-leave=${() => { this.asking = null; }}></asf-early>`;
  }

  private line(line: AssemblyLine): TemplateResult {
    const text = words().assemblies;
    const { record: { id, values }, side, depth, parts } = line;
    const name = values.name ?? text.unnamed;
    const isOpen = values.open === true;
    return html`<li class="as-line as-depth-${Math.min(depth, 4)}">
      <button type="button" class="as-take" aria-current=${this.hand === id ? 'true' : nothing} @click=${() => { if (early(line)) this.asking = line; else this.take(id); }}>
        <span class="row-words"><span class="unseen">${text.takeApart} </span><span class="row-name">${name}</span>
        <span class="row-second">${text.parts(parts)} · ${isOpen ? text.open : text.closed}${line.reference?.is_kept ? ` · ${text.early.kept}` : ''}${values.stage === undefined ? '' : ` · ${text.inStage(values.stage)}`}${this.hand === id ? ` · ${text.inHand}` : ''}</span></span>
        ${side ? html`<asf-side side=${side} end=${endOf(name)} driver=${this.head.view?.settings.driver_side ?? 'right'}></asf-side>` : nothing}
      </button>
      <div class="as-do">
        <asf-button compact href="#/before/${id}" word=${text.before(answered(line), CHECKS.length)}></asf-button>
        <asf-button compact word=${isOpen ? text.closeIt : text.openIt} label=${`${isOpen ? text.closeIt : text.openIt} ${name}`} @click=${() => { this.open(line, !isOpen); }}></asf-button>
        <asf-button compact word=${text.change} label=${text.changeName(name)} @click=${() => { this.editing = line; }}></asf-button>
      </div></li>`;
  }

  private take(assembly: string | null): void {
    journal.hold(desk.current() ?? '', { assembly, part: null, draft: null });
    this.hand = assembly;
    go('#/teardown');
  }

  private open({ record: { id, values, seen } }: AssemblyLine, open: boolean): void {
    const text = words().assemblies;
    const name = values.name ?? text.unnamed;
    void carryOut({ do: 'change', ids: [id], changes: [{ open }], seen }, open ? text.opened(name) : text.closedNow(name));
  }

  // What was just made is what comes apart next; first it is looked at.
  private made(id: string): void {
    const isNew = this.editing === 'new';
    this.editing = null;
    if (!isNew) return;
    journal.hold(desk.current() ?? '', { assembly: id, part: null, draft: null });
    go(`#/before/${id}`);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-assemblies': AssembliesPlace } }
