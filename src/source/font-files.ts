/** Reads the card faces from their packages: the only place where font files are opened. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

export type FaceName = 'regular' | 'semibold' | 'bold' | 'fallback' | 'fallbackBold';

export type FontFiles = Readonly<Record<FaceName, Uint8Array>>;

/**
 * Source Sans 3 (OFL-1.1) for the text, DejaVu Sans Condensed (Bitstream Vera terms) for the few signs that it lacks.
 * Whole TTF files on purpose: other containers cost tens of milliseconds a card when they are subset.
 */
const FILES: Readonly<Record<FaceName, string>> = {
  regular: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  semibold: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  bold: '@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf',
  fallback: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  fallbackBold: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf',
};

/** The bytes of all faces. Throws when a package is missing, which is a fault of the installation and not of the content. */
export function readFontFiles(): FontFiles {
  const require = createRequire(import.meta.url);
  const read = (name: FaceName): Uint8Array => readFileSync(require.resolve(FILES[name]));
  return {
    regular: read('regular'),
    semibold: read('semibold'),
    bold: read('bold'),
    fallback: read('fallback'),
    fallbackBold: read('fallbackBold'),
  };
}
