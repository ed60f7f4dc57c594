"""Who is who when a new roster comes. All names are invented."""

from __future__ import annotations

import random

import pytest

from kept_class import CLASS, names
from namewright.classbook import Classbook
from namewright.classbook import enrol as enrolling
from namewright.classbook.enrol import NEW, Enrolment, enrol
from namewright.classbook.records import BookChild
from namewright.classbook.rosters import NewList
from namewright.classbook.same_child import Kindred, Named, named
from namewright.classbook.who import Known
from namewright.roster.parsing import read_roster
from namewright.settings import Hand

CLASS_OF_THREE = "Mira Quill\nTilo Reed\nBo Lindle\n"


def _with(book: Classbook, text: str) -> tuple[BookChild, ...]:
    book.update_roster(text)
    return book.children()


def test_a_child_who_stays_keeps_id_and_settings_when_the_list_is_shuffled(book: Classbook) -> None:
    """Whatever the order of the new list, a known child is the same child; a new one has an id never used."""
    before = names(book)
    book.set_settings(before["Tilo"], {"support": "light"})
    update = book.update_roster("Suri Vale\nAva Moss\nTilo Reed\nMira Quill\nAva Finch\n")
    after = names(book)
    assert {label: after[label] for label in before} == before
    assert update.joined == (after["Suri"],)
    assert after["Suri"] > max(before.values())
    assert [one.child.given for one in book.children()] == ["Suri", "Ava", "Tilo", "Mira", "Ava"]
    assert [one.child.family for one in book.children()] == ["Vale", "Moss", "Reed", "Quill", "Finch"]
    assert book.settings_of(before["Tilo"]) == {"support": "light"}


def test_a_child_who_is_missing_has_left_and_comes_back_as_the_same(book: Classbook) -> None:
    """Leaving deletes nothing; a child who returns has the settings and notes of before."""
    tilo = names(book)["Tilo"]
    book.set_settings(tilo, {"hand": "left"})
    assert book.update_roster("Mira Quill\nAva Finch\nAva Moss\n").left == (tilo,)
    assert tilo not in names(book).values()
    assert book.child(tilo).left
    update = book.update_roster(CLASS)
    assert update.returned == (tilo,)
    assert book.child(tilo).child.hand is Hand.LEFT
    assert book.child(tilo).left is None


def test_a_family_name_added_later_is_the_same_child(book: Classbook) -> None:
    """A first name alone and the same first name with a family name are one child, by the label."""
    book.update_roster("Wren\n")
    wren = book.children()[0].id
    assert book.update_roster("Wren Hollis\n").stayed == (wren,)


def test_another_child_of_the_same_first_name_is_another_child(book: Classbook) -> None:
    """Where family names contradict each other the label decides nothing: no child inherits another's notes."""
    mira = names(book)["Mira"]
    update = book.update_roster("Mira Zell\n")
    assert mira in update.left
    assert update.joined
    assert update.joined[0] != mira


def _matched(before: str, after: str, same: dict[int, int] | None = None) -> Enrolment:
    """Return who is who between two lists; ids are the places on the first."""
    known = [Known(place, one.given, one.family, one.practice, one.label, here=True)
             for place, one in enumerate(read_roster(before).children, 1)]
    return enrol(read_roster(after).children, known, same or {})


@pytest.mark.parametrize(("old", "new"), [
    ("Katherine Moss", 'Katherine "Katie" Moss'),
    ('Katherine "Katie" Moss', 'Katherine "Kate" Moss'),
    ('Katherine "Katie" Moss', "Katie Moss"),
    ("Zoe Moss", "Zoë Moss"),
    ("Zoe", "Zoë"),
    ("ANNE MARIE MOSS", "Anne-Marie Moss"),
    ("Emma", "Emma Moss"),
    ("Emma Moss", "Emma"),
    ("Emma M.", "Emma Moss"),
    ("Lucía Rubio", "Lucía Rubio Vega"),
    ("Дарина Коваль", "Darina Koval"),
])
@pytest.mark.parametrize("last", [True, False])
def test_a_name_set_right_is_the_same_child(old: str, new: str, last: bool) -> None:
    """What says nothing against the name of before takes over, wherever it stands on the list, and nobody is asked."""
    place = 4 if last else 1
    found = _matched(f"{CLASS_OF_THREE}{old}\n", f"{CLASS_OF_THREE}{new}\n" if last else f"{new}\n{CLASS_OF_THREE}")
    assert found.ids[place] == 4
    assert sorted(found.ids.values()) == [1, 2, 3, 4]
    assert all(one.sure for one in found.recognised)


@pytest.mark.parametrize(("old", "new", "taken", "may"), [
    ("Emma Moss", "Emma Vost", [None], [[4]]),
    ("Katherine Moss", "Katie Moss", [None], [[4]]),
    ("Emma", "Emma Reed\nEmma Vost", [None, None], [[4], [4]]),
    ("Emma Reed\nEmma Vost", "Emma", [None], [[4, 5]]),
    ("Ivo\nIvo", "Ivo", [4], [[4, 5]]),
    ("Charlote Reed", "Charlotte Reed", [4], [[4]]),
])
def test_where_names_leave_it_open_a_person_is_asked(old: str, new: str, taken: list[int | None],
                                                     may: list[list[int]]) -> None:
    """The line, whom it may be, and what it counts as until then: a slip as the same child, all else as another."""
    found = _matched(f"{CLASS_OF_THREE}{old}", f"{CLASS_OF_THREE}{new}")
    assert [one.taken for one in found.recognised] == taken
    assert [[each.id for each in one.known] for one in found.recognised] == may
    assert not any(one.sure for one in found.recognised)


def test_what_was_answered_is_asked_no_more() -> None:
    """An answer goes before the names: the same child, or another."""
    before, after = f"{CLASS_OF_THREE}Emma Moss", f"{CLASS_OF_THREE}Emma Vost"
    for said, id_ in ((4, 4), (NEW, None)):
        found = _matched(before, after, {4: said})
        assert found.ids.get(4) == id_
        assert not found.recognised
    assert 4 not in _matched(f"{CLASS_OF_THREE}Zoe", f"{CLASS_OF_THREE}Zoë", {4: NEW}).ids


def test_twins_do_not_change_places() -> None:
    """Names that differ by a letter are two children as long as both are there, and when one leaves."""
    twins = "Jada Moss\nJade Moss\n"
    assert _matched(f"{CLASS_OF_THREE}{twins}", f"Jade Moss\nJada Moss\n{CLASS_OF_THREE}").ids == {
        1: 5, 2: 4, 3: 1, 4: 2, 5: 3}
    found = _matched(f"{CLASS_OF_THREE}{twins}", f"{CLASS_OF_THREE}Jade Moss")
    assert found.ids[4] == 5
    assert not found.recognised


def test_in_another_class_half_a_name_is_nobody() -> None:
    """Where most are others, one given name alone gives no child what is kept of another; it is asked."""
    found = _matched("Emma\nLiam\nNoah\nOlive\n", "Emma Reed\nMia Vost\nTom Pell\nZoe Quill\n")
    assert found.ids == {}
    assert [one.name for one in found.recognised] == ["Emma Reed"]
    assert not _matched("Emma Moss\nLiam Bo\nNoah Ray\n", "Emma Reed\nMia Vost\nTom Pell\n").recognised


def test_a_part_of_the_class_by_given_names_is_that_part() -> None:
    """Four who come to a party, of ten: most of the list are children of the class, so nobody is there twice."""
    here = [f"{given} {family}" for given, family in zip(
        ("Mira", "Tilo", "Bo", "Wenna", "Katla", "Sefa", "Kirrin", "Ottilka", "Imani", "Oona"),
        ("Quill", "Reed", "Lindle", "Praske", "Pruner", "Ilar", "Brane", "Tamsel", "Lake", "Hale"), strict=True)]
    found = _matched("\n".join(here), "Sefa\nMira\nBo\nVexil")
    assert found.ids == {1: 6, 2: 1, 3: 3}
    assert not _matched("\n".join(here), "Sefa\nMira\nJory\nVexil\nAxel").ids


def test_a_child_who_is_here_goes_before_one_who_left_long_ago(book: Classbook) -> None:
    """Of two who may be meant the one on the list stays open to be asked, and nobody is lost."""
    book.update_roster("Mira Quill\nTilo Reed\nIvo\n")
    book.update_roster(NewList("Mira Quill\nTilo Reed\nIvo Vost\nAva Finch\n", same={3: NEW}))
    update = book.update_roster("Mira Quill\nTilo Reed\nIvo\nAva Finch\n")
    asked = next(one for one in update.recognised if one.name == "Ivo")
    assert {one.shown for one in asked.known} == {"Ivo", "Ivo Vost"}
    assert not asked.sure


def test_a_double_without_anything_kept_goes_when_it_is_said_to_be_one_child(book: Classbook) -> None:
    """Of a child who was taken for a new one by mistake no empty second one stays behind."""
    mira = names(book)["Mira"]
    book.set_settings(mira, {"hand": "left"})
    text = "Mira Vost\nTilo Reed\nAva Finch\nAva Moss\n"
    book.update_roster(text)
    assert len(book.children(left=True)) == 5
    book.update_roster(NewList(text, same={1: mira}))
    assert {one.id for one in book.children(left=True)} == set(names(book).values())
    assert book.child(mira).child.family == "Vost"
    assert book.child(mira).child.hand is Hand.LEFT


def test_children_alike_in_every_name_are_kept_apart_and_a_guess_is_said(book: Classbook) -> None:
    """Two children of one name are two; when one goes, which of them stayed is a guess and said to be one."""
    first, second = (one.id for one in _with(book, "Ivo\nIvo\n"))
    assert first != second
    assert book.update_roster("\nIvo\nIvo\n").stayed == (first, second)
    update = book.update_roster("Ivo\n")
    assert (update.stayed, update.left) == ((first,), (second,))
    assert update.notes[0]["name"] == "Ivo"


@pytest.mark.parametrize(("known", "text", "same", "ids", "why"), [
    ([Known(4, "Mira", "Quill", "Mira", "Mira", True)], "mira QUILL", {}, {1: 4}, "letter case is no other child"),
    ([Known(4, "Mira", "", "Mira", "Mira", True)], "Mira Quill", {}, {1: 4}, "by the label, a family name joins"),
    ([Known(4, "Mira", "Vost", "Mira", "Mira", True)], "Mira Quill", {}, {}, "another family, another child"),
    ([Known(4, "Mira", "", "Mira", "Mira", False)], "Mira Quill", {}, {}, "who left comes back by all names only"),
    ([Known(4, "Mira", "Quill", "Mira", "Mira", False)], "Mira Quill", {}, {1: 4}, "and does come back by these"),
    ([Known(4, "Ivo", "", "Ivo", "Ivo", False), Known(7, "Ivo", "", "Ivo", "Ivo", True)], "Ivo", {}, {1: 7},
     "who is here goes before who left"),
    ([Known(4, "Tilo", "Reed", "Tilo", "Tilo", True)], "Wren", {1: 4}, {1: 4}, "what the caller knows goes first"),
])
def test_whom_a_line_is_given_to(known: list[Known], text: str, same: dict[int, int], ids: dict[int, int],
                                 why: str) -> None:
    """In the order of the module's header: as told, all names, then the label where families agree."""
    assert enrol(read_roster(text).children, known, same).ids == ids, why


@pytest.mark.parametrize(("before", "after", "may"), [
    ("Mira Quill\nTilo Reed\nBo Lindle\nWenna Praske", "Mira Quill\nJory Hale\nBo Lindle\nWenna Praske", {2: 2}),
    ("Mira Quill\nTilo Reed\nBo Lindle", "Jory Hale\nTilo Reed\nBo Lindle", {1: 1}),
    ("Mira Quill\nTilo Reed\nBo Lindle", "Mira Quill\nTilo Reed\nJory Hale", {3: 3}),
    ("Mira Quill\nTilo Reed\nBo Lindle", "Jory Hale\nBo Lindle\nMira Quill", {}),
    ("Mira Quill\nTilo Reed\nBo Lindle\nOona Hale", "Mira Vost\nJory Hart\nBo Lindle\nOona Hale", {1: 1, 2: 2}),
    ("Mira Quill\nTilo Reed\nBo Lindle", "Mira Quill\nTilo Reed\nBo Lindle\nJory Hale", {}),
    ("Mira Quill\nTilo Reed\nBo Lindle", "Mira Quill\nBo Lindle", {}),
    ("Mira Quill", "Jory Hale", {}),
])
def test_both_names_changed_at_once_is_asked_by_the_place(before: str, after: str, may: dict[int, int]) -> None:
    """One is new where one is gone, between the same two: it may be one child, and counts as another until then."""
    found = _matched(before, after)
    assert {one.line: one.known[0].id for one in found.recognised} == may
    assert not set(may) & set(found.ids)


def test_both_names_changed_at_once_is_asked_by_a_birthday(book: Classbook) -> None:
    """Where the list is kept whole, what only this child has speaks for it, wherever it stands."""
    head = "First name,Last name,Birthday,Guardian e-mail\n"
    rows = ["Mira,Quill,3/4/2021,o@quill.example\n", "Tilo,Reed,5/6/2021,p@reed.example\n",
            "Bo,Lindle,7/8/2021,b@lindle.example\n", "Wenna,Praske,9/9/2021,w@praske.example\n"]
    book.update_roster(NewList(head + "".join(rows), whole=True))
    tilo = names(book)["Tilo"]
    text = head + rows[3] + rows[2] + rows[0] + "Jory,Hale,5/6/2021,p@reed.example\n"
    update = book.update_roster(NewList(text, whole=True))
    (asked,) = update.recognised
    assert (asked.name, [one.id for one in asked.known], asked.taken) == ("Jory Hale", [tilo], None)
    assert update.doubted == {tilo, *update.joined}
    assert book.update_roster(NewList(text, whole=True, same={5: tilo})).returned == (tilo,)


class _OneByOne(Kindred):
    """Compares a name with everybody."""

    def _who_may_be(self, new: Named) -> set[int]:
        return set(self._known)


def test_a_quick_look_and_comparing_everyone_say_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever stays, leaves, comes or is written with a slip, in hundreds of made-up lists."""
    dice = random.Random(11)
    words = ["".join(dice.choices(("ka", "lo", "mi", "ren", "é", "ü", "ß", "то"), k=dice.choice((1, 2, 2, 3)))).title()
             for _ in range(40)]
    for _ in range(300):
        before = [" ".join(dice.choices(words, k=dice.choice((1, 2, 2, 3)))) for _ in range(dice.randint(1, 12))]
        stay = [name.replace("o", "a", dice.choice((0, 0, 1))) for name in before if dice.random() < 0.7]
        after = [*stay, *(" ".join(dice.choices(words, k=2)) for _ in range(dice.randint(1, 5)))]
        dice.shuffle(after)
        quick = _matched("\n".join(before), "\n".join(after))
        with monkeypatch.context() as patch:
            patch.setattr(enrolling, "kindred", lambda known: _OneByOne({one.id: named(one) for one in known}))
            assert _matched("\n".join(before), "\n".join(after)) == quick
