"""Logs of who did what to whom: who comes again and again is none of the children."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster

LOGS = {
    "en": "Activity\nAna Berg added Leo Vost · 9:40\nMia Zell was added by Tom Oak · 9:41\n"
          "Ana Berg invited Theo · 9:50\n"
          "Tom Oak added Ada Quin · 9:52\nNora was enrolled by Ana Berg · 9:55",
    "de": "12.05.2025 9:40 Ana Berg hat Leo Vost hinzugefügt\n12.05.2025 9:41 Mia Zell wurde von Ana Berg hinzugefügt\n"
          "12.05.2025 9:44 Ana Berg hat Theo angelegt\n13.05.2025 9:41 Ana Berg hat Ada Quin hinzugefügt\n"
          "13.05.2025 9:43 Nora wurde von Ana Berg hinzugefügt",
    "fr": "Ana Berg a ajouté Leo Vost\nMia Zell a été ajouté(e) par Tom Oak\nTom Oak a inscrit Theo\n"
          "Ana Berg a ajouté Ada Quin\nNora a été invité(e) par Ana Berg",
    "you": "You added Leo Vost · 8:01\nYou added Mia Zell · 8:02\nYou added Theo · 8:04\nYou added Ada Quin · 8:05\n"
           "You added Nora · 8:06",
    "times below": "Ana Berg añadió a Leo Vost\n12/05/2025 9:40\nMia Zell fue añadida por Tom Oak\n12/05/2025 9:42\n"
                   "Tom Oak añadió a Theo\n12/05/2025 9:44\nAna Berg añadió a Ada Quin\n12/05/2025 9:45\n"
                   "Nora fue añadida por Ana Berg\n12/05/2025 9:47",
}
CHILDREN = ["Leo", "Mia", "Theo", "Ada", "Nora"]


@pytest.mark.parametrize("language", LOGS)
def test_who_is_named_once_is_the_child(language: str) -> None:
    assert [child.practice for child in read_roster(LOGS[language]).children] == CHILDREN


def test_who_was_taken_off_has_left_unless_added_again() -> None:
    text = LOGS["en"] + "\nTom Oak removed Theo · 10:02"
    gone = read_roster(text)
    assert [child.practice for child in gone.children] == ["Leo", "Mia", "Ada", "Nora"]
    assert "roster.has_left" in [note.key for line in gone.lines if "removed" in line.text for note in line.notes]
    assert "Theo" in [child.practice for child in read_roster(text + "\nAna Berg added Theo · 10:04").children]


def test_by_other_words_nobody_tells_that_a_child_comes_again() -> None:
    text = "Mia pushed Leo\nMia bit Ada\nMia pushed Theo\nMia kicked Nora\nMia pushed Kai"
    with pytest.raises(RosterError) as asked:
        read_roster(text)
    assert asked.value.message.key == "roster.two_wholes"
    assert [child.practice for child in read_roster(text, columns="name,name").children][:2] == ["Mia", "Leo"]


def test_what_a_keeper_did_to_nobody_is_told_and_an_unknown_word_is_asked_about() -> None:
    text = LOGS["en"] + "\nAna Berg opened the list\nAna Berg added Xobrelski to Foxes"
    read = read_roster(text)
    assert [child.practice for child in read.children] == [*CHILDREN, "Xobrelski"] or [
        line.outcome.name for line in read.lines if "Xobrelski" in line.text] == ["LEFT_OUT"]
    assert not [line for line in read.lines if "opened" in line.text and line.child]


@pytest.mark.parametrize("text", [
    "Ich bin Leo. Ich mag Nudeln.\nIch bin Mia. Ich mag Wolf.\nIch bin Theo. Ich mag Nudeln.\n"
    "Ich bin Ada. Ich mag Wolf.",
    "Leo Vost: goes to Oak School\nMia Zell: goes to Oak School\nTheo Berg: goes to Elm School\n"
    "Ada Quin: goes to Elm School",
])
def test_what_children_say_or_where_they_go_is_no_log(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Leo", "Mia", "Theo", "Ada"]
