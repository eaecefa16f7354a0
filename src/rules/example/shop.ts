/** The shop in which every check shows itself: sound, and small enough to read. Invented. */

export const EXAMPLE_SHOP: Readonly<Record<string, string>> = {
  'shop.yaml': `name: Mini Works
address: https://binder.mini.example/
torque: { leading: N·m, second: lbf·ft }
card: { format: A4 }
safety: The maker's manual, the site's lockout procedure, local codes and licensed practice govern.
tables:
  - { grade: "8.8", series: coarse, condition: oiled, preload: 70 % }
`,
  'people.yaml': `ada: { name: Ada Fern, role: Fitter }
ben: { name: Ben Holt, role: Quality lead, approves: [major, minor] }
`,
  'benches.yaml': `pumps:
  name: Pumps
  place: Hall 1
  lead: ada
  binder: [MW-1]
`,
  'tools.yaml': `socket-24: { name: 24 mm socket, kind: socket, size: 24 mm, drive: 1/2 in }
wrench-40-200: { name: torque wrench 40 to 200, kind: torque wrench, range: 40 to 200 N·m, step: 1 N·m, serial: MW-TW-2, calibration_due: 2027-03-01 }
feeler: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm, serial: MW-FG-1, calibration_due: 2027-06-01 }
gauge: { name: pressure gauge, kind: measuring tool, range: 0 to 6 bar, step: 0.05 bar, serial: MW-PG-4, calibration_due: 2027-06-01 }
lock: { name: padlock, kind: lockout }
hoist: { name: chain hoist, kind: lifting gear, capacity: 250 kg }
`,
  'consumables.yaml': `oil: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L1, shelf_life: 5 years, waste: used-oil drum }
wipe: { name: lint-free wipe, kind: wipe }
`,
  'stages/isolate.yaml': `id: isolate
title: Isolate
steps:
  - do: Lock the switch with <tool:lock>.
    id: locked
  - do: Open the drain.
    release: [water pressure]
  - do: Read the pressure.
    prove: [water pressure]
    measure:
      what: water pressure
      limit: at most 0.5 bar
      with: gauge
      if out: Close the next valve upstream and drain again.
      source: { document: Pump manual, edition: "3", place: page 9 }
  - do: Try to start the machine.
    release: [electric motor]
    prove: [electric motor]
    record: Tried by
`,
  'stages/close-out.yaml': `id: close-out
title: Close out
steps:
  - do: Turn the shaft by hand through a full turn.
    close_out: [turned by hand]
  - do: Count the tools.
    close_out: [tools counted]
    record: Tools counted
  - do: Refit every guard.
    close_out: [guards refitted]
  - do: Remove your own lock.
    close_out: [own locks removed]
`,
  'machines/pump.yaml': `id: pump
name: pump
bench: pumps
rotates: true
variants:
  size: [small, large]
serials:
  - { from: 1, to: 50, is: { size: small } }
  - { from: 51, to: 99, is: { size: large } }
energy: [water pressure, electric motor]
parts:
  cover: { name: cover, kind: cover, quantity: 1, number: MW-100, mass: 18 kg }
  gasket: { name: cover gasket, kind: gasket, quantity: 1, number: MW-101, always_replace: true }
  screw: { name: cover screw, kind: screw, number: MW-102 }
  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }
joints:
  cover:
    name: cover joint
    fastener: screw
    gasket: gasket
    thread: M16
    grade: "8.8"
    head: hexagon
    condition: oiled
    lubricant: oil
    where: thread and under the head
    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }
    view: the cover side
    preload: 70 %
    torque: 160 N·m
    source: { document: Pump manual, edition: "3", place: page 12 }
    rounds: [30 %, 70 %, 100 %]
    circular_passes: 1
    wrench: wrench-40-200
    socket: socket-24
    when:
      - only: { size: large }
        pattern: { circle: 320 mm, count: 12, first: 15 deg }
`,
  'procedures/mw-1.yaml': `doc: MW-1
title: Renew the cover gasket
machine: pump
applies: { size: [small, large] }
purpose: Renews the <part:gasket> of the <joint:cover>.
owner: ben
review: 24 months
energy: [water pressure, electric motor]
ppe: [gloves, eye protection]
revisions:
  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }
stages:
  - use: isolate
  - title: Open
    steps:
      - do: Loosen the <joint:cover>.
        loosen: cover
        warn:
          level: warning
          hazard: Trapped water scalds the hands.
          avoid: Open the vent first.
      - do: Lift off the <part:cover> with the <tool:hoist>.
        lift: { mass: 18 kg, by: chain hoist }
        remove: { cover: reuse, gasket: discard, screw: inspect }
      - do: Take out the <part:plug>.
        only: { size: large }
        remove: { plug: reuse }
  - title: Close
    steps:
      - do: Wipe both faces with a <consumable:wipe>.
      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
      - do: When <step:locked> is done, tighten the <joint:cover>.
        fit: [screw]
        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
      - do: Measure the gap.
        measure:
          what: Cover gap
          at: [12, 3, 6, 9]
          limit: 0.05 to 0.30 mm
          with: feeler
          if out: Loosen and repeat this stage.
          record: as left
          source: { document: Pump manual, edition: "3", place: page 14 }
  - use: close-out
`,
};
