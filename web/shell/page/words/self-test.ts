/** What this device can do. */
export const selfTest = {
  title: 'Test this device', lead: 'Nothing here is sent anywhere. Test photos and files are thrown away.',
  run: 'Run the test', again: 'Run it again', running: 'Testing', copy: 'Copy the report', copied: 'Report copied', copyBy: 'Copying was refused: select the report below and copy it.', report: 'Report',
  yes: 'works', no: 'does not work', unknown: 'cannot be told here', waits: 'not tested yet',
  names: { camera: 'Camera', torch: 'Torch', still: 'Still photo', storage: 'Write and read back', durability: 'Written through to the disk', persist: 'Kept when room is short', 'room': 'Room', wake: 'Screen stays on', offline: 'Starts with no signal',
    'share-html': 'Share a page', 'share-csv': 'Share a table', 'share-zip': 'Share a job file', 'share-jpeg': 'Share a photo', sound: 'Spoken notes', locks: 'Several windows', installed: 'On the home screen' },
  what: { refused: 'permission was refused', none: 'there is none', notOffered: 'this browser does not offer it', promised: 'promised', notPromised: 'not promised', strict: 'strict', ms: (n: number) => `${Math.round(n)}\u00a0ms`, downloads: 'not to be shared here: it is saved instead', size: (w: number, h: number) => `${w} × ${h}`, differs: 'what was read is not what was written', yes: 'yes', no: 'no' },
  device: 'Device',
};
