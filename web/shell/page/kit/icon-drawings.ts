import { svg } from 'lit';

/*
 * Drawn on 28 × 28, line 2.2, butt and mitre. "s" marks the one solid piece of each.
 * Even lines sit on tenths that keep them clear of the pixel edge at 1× and 2×.
 */
export const drawings = {
  // a bolt lifted out of its hole
  teardown: svg`<path class="s" d="M5.5 0H22.5V7H5.5Z" /><path d="M10.1 7V19H17.9V7M10.1 11.5H17.9M10.1 15.4H17.9M0 24.6H9V28M28 24.6H19V28" />`,
  parts: svg`<path d="M8 5.1H26.9V22.9H8L1.1 16V12Z" /><circle class="s" cx="8.5" cy="14" r="2.7" /><path d="M14.5 11.2H22.5M14.5 16.8H22.5" />`,
  plan: svg`<path d="M2.1 1V25.9H28" /><path d="M5.5 21.5H9.6V16.5H15V11.5H20.5V6.6H28" stroke-width="2.8" /><path d="M4.5 3H28" stroke-dasharray="4 3" stroke-width="1.8" />`,
  stores: svg`<path d="M2.1 0V28M25.9 0V28M2.1 13.1H25.9M2.1 25.9H25.9" /><path class="s" d="M5 3.6H12.5V12H5ZM15.5 16.4H23V25H15.5Z" /><path d="M16.2 6.6H21.9V12.5M16.2 13V6.6M6.2 25V18.6H11.9V25" />`,
  // the same bolt seated on its washer
  refit: svg`<path class="s" d="M5.5 2H22.5V9.5H5.5Z" /><path d="M3 12.1H25" stroke-width="2.6" /><path d="M0 17.1H28M10.1 17V28M17.9 17V28M10.1 22.5H17.9" />`,
  kept: svg`<path d="M3.1 3.1H19L24.9 9V24.9H3.1Z" /><path d="M8.2 13.8L12.5 18.2L20 10.2" stroke-width="3" />`,
  scan: svg`<path d="M1.1 8V1.1H8M20 1.1H26.9V8M26.9 20V26.9H20M8 26.9H1.1V20" /><path class="s" d="M7.6 7.6H13V13H7.6ZM15 7.6H20.4V13H15ZM7.6 15H13V20.4H7.6ZM15 15H20.4V20.4H15Z" />`,
  speak: svg`<path class="s" d="M14 1A4.4 4.4 0 0 1 18.4 5.4V12.2A4.4 4.4 0 0 1 9.6 12.2V5.4A4.4 4.4 0 0 1 14 1Z" /><path d="M4.6 11.5V12.5A9.4 9.4 0 0 0 23.4 12.5V11.5M14 22V26M8 26H20" />`,
  stuck: svg`<path d="M14 1.6L24.8 7.8V20.2L14 26.4L3.2 20.2V7.8Z" /><path d="M14 7.5V14.8L18.6 17.6" stroke-width="3" />`,
  torch: svg`<path class="s" d="M7.5 9.5H20.5V13.5H7.5Z" /><path d="M8.6 13V16L11 19V26.9H17V19L19.4 16V13M14 0V6M5.2 1.4L8.6 6.2M22.8 1.4L19.4 6.2" />`,
  loose: svg`<path d="M14 3.2L20.6 7V14.6L14 18.4L7.4 14.6V7Z" /><path d="M1.1 19.5V23.4H4C9 26.8 19 27.2 26.5 23.2" />`,
  move: svg`<path d="M2.1 1V25.9H25M2.1 8.6H11.6V16.6H20.6V25.9" /><circle class="s" cx="20.5" cy="8.6" r="3.7" />`,
  find: svg`<circle cx="11.4" cy="11.4" r="9" /><path d="M17.8 17.8L26 26" stroke-width="3.6" />`,
  file: svg`<path d="M5.1 1.1H17.6L23.9 7.4V26.9H5.1Z" /><path d="M14.5 11.5V22M9.7 17.4L14.5 22.2L19.3 17.4" />`,
  caution: svg`<path d="M14 2.6L26.1 25.4H1.9Z" /><path d="M14 10.5V17.5M14 20V22.8" stroke-width="2.8" />`,
  note: svg`<path d="M3.1 3.1H24.9V18.5L18.5 24.9H3.1Z" /><path d="M8 10.6H20M8 16.2H15.5" />`,

  camera: svg`<path d="M1.1 7.1H8L10 3.1H18L20 7.1H26.9V24.9H1.1Z" /><circle class="s" cx="14" cy="15.4" r="5" />`,
  photo: svg`<path d="M1.1 4.1H26.9V23.9H1.1Z" /><path class="s" d="M4 21V18.5L10.5 11.5L16 17L19 14.5L24 19.5V21Z" />`,
  back: svg`<path d="M18 4.5L8.5 14L18 23.5" stroke-width="3" />`,
  next: svg`<path d="M10 4.5L19.5 14L10 23.5" stroke-width="3" />`,
  add: svg`<path d="M14 4V24M4 14H24" stroke-width="2.8" />`,
  close: svg`<path d="M5.5 5.5L22.5 22.5M22.5 5.5L5.5 22.5" stroke-width="2.8" />`,
  check: svg`<path d="M3.5 14.5L10.8 22L24.5 7" stroke-width="4.6" />`,
  split: svg`<path d="M1.1 9.1H9.5V18.9H1.1Z" /><path d="M9.5 14H14.5M14.5 4.5V23.5M14.5 5.6H19M14.5 22.4H19" /><path class="s" d="M19 2H27V9.4H19ZM19 18.6H27V26H19Z" />`,
  place: svg`<path d="M3.1 5.1H24.9V24.9H3.1Z" /><path class="s" d="M2 4H26V10.5H2Z" />`,
  // a tag that is not there
  missing: svg`<path d="M8 5.1H26.9V22.9H8L1.1 16V12Z" stroke-dasharray="3.4 2.6" /><path d="M5.6 11L11.6 17M11.6 11L5.6 17" stroke-width="2.6" /><path class="s" d="M15.5 11H23.5V17H15.5Z" />`,
  // a tally of five
  count: svg`<path d="M5 4V24M11 4V24M17 4V24M23 4V24" stroke-width="2.6" /><path d="M0.8 20.5L27.2 7.5" stroke-width="3" />`,
  box: svg`<path d="M3.1 8.1H24.9V24.9H3.1ZM1.1 3.1H26.9V8.1H1.1Z" />`,
  route: svg`<path d="M14 26.5V17L5 9.5V5M14 17L23 9.5V5" /><path class="s" d="M0.8 6.5L5 0.5L9.2 6.5Z" /><path d="M20 5.6L23 1.6L26 5.6Z" stroke-width="1.8" />`,
  undo: svg`<path d="M4.5 9.5H18A6.4 6.4 0 0 1 18 22.9H8" stroke-width="2.6" /><path class="s" d="M1.5 9.5L9.5 3.5V15.5Z" />`,
  strike: svg`<path d="M3.1 5.1H24.9V22.9H3.1Z" /><path d="M0.5 14H27.5" stroke-width="3" />`,
  ring: svg`<ellipse cx="12" cy="15.5" rx="9.8" ry="9" /><path d="M18.6 8.8L22.5 5" /><circle class="s" cx="24.3" cy="3.7" r="3.3" />`,
  arrow: svg`<path d="M25.5 2.5L9 19" stroke-width="2.6" /><path class="s" d="M2.5 25.5L6.2 13.6L14.4 21.8Z" />`,
  caption: svg`<path d="M1.1 3.1H26.9V24.9H1.1Z" /><path class="s" d="M1 17.5H27V26H1Z" />`,
  printer: svg`<path d="M7.1 9V1.1H20.9V9M7.1 20H1.1V9.1H26.9V20H20.9" /><path class="s" d="M7.1 15.5H20.9V27H7.1Z" />`,
  share: svg`<path d="M8.5 11.1H3.1V26.9H24.9V11.1H19.5M14 19V6" /><path class="s" d="M14 0L20 8H8Z" />`,
  settings: svg`<path d="M7 0V28M21 0V28" /><path d="M3.1 15.6H10.9V22.4H3.1Z" class="p" /><path class="s" d="M16 5H26V13.5H16Z" />`,
  vehicle: svg`<path d="M1.1 19.9V12.1L6 5.1H17.5V12.1H26.9V19.9" /><path d="M10.5 19.9H17.5M9 12.1V8.5" /><circle class="s" cx="6.8" cy="21" r="3.9" /><circle class="s" cx="21.2" cy="21" r="3.9" />`,
  supplier: svg`<path d="M3.1 12V26.9H24.9V12" /><path d="M1.1 12.1L5 1.1H23L26.9 12.1Z" /><path class="s" d="M11 17H18V27H11Z" />`,
  history: svg`<path d="M5.1 0V28M5.1 5.6H26M5.1 14H21M5.1 22.4H26" /><circle class="s" cx="5.1" cy="14" r="4.2" />`,
  keyboard: svg`<path d="M1.1 5.1H26.9V22.9H1.1Z" /><path class="s" d="M5 9H8V12H5ZM10 9H13V12H10ZM15 9H18V12H15ZM20 9H23V12H20ZM8 16.5H20V19H8Z" />`,
  timer: svg`<circle cx="14" cy="16.4" r="10" /><path d="M10 1.6H18M14 2V6.5M14 16.4L19 10.8" /><circle class="s" cx="14" cy="16.4" r="2.6" />`,
  // a joint in the order it came off
  joint: svg`<path class="s" d="M7 0.5H21V7H7Z" /><path d="M3.5 10H24.5M1.1 13.6H26.9V18.6H1.1ZM8.1 22.1H19.9V27H8.1Z" />`,
  gauge: svg`<path d="M1.1 3.1H26.9V8.5H1.1ZM3.1 8.5V25L8.5 19.5V8.5" /><path class="s" d="M13 8.5H23.5V14H18.5V26.5L13 21Z" />`,
  mark: svg`<path d="M14 1V16" stroke-width="2.6" /><path class="s" d="M14 26L7 14H21Z" />`,
  series: svg`<path d="M7.1 7.1H26.9V22.9H7.1ZM4 20H1.1V4.1H22V6" /><circle class="s" cx="17" cy="15" r="4.2" />`,
  bin: svg`<path d="M4.1 8.1H23.9L22 26.9H6Z" /><path d="M1 3.6H27" stroke-width="2.6" />`,
  bring: svg`<path d="M14 9V22M8.5 16.8L14 22.2L19.5 16.8M3.1 12V26.9H24.9V12" /><path class="s" d="M11 1H17V7H11Z" />`,
  list: svg`<path d="M10 5.6H27M10 14H27M10 22.4H27" /><path class="s" d="M1 3H6V8H1ZM1 11.5H6V16.5H1ZM1 20H6V25H1Z" />`,
  rotate: svg`<path d="M22.6 8A10.4 10.4 0 1 0 24.4 14" stroke-width="2.4" /><path class="s" d="M26.5 2V11.5H17Z" />`,
  play: svg`<path class="s" d="M6 3L24 14L6 25Z" />`,
  stop: svg`<path class="s" d="M5 5H23V23H5Z" />`,
  hold: svg`<path class="s" d="M6 4H11.5V24H6ZM16.5 4H22V24H16.5Z" />`,
  chart: svg`<path d="M1.1 4.1H26.9V10.9H1.1Z" /><path class="s" d="M0 3H13V12H0Z" /><path d="M1.1 17.1H18.9V23.9H1.1Z" />`,
  proved: svg`<circle class="s" cx="14" cy="14" r="13.5" /><path d="M7.5 14.2L12.2 19L20.5 9.8" class="w" stroke-width="3.4" />`,
  'not-proved': svg`<path d="M14 1.4L26.6 14L14 26.6L1.4 14Z" /><path class="s" d="M14 1.4V26.6L1.4 14Z" />`,
  skip: svg`<path d="M2 22V17A9 9 0 0 1 20 17V19" /><path class="s" d="M13.5 17H26.5L20 26Z" />`,
  rework: svg`<path d="M9.5 1.6A7.2 7.2 0 0 1 16.8 11.2L26.4 20.8L20.8 26.4L11.2 16.8A7.2 7.2 0 0 1 1.6 9.5L6.4 12L11 10.6L12 6.4Z" /><path class="s" d="M14.6 16.4L16.4 14.6L24 22.2L22.2 24Z" />`,
  'proved-bad': svg`<path class="s" d="M1 1H27V27H1Z" /><path d="M7.6 7.6L20.4 20.4M20.4 7.6L7.6 20.4" class="w" stroke-width="3.4" />`,
} as const;

export type IconName = keyof typeof drawings;
