import { html, type TemplateResult } from 'lit';
import '../kit/icon';
import { words } from '../words';
import type { Bench } from './bench';

/** The joint in hand with its pieces; each tap on the lower half is one more that came off. */
export function joinedCounter(bench: Bench): TemplateResult {
  const text = words().teardown;
  const joint = bench.jointInHand;
  const name = joint?.name ?? bench.nextJointName;
  const pieces = joint?.pieces ?? 0;
  const inside = html`<span class="td-joint-name">${text.joint(name)}</span><span class="td-joint-count"><b>${pieces}</b> ${text.pieces(pieces)}</span>`;
  return html`<div class="td-joint">
    ${joint ? html`<a class="td-joint-open" href="#/joint/${joint.id}">${inside}<span class="unseen">${text.openJoint}</span></a>` : html`<div class="td-joint-open">${inside}</div>`}
    <button type="button" class="td-joint-next" aria-label=${text.nextPieceName(name)} @click=${() => { bench.addPiece(); }}><asf-icon name="add" size="28"></asf-icon><span>${text.nextPiece}</span></button>
  </div>`;
}
