/** The shop's registers and machines, resolved. */

import type { Range } from '../diagnostics/index.ts';
import type { Band } from '../torque/index.ts';
import type { Length, Limit, Mass, Quantity, Ratio, Temperature, Time } from '../units/index.ts';
import type { JointPlan } from './joint-types.ts';
import type { FromFile } from './read-from.ts';
import type { SourceNote } from './text-types.ts';

export interface ShopInfo {
  readonly name: string;
  /** As served, ending in `/`: `https://binder.osfw.example/`. */
  readonly address: string;
  /** Path part of the address, beginning and ending in `/`. */
  readonly basePath: string;
  readonly language: string;
  readonly leadingTorque: string;
  readonly secondTorque: string;
  readonly cardFormat: 'A4' | 'A5' | 'Letter';
  readonly safety: string;
  readonly storedEnergy?: string;
  readonly report?: string;
  /** Heaviest part that one person lifts, and the highest temperature to which a part is heated. */
  readonly liftAlone: Mass;
  readonly heatLimit: Temperature;
  readonly control: ControlRules;
  /** `content/shop.yaml`, as shown to the author. */
  readonly file: string;
}

/** The shop's own rules of document control. */
export interface ControlRules {
  /** How revisions are named: A, B, C without I, O, Q, S, X, Z, or 1, 2, 3. */
  readonly scheme: 'letters' | 'numbers';
  /** Classes of change whose approval must be signed. */
  readonly signed: readonly ('major' | 'minor')[];
  /** First day of that rule: what was written before need not be signed. */
  readonly signedSince?: string;
  /** Days within which a receipt comes back. */
  readonly receiptDays: { readonly suspension: number; readonly major: number; readonly minor: number };
  /** Most temporary changes open on one document, and the most days that one may hold. */
  readonly temporaryMost: number;
  readonly temporaryDays: number;
  /** Days before a review is due that it is called due soon. */
  readonly dueSoonDays: number;
  /** Days after which an answer of the site is too old to be trusted. */
  readonly freshDays: number;
}

export interface Person extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  readonly approves: readonly string[];
  /** Its key in the register. */
  readonly keyRange: Range;
}

export interface Bench extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly lead?: string;
  /** Document numbers in binder order. */
  readonly binder: readonly string[];
  /** Number of the controlled copies that hang here. */
  readonly copy: number;
  /** Its key in the register. */
  readonly keyRange: Range;
}

export interface Tool extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** `24 mm`, `15/16 in`. */
  readonly size?: Length;
  readonly drive?: Length;
  readonly range?: Limit;
  readonly step?: { readonly text: string; readonly si: number };
  /** Torque wrench: from the square to the middle of the grip. */
  readonly lever?: Length;
  /** Socket: outside diameter at the bolt end. */
  readonly outside?: Length;
  readonly capacity?: Mass;
  readonly serial?: string;
  readonly calibrationDue?: string;
  /** Why a measuring tool needs no calibration. */
  readonly uncalibrated?: string;
  /** Benches at which it stands, when it cannot be carried. */
  readonly fixedAt?: readonly string[];
  readonly kept?: string;
  readonly alsoCalled: readonly string[];
  readonly note?: string;
  /** Its key in the register. */
  readonly keyRange: Range;
}

export interface Consumable extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly number?: string;
  readonly pack?: string;
  readonly packSize?: Quantity<'mass' | 'volume' | 'length'>;
  readonly condition?: string;
  /** K of the lubricant's own maker. */
  readonly nutFactor?: { readonly band: Band; readonly source: string };
  readonly hazards: readonly string[];
  readonly ppe: readonly string[];
  readonly safetyData?: string;
  readonly shelfLife?: string;
  /** Time until it holds. */
  readonly cure?: Time;
  /** What it is made of, for seals that it meets. */
  readonly medium?: string;
  readonly lead?: Time;
  readonly waste?: string;
  readonly alsoCalled: readonly string[];
  readonly note?: string;
  /** Its key in the register. */
  readonly keyRange: Range;
}

export interface Part extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly number?: string;
  readonly kind: string;
  /** Count over the whole machine; for fasteners without a stated count it follows from the joints (first variant). */
  readonly quantity: number;
  readonly material?: string;
  /** Thread and grade of a fastener as printed, where the parts list states them. */
  readonly thread?: string;
  readonly grade?: string;
  readonly mass?: Mass;
  readonly alwaysReplace: boolean;
  /** Tightened past yield, so that it serves once. */
  readonly pastYield?: true;
  /** Locking (prevailing-torque) nut or screw. */
  readonly locking?: true;
  readonly elastomer?: string;
  /** Consumables that the seal maker allows against the general table. */
  readonly resists?: readonly string[];
  /** Sub-assembly: ids of the parts of which it is built. */
  readonly madeOf?: readonly string[];
  readonly kit?: string;
  readonly lead?: Time;
  /** Share of inspected ones that is usually replaced. */
  readonly rate?: Ratio;
  /** `size: large`, when it exists in some variants only. */
  readonly only?: string;
  readonly note?: string;
  /** Its key in the register. */
  readonly keyRange: Range;
}

export interface Machine extends FromFile {
  readonly id: string;
  readonly name: string;
  readonly mark?: string;
  readonly where?: string;
  readonly bench: string;
  readonly about?: string;
  readonly axes: readonly { readonly axis: string; readonly values: readonly string[] }[];
  readonly serials: readonly { readonly from: number; readonly to: number; readonly is: readonly Choice[] }[];
  readonly energy: readonly string[];
  /** It turns, so that it is turned by hand before it is handed back. */
  readonly rotates: boolean;
  readonly manual?: SourceNote;
  readonly parts: readonly Part[];
  /** Every joint of the machine, once per different form that it takes over the variants. */
  readonly joints: readonly { readonly plan: JointPlan; readonly variants: string }[];
  /** Its key in the register. */
  readonly keyRange: Range;
}

/** One value of one variant axis, such as size: large. */
export interface Choice {
  readonly axis: string;
  readonly value: string;
}
