/** What an unquoted scalar stands for by the core schema of YAML 1.2 (chapter 10.3): null, truth value, number, else text. */

import type { Scalar } from './tree.ts';

const INTEGER = /^[-+]?[0-9]+$/;
const OCTAL = /^0o[0-7]+$/;
const HEXADECIMAL = /^0x[0-9a-fA-F]+$/;
const FLOAT = /^[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?$/;
const INFINITE = /^[-+]?\.(?:inf|Inf|INF)$/;
const NOT_A_NUMBER = /^\.(?:nan|NaN|NAN)$/;

/** text: already folded to one string. */
export function coreScalar(text: string): Scalar {
  const first = text.charCodeAt(0);
  // Letters but n, t, f and their capitals begin nothing but text: the usual case.
  if (first >= 0x3a) {
    switch (text) {
      case '~':
      case 'null':
      case 'Null':
      case 'NULL':
        return null;
      case 'true':
      case 'True':
      case 'TRUE':
        return true;
      case 'false':
      case 'False':
      case 'FALSE':
        return false;
      default:
        return text;
    }
  }
  if (text === '') return null;
  if (INTEGER.test(text)) return Number.parseInt(text, 10);
  if (FLOAT.test(text)) return Number.parseFloat(text);
  if (OCTAL.test(text)) return Number.parseInt(text.slice(2), 8);
  if (HEXADECIMAL.test(text)) return Number.parseInt(text.slice(2), 16);
  if (INFINITE.test(text)) return first === 0x2d ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  return NOT_A_NUMBER.test(text) ? Number.NaN : text;
}
