/** Families of checks, in the order of the list. */

export const FAMILIES: Readonly<Record<string, string>> = {
  SRC: 'Files',
  FLD: 'Values',
  REF: 'References',
  PRT: 'Parts',
  BLT: 'Bolt patterns',
  TRQ: 'Torque',
  JNT: 'Joints in the steps',
  TOL: 'Tools',
  CSM: 'Consumables',
  SAF: 'Safety',
  WRT: 'Writing',
  REV: 'Control',
  LDG: 'Issued revisions',
  CRD: 'Cards',
  ACC: 'Accepted warnings',
};

/** `Torque` for TRQ005. */
export function familyOf(code: string): string {
  return FAMILIES[code.slice(0, 3)] ?? '';
}
