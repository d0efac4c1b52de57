import init, { form } from '../pkg/record/record.js';
import wasm from '../pkg/record/record_bg.wasm?url';

await init({ module_or_path: wasm });
self.postMessage({ form: form() });
