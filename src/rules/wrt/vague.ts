/** Words behind which a limit hides, each with what to write instead. */

interface Vague {
  readonly pattern: string;
  readonly instead: string;
}

const CALLS_FOR = 'say what calls for it: `If the gap is above 0.3 mm, ...`';
const FIGURE = 'give the figure with its unit, as a range or with at most or at least';
const SIGN = 'name the sign by which it is seen to be done, or measure it';
const LIST = 'name every one, or leave it out';
const HOW = 'say how: by which tool, how far, with which force or for how long';

/** What a limit is given for. */
const MEASURED_THING =
  '(?:torque|pressure|temperature|clearance|gap|value|values|limit|limits|level|force|tension|preload|size|amount|quantity|depth|length|speed|setting|range|tolerance|tolerances|dimension|dimensions|position|grade|tool|tools)';

/** In the order in which they are tried; matched in any case as whole words. */
export const VAGUE: readonly Vague[] = [
  {
    pattern:
      '(?:as|if|where|when|whenever|wherever) (?:is |it is |found |deemed |considered )?(?:required|necessary|needed|appropriate|applicable|possible|practicable|desired)',
    instead: CALLS_FOR,
  },
  { pattern: "(?:as|if) need be|as the case may be|at (?:your|the fitter's) discretion", instead: CALLS_FOR },
  { pattern: 'approx\\.?|approximately|roughly|circa', instead: FIGURE },
  {
    pattern: '(?:about|around) (?:\\d|a (?:quarter|half|third|dozen)|half|one|two|three|four|five|ten|twenty)',
    instead: FIGURE,
  },
  { pattern: 'and/or', instead: 'write `and` or `or`; where both are meant, write two conditions' },
  { pattern: 'etc\\.?|and so on|and so forth|and the like|or similar|or equivalent|or suchlike', instead: LIST },
  {
    pattern: 'securely|firmly|snug|snugly|tightly|well tight',
    instead: 'give the torque or the turn, or the sign by which it is seen to hold',
  },
  {
    pattern:
      'until (?:it (?:is|looks|feels|sounds) )?(?:good|right|ok|okay|fine|satisfactory|secure|happy|satisfied|clean enough|tight enough)',
    instead: SIGN,
  },
  { pattern: '(?:looks|feels|seems|appears|sounds) (?:good|right|ok|okay|fine|normal|reasonable)', instead: SIGN },
  {
    pattern: 'adequate|adequately|satisfactory|satisfactorily|acceptable|acceptably|reasonable|reasonably',
    instead: SIGN,
  },
  { pattern: 'proper|properly|correctly|suitable|suitably|appropriate|appropriately', instead: SIGN },
  {
    pattern: '(?:in|into) (?:good|proper|working|serviceable) (?:working )?(?:order|condition)|good condition',
    instead: SIGN,
  },
  {
    pattern: `(?:correct|right) ${MEASURED_THING}`,
    instead: 'give the value itself, from a joint, a register or a `measure`',
  },
  {
    pattern: `(?:specified|recommended|required|prescribed|stated) ${MEASURED_THING}`,
    instead: 'give the value itself, from a joint, a register or a `measure`',
  },
  { pattern: 'normally (?!open\\b|closed\\b|shut\\b|energi)', instead: 'say what is seen, with its figure' },
  { pattern: 'normal (?!to\\b|force\\b|stress\\b|load\\b|stop\\b)', instead: 'say what is seen, with its figure' },
  { pattern: 'normal(?= ?[.,;:!?]|$)|normally(?= ?[.,;:!?]|$)', instead: 'say what is seen, with its figure' },
  { pattern: 'carefully|with (?:great |due |all )?care|gently|cautiously', instead: HOW },
  { pattern: 'sufficient|sufficiently|excessive|excessively|slightly|somewhat|fairly|relatively', instead: FIGURE },
  { pattern: 'thoroughly', instead: SIGN },
  {
    pattern: 'a few|a couple of|a small amount of|a little(?= (?:oil|grease|paste|water|more|further|at))',
    instead: 'give the number or the amount',
  },
  {
    pattern: 'from time to time|periodically|regularly|occasionally|as soon as possible|as often as',
    instead: 'give the interval',
  },
  { pattern: 'should', instead: 'write the order itself; what may be left out belongs in `note`' },
];
