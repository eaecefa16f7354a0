/** Words of the safety checks over sentences in the manner of public manuals and shop cards. Outside reference: memory. */

import { describe, expect, test } from 'vitest';
import { injuryIn, onlyNames } from '../../src/rules/saf/harm-words.ts';
import { isVague } from '../../src/rules/saf/vague-avoidance.ts';
import { namesGear, peopleIn } from '../../src/rules/saf/words.ts';

/** ANSI Z535.6 (memory): a message names the hazard and what follows from it. */
const WITH_CONSEQUENCE = [
  'Hot oil can burn skin.',
  'Contact with live parts will result in death.',
  'The spring is under load and may fly out and injure the eyes.',
  'Escaping fluid under pressure can penetrate the skin.',
  'A rotating shaft catches clothing and winds it in.',
  'Battery acid causes severe burns.',
  'Improper lifting can cause back strain.',
  'The tank may contain vapours that explode on contact with a spark.',
  'The door closes by itself and crushes fingers.',
  'Steam escaping from the valve scalds hands and face.',
  'Over-tightening cracks the housing.',
  'Dirt in the bearing shortens its life and leads to seizure.',
  'Residual pressure ejects the plug with great force.',
  'Sharp edges cause cuts.',
  'Noise above 85 dB damages hearing.',
  'Carbon monoxide is odourless and causes unconsciousness within minutes.',
  'The counterweight falls when the rope is slackened.',
  'Running the pump dry destroys the seal within seconds.',
  'A capacitor that is still charged gives an electric shock.',
  'Solvent on the brake lining makes the brake slip.',
  'Welding arc causes eye damage.',
  'Grease injected under the skin leads to loss of the finger.',
  'Magnets interfere with pacemakers and can stop them.',
  'The load swings when it leaves the floor.',
  'Oil on the floor makes people slip.',
  'The chain snatches when the clutch engages.',
  'Loose clothing is drawn in by the rollers.',
  'A blocked filter starves the pump.',
  'Fumes from the coating make people sick.',
  'Epoxy on the skin sensitises for life.',
  'The lever springs up when the pawl is lifted.',
  'Cold oil overloads the motor at the first start.',
  'The boat drops if both hooks are not engaged.',
  'Ozone from the motor attacks rubber.',
  'A wet belt slips and the load runs down.',
  'Chips fly from the drill.',
  'Water hammer breaks the pipe.',
  'An unsecured ladder slides away.',
  'Grease in the brake drum takes away the brake.',
  'The hatch comes down on the neck.',
  'Glass fibre dust itches and gets under the skin.',
  'The jib folds when the pin is drawn and closes like scissors.',
  'Molten zinc sticks to skin.',
  'Acid fumes etch the lenses.',
  'Ice on the deck sends a person overboard.',
  'Wrong polarity melts the cable.',
  'A sealed drum is blown apart by its own vapour.',
  'A hand on the rail is sawn off by the passing cable.',
  'The motor is restarted by the thermostat while a hand is in the fan.',
  'Oil vapour is anaesthetic.',
  'Hydrogen collects under the lid of the battery box.',
  'A stone in the tread is flung at whoever stands behind.',
  'Dry ice in a shut box bursts it.',
  'The wire rope frays and its broken strands go through gloves.',
];

const WITHOUT_CONSEQUENCE = [
  'High pressure.',
  'The oil is hot.',
  'The pipe contains steam at 8 bar.',
  'There is stored energy in the spring.',
  'Rotating parts behind this cover.',
  'The surface temperature is about 90 °C.',
  'This component is heavy.',
  'The cover weighs 64 kg.',
  'Voltage is present at the terminals for ten minutes after the supply is off.',
  'The cleaner is corrosive.',
  'The area under the boom is dangerous.',
  'Residual water may be present in the casing.',
  'The accumulator is charged with nitrogen.',
  'The flywheel has a large inertia.',
  'Caution is required with the retaining ring.',
  'Sharp edges on the plate.',
  'The machine is controlled remotely.',
  'The dust contains lead.',
  'The vessel has not been inspected.',
  'The seal faces are lapped and very clean.',
  'The tank is a confined space.',
  'Working at height.',
  'The belt is under tension.',
  'Flammable liquid.',
  'The gas is heavier than air.',
  'The hose carries oil at 250 bar.',
  'This valve is spring-loaded.',
  'The crane has two independent brakes.',
  'Live conductors are near this cover.',
  'Heavy load overhead.',
  'Electrical equipment inside.',
  'There is no oxygen in the hold.',
  'The filter housing works at 10 bar.',
];

describe('whether a hazard says what it does', () => {
  const missed = WITHOUT_CONSEQUENCE.filter((s) => !onlyNames(s));
  const falseAlarms = WITH_CONSEQUENCE.filter(onlyNames);

  test('nine findings in ten are right, and nine in ten are found', () => {
    const right = WITHOUT_CONSEQUENCE.length - missed.length;
    expect(right / (right + falseAlarms.length), falseAlarms.join('\n')).toBeGreaterThanOrEqual(0.9);
    expect(right / WITHOUT_CONSEQUENCE.length, missed.join('\n')).toBeGreaterThanOrEqual(0.9);
  });
});

describe('whether an avoidance only asks for care', () => {
  test.each([
    'Be careful.',
    'Take care.',
    'Take care when lifting.',
    'Use caution around the shaft.',
    'Exercise extreme caution at all times.',
    'Work safely.',
    'Proceed with caution.',
    'Follow all safety precautions.',
    'Observe the usual safety rules and be careful.',
    'Wear appropriate protective equipment.',
    'Pay attention when the cover is removed.',
    'Always be careful when working here.',
    'Handle with care.',
    'Take care not to burn yourself.',
    'Be careful, when the spring is released.',
    'Avoid injury.',
    'Please be careful; use proper tools.',
  ])('%s', (text) => expect(isVague(text)).toBe(true));

  test.each([
    'Open the vent first.',
    'Gloves on, nobody under the load.',
    'Take care that the sling sits at the mark.',
    'Be careful not to touch the chrome.',
    'Stand to one side of the joint.',
    'Be careful: the vent is opened before the drain.',
    'Wear heat gloves.',
    'Wait until the gauge reads zero.',
    'Follow lockout procedure LP-01.',
    'Wear proper gloves, and keep feet clear of the drop.',
    'Never feel for a leak.',
    'Handle the seal by its rim.',
  ])('not: %s', (text) => expect(isVague(text)).toBe(false));
});

describe('whether words speak of a person being hurt', () => {
  test.each([
    ['Hot oil burns the skin.', 'burns the skin'],
    ['The jet kills.', 'kills'],
    ['A slipping bar crushes fingers.', 'crushes fingers'],
    ['The edge cuts your hand.', 'cuts your hand'],
  ])('%s', (text, words) => expect(injuryIn(text)).toBe(words));

  test.each([
    'A steel scraper cuts grooves into gunmetal.',
    'Nickel paste burns off above 600 °C.',
    'The gauge breaks contact at the mark.',
    'A hand wheel is fitted under the cover.',
    'The thread cuts itself on the first turn.',
  ])('not: %s', (text) => expect(injuryIn(text)).toBeUndefined());
});

describe('how many people, and whether gear carries it', () => {
  test.each([
    ['two people', 2],
    ['Three fitters, one at each eye', 3],
    ['4 persons', 4],
    ['with a second person', 2],
    ['one person', undefined],
    ['two round slings', undefined],
    ['by hand', undefined],
    ['turn both hands of the clock', undefined],
  ])('%s', (text, count) => expect(peopleIn(text)?.count).toBe(count));

  test.each(['lever hoist', 'overhead crane', 'two screw jacks', 'a fork-lift', 'round sling'])('gear: %s', (text) =>
    expect(namesGear(text)).toBe(true),
  );
  test.each(['one person', 'by hand', 'two people'])('no gear: %s', (text) => expect(namesGear(text)).toBe(false));
});
