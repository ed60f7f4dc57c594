"""How surely two names are one child's. All names are invented."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.classbook import same_child
from namewright.classbook.enrol import enrol
from namewright.classbook.same_child import Kin, Kindred, Named, kin
from namewright.classbook.who import Known
from namewright.roster.children import Child

WORDS = ("Emma", "Lou", "Zoë", "Zoe", "Katla", "Karla", "Jürgen", "Juergen", "Jurgen", "Łucja", "Lucja", "Дарина",
         "Darina", "Коваль", "Koval", "Kowal", "王小明", "Søren", "Soeren", "Moss", "Mos", "Reed", "Read", "M.", "É.",
         "J", "O’Quill", "OQuill", "de la Vost", "Vost", "-", "Charlotte", "Charlote")
NAMES = st.sampled_from(["", "Emma", "Emma Lou", "Zoë", "Zoe", "Moss", "Reed", "Read", "M.", "Дарина", "O’Quill"])


@pytest.mark.parametrize(("old", "new", "level", "why"), [
    (("Katherine", "Moss", "Katherine"), ("Katherine", "Moss", "Katie"), Kin.SAME, "a nickname"),
    (("Katherine", "Moss", "Kate"), ("Kate", "Moss", "Kate"), Kin.FITS, "the nickname written alone"),
    (("Zoe", "Moss", "Zoe"), ("Zoë", "Moss", "Zoë"), Kin.SAME, "an accent"),
    (("Anne Marie", "Moss", "Anne Marie"), ("Anne-Marie", "Moss", "Anne-Marie"), Kin.SAME, "a hyphen"),
    (("Clare", "OQuill", "Clare"), ("Clare", "O’Quill", "Clare"), Kin.SAME, "an apostrophe"),
    (("Mary Ann", "Moss", "Mary Ann"), ("Mary", "Ann Moss", "Mary"), Kin.SAME, "where the family name begins"),
    (("Moss", "Emma", "Moss"), ("Emma", "Moss", "Emma"), Kin.SAME, "the parts the other way round"),
    (("Emma", "", "Emma"), ("Emma", "Moss", "Emma"), Kin.FITS, "a family name added"),
    (("Emma", "M.", "Emma"), ("Emma", "Moss", "Emma"), Kin.FITS, "an initial written out"),
    (("Lucía", "Rubio", "Lucía"), ("Lucía", "Rubio Vega", "Lucía"), Kin.FITS, "a second family name"),
    (("Дарина", "Коваль", "Дарина"), ("Darina", "Koval", "Darina"), Kin.SAME, "spelled in Latin letters"),
    (("Tilo", "Reed", "Tilo"), ("Tilo", "Read", "Tilo"), Kin.SLIP, "a slip beside a name that agrees"),
    (("Charlote", "", "Charlote"), ("Charlotte", "", "Charlotte"), Kin.SLIP, "a slip in a long name"),
    (("Noa", "", "Noa"), ("Nora", "", "Nora"), Kin.MAYBE, "one letter more is another name where it is short"),
    (("Jade", "Moss", "Jade"), ("Jane", "Moss", "Jane"), Kin.MAYBE, "twins have names that differ by a letter"),
    (("Tilo", "", "Tilo"), ("Tila", "", "Tila"), Kin.MAYBE, "a short name alone may be another child's"),
    (("Emma", "Moss", "Emma"), ("Emma", "Vost", "Emma"), Kin.MAYBE, "a family that married, or two Emmas"),
    (("Katherine", "Moss", "Katherine"), ("Katie", "Moss", "Katie"), Kin.MAYBE, "a short form, or a sister"),
    (("Luis", "Moss", "Luis"), ("Ana", "Moss", "Ana"), Kin.OTHER, "a family name alone makes nobody one child"),
    (("Emma", "Moss", "Moss"), ("Luis", "Moss", "Moss"), Kin.OTHER, "nor does it where it is practised"),
    (("Mira", "Quill", "Mira"), ("Tilo", "Reed", "Tilo"), Kin.OTHER, "nothing is shared"),
    (("Mira", "Quill", "Mira"), ("Mara", "Quell", "Mara"), Kin.OTHER, "two slips are two children"),
    (("मीना", "", "मीना"), ("मना", "", "मना"), Kin.MAYBE, "a vowel of another script is a letter and no mark"),
])
def test_what_names_say_of_each_other(old: tuple[str, str, str], new: tuple[str, str, str], level: Kin,
                                      why: str) -> None:
    """One row a kind of change that a list pasted anew has."""
    assert kin(Named(*new), Named(*old)) == level, why


@given(NAMES, NAMES, NAMES, NAMES)
def test_it_is_the_same_both_ways(given_one: str, family_one: str, given_two: str, family_two: str) -> None:
    """Which list is the older one is nothing that names can tell; and each name is its own."""
    one, two = Named(given_one, family_one, given_one), Named(given_two, family_two, given_two)
    assert kin(one, two) == kin(two, one)
    if given_one or family_one:
        assert kin(one, one) == Kin.SAME


@given(st.lists(st.builds(Named, *[st.lists(st.sampled_from(WORDS), max_size=2).map(" ".join)] * 4), max_size=9),
       st.builds(Named, *[st.lists(st.sampled_from(WORDS), max_size=2).map(" ".join)] * 4))
def test_whom_the_signs_leave_out_is_another(known: list[Named], new: Named) -> None:
    """A quick look at a whole class finds what comparing with each child finds."""
    levels = {key: kin(new, one) for key, one in enumerate(known)}
    assert Kindred(dict(enumerate(known))).of(new) == {key: level for key, level in levels.items() if level}


def test_slips_are_found_too() -> None:
    """The same of thousands of made-up names with letters lost, doubled, put in and turned."""
    dice = random.Random(5)
    for _ in range(60):
        known = {key: _made_up(dice) for key in range(15)}
        for new in (*(_made_up(dice) for _ in range(8)), *(_slipped(one, dice) for one in known.values())):
            levels = {key: kin(new, one) for key, one in known.items()}
            assert Kindred(known).of(new) == {key: level for key, level in levels.items() if level}


def _made_up(dice: random.Random) -> Named:
    whole, family = (" ".join(dice.choices(WORDS, k=dice.choice((0, 1, 1, 2)))) for _ in range(2))
    return Named(whole, family, dice.choice((whole, family, f"{whole} {family}".strip(), dice.choice(WORDS))))


def _slipped(one: Named, dice: random.Random) -> Named:
    at = dice.randrange(len(one.given) + 1)
    given = one.given[:at] + dice.choice(("", "a", "з", one.given[at:at + 1])) + one.given[at + dice.choice((0, 1)):]
    return Named(given, one.family, given)


@pytest.mark.parametrize("family", ["Quern", ""])
def test_a_list_of_others_is_not_compared_one_by_one(family: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Four hundred names beside thirty of which none is like them: a few pairs are looked at in full, not 12,000."""
    compared = []
    monkeypatch.setattr(same_child, "kin", lambda new, old: compared.append(new) or kin(new, old))
    dice = random.Random(7)
    kindred = Kindred({key: Named(name, f"{name[::-1]}l" * bool(family), name) for key, name in
                       enumerate("".join(dice.choices("aeioubdg", k=6)) for _ in range(30))})
    for _ in range(400):
        name = "".join(dice.choices("kpstrmnzwy", k=6))
        kindred.of(Named(name, family, name))
    assert len(compared) < 400


def test_one_letter_more_compares_its_own_line_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    """A list in another script beside a class: what was found of the other lines a moment ago is not found again."""
    compared = []
    monkeypatch.setattr(same_child, "kin", lambda new, old: compared.append(new) or kin(new, old))
    dice = random.Random(11)
    known = [Known(at, "".join(dice.choices("aeioktrs", k=5)).title(), "Quern", "", "", True) for at in range(1, 31)]
    names = ["".join(dice.choices("аеиоктрс", k=5)).title() for _ in range(50)]
    typed = [Child(name, name, name, "Керн", at + 1) for at, name in enumerate(names)]
    enrol(typed, known, {})
    assert len(compared) > 200
    compared.clear()
    enrol([*typed[:-1], typed[-1]._replace(given=f"{names[-1]}а")], known, {})
    assert len(compared) <= len(known)
