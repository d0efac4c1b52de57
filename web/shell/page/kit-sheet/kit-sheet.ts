import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import '../kit';
import { drawings, type IconName } from '../kit/icon-drawings';
import { LightElement } from '../kit/light-element';
import { STANDINGS } from '../kit/standing';
import '../styles/all.css';
import './kit-sheet.css';
import { words } from '../words';
import { work } from './work';

const theme = new URLSearchParams(location.search).get('theme');
if (theme) document.documentElement.dataset['theme'] = theme;

/** For those who build the app: everything the kit has, on one page. */
@customElement('kit-sheet')
export class KitSheet extends LightElement {
  @state() private open = location.hash === '#dialog';
  @state() private undo = location.hash === '#undo';

  override render(): TemplateResult {
    return html`<div class="frame"><asf-index current="teardown" keeping="kept"></asf-index>
      <main class="frame-page">
        <asf-head .name=${'Stub axle'} .second=${html`<b>LEFT</b> · judged`} sheet back="#/"
          .tag=${html`<asf-tag number="0152" standing="judged" size="52" in-hand></asf-tag>`}
          .cells=${[{ id: 'kept', word: 'kept', icon: 'kept', href: '#/safe-keeping' }]}></asf-head>
        <div class="body">
          <asf-section .label=${'The tag says where the part stands'} .count=${'shape and word, never colour alone'}>${this.tags()}</asf-section>
          <asf-section .label=${'Icons'} .count=${'28 px, line 2.2, one solid part'}>
            <div class="sheet-icons">${(Object.keys(drawings) as IconName[]).map((name) => html`<asf-icon name=${name} word=${name} under></asf-icon>`)}</div></asf-section>
          ${work(() => { this.open = true; }, () => { this.undo = true; })}
        </div>
        <div class="foot"><asf-primary verb="Choose Repair here" .cost=${'£18 cash\n2 h own time'}></asf-primary></div>
      </main></div>
      <asf-dialog .open=${this.open} .label=${'Strike out this photo?'} .body=${html`<p class="reckoned">It can be brought back at any time.</p>`}
        .actions=${html`<div class="pair"><asf-button word="Leave it"></asf-button><asf-button icon="strike" word="Strike out"></asf-button></div>`}
        @asf-close=${() => { this.open = false; }}></asf-dialog>
      <asf-undo message="Photo 3 struck out." ?open=${this.undo} @asf-undo=${() => { this.undo = false; }} @asf-gone=${() => { this.undo = false; }}></asf-undo>`;
  }

  private tags(): TemplateResult {
    const over = ['in-hand', 'irreplaceable', 'missing', 'foreign', 'struck'] as const;
    return html`<div class="sheet-tags">
      ${STANDINGS.map((standing) => html`<div><asf-tag number="0147" size="52" .standing=${standing} quiet></asf-tag><b>${words().standings[standing]}</b></div>`)}
      ${over.map((mark) => html`<div><asf-tag number="0147" size="52" quiet ?in-hand=${mark === 'in-hand'} ?irreplaceable=${mark === 'irreplaceable'}
        ?missing=${mark === 'missing'} ?foreign=${mark === 'foreign'} ?struck=${mark === 'struck'}></asf-tag><b>${mark}</b></div>`)}
      <div><asf-tag number="10147" size="40" standing="tried" in-hand></asf-tag><b>five figures</b></div>
      <div><asf-tag number="0147" size="32" standing="order" irreplaceable></asf-tag><b>32, over another</b></div>
      <div><asf-tag number="0147" size="36" standing="refitted" foreign></asf-tag><b>36, foreign</b></div>
      </div><div class="sheet-live"><asf-tag number="0147" size="88" in-hand string></asf-tag></div>${nothing}`;
  }
}
