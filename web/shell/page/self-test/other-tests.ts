import { canShare, isStandaloneIos } from '../hand-over/ways-out';
import { everythingIsKept } from '../update';
import { words } from '../words';
import type { Result, TestName } from './result';

export async function wakeTest(): Promise<Result[]> {
  const say = words().selfTest.what;
  if (!('wakeLock' in navigator)) return [{ name: 'wake', works: null, said: say.notOffered }];
  try {
    await (await navigator.wakeLock.request('screen')).release();
    return [{ name: 'wake', works: true, said: '' }];
  } catch (error) {
    return [{ name: 'wake', works: false, said: error instanceof Error ? error.message : String(error) }];
  }
}

const FILES: readonly (readonly [TestName, string, string])[] = [
  ['share-html', 'parts.html', 'text/html'], ['share-csv', 'parts.csv', 'text/csv'], ['share-zip', 'job.zip', 'application/zip'], ['share-jpeg', 'photo.jpg', 'image/jpeg'],
];

/** Asked with a real file of each kind: no list of kinds is the same everywhere. */
export function shareTest(): Result[] {
  const say = words().selfTest.what;
  return FILES.map(([name, file, type]) => {
    const works = canShare(new File(['test'], file, { type }));
    return { name, works: works ? true : null, said: works ? '' : say.downloads };
  });
}

export function soundTest(): Result[] {
  const say = words().selfTest.what;
  if (!('MediaRecorder' in window)) return [{ name: 'sound', works: false, said: say.notOffered }];
  const type = ['audio/webm;codecs=opus', 'audio/mp4', 'audio/ogg;codecs=opus'].find((one) => MediaRecorder.isTypeSupported(one));
  return [{ name: 'sound', works: type !== undefined, said: type ?? say.notOffered }];
}

export async function windowTest(): Promise<Result[]> {
  const say = words().selfTest.what;
  const installed = matchMedia('(display-mode: standalone)').matches || isStandaloneIos();
  const kept = await everythingIsKept();
  return [
    { name: 'offline', works: kept, said: kept ? '' : say.no },
    { name: 'locks', works: 'locks' in navigator, said: 'locks' in navigator ? '' : say.notOffered },
    { name: 'installed', works: installed ? true : null, said: installed ? say.yes : say.no },
  ];
}
