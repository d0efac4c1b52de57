import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { InspectView } from '../../bridge/protocol';
import { familyLink } from '../judge/family-link';
import { answered, familyName } from '../judge/said';
import '../judge/verdict';
import '../kit/button';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';

/** How many reasons are shown here; all of them stand where it is judged. */
const MOST = 3;

/** What a part was judged to be: its family, what it comes to with the worst of why, and the way to its questions. */
@customElement('asf-sheet-judged')
export class SheetJudged extends LightElement {
  @property() partId = '';
  private readonly live = new Live(this, 'inspect', () => (this.partId ? { ask: 'inspect', part: this.partId } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (this.hasUpdated && changed.has('partId')) this.live.anew();
  }

  override render(): TemplateResult | typeof nothing {
    const { view } = this.live;
    if (!view) return nothing;
    const say = words().judge;
    const family = familyName(view.family, view.own_families);
    const [likely] = view.proposed;
    return html`<asf-section .label=${say.sheet.title} .count=${view.asked.length ? say.ofAnswered(answered(view), view.asked.length) : say.sheet.open}>
      ${familyLink(this.partId, family || (likely ? say.sheet.perhaps(familyName(likely.family, view.own_families)) : say.family.none))}
      ${family ? html`<asf-verdict .view=${view} .most=${MOST}></asf-verdict>
        ${view.keep_as_pattern ? html`<p class="reckoned">${say.pattern}</p>` : nothing}` : nothing}
      <asf-button class="sheet-judge" icon="check" word=${wayIn(view, family)} href=${`#/judge/${this.partId}`}></asf-button></asf-section>`;
  }
}

function wayIn(view: InspectView, family: string): string {
  const say = words().judge.sheet;
  if (!family) return say.say;
  if (view.next === undefined) return say.look;
  return answered(view) > 0 ? say.goOn : say.go;
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-judged': SheetJudged } }
