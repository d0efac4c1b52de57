import { words } from '../words';
import type { Result } from './result';

/** Opens the camera for a moment: whether it may be used, how large its picture is, torch and still photo. */
export async function cameraTest(): Promise<Result[]> {
  const say = words().selfTest.what;
  if (!navigator.mediaDevices?.getUserMedia) return [{ name: 'camera', works: false, said: say.notOffered }];
  let stream: MediaStream | undefined;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment', width: { ideal: 4096 } } });
    const [track] = stream.getVideoTracks();
    const { width = 0, height = 0 } = track?.getSettings() ?? {};
    // Only what the track itself says is true of the torch.
    const torch = track && 'getCapabilities' in track && 'torch' in track.getCapabilities();
    const still = 'ImageCapture' in window;
    return [
      { name: 'camera', works: track !== undefined, said: say.size(width, height) },
      { name: 'torch', works: torch ? true : null, said: torch ? '' : say.notOffered },
      { name: 'still', works: still ? true : null, said: still ? '' : say.notOffered },
    ];
  } catch (error) {
    const refused = error instanceof DOMException && error.name === 'NotAllowedError';
    const none = error instanceof DOMException && error.name === 'NotFoundError';
    return [{ name: 'camera', works: false, said: refused ? say.refused : none ? say.none : String(error) }];
  } finally {
    stream?.getTracks().forEach((track) => { track.stop(); });
  }
}
