"""What grows: the plant, how many, when sown and set out, how led."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, fact

LANGUAGE.topic = "What grows"

GROW = (
    "{plant} {cultivar}?, {cultivar}, "
    "{count} plants/plant/off/of_them/crowns/seeds/vines/roots/spikes/canes/no, "
    "in? {count:rows} rows/row, {count:female} female, {count:male} male, "
    "{length:apart} apart, {lengths:apart} apart, every {length:apart}, "
    "sow/sown/direct_sow/direct_sown/start/started "
    "{indoors|inside|under cover|under glass|outdoors:raised}? {date:sow}, "
    "plant_out/planted_out/set_out/transplant/transplants/transplanted/plant/planted {date:out}, "
    "{indoors|inside|under cover|under glass|in the frame|outdoors:raised}, "
    "{count:leaders} leader/leaders/stem/stems, "
    "{pinched at the top|pinched|pinch at the top|pinch|stopped at the top|stopped:pinched}, "
    "{tied in|led sideways|trained along:trained}, {cut back yearly|cut back every year:cut}, "
    "{weight:weighs} {length:each}, {weight:weighs} {per metre|per m|per foot|per ft:each}, "
    "{length:behind} behind_the_hinge/behind_the_hinges, "
    "until {date:until}, picked? from {date:pick}, {count}, {spot}*"
)
_HOLDS = f"{BUILT} bed border wall"

fact(
    "grow",
    GROW,
    blocks=_HOLDS,
    help="What grows here: how many, when sown or planted, how led. Twice in one block is a first "
    "and a second crop. A weight you have weighed yourself (`12 kg a metre`) outranks the book's.",
    example="grow pole bean 'Millpond', 40 plants, sow 18 May",
    also="grows, crop",
    repeats=True,
)
fact(
    "sow",
    "{date:sow}, {indoors|inside|under cover|under glass|outdoors:raised}, {text}",
    blocks=_HOLDS,
    help="When the plant named above is sown.",
    example="sow 1 June",
    also="sown",
    repeats=True,
)
fact(
    "plant out",
    "{date:out}, in? {year:since}, {text}",
    blocks=_HOLDS,
    help="When the plant named above is set out.",
    example="plant out 10 June",
    also="plant, planted, set out",
    repeats=True,
)
