/**
 * The closed list of diagnostic codes. A code is never used again for another fault.
 * Families: SRC files and YAML, FLD fields and values, REF references, PRT part ledger, BLT bolt patterns, TRQ torque,
 * REV revisions, CRD cards.
 */

interface CodeEntry {
  readonly name: string;
  readonly severity: 'error' | 'warning';
  /** One sentence: what is reported. */
  readonly title: string;
}

function error(name: string, title: string): CodeEntry {
  return { name, severity: 'error', title };
}

function warning(name: string, title: string): CodeEntry {
  return { name, severity: 'warning', title };
}

export const CODES = {
  SRC001: error('missing-folder', 'The shop folder, or a file that every shop has, is not there.'),
  SRC002: error('unreadable-file', 'A file cannot be read from the disk.'),
  SRC003: error('oversized-file', 'A content file is larger than any procedure could be.'),
  SRC004: error('binary-file', 'A content file holds bytes that no text file holds.'),
  SRC005: error('wrong-encoding', 'A content file is not UTF-8.'),
  SRC006: error('malformed-yaml', 'A content file is not well-formed YAML.'),
  SRC007: error('tab-indentation', 'A line is indented with a tab, which YAML does not allow.'),
  SRC008: error('anchor-or-alias', 'A content file uses a YAML anchor, alias, merge key or tag.'),
  SRC009: error('duplicate-key', 'A key stands twice in one map.'),
  SRC010: error('empty-file', 'A content file holds nothing.'),
  SRC011: error('several-documents', 'A content file holds more than one YAML document.'),
  SRC012: error(
    'misplaced-file',
    'A file lies where no content file is read, or is linked from outside the shop folder.',
  ),
  FLD001: error('unknown-key', 'A key is not one that this entry may have.'),
  FLD002: error('missing-key', 'A key that the entry must have is not there.'),
  FLD003: error('wrong-type', 'A value has the wrong type.'),
  FLD004: error('wrong-value', 'A value is not one of those allowed here.'),
  FLD005: error('bad-quantity', 'A quantity cannot be read, has no unit, or has a unit of another kind.'),
  FLD006: error('bad-limit', 'An acceptance limit cannot be read, has no unit, or runs backwards.'),
  FLD007: error('bad-identifier', 'An id or document number is written in a way that cannot serve as an address.'),
  FLD008: error('bad-date', 'A date is not a day of the calendar written as YYYY-MM-DD.'),
  FLD009: error('bad-thread', 'A thread designation is not a standard one.'),
  FLD010: error('bad-grade', 'A property class or grade is not known, or does not cover the size.'),
  FLD011: error('markup-in-text', 'Text holds a picture, a heading or another construct that cards cannot show.'),
  FLD012: error('bad-flange', 'A standard flange is named that is not known.'),
  REF001: error('undefined-tool', 'A tool is used that is not in the tool register.'),
  REF002: error('undefined-consumable', 'A consumable is used that is not in the consumable register.'),
  REF003: error('undefined-part', 'A part is used that the machine does not have.'),
  REF004: error('undefined-joint', 'A joint is used that the machine does not have.'),
  REF005: error('undefined-procedure', 'A procedure is referred to that the shop does not have.'),
  REF006: error('undefined-step', 'A step is referred to that the procedure does not have.'),
  REF007: error('undefined-machine', 'A machine is named that the shop does not have.'),
  REF008: error('undefined-bench', 'A bench is named that the shop does not have.'),
  REF009: error('undefined-person', 'A person is named who is not in the register of people.'),
  REF010: error('undefined-stage', 'A shared stage is used that the shop does not have.'),
  REF011: error('duplicate-identifier', 'Two entries have the same id or document number.'),
  REF012: error('wrong-kind', 'An id of one register stands where another register is meant.'),
  REF013: error('undefined-variant', 'A variant axis or value is named that the machine does not have.'),
  REF014: error('unknown-scheme', 'A link in text is neither one of our references nor a web address.'),
  REF015: error('absent-in-variant', 'A part or joint is used in a variant that does not have it.'),
  PRT001: error('fastener-count', 'The count in the parts list differs from the joints that the part fastens.'),
  PRT002: error('fastener-differs', 'Thread or grade of a fastener differ between the parts list and its joint.'),
  BLT001: error('impossible-pattern', 'A bolt pattern cannot exist: too few bolts, no size, or holes that overlap.'),
  BLT002: error('socket-clearance', 'The socket does not pass its neighbour.'),
  BLT003: error('wall-clearance', 'The socket does not pass the wall.'),
  BLT004: error('impossible-sequence', 'The order asked for cannot be had with this pattern.'),
  BLT005: error('feature-overlap', 'A dowel or jacking screw overlaps a bolt hole, or has no place.'),
  BLT006: error('flange-mismatch', 'Circle, count or thread differ from the standard flange named.'),
  BLT007: warning('close-spacing', 'Neighbouring bolts stand closer than flange practice allows.'),
  TRQ001: error(
    'torque-unit-slip',
    'The stated torque differs from the computed one by a factor that betrays a unit or digit slip.',
  ),
  TRQ002: warning('torque-outside-band', 'The stated torque lies outside the computed band and no reason is given.'),
  TRQ003: error(
    'torque-far-off',
    'The stated torque is more than twice or less than half the computed one and no reason is given.',
  ),
  TRQ004: error(
    'over-proof',
    'The highest preload exceeds the proof load, or the yield load where there is no proof load.',
  ),
  TRQ005: error('wrench-range', 'A round lies outside the marked range of the torque wrench.'),
  TRQ006: warning('wrench-low-range', 'A round lies under 20 % of the largest marking of the torque wrench.'),
  TRQ007: error('routes-disagree', 'The short and the long form of the torque equation do not agree.'),
  TRQ008: error('rounds-not-rising', 'The rounds do not rise to 100 %.'),
  TRQ009: error('wrong-drive', 'The socket or key named does not fit the head.'),
  TRQ010: error('unsourced-torque', 'A torque is stated without saying where it comes from.'),
  TRQ011: error('torque-table', 'A computed torque table fails its own cross-check.'),
  TRQ012: error('weak-nut', 'The nut is weaker than its bolt.'),
  TRQ013: error('adapter', 'The wrench cannot be corrected for its adapter.'),
  TRQ014: error('lubricant-condition', 'The lubricant gives another condition than the one the torque is for.'),
  TRQ015: error('table-slip', 'A cell of a torque table typed from a manual looks like a slip of digit or unit.'),
  TRQ016: warning('table-outside-band', 'A cell of a torque table typed from a manual lies outside the computed band.'),
  TRQ017: warning('over-yield', 'The combined stress while tightening may pass 90 % of yield.'),
  TRQ018: error('past-yield', 'The combined stress while tightening may pass yield.'),
  REV001: error('revision-order', 'The revisions of a document are not in order.'),
  REV002: error('early-effective-date', 'A revision takes effect before it is approved.'),
  REV003: error('self-approval', 'A revision is approved by its own author.'),
  CRD001: error('step-does-not-fit', 'A step with its warnings and torque block is taller than a card side.'),
  CRD002: error('missing-glyph', 'A character is in none of the card faces.'),
  CRD003: error('word-too-wide', 'A word or number is wider than its place on the card.'),
  CRD004: error('long-address', 'A card address is too long for a symbol that scans well on a laminated card.'),
} as const satisfies Record<string, CodeEntry>;

export type Code = keyof typeof CODES;
