// The rescue page needs neither wasm nor the app.
const place = document.querySelector('#rescue');
if (place) place.textContent = 'Rescue';
