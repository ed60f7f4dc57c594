"""A day with its times makes those alone who are named in it, under their names; who is unsure is asked about."""

from __future__ import annotations

import random
from collections import Counter

import pytest

from made_lists import plans
from made_lists.plans import KEPT_TONGUES, TONGUES, Plan, fates
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

DAYS = [
    "8:15 Arrival and breakfast\n8:45 Circle time\n9:00 Reading with Mia Vost, Leo Tarn, Ava Rey\n"
    "10:15 speech: Xobrel Vank, Zuthe Menk\n11:00 Recess",
    "Tagesablauf\n8:00 Ankommen, Freispiel\n8:30 Morgenkreis, Kalender\n9:00 Frühstück, Zähneputzen\n"
    "9:30 Lesen mit Mia Vost, Leo Tarn, Ava Rey\n10:15 Logopädie: Xobrel Vank, Zuthe Menk\n11:00 Hofpause",
    "8h30 Accueil, jeux libres\n9h00 Regroupement, date\n9h30 Lecture avec Mia Vost, Leo Tarn, Ava Rey\n"
    "10h15 orthophonie : Xobrel Vank, Zuthe Menk\n11h00 Récréation",
    "8.30 Llegada, juego libre\n9.00 Asamblea, calendario\n9.30 Lectura con Mia Vost, Leo Tarn y Ava Rey\n"
    "10.15 logopedia: Xobrel Vank, Zuthe Menk\n11.00 Recreo",
    "ore 8:30 Accoglienza\nore 9:00 Cerchio, calendario\nore 9:30 Lettura con Mia Vost, Leo Tarn e Ava Rey\n"
    "ore 10:15 logopedia: Xobrel Vank, Zuthe Menk\nore 11:00 Merenda",
    "8:30-9:00 Acolhimento, brincadeira livre\n9:00-9:30 Roda, calendário\n9:30-10:00 Leitura com Mia Vost, Leo Tarn e "
    "Ava Rey\n10:15-10:45 terapia da fala: Xobrel Vank, Zuthe Menk\n11:00-11:30 Recreio",
]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("text", DAYS)
def test_the_known_are_made_and_the_others_asked_about(text: str) -> None:
    """Nothing of the day is practised, whatever its commas part."""
    roster = read_roster(text)
    assert [(child.practice, child.family) for child in roster.children] == [
        ("Mia", "Vost"), ("Leo", "Tarn"), ("Ava", "Rey")]
    asked = [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT]
    assert any("Xobrel Vank" in line and "Zuthe Menk" in line for line in asked)
    assert practised(roster.text) == practised(text)


@pytest.mark.parametrize("text", DAYS)
def test_who_has_a_line_is_not_made_again_and_who_has_none_is_asked_about(text: str) -> None:
    roster = read_roster(f"Mia Vost\nLeo Tarn\nXobrel Vank\nZuthe Menk\n\n{text}")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Xobrel", "Zuthe"]
    asked = [line for line in roster.lines if line.outcome is Outcome.LEFT_OUT and "Ava Rey" in line.text]
    assert [note.key for line in asked for note in line.notes] == ["roster.sentence_names"]


def test_a_child_named_at_two_hours_is_made_once() -> None:
    text = "9:00 Reading with Mia Vost, Leo Tarn\n10:00 Math with Mia, Ben Rey\n11:00 Lunch\n12:00 Bus: Leo Tarn"
    assert practised(text) == ["Mia", "Leo", "Ben"]


def test_a_day_whose_times_stand_apart_by_a_tab_is_no_table() -> None:
    day = "9:00\tReading with Mia Vost, Leo Tarn\n10:00\tLunch\n11:00\tMath with Ben Rey"
    assert practised(day) == ["Mia", "Leo", "Ben"]
    assert practised("9:00\tMia Vost\n9:10\tLeo Tarn\n9:20\tBen Rey") == ["Mia", "Leo", "Ben"]


@pytest.mark.parametrize(("text", "names"), [
    ("14:50 Cathy\n15:00 Sandy und Nicole\n15:10 Eric\n15:20 Pause\n15:30 Mira", "Cathy Sandy Nicole Eric Mira"),
    ("8:00 Mia Vost\n8:10 Leo Tarn\n8:20 Ava Rey", "Mia Leo Ava"),
    ("8:00 Xobrel Vank\n8:10 Zuthe Menk\n8:20 Rin Tovel", "Xobrel Zuthe Rin"),
])
def test_children_with_hours_are_no_day(text: str, names: str) -> None:
    assert practised(text) == names.split()


def read_many(words: str, tongue: str, count: int = 12) -> Counter[str]:
    """Return the fates of all who stand in plans made of these words."""
    found: Counter[str] = Counter()
    for seed in range(count):
        for plan in _made(random.Random(f"{tongue} {seed}"), tongue, words):
            found.update(fates(plan))
    return found


def _made(rng: random.Random, tongue: str, words: str) -> tuple[Plan, ...]:
    said = TONGUES[tongue]
    days = (plans.day_plan(rng, said, words=words, among=0), plans.day_plan(rng, said, words=words, among=5))
    return (*days, *(kind(rng, said, words=words) for kind in (plans.note, plans.closed, plans.levelled)))


@pytest.mark.parametrize("tongue", TONGUES)
def test_in_plans_and_notes_made_at_random_nobody_is_lost(tongue: str) -> None:
    found = read_many("known", tongue)
    assert found["children"] > 200
    assert found["lost"] == 0
    assert found["extra"] == 0
    assert found["right"] > 0.6 * found["children"]


@pytest.mark.parametrize("words", ["kept", "invented"])
@pytest.mark.parametrize("tongue", TONGUES)
def test_words_that_nobody_wrote_down_lose_hardly_anybody(tongue: str, words: str) -> None:
    """An invented word alone at an hour may be a child: who is named behind it is made or asked about."""
    found = read_many(words, tongue)
    assert found["lost"] <= 0.02 * found["children"]


def test_two_languages_and_half_the_words_are_kept_apart() -> None:
    assert set(KEPT_TONGUES) < set(TONGUES)
    assert not any(set(tongue.kept) & set(tongue.activities) for tongue in TONGUES.values())


@pytest.mark.parametrize("did", ["{} to speech", "{} wird abgeholt", "{} part avec sa mamie", "{} va a logopedia"])
def test_what_a_child_does_at_an_hour_is_no_family_name(did: str) -> None:
    """Who has a line is told; who has none is asked about."""
    day = f"9:00 Snack\n10:00 {did.format('Ava')}\n11:00 Recess\n12:00 Bus"
    roster = read_roster(f"Mia Vost\nAva Rey\nLeo Tarn\n\n{day}")
    assert [child.family for child in roster.children] == ["Vost", "Rey", "Tarn"]
    assert roster.lines[5].outcome is Outcome.HEADING
    unknown = read_roster(f"Mia Vost\nBen Rey\nLeo Tarn\n\n{day}")
    assert len(unknown.children) == 3
    assert unknown.lines[5].outcome is Outcome.LEFT_OUT
    beside = read_roster(f"Mia Vost\nAva Rey\nLeo Tarn\n\n{day.replace('Ava', 'Ava and Xobrel')}")
    assert len(beside.children) == 3
    assert beside.lines[5].outcome is Outcome.LEFT_OUT


def test_times_before_single_words_on_no_list_are_asked_about() -> None:
    """They may be children who come one after another, or lessons; one known name tells."""
    with pytest.raises(RosterError):
        read_roster("9:00 Xobrel\n9:15 Vemkat\n9:30 Jelbru\n9:45 Odelim")
    assert len(read_roster("9:00 Xobrel\n9:15 Mia\n9:30 Jelbru\n9:45 Odelim").children) == 4


@pytest.mark.parametrize("sign", [" ", " – ", "\t"])
def test_breaks_among_talks_make_no_day_of_names_on_no_list(sign: str) -> None:
    names = ["Fántain Vostrin", "Ámdiam Tarnö", "Xairfön Quorrik", "Vexil Zandel", "Thoum Gask", "Peldro Wimsu"]
    slots = [names[0], "Pause", *names[1:3], "frei", *names[3:], "Pause"]
    text = "\n".join(f"8:{10 + 5 * at}-8:{15 + 5 * at}{sign}{slot}" for at, slot in enumerate(slots))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]
