"""Blocks and facts: what belongs to what, what may come twice, and in which order."""

from __future__ import annotations

import itertools

import pytest

from plantframe.language.declarations import language
from plantframe.language.values import Number
from tests.language.reading import all_slips, block, fact, read, said, slips

BEAN_NET = """\
frame Bean Net, net frame, in Long Bed, north end
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up (the straight ones)
  bar 2x2
  (the row the blackbirds like)
  grow pole bean 'Millpond', 40 plants, sow 18 May
  ready by 15 May
"""


def test_a_block_holds_the_lines_under_its_head() -> None:
    (found,) = read(BEAN_NET).blocks
    assert (found.word, found.name) == ("frame", "Bean Net")
    assert [one.word for one in found.facts] == ["bays", "posts", "bar", "grow", "ready by"]
    assert found.last_line == 7
    assert found.where.line == 1


def test_every_fact_knows_its_line_its_column_and_its_remark() -> None:
    (found,) = read(BEAN_NET).blocks
    posts = found.fact("posts")
    assert posts is not None
    assert (posts.where.line, posts.where.column) == (3, 3)
    assert posts.where.typed == BEAN_NET.split("\n")[2]
    assert posts.remark == "(the straight ones)"
    for slot in posts.slots:
        assert posts.where.typed[slot.column - 1 :].startswith(slot.text)


def test_the_order_of_facts_does_not_matter() -> None:
    head, *lines = (line for line in BEAN_NET.split("\n") if line)
    expected = {one.word: said(one) for one in read(BEAN_NET).blocks[0].facts}
    for shuffled in itertools.islice(itertools.permutations(lines), 0, 720, 37):
        found = read("\n".join([head, *shuffled]) + "\n").blocks[0]
        assert {one.word: said(one) for one in found.facts} == expected


def test_the_order_of_phrases_in_a_fact_does_not_matter() -> None:
    phrases = ["2x2", "8 ft", "18 in down", "6 ft 6 in up", "in concrete"]
    expected = said(fact("posts " + ", ".join(phrases)))
    for order in itertools.permutations(phrases):
        assert said(fact("posts " + ", ".join(order))) == expected


def test_a_remark_at_the_start_of_a_line_is_a_remark_to_its_end() -> None:
    found = read("bed Long Bed\n  (sun full, they say)\n(runs north-south) yes\n  sun half\n")
    assert [one.word for one in found.blocks[0].facts] == ["sun"]
    assert not found.mistakes


def test_a_hash_and_a_dash_are_no_remarks() -> None:
    for line in ("# to be dug", "// to be dug", "-- to be dug"):
        (slip,) = read(f"bed Long Bed\n{line}\n  sun full\n").mistakes
        assert (slip.name, slip.where.line) == ("not-a-remark", 2)
        (edit,) = slip.candidates
        assert edit.changes[0].new == "(to be dug)"
    assert fact("grow pea, 10-12 plants").word == "grow"


def test_a_fact_that_repeats_may_come_twice() -> None:
    for line in ("grow pea, 4 plants", "had pea in 2025", "piece 2 of 2x2, 1 m", "step cut"):
        other = line.replace("pea", "bean").replace("2 of", "3 of").replace("step cut", "step join")
        found = read(f"frame Bean Net, net frame\n  {line}\n  {other}\n")
        assert not [slip for slip in found.mistakes if slip.level == "stop"]
        assert len(found.blocks[0].facts) == 2


def test_two_lines_that_add_up_are_no_contradiction() -> None:
    found = read("frame Pea Tent, A-frame\n  feet 3 ft apart\n  feet pegged\n")
    assert not found.mistakes
    assert [said(one) for one in found.blocks[0].facts] == [
        {"apart": pytest.approx(0.9144)},
        {"how": "pegged"},
    ]


def test_the_same_value_in_other_units_is_no_contradiction() -> None:
    found = read("frame Bean Net, net frame\n  bays 2 of 8 ft\n  bays 2 of 96 in\n")
    assert not found.mistakes


def test_two_lines_of_posts_with_counts_are_end_posts_and_the_rest() -> None:
    for lines in itertools.permutations(
        ["posts 2 of 5 in round, 10 ft, 48 in down", "posts 3 of 3 in round, 8 ft, 24 in down"]
    ):
        found = read("line Vine Wires, grape wires\n  " + "\n  ".join(lines) + "\n")
        words = {one.word: one.get("count") for one in found.blocks[0].facts}
        assert {
            word: int(count.value) for word, count in words.items() if isinstance(count, Number)
        } == {
            "end posts": 2,
            "posts": 3,
        }
        (slip,) = found.mistakes
        assert (slip.name, slip.level) == ("which-are-ends", "note")


def test_of_two_pairs_of_posts_the_stouter_are_the_ends() -> None:
    text = "line Kiwis, kiwi T-bar\n  posts 2 of 4 in round, 8 ft\n  posts 2 of 6 in round, 9 ft\n"
    ends = read(text).blocks[0].fact("end posts")
    assert ends is not None
    assert ends.where.line == 3


def test_an_unread_head_costs_its_block_and_no_other() -> None:
    text = f"fram Old Net, net frame\n  bays 2 of 8 ft\n  bar 2x2\n{BEAN_NET}"
    found = read(text)
    assert [one.name for one in found.blocks] == ["Bean Net"]
    assert [one.word for one in found.lost] == ["bays", "bar"]
    (slip,) = found.mistakes
    assert "The 2 lines under it are kept, not used." in slip.says


def test_a_line_that_lost_its_indent_does_not_end_its_block() -> None:
    found = read(BEAN_NET.replace("  bar 2x2", "bar 2x2"))
    assert [one.word for one in found.blocks[0].facts] == ["bays", "posts", "grow", "ready by"]
    (slip,) = found.mistakes
    assert (slip.name, slip.where.line) == ("not-indented", 4)


def test_words_may_have_capitals_and_colons() -> None:
    assert block("Frame Bean Net, Net Frame").head.get("kind") == "Net Frame"
    assert said(fact("Posts: 2x2, 8 FT"))["length"] == said(fact("posts 2x2, 8 ft"))["length"]
    assert fact("Sun: full", "bed").get("kind") == "full"
    assert block("bed: Long Bed, 4 ft x 8 ft").name == "Long Bed"
    assert block("frame Bean Net: net frame").head.get("kind") == "net frame"


def test_every_spelling_of_a_fact_reads_as_its_own_word() -> None:
    for declared in language().facts:
        rest = declared.example.split("\n")[0].removeprefix(declared.word)
        for spelling in declared.spellings:
            under = declared.blocks[0]
            found = read_first(f"{spelling}{rest}", under)
            assert found == declared.word, spelling


def read_first(line: str, under: str) -> str:
    """The word of the first fact a line is read as."""
    heads = {
        "want": "want cucumber",
        "task": "task order seed",
        "log": "log 2 May",
        "house": "house",
    }
    head = heads.get(under, f"{under} Name")
    return read(f"{head}\n  {line}\n").blocks[0].facts[0].word


def test_a_word_a_letter_off_is_no_wood() -> None:
    (slip,) = slips("posts 2x2, 8 ft, 18 in donw")
    assert slip.told["near"] == "down"
    assert slip.candidates[0].changes[0].new == "  posts 2x2, 8 ft, 18 in down"
    assert said(fact("posts 2x2 larch, 8 ft"))["wood"] == "larch"


def test_what_a_measure_is_for_is_never_guessed_past_a_word_unknown() -> None:
    found = fact("posts 2x2, 18 in donw")
    assert "length" not in said(found)
    assert not found.whole


def test_a_reason_may_hold_commas() -> None:
    found = fact("ok crowded because we thin by eating, and it worked, Maud, 2 March")
    assert said(found)["reason"] == "we thin by eating, and it worked"
    assert said(found)["person"] == "Maud"
    assert found.get("on") is not None


def test_a_set_aside_says_how_bad_it_was_and_until_when() -> None:
    found = fact('ok too-heavy because "we prop it", Joan, 3 March, at about 1.3 times, until 2029')
    slots = said(found)
    assert (slots["rule"], slots["reason"], slots["times"]) == ("too-heavy", "we prop it", 1.3)
    assert slots["until"] == 2029
    assert said(fact("ok crowded because it is, at warn"))["level"] == "warn"


@pytest.mark.parametrize("line", ["done set the posts, 24 April", "done 24 April: set the posts"])
def test_a_job_done_has_its_words_and_its_day(line: str) -> None:
    found = fact(line)
    assert found.get("job") == "set the posts"
    assert found.get("on") is not None


def test_an_item_of_the_shed_may_hold_its_lengths() -> None:
    found = fact("90x45 mm, 2.4 m or 3.6 m", "yard")
    assert said(found)["length"] == [2.4, 3.6]
    assert found.whole


def test_nothing_is_said_of_a_plan_without_a_slip() -> None:
    assert not all_slips("posts 2x2, 8 ft, 18 in down, 6 ft 6 in up")
    assert not read(BEAN_NET).mistakes
