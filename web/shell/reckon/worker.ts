import init, { form } from '../pkg/reckon/reckon.js';
import wasm from '../pkg/reckon/reckon_bg.wasm?url';

await init({ module_or_path: wasm });
self.postMessage({ form: form() });
