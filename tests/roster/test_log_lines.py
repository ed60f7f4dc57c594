"""A log of times, children and what happened makes each child once; chats, plans and lists with hours stay theirs."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.log_lines import from_a_log
from namewright.roster.parsing import read_roster

SAID = {
    "en": ("arrived", "picked up by gran", "left with dad"),
    "es": ("llegó", "recogido por la abuela", "se fue con papá"),
    "fr": ("arrivé", "récupéré par mamie", "parti avec papa"),
    "de": ("angekommen", "von Oma abgeholt", "mit Papa gegangen"),
    "it": ("arrivato", "ritirato dalla nonna", "uscito con papà"),
    "pt": ("chegou", "buscado pela avó", "saiu com o pai"),
}
TITLES = {
    "en": "Time,Child,Event", "es": "Hora,Niño,Evento", "fr": "Heure,Enfant,Événement", "de": "Uhrzeit,Kind,Ereignis",
    "it": "Ora,Bambino,Evento", "pt": "Hora,Criança,Evento",
}
WAYS = ("{time} {name} {said}", "[{time}] {name}: {said}", "{time} - {name} - {said}", "{time} – {name} ({said})",
        "{time}  {name}, {said}", "{time}\t{name}\t{said}", "12/05 {time} {name}: {said}")
NAMES = (["Mia Vost", "Leo Tarn", "Irma Parent"], ["Xobrel Vank", "Zuthe Menk", "Rinno Tovel"],
         ["Xobrel", "Zuthe", "Rinno"])


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


def log(way: str, names: list[str], tongue: str) -> str:
    come, fetched, gone = SAID[tongue]
    entries = [*((name, come) for name in names), (names[1], fetched), (names[0], gone)]
    return "\n".join(way.format(time=f"{8 + at}:0{at}", name=name, said=said)
                     for at, (name, said) in enumerate(entries))


@pytest.mark.parametrize("names", NAMES)
@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("tongue", SAID)
def test_who_comes_again_is_one_child(tongue: str, way: str, names: list[str]) -> None:
    text = log(way, names, tongue)
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert practised(roster.text or text) == [name.split()[0] for name in names]
    again = [line for line in roster.lines if line.source_line > len(names)]
    assert again
    assert all(line.outcome is Outcome.HEADING and line.notes for line in again)


@pytest.mark.parametrize("tongue", TITLES)
@pytest.mark.parametrize("sign", ["\t", ";", ",", " | "])
def test_a_day_book_with_titles_makes_each_child_once(tongue: str, sign: str) -> None:
    for names in NAMES:
        text = TITLES[tongue].replace(",", sign) + "\n" + log(sign.join(("{time}", "{name}", "{said}")), names, tongue)
        assert practised(text) == [name.split()[0] for name in names]


def test_without_events_a_name_at_another_time_is_another_child() -> None:
    assert practised("Time,Child\n8:00,Mia\n8:10,Leo\n8:20,Mia") == ["Mia", "Leo", "Mia"]


def test_two_of_one_line_are_two_and_who_came_along_is_asked_about() -> None:
    roster = read_roster("8:05 Mia and Leo arrived\n8:10 Ava Tarn arrived with Zuthe Menk\n9:00 Ben arrived")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Ben"]
    asked = [note for line in roster.lines if line.outcome is Outcome.LEFT_OUT for note in line.notes]
    assert any(note.key == "roster.sentence_names" and note["names"] == "Zuthe Menk" for note in asked)


def test_a_given_name_alone_that_is_short_for_a_whole_one_is_asked_about() -> None:
    roster = read_roster("8:05 Mia Vost arrived\n8:10 Leo Tarn arrived\n12:00 Mia left")
    assert [child.practice for child in roster.children] == ["Mia", "Leo"]
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == ["12:00 Mia left"]


@pytest.mark.parametrize("text", [
    "[08:05] Jo Reed: Mia is coming\n[08:07] Sam Holt: Leo too\n[08:10] Jo Reed: thanks",
    "[08:05] Jo Reed: Mia kommt mit\n[08:07] Sam Holt: Leo kommt\n[08:10] Jo Reed: Ava geht nicht",
    "[08:05] Jo Reed: on my way\n[08:07] Sam Holt: ok\n[08:10] Jo Reed: thanks",
    "8:15 Arrival and breakfast\n8:45 Circle time\n9:00 Reading with Mia Vost, Leo Tarn",
    "8:00 Mia\n8:10 Leo\n8:20 Ava",
    "9:00 Math lesson\n10:00 Music lesson\n11:00 Art lesson", "8:05 Mill Lane: Mia Vost\n8:10 Church Road: Leo Tarn",
    "8:00 Mia Vost - Room 3\n8:10 Leo Tarn - Room 4", "Mia Vost 8:05 arrived\nLeo Tarn 8:10 arrived",
    "8:05 Mia arrived", "8:00 Frau Vost kommt\n8:10 Herr Tarn kommt", "",
])
def test_other_lines_with_times_are_no_log(text: str) -> None:
    assert from_a_log(text.split("\n")) is None


@pytest.mark.parametrize(("come", "gone"), [("in", "out"), ("da", "weg"), ("là", "parti"), ("aquí", "fuera"),
                                            ("qui", "fuori"), ("aqui", "fora"), ("here", "home")])
def test_one_small_word_tells_that_a_child_comes_or_goes(come: str, gone: str) -> None:
    roster = read_roster(f"8:31 Xobrel {come}\n8:33 Leo {come}\n8:35 Mira {come}, a bit sad\n11:30 Leo {gone}")
    assert [(child.given, child.family) for child in roster.children] == [("Xobrel", ""), ("Leo", ""), ("Mira", "")]
