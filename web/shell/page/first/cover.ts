import { html, type TemplateResult } from 'lit';

/** The cover: the tag on its nail over ruled paper. A drawing; the words stand below it. */
export function cover(small: boolean): TemplateResult {
  return html`<svg class="first-cover ${small ? 'first-cover-small' : ''}" viewBox="0 0 390 408" preserveAspectRatio="xMidYMid slice" aria-hidden="true">
    <path class="cover-rule" d="M-400 68H800M-400 136H800M-400 204H800M-400 272H800M-400 340H800" />
    <g transform="rotate(6.8 170 240)">
      <path class="cover-card" d="M117 92H198L239 124V384H81V124Z" transform="translate(9 8)" />
      <circle class="cover-ring" cx="169" cy="132" r="22" /><circle class="cover-hole" cx="169" cy="132" r="10" />
      <text class="cover-name" x="169" y="232" text-anchor="middle" textLength="132" lengthAdjust="spacingAndGlyphs">asfound</text>
      <path class="cover-line" d="M111 262H227M111 298H227M111 334H227" />
    </g>
    <path class="cover-string" d="M170 98C162 60 176 44 196 34M173 98C196 66 210 56 198 34" /><circle class="cover-nail" cx="196" cy="34" r="7" />
  </svg>`;
}
