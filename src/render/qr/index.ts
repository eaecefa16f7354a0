/** The square symbol of a card's address. */
export { paintQrSvg } from './paint-qr-svg.ts';
export { type QrSymbol, QUIET_MODULES, qrSymbol } from './symbol.ts';
