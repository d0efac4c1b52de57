import { expect, test } from 'vitest';
import css from './tokens.css?raw';

type Colours = Record<string, string>;

const block = (head: RegExp): Colours => {
  const body = head.exec(css)?.[1] ?? '';
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name = '', value = '']) => [name, value]));
};
const light = block(/:root \{([^}]*)\}/);
const chosen = block(/:root\[data-theme="dark"\] \{([^}]*)\}/);
const system = block(/:root:not\(\[data-theme="light"\]\) \{([^}]*)\}/);

const shine = (hex = ''): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const part = parseInt(hex.slice(i, i + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a?: string, b?: string): number => {
  const [hi = 0, lo = 0] = [shine(a), shine(b)].sort((x, y) => y - x);
  return (hi + 0.05) / (lo + 0.05);
};

test('night is the same whether chosen or the system’s', () => {
  expect(Object.keys(chosen).length).toBeGreaterThan(9);
  expect(system).toEqual(chosen);
});

test.each([['light', light], ['dark', { ...light, ...chosen }]])('contrast holds: %s', (_, colours) => {
  for (const ground of ['paper', 'sheet', 'well']) {
    expect(contrast(colours['ink'], colours[ground])).toBeGreaterThanOrEqual(7);
    expect(contrast(colours['ink2'], colours[ground])).toBeGreaterThanOrEqual(7);
  }
  expect(contrast(colours['on-buff'], colours['buff'])).toBeGreaterThanOrEqual(7);
  expect(contrast(colours['on-solid'], colours['solid'])).toBeGreaterThanOrEqual(7);
  expect(contrast(colours['on-plate'], colours['plate'])).toBeGreaterThanOrEqual(7);
  expect(contrast(colours['deep'], colours['paper'])).toBeGreaterThanOrEqual(7);
  expect(contrast(colours['line'], colours['paper'])).toBeGreaterThanOrEqual(3);
});
