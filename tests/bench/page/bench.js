// What the bench calls from outside, as `bench.NAME(…)`. Every answer is raw
// milliseconds or counts; figures are made of them outside.

import * as bare from './bare.js';
import * as derive from './derive.js';
import { hexId } from './garage.js';
import * as fill from './fill.js';
import { twelveMegapixels } from './pictures.js';
import * as painted from './painted.js';
import * as record from './record.js';
import * as search from './search.js';
import * as zip from './zip.js';

globalThis.bench = { hexId, twelveMegapixels, ...bare, ...derive, ...fill, ...painted, ...record, ...search, ...zip };
