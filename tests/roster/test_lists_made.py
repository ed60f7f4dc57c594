"""Some hundred lists made from open name data: nobody lost, merged with a neighbour, or practising a remark.

The whole table by shape is printed by ``tests/bench/lists.py``.
"""

from __future__ import annotations

import random
from collections import Counter

import pytest

from made_lists import (
    shapes_apart,
    shapes_attic,
    shapes_back,
    shapes_cellar,
    shapes_held,
    shapes_kept,
    shapes_loft,
    shapes_open,
    shapes_pocket,
    shapes_porch,
    shapes_seen,
    shapes_spring,
    shapes_summer,
    shapes_tuned,
    shapes_unseen,
    shapes_vault,
)
from made_lists.judging import Made, Wanted, fold, judge
from made_lists.many import broken_promises
from made_lists.people import FURTHER, HELD, TUNED, people, places
from made_lists.registry import Shape

EACH = 6


def _found(name: str) -> Counter[str]:
    shape = shapes_tuned.SHAPES.get(name) or shapes_held.SHAPES[name]
    found: Counter[str] = Counter()
    for at in range(EACH):
        rng = random.Random(f"test {name} {at}")
        place = rng.choice(TUNED if name in shapes_tuned.SHAPES else HELD)
        found.update(judge(shape(rng, people(rng, place, rng.randrange(6, 20)))))
    return found


@pytest.mark.parametrize("name", ["given_alone", "given_family", "family_comma_given", "numbered", "bulleted"])
def test_a_plain_list_is_read_right(name: str) -> None:
    found = _found(name)
    assert found["right"] == found["children"], found


@pytest.mark.parametrize("name", sorted({*shapes_tuned.HEADED, *shapes_held.HEADED} - {"footed"}))
def test_a_table_with_a_header_is_read_right(name: str) -> None:
    found = _found(name)
    assert 100 * found["right"] >= 99 * found["children"], found
    assert not found["remark"] + found["extra"], found


def test_nobody_is_lost_or_merged_over_all_shapes() -> None:
    """Of the children of some 470 lists; in thousandths: 1 practising a remark, 1 wrong in silence."""
    found = sum(map(_found, [*shapes_tuned.SHAPES, *shapes_held.SHAPES]), Counter[str]())
    share = {key: 1000 * found[key] / found["children"] for key in ("remark", "unsaid", "right")}
    assert not found["lost"] + found["merged"], found
    assert share["remark"] <= 1, share
    assert share["unsaid"] <= 1, share
    assert share["right"] >= 980, share


@pytest.mark.parametrize("name", sorted({**shapes_apart.SHAPES, **shapes_back.SHAPES}))
def test_a_list_from_another_hand_keeps_what_holds_for_every_list(name: str) -> None:
    """No error, an account of every line, and no name that nobody typed; what is read right is measured."""
    _keeps_what_holds(shapes_apart.SHAPES.get(name) or shapes_back.SHAPES[name], f"apart {name}")


@pytest.mark.long
@pytest.mark.parametrize("name", sorted({**shapes_open.SHAPES, **shapes_kept.SHAPES}))
def test_a_list_from_a_further_hand_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_open.SHAPES.get(name) or shapes_kept.SHAPES[name], f"further {name}")


@pytest.mark.long
@pytest.mark.parametrize("name", sorted({**shapes_seen.SHAPES, **shapes_unseen.SHAPES}))
def test_a_list_of_an_autumn_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_seen.SHAPES.get(name) or shapes_unseen.SHAPES[name], f"autumn {name}")


@pytest.mark.long
@pytest.mark.parametrize("name", sorted({**shapes_spring.SHAPES, **shapes_summer.SHAPES}))
def test_a_list_of_a_spring_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_spring.SHAPES.get(name) or shapes_summer.SHAPES[name], f"spring {name}")


@pytest.mark.parametrize("name", sorted({**shapes_porch.SHAPES, **shapes_pocket.SHAPES}))
def test_a_list_from_home_and_hall_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_porch.SHAPES.get(name) or shapes_pocket.SHAPES[name], f"home {name}")


@pytest.mark.parametrize("name", sorted({**shapes_cellar.SHAPES, **shapes_attic.SHAPES}))
def test_a_list_of_drawers_and_inboxes_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_cellar.SHAPES.get(name) or shapes_attic.SHAPES[name], f"drawer {name}")


@pytest.mark.parametrize("name", sorted({**shapes_loft.SHAPES, **shapes_vault.SHAPES}))
def test_a_list_that_a_class_is_asked_for_in_keeps_what_holds_for_every_list(name: str) -> None:
    _keeps_what_holds(shapes_loft.SHAPES.get(name) or shapes_vault.SHAPES[name], f"asked {name}")


def _keeps_what_holds(shape: Shape, seed: str) -> None:
    for at in range(EACH):
        rng = random.Random(f"{seed} {at}")
        made = shape(rng, people(rng, rng.choice((*TUNED, *HELD, *FURTHER)), rng.randrange(4, 12)))
        assert not broken_promises(made.text), made.text
        assert all(fold(one.mark) in fold(made.text) for one in made.children), made.text


def test_places_are_split_and_of_many_countries() -> None:
    assert not set(TUNED) & set(HELD)
    assert set(TUNED) | set(HELD) <= set(places())
    assert len(TUNED) + len(HELD) >= 56
    assert not set(shapes_tuned.SHAPES) & set(shapes_held.SHAPES)
    assert len(shapes_tuned.SHAPES) + len(shapes_held.SHAPES) >= 40


def test_the_judge_tells_what_is_wrong() -> None:
    mia, leo = Wanted(("Mia",), "Mia"), Wanted(("Leo",), "Leo")
    assert judge(Made("Mia\nLeo", (mia, leo)))["right"] == 2
    assert judge(Made("Mia", (mia, leo)))["lost"] == 1
    assert judge(Made("Mia\nLeo", (mia,)))["extra"] == 1
    assert judge(Made("Quill\nMia", (mia,), ("Quill",)))["remark"] == 1
    assert judge(Made("Tarn Mia", (mia,)))["wrong"] == 1
    assert judge(Made("Mia\nLeo", (mia,), either=(leo,))) == judge(Made("Mia", (mia,)))
    assert judge(Made("12345", (Wanted(("Mia",), "12345"),)))["asked"] == 1
