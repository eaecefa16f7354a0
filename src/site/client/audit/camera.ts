/** Scanning inside the page, where browser and connection allow it; elsewhere the phone's own camera opens each card's page. */

interface Detector {
  readonly detect: (source: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}

type DetectorMaker = new (options: { readonly formats: readonly string[] }) => Detector;

/** The browser's own reader of symbols; undefined where it has none or the page is not served safely. */
function detectorMaker(): DetectorMaker | undefined {
  const made: unknown = Reflect.get(window, 'BarcodeDetector');
  return window.isSecureContext && 'mediaDevices' in navigator && typeof made === 'function'
    ? (made as DetectorMaker)
    : undefined;
}

/** Between two looks at the picture, in ms. */
const LOOK_MS = 250;

/** Shows the button where scanning is possible; `onText` gets what each symbol holds, once in a row. */
export function attachCamera(
  button: HTMLButtonElement,
  video: HTMLVideoElement,
  onText: (text: string) => void,
  onFault: (words: string) => void,
): void {
  const Maker = detectorMaker();
  if (Maker === undefined) return;
  button.hidden = false;
  let stream: MediaStream | undefined;
  let last = '';
  const stop = () => {
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = undefined;
    video.hidden = true;
    button.textContent = 'Scan with the camera';
  };
  const look = async (detector: Detector): Promise<void> => {
    if (stream === undefined) return;
    const [found] = await detector.detect(video).catch(() => []);
    if (found !== undefined && found.rawValue !== last) {
      last = found.rawValue;
      onText(last);
    }
    setTimeout(() => void look(detector), LOOK_MS);
  };
  button.addEventListener('click', () => {
    if (stream !== undefined) return stop();
    navigator.mediaDevices
      .getUserMedia({ video: { facingMode: 'environment' } })
      .then(async (opened) => {
        stream = opened;
        video.srcObject = opened;
        video.hidden = false;
        button.textContent = 'Stop the camera';
        await video.play();
        void look(new Maker({ formats: ['qr_code'] }));
      })
      .catch(() => {
        stop();
        onFault('The camera could not be opened. Use the phone’s own camera, or type the fingerprint.');
      });
  });
}
