/** YAML in every form that content may take, and some that it may not: to compare the two ways of reading it. Invented. */

export const YAML_KINDS: Readonly<Record<string, string>> = {
  scalars: `# a comment above
text: plain text, with (signs) & <joint:cover> marks; 24 mm × 3
number: 12
negative: -0.050
plus: +5
float: 1.5e3
dot: .5
octal: 0o17
hex: 0x1F
infinite: -.inf
nan: .nan
yes: true
"no": False
null: ~
nothing: Null
date: 2026-01-02
version: 1.2.3
time: 12:30:00
url: https://binder.example/a?b=c#d
8.8: class
`,
  lists: `a:
  - one
  - two # behind
  # between
  -   three
  - 'four ''4'' quoted'
  - "five \\u00b7 \\"5\\" \\n"
b:
- at the same column
- key: value
  more: "x"
-
  on: its own line
c: [x, "y", 'z', -1, [deep, {k: v}], {a: 1, b: two words},]
d:
  - - nested
    - list
  - e:
      - f
`,
  blocks: `purpose: >-
  Folded text
  over lines

  and a paragraph: with a colon # and no comment
note: |
  Literal
  # no comment
   more indented
  text
clip: >
  Kept with a line end
strip: |-  # a comment behind the header
      far in
      still
  # left of the block
list:
  - >-
    In a list
    folded
  - |
    literal

    parted
`,
  folding: `plain: text that goes on
  over lines,
    deeper and
  back

  with a paragraph
single: 'quoted
  over ''lines''

  twice'
double: "quoted \\
  over lines \\t
  and  more"
below:
  text on a line of its own
  and another
quoted below:
  "here"
flow: { document: a text that
    goes on, place: "page
    3", list: [a,
    b
    , c] }
last: [
  one, two,
  three
]
`,
  comments: `# top

a: 1 # behind a value
# at the column
b:
  # before the first
  c: 2
  # after the last, inside

    # deeper
d:
  - e: 1
    f: {g: 2} # x
    # of f
   # odd
  # of the list
 # odd too
h: # behind a key
  i: "#no" # yes
  j: a#b #c
  k: |
    text
    # text
   # not text
# at the end
  # indented at the end
`,
  deep: `stages:
  - title: Strip
    steps:
      - do: Loosen the <joint:cover>.
        loosen: cover
        warn:
          level: warning
          hazard: Hot.
      # about the next
      - do: Lift it off.
        remove: { cover: reuse, screw: inspect }
  # the next stage
  - title: Close
    steps:
      - do: Done.

      # nothing follows
revisions:
  - { rev: A, what: "First issue", why: 'It''s new' }
`,
  rare: `keep: |+
  All line ends

indent: |2-
    two more
leading: >

  a blank line first
more: >-
  folded
    deeper
  back
`,
  markers: `a: 1
--- b: 2
... : 3
---: 4
...x: 5
b:
  --- c: 6
  ---
%d: 7
`,
  unusual: `a: &anchor {x: 1}
b: *anchor
c: !!str 5
d: {<<: 1}
e: @at
f: 'é ﬀ 漢字 \u00a0'
g: trailing no-break\u00a0
h:
- 1: not a key
i: ? no
? complex
: value
`,
};
