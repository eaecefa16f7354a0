/** EN 1092-1 steel flanges, connection dimensions by PN and DN. */

import { type Flange, type FlangeAlternative, straddling } from './flange-type.ts';

export interface EnSize {
  readonly dn: number;
  readonly pn: number;
  readonly flange: Flange;
}

/** `DN:outside/circle/count/bolt` in mm. */
const PN40_TO_150 = `10:90/60/4/12 | 15:95/65/4/12 | 20:105/75/4/12 | 25:115/85/4/12 | 32:140/100/4/16
  | 40:150/110/4/16 | 50:165/125/4/16 | 65:185/145/8/16 | 80:200/160/8/16 | 100:235/190/8/20 | 125:270/220/8/24
  | 150:300/250/8/24`;
const PN16_TO_150 = `10:90/60/4/12 | 15:95/65/4/12 | 20:105/75/4/12 | 25:115/85/4/12 | 32:140/100/4/16
  | 40:150/110/4/16 | 50:165/125/4/16 | 65:185/145/8/16 | 80:200/160/8/16 | 100:220/180/8/16 | 125:250/210/8/16
  | 150:285/240/8/20`;

/**
 * EN 1092-1:2018 Tables 10 to 15, with ISO 7005-1 alike. Read in reprints: DN 32 to 50 and 150 to 400 in every PN, DN
 * 450 to 600 in PN 6 to 16, and every second row of the rest; the others, DN 10 and all above DN 600 are memory. PN 10
 * is drilled as PN 16 to DN 150, PN 25 as PN 40 to DN 150.
 */
const TABLES: Readonly<Record<number, string>> = {
  6: `10:75/50/4/10 | 15:80/55/4/10 | 20:90/65/4/10 | 25:100/75/4/10 | 32:120/90/4/12 | 40:130/100/4/12 | 50:140/110/4/12
    | 65:160/130/4/12 | 80:190/150/4/16 | 100:210/170/4/16 | 125:240/200/8/16 | 150:265/225/8/16 | 200:320/280/8/16
    | 250:375/335/12/16 | 300:440/395/12/20 | 350:490/445/12/20 | 400:540/495/16/20 | 450:595/550/16/20
    | 500:645/600/20/20 | 600:755/705/20/24 | 700:860/810/24/24 | 800:975/920/24/27 | 900:1075/1020/24/27
    | 1000:1175/1120/28/27`,
  10: `${PN16_TO_150} | 200:340/295/8/20 | 250:395/350/12/20 | 300:445/400/12/20 | 350:505/460/16/20 | 400:565/515/16/24
    | 450:615/565/20/24 | 500:670/620/20/24 | 600:780/725/20/27 | 700:895/840/24/27 | 800:1015/950/24/30
    | 900:1115/1050/28/30 | 1000:1230/1160/28/33`,
  16: `${PN16_TO_150} | 200:340/295/12/20 | 250:405/355/12/24 | 300:460/410/12/24 | 350:520/470/16/24 | 400:580/525/16/27
    | 450:640/585/20/27 | 500:715/650/20/30 | 600:840/770/20/33 | 700:910/840/24/33 | 800:1025/950/24/36
    | 900:1125/1050/28/36 | 1000:1255/1170/28/39`,
  25: `${PN40_TO_150} | 200:360/310/12/24 | 250:425/370/12/27 | 300:485/430/16/27 | 350:555/490/16/30 | 400:620/550/16/33
    | 450:670/600/20/33 | 500:730/660/20/33 | 600:845/770/20/36 | 700:960/875/24/39 | 800:1085/990/24/45
    | 900:1185/1090/28/45 | 1000:1320/1210/28/52`,
  40: `${PN40_TO_150} | 200:375/320/12/27 | 250:450/385/12/30 | 300:515/450/16/30 | 350:580/510/16/33 | 400:660/585/16/36
    | 450:685/610/20/36 | 500:755/670/20/39 | 600:890/795/20/45`,
};

/** Bolt hole by bolt, mm: EN 1092-1, same tables. */
const HOLES: Readonly<Record<number, number>> = {
  10: 11,
  12: 14,
  16: 18,
  20: 22,
  24: 26,
  27: 30,
  30: 33,
  33: 36,
  36: 39,
  39: 42,
  45: 48,
  52: 56,
};

const FOUR_HOLES: FlangeAlternative = {
  count: 4,
  firstDeg: straddling(4),
  when: 'by agreement, and on older and cast-iron flanges',
};

function flange(pn: number, row: string): EnSize {
  const [dn = 0, outsideMm = 0, boltCircleMm = 0, count = 0, bolt = 0] = row.trim().split(/[:/]/).map(Number);
  const boltHoleMm = HOLES[bolt];
  if (boltHoleMm === undefined) throw new RangeError(`no bolt hole for M${bolt} of DN ${dn} PN ${pn}`);
  const isDouble = dn === 65 && (pn === 10 || pn === 16);
  return {
    dn,
    pn,
    flange: {
      designation: `EN 1092-1 DN ${dn} PN ${pn}`,
      standard: 'EN 1092-1',
      boltCircleMm,
      count,
      thread: `M${bolt}`,
      boltHoleMm,
      firstDeg: straddling(count),
      outsideMm,
      ...(isDouble
        ? {
            note: 'DN 65 has 8 holes in PN 10 and PN 16, and 4 by agreement: count those of the flange',
            alternatives: [FOUR_HOLES],
          }
        : {}),
      source: `EN 1092-1:2018, connection dimensions PN ${pn}${dn === 10 || dn > 600 ? ' (memory)' : '; part read in reprints, the rest memory'}`,
    },
  };
}

/** By PN, then DN. */
export const EN_SIZES: readonly EnSize[] = Object.entries(TABLES).flatMap(([pn, rows]) =>
  rows.split('|').map((row) => flange(Number(pn), row)),
);

export const FLANGES_EN: readonly Flange[] = EN_SIZES.map((s) => s.flange);
