/** Debian's Chromium: where it is, and how it is started without anything that would use the network by itself. */

export const CHROMIUM_PATH = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';

/** Options for playwright-core's `chromium.launch`. */
export const CHROMIUM_LAUNCH = {
  executablePath: CHROMIUM_PATH,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
