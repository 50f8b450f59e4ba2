"""How a plan is written, in prose: the first part of the language page."""

PROSE = """
# How a plan is written

A plan is plain text in a file whose name ends in `.plan`. You can write it in any editor, print
it, and show it to a neighbour. This page is written from the program's own list of words; do not
mend it by hand.

## Lines

A line that begins in the first column opens a **block**: a bed, a frame, the shed. The lines
under it that are indented, by a space or more, are its **facts**, one fact to a line, in any
order. What stands between commas within a line may come in any order too.

```
bed Long Bed, 1.2 m x 7.5 m, runs north-south
  sun full
  had pea in 2025, bean in 2026

frame Bean Net, net frame, in Long Bed, north end
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  grow pole bean 'Millpond', 40 plants, sow 18 May
```

A line that cannot be read costs that line alone: it is kept, it is not used, and you are told
which line it is and what to type. Nothing is guessed in silence. Nothing in the file is ever
rewritten: your units, your spacing and your remarks stay as you typed them.

**Remarks** stand in round brackets, at the end of a line or on a line of their own. A remark in
the middle of a line is fine too. `#` opens no remark, it is a gauge and a number sign.

```
(What is in the shed after Christmas; Wim counted.)
shed
  6 posts 2x2, 8 ft (the straight ones)
  9 nails 20d
```

**Names** may have spaces and are used as written: `Long Bed`. Capitals do not matter when you use
a name again. A cultivar stands in single quotes, or in double quotes if it holds an apostrophe.

A frame's **kind** stands after its name and a comma: `net frame`, `wigwam`, `cold frame`. Some
kinds know a word or two of their own, such as the `rows 60 cm apart` of a crossed row.

## Measures

Metric and imperial may be mixed. All of these are read: `2.4 m`, `240 cm`, `2400 mm`, `8 ft`,
`8'`, `6 ft 6 in`, `6'6"`, `6½ ft`, `1-1/2 in`, `a foot and a half`, `15 kg`, `10 lb 4 oz`,
`36 C`. A comma before a unit is a decimal comma (`2,4 m`). A figure that could be two, such as
`1.200 m`, `1,200 mm` or `6 ft 2`, is asked about, and so is a figure without a unit, such as
`18 down`.

A **size** has two sides: `6 ft x 16 ft`, `1.2 × 6 m`, `8 ft by 6 ft`. `2x4` without a unit is a
trade size, `45x95 mm` an actual one, and the third figure of `2x4x8` is a length in feet. A
**count** is `4 of 2x4`, `4 @ 8 ft`, `20d ×5` or `a dozen`; `4 x 2x4` is asked about. A **range**
is `4 to 6 h`, `15–30 kg`, `1 m to 4 m`.

## Dates

`18 May`, `May 18th`, `2027-05-18`, `18.5.2027`, `Saturday 18 May`, `early May`, `mid May`,
`end of May`, `first week of May`, `10 to 20 July`. A month alone is its middle, two weeks either
way. `last frost`, `2 weeks after last frost`, `before Christmas`, `Easter`, `Michaelmas` are
dates as well. `5/6` is asked about: which is the month?

A date without a year belongs to the season of the plan, which the garden's head names:
`garden Quarry Row, 2027`, or `2026-27` south of the equator. Work in the autumn before is
ordinary; a sowing or planting dated a year off is asked about.

## Places

`in Long Bed`, `north end`, `middle`, `from 1 m to 4 m along`, `on House Wall`,
`0.5 m north of Larch Bed`, `south of the shed`, `40 cm from the wall`, `along the drive`.
Distances are from edge to edge. Say which way a wall looks with `faces west`; a wall on the west
side is `on the west side`.

## Files

A garden may be one file or a folder of them: the places in one, the shed in another, each year in
its own. A line `read places` at the top brings another file in. `read 2026 as last year` brings
in what grew where and what was learned, and nothing else, so that its names do not clash with
this year's. Reading stays inside the folder, or inside the repository if the folder is in one.

## Done, moved, left out

Every job has an address: the block it belongs to, and the words of its step. They need only be
near enough; you are told what they were taken for.

```
frame Pea Net, net frame
  done set the posts, 24 April
  move weave the bar to 2 May
  skip fix the stays because "sheltered corner"
```

A task of your own carries its own: `task rip 4 of 2x4, at the yard, by 1 April, done 28 March`.

## All right as it is

A warning is set aside in the block it concerns, by its name, with a reason, so that you know in
August. It may say who, when, until when, and how bad it was then. It comes back when things get
clearly worse.

```
frame Squash Net, net frame
  ok too-heavy because "we prop it every January", Joan, 3 March, at about 1.3 times, until 2029
```

## Plants of your own

Nobody's book knows your own strain. A file beside the plan, say `plants.plan`, brought in with
`read plants`, may hold what you know of it; the rest is taken from the plant it is like. The same
words under the name of a plant of the catalogue put your figures in place of the catalogue's.

```
variety Ida Bean, like runner bean
  height 2 to 2.6 m
  weighs 9 to 12 kg a metre
  sow 2 weeks after last frost

variety cucumber
  ready 50 to 60 days after sowing
```

## A frame of your own design

What is no kind the program knows may be written down all the same, with its pieces and the order
of its steps. It is bought, cut and drawn like any other; what hangs on its kind is said to be
unknown.

```
frame Bean Bridge, own design
  piece 4 of 2x2, 1.9 m
  piece 2 of 2x4, 8 ft
  step join the pieces after cut the pieces
```
"""
