/** Words of workshop English, as far as the checks of writing have to know them. */

function list(words: string): ReadonlySet<string> {
  return new Set(words.trim().split(/\s+/));
}

/** Verbs whose base form is hardly ever a noun or an adjective: one at the head of a clause is an order. */
export const CLEAR_VERBS = list(`
  abrade accept acknowledge activate add adhere adjust affix agitate align allow alternate anneal anoint answer
  apply arrange ascertain ask assemble assess assign attach authorise authorize avoid be become begin bend bleed
  blow bring build burnish calculate calibrate call carry catch caulk choose circulate clamber clarify climb collect
  combine commission compare complete compress compute conduct confirm connect consider consult contact continue
  convert correct create crimp cure de-energise de-energize deactivate deburr decide decouple decrease deenergise
  deenergize deflate defrost degrease demagnetise demagnetize depress depressurise depressurize detach detect
  determine dilute dip disassemble discard discharge disconnect disengage dismantle dispose dissolve disturb do drag
  draw drive ease eject employ enclose energise energize engage engrave ensure enter equalise equalize erase
  evacuate evaluate examine exchange exclude exercise expel expose extend extinguish extract fabricate fasten find
  finish fix flatten follow gather get give grind grip halt hang harden have help hoist hold identify ignore immerse
  implement indicate inflate inform inhibit initiate inject insert inspect install insulate interchange invert
  investigate isolate join keep knock lay learn leave let lift listen loosen lose lower lubricate maintain make
  manoeuvre measure melt mix moisten mount move multiply neutralise neutralize notify nudge obey observe obtain
  offer omit operate optimise orient overhaul overlap passivate peel perform permit pierce pour pre-heat preheat
  prepare present preserve pressurise pressurize prevent prise proceed produce prohibit protect prove provide pry
  pull purge pursue push put quench quote raise rap re-check re-energise re-energize re-fit re-install re-measure
  re-torque reach ream reassemble rebuild recharge recheck recommission reconnect recount recover rectify reduce
  refer refill refit reform regulate reheat reinforce reinsert reinstall reinstate reject relieve relocate remain
  remake remeasure remember remount remove renew reopen repack replace replenish request require rerun reseal reset
  resharpen restart restore restrain restrict resume retain retighten retorque retract retrieve revolve rewind rinse
  rotate rub scan scrape scribe search see select send separate sever shake sharpen shear show siphon slacken slide
  sling soak solder spin splice sprinkle squeeze squirt stabilise stir stow straighten stretch strike strip submerge
  submit subtract suck suggest supply suspend swab swap sweep swing take tell thaw think throw tie tighten tilt
  transfer transport treat trickle try unbend unblock unbolt uncap unclamp unclip uncoil uncouple uncover undo
  unfasten unfold unhook uninstall unload unlock unpack unpin unplug unroll unscrew unseal unseat unsling untie
  unwind unwrap update use utilise utilize validate verify wait warn weigh weld wipe withdraw write
`);

/** Base forms that are nouns or adjectives as well: an order only before what they act on. */
export const DOUBTFUL_VERBS = list(`
  address air anchor angle arm back bag balance bar batch bead bed block bolt bond bore box brace bracket brake
  brush buff bush button cable cap cast center centre chain chalk change channel charge check chill chock chuck
  clamp clean clear clip clock close cloth clutch coat coil color colour cone control cool copy cord cotter count
  counterbore countersink couple cover crack cradle crane crank cross crush cup cut cycle dab damp date dial die
  dimple dismount dock dog double dowel drain dress drift drill drip drop dry dump dust edge empty end etch exhaust
  face fan feather feed feel fell file fill film filter finger fire fit flag flame flange flare flash flex float
  flood flow flush foam focus fold force form foul frame free freeze fuel function fuse gag gap gasket gauge gear
  glue grade grease groove ground group guard guide hammer hand handle harness haul head heat hinge hit hook hose
  index ink iron issue jack jam jet jog joint journal key kit knot label lace land lap latch lead leak level light
  limit line link list load locate lock log look loop loose lube machine magnet map mark mask match mesh meter mill
  mirror mist mould nail name neck need nip notch note number nut oil open order oversize pack package pad paint
  pair park part pass paste patch pause pay peen peg photograph pick pile pillow pin pinch pipe pitch place plan
  plane plate play plug plumb point polish position post pot practise press prime print probe process profile proof
  prop pump punch rack rag rail ramp range rate rattle read rear recess record reel relay release relief repair
  repeat report rest return reverse rig right ring ripple rivet rock rod roll rope rough route run rush rust sack
  sample sand saw scale scoop score scrap scratch screen screw scrub seal seat secure service set sew shade shape
  shave sheathe sheet shield shift shim shine shore short shrink shut shuttle side sight sign signal sink size skim
  slack slant sleeve slew slip slit slot slow smooth snap soap socket sort sound space spacer span spare split spool
  spot spray spread spring square stack stage stake stamp stand start state station stay steady steam steer step
  stick stiffen stone stop store strain strap stream stress string stripe stroke stud supplement support surface
  survey switch tab tack tag tap tape taper target task tee telephone temper tension test thin thread throttle
  thrust tidy time tin tip top torch torque touch trace track trail train transit trap travel trial trim trip truck
  true turn twist type vacuum vent view visit walk warm warp wash waste watch water wax wear weather wedge wet wheel
  whip widen winch wind wire witness work wrap wrench wring yield zero
`);

/** A doubtful verb before one of these acts on it: `oil the thread`. */
const OBJECT_BEGINS = list(`
  the a an each every all both any this that these those its their your his her one two three four five six seven
  eight nine ten twelve another either half it them him new old everyone everything nothing
`);

/** Words that begin a sentence which is no order. */
export const NO_VERB_FIRST = list(`
  the a an this that these those its their your his her our my it they he she we you i there here what which who whose
  nobody nothing everyone everybody someone something anybody anything no none some many most several few each every all
  both any other another either neither such not
`);

/** Words that open a clause or a phrase before the order; a comma ends it. */
export const OPENERS = list(`
  when if once after before as while whilst where wherever whenever unless until till with without on in at from by for
  during under over through to using because since given provided having inside outside above below between against
  beginning starting working standing holding keeping facing looking going one two three only immediately meanwhile
  together in-turn every each
`);

/** Between the head of a sentence and its verb: `then slowly open`, `do not open`. */
export const BEFORE_VERB = list(`
  then now next finally first second third lastly again also please always never just only still together
`);

const NOUN_ENDING =
  /(?:tion|sion|ness|ment|ity|ance|ence|ship|age|ism|ure|ings?|ers?|ors?|als?|ies|ous|ful|less|able|ible|ive|ic|ly)$/;

/** Whether the base form of a verb. */
export function isVerb(lower: string): boolean {
  return CLEAR_VERBS.has(lower) || DOUBTFUL_VERBS.has(lower);
}

export function beginsObject(lower: string): boolean {
  return OBJECT_BEGINS.has(lower);
}

/** Whether a word that is in no list ends as nouns, adjectives and adverbs do. */
export function endsAsNoun(lower: string): boolean {
  return NOUN_ENDING.test(lower) || /[^s]s$/.test(lower) || /ed$/.test(lower);
}

/** `tightens`, `tightened`, `tightening` of a verb in the lists. */
export function isOtherForm(lower: string): boolean {
  const stems = [
    lower.replace(/s$/, ''),
    lower.replace(/es$/, ''),
    lower.replace(/ies$/, 'y'),
    lower.replace(/(?:ed|ing)$/, ''),
    lower.replace(/d$/, ''),
    lower.replace(/ing$/, 'e'),
    lower.replace(/(.)\1(?:ed|ing)$/, '$1'),
    lower.replace(/ied$/, 'y'),
  ];
  return !isVerb(lower) && stems.some((s) => s !== lower && isVerb(s));
}

const IRREGULAR = list(`
  bent bled blown bound broken brought built burnt cast caught cut done drawn driven fed felt found frozen given ground
  held hung kept laid left let lit made met put read run seen sent set shaken shown shrunk shut slid slung split spread
  sprung spun struck stuck swept swung taken thrown told torn wiped withdrawn wound worn written undone redone
`);

/** Whether a past participle: `tightened`, `withdrawn`. */
export function isParticiple(lower: string): boolean {
  return IRREGULAR.has(lower) || /[a-z]{2}ed$/.test(lower);
}
