/**
 * Sentences as workshop manuals have them, written from memory of their style (common practice; none is copied): half of
 * them sound, half with one slip. What the checks of writing say of each is compared with what an editor would say.
 */

import { describe, expect, test } from 'vitest';
import { codesOf, type Field } from './wrt-sentences.ts';

type Row = readonly [field: Field, sentence: string, ...codes: readonly string[]];

const SOUND: readonly Row[] = [
  ['do', 'Remove the eight cover screws.'],
  ['do', 'Lift the cover squarely off its dowels.'],
  ['do', 'Drain the oil into a clean container.'],
  ['do', 'When the oil has drained, refit the drain plug with a new washer.'],
  ['do', 'If the shaft binds, loosen the bearing cap by a quarter turn.'],
  ['do', 'Hold the shaft and turn the nut anticlockwise.'],
  ['do', 'Turn the adjusting screw until it just touches the stop.'],
  ['do', 'Using a soft drift, tap the bearing out of its housing.'],
  ['do', 'Working from the drive end, number the four bearing caps.'],
  ['do', 'With the hoist carrying the rotor, slide the end shield over the shaft.'],
  ['do', 'By hand, screw the plug in as far as it goes.'],
  ['do', 'Oil the lip of the new seal.'],
  ['do', 'Set the gap between the points to 0.35 to 0.45 mm.'],
  ['do', 'Heat the coupling to at most 120 °C in an oil bath.'],
  ['do', 'Fit the new lock washer with its tab in the keyway.'],
  ['do', 'Clean the oilways with compressed air at no more than 2 bar.'],
  ['do', 'Slowly open the isolating valve and watch the gauge.'],
  ['do', 'Do not bend the pipe.'],
  ['do', 'Measure the bore at three heights, in line with the shaft and across it.'],
  ['do', 'Tighten screws 1 to 4 finger-tight.'],
  ['do', 'Apply a 3 mm bead of sealant around each hole.'],
  ['do', 'Check the level in the sight glass.'],
  ['do', 'Press the seal in square until its face is flush with the housing.'],
  ['do', 'Remove and discard the split pin.'],
  ['do', 'Mark the rotor and the stator across the joint.'],
  ['note', 'Grease that was left in the race hardens and stops the cage.'],
  ['note', 'The left-hand thread is marked with a groove on the nut.'],
  ['note', 'Check valves in the delivery line hold the pressure for hours.'],
  ['if out', 'Replace both bearings as a pair.'],
  ['avoid', 'Gloves and face shield on; nobody in line with the plug.'],
];

const FAULTY: readonly Row[] = [
  ['do', 'Remove the cover and drain the oil.', 'WRT001'],
  ['do', 'Disconnect the battery, remove the terminal box and unbolt the starter motor.', 'WRT001'],
  ['do', 'Clean the mating faces, then apply the sealant.', 'WRT001'],
  ['do', 'Open the vent. Close the inlet valve.', 'WRT001'],
  ['do', 'Fit the new gasket and tighten the screws evenly.', 'WRT001'],
  [
    'do',
    'Remove the long screws that hold the front bearing cover to the pump body on the side of the coupling guard next to the motor.',
    'WRT002',
  ],
  ['do', 'Tighten the nuts securely.', 'WRT003'],
  ['do', 'Lubricate the bearing as required.', 'WRT003'],
  ['do', 'Make sure that the belt is properly tensioned.', 'WRT003'],
  ['do', 'Tighten the screws to the specified torque.', 'WRT003'],
  ['do', 'Fill with approximately two litres of oil.', 'WRT003'],
  ['do', 'Lap the seat until it looks good.', 'WRT003'],
  ['if out', 'Replace the bearing and/or the sleeve.', 'WRT003'],
  ['avoid', 'Handle the glass carefully.', 'WRT003'],
  ['do', 'Adjust the clearance to 0.05.', 'WRT004'],
  ['do', 'Increase the pressure to 6, then close the valve.', 'WRT001', 'WRT004'],
  ['note', 'A gap of 3 is left for the gasket.', 'WRT004'],
  ['do', 'Set the spark gap to 0.6 mm.', 'WRT005'],
  ['do', 'Pressurise the cooler to 4 bar.', 'WRT005'],
  ['do', 'Heat the inner ring to 110 °C.', 'WRT005'],
  ['note', 'Make sure that the arrow points forward.', 'WRT006'],
  ['note', 'If the old bearing is noisy, replace it.', 'WRT006'],
  ['note', 'The nut must be renewed each time.', 'WRT006'],
  ['do', 'Close the valve when the tank is full.', 'WRT007'],
  ['do', 'Replace the seal if it is worn.', 'WRT007'],
  ['do', 'The screws are to be tightened crosswise.', 'WRT008'],
  ['do', 'All joints must be cleaned with solvent.', 'WRT008'],
  ['do', 'The cover can now be lifted off.', 'WRT008'],
  ['do', 'Removal of the impeller with the puller.', 'WRT009'],
  ['note', 'The settings of step 12 hold for both pumps.', 'WRT011'],
];

/** A second set, written after the rules stood. */
const MIXED: readonly Row[] = [
  ['do', 'Undo the two union nuts.'],
  ['do', 'Ease the rotor out of the casing with two pry bars.'],
  ['do', 'Support the weight of the gearbox on a trolley jack.'],
  ['do', 'Rotate the crankshaft clockwise until the timing marks line up.'],
  ['do', 'Tap the end of the shaft lightly with a hide mallet.'],
  ['do', 'Smear a thin film of grease on the O-ring.'],
  ['do', 'Torque the nuts in three stages, working crosswise.'],
  ['do', 'Degauss the shaft with the coil.'],
  ['do', 'Secure the free end of the chain with a shackle.'],
  ['do', 'Before the seal goes in, tape the keyway.'],
  ['do', 'Two people lift the cover clear.', 'WRT009'],
  ['do', 'You can now pull the bearing.', 'WRT009'],
  ['do', 'Ensure the vent is open and the drain is shut.'],
  ['do', 'Place the bearing in the oil bath and heat it to between 80 and 90 °C.', 'WRT001'],
  ['do', 'Release the spring tension by backing off the nut.'],
  ['do', 'Bleed the system at the highest point, then top up the reservoir.', 'WRT001'],
  ['do', 'Rinse, dry and oil the strainer.', 'WRT001'],
  ['do', 'Drill and ream the dowel holes to the size on the drawing.', 'WRT001'],
  ['do', 'Wait until the motor has stopped.'],
  ['do', 'Wind the rope onto the drum under load, turn against turn.'],
  ['do', 'Repeat on the other side.'],
  ['do', 'Check the oil level, which should be between the two marks.', 'WRT003'],
  ['do', 'Adjust the belt so that it deflects 8 to 12 mm at mid-span.'],
  ['do', 'Shim the motor feet until soft foot is below 0.05 mm.'],
  ['do', 'Inspect the impeller for cracks and corrosion.'],
  ['do', 'Inspect the teeth for wear, pitting, scuffing etc.', 'WRT003'],
  ['do', 'Carefully pry off the seal.', 'WRT003'],
  ['do', 'Spin the bearing by hand and listen for noise.'],
  ['do', 'Screw in the eyebolts fully and attach the sling.', 'WRT001'],
  ['do', 'Remove the valve, clean it and refit it with a new gasket.', 'WRT001'],
  ['do', 'Drain the sump if not already done.', 'WRT007'],
  ['do', 'Note the position of each shim before it comes out.'],
  ['do', 'Cut a new gasket from 1.5 mm sheet.'],
  ['do', 'Bore the bush to 40.05 mm.', 'WRT005'],
  ['do', 'Ream the bush to 40.02 to 40.05 mm.'],
  ['do', 'Set the regulator at 3.5 bar.', 'WRT005'],
  ['do', 'Fill the housing with grease to one third of its volume.'],
  ['do', 'Torque to 45, then a further 90°.', 'WRT004'],
  ['do', 'Turn each screw a further 90°.'],
  ['do', 'Select feeler blades up to 0.10 and try each gap.', 'WRT001', 'WRT004'],
  ['do', 'Fit 8.8 screws only.'],
  ['do', 'It is important to vent the pump.', 'WRT009'],
  ['do', 'Care must be taken not to scratch the face.', 'WRT008'],
  ['do', 'Bearings should be renewed in pairs.', 'WRT003', 'WRT008'],
  ['do', 'Apply thread sealant to the plug; screw it in by hand.', 'WRT001'],
  ['do', 'Move the lever to position 2.'],
  ['do', 'Close valves 3, 4 and 5 in this order.'],
  ['do', 'Run the pump for 10 minutes and check for leaks.', 'WRT001'],
  ['do', 'After 50 hours, retighten the foundation bolts.'],
  ['do', 'Draw off a sample after 10 minutes of running.', 'WRT007'],
  ['do', 'Lubricating oil is poured in at the filler cap.', 'WRT008'],
  ['note', 'Use of a torch hardens the ring.'],
  ['note', 'Turning the shaft backwards unscrews the impeller.'],
  ['note', 'Force is not needed; the pin slides out.'],
  ['note', 'Refer to the wiring diagram for the terminal numbers.', 'WRT006'],
  ['note', 'Oil pressure builds up within ten seconds.'],
  ['note', 'Never use a steel hammer.', 'WRT006'],
  ['note', 'Seals are fitted dry at this pump.'],
  ['note', 'Paint marks show which nuts have been tightened.'],
  ['note', 'Torque values hold for oiled threads.'],
  ['note', 'Fit between bush and housing is 0.02 to 0.05 mm.'],
  ['note', 'On older pumps the plug has a left-hand thread.'],
  ['note', 'Two dowels locate the cover, so remove both.', 'WRT006'],
  ['if out', 'Adjust as in step 14.', 'WRT011'],
  ['if out', 'Change the shim, then measure again.'],
  ['if out', 'Fit the next thicker shim if the gap is too wide.', 'WRT007'],
  ['avoid', 'Keep hands clear. Use suitable lifting gear.', 'WRT003'],
  ['avoid', 'Stand to one side while the cap comes off.'],
  ['hazard', 'Oil at 80 °C burns the skin.'],
];

/** What an editor sees and the checks do not: a measure before a verb, and care taken in other words. */
const MISSED: readonly Row[] = [
  ['note', 'Wear of more than 1.5 calls for a new ring.', 'WRT004'],
  ['do', 'Withdraw the stub shaft, taking care not to lose the shims.', 'WRT003'],
];

const rows = (list: readonly Row[]) => list.map(([field, sentence, ...codes]) => ({ field, sentence, codes }));

describe('sentences of manuals', () => {
  test('half of them are sound', () => {
    expect([SOUND.length, FAULTY.length]).toEqual([30, 30]);
  });

  test.each(rows([...SOUND, ...FAULTY, ...MIXED]))('$field: $sentence', ({ field, sentence, codes }) => {
    expect(codesOf(field, sentence)).toEqual(codes);
  });

  test('few slips are missed, and each of them is known', () => {
    for (const { field, sentence } of rows(MISSED)) expect(codesOf(field, sentence)).toEqual([]);
    const caught = [...FAULTY, ...MIXED].filter(([, , ...codes]) => codes.length > 0).length;
    expect(caught / (caught + MISSED.length)).toBeGreaterThan(0.9);
  });
});
