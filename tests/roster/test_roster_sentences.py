"""Names told in a sentence are made where that is sure, and else left out with a word: never lost in silence."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.sentences import is_a_text

TOLD = [
    ("Hi! My class this year: Mia, Leo and Ava.\nCould I have the cards by Monday please? Thank you!!\nWilma, Room 3",
     ["Mia", "Leo", "Ava"]),
    ("Hola, estos son mis peques de este año: Lucía, Mateo y Hugo.\n¿Me lo puedes tener para el lunes? ¡Mil gracias!\n"
     "Remedios", ["Lucía", "Mateo", "Hugo"]),
    ("Bonjour, voici les prénoms de mes élèves : Léa, Hugo et Zoé.\nMerci beaucoup, bonne journée\nMme Perdrizel",
     ["Léa", "Hugo", "Zoé"]),
    ("Liebe Kollegin, meine Kinder heißen Lena, Paul und Emma.\nVielen Dank und liebe Grüße\nHeidrun Quastel",
     ["Lena", "Paul", "Emma"]),
    ("Hola profe, soy Jana, estos son los niños del taller: Lucía, Mateo, Iker y Hugo. Muchas gracias 🙏",
     ["Lucía", "Mateo", "Iker", "Hugo"]),
    ("Bonjour maîtresse, c'est Jana. Voici les enfants pour l'atelier : Léa, Hugo et Jean-Paul. Merci et à lundi !",
     ["Léa", "Hugo", "Jean-Paul"]),
    ("Ciao maestra, sono Jana, ecco i bambini del gruppo: Lia, Ugo e Dina. Grazie mille!", ["Lia", "Ugo", "Dina"]),
    ("Oi prof, aqui é Jana, essas são as crianças do grupo: Léo, Ana e Caio 😘 obrigada", ["Léo", "Ana", "Caio"]),
    ("hi its Jana 😊 here are the kids: Quorrik, Zandelle, Vexil, Fántain, Ámdiam & Xairfön. Thanks!",
     ["Quorrik", "Zandelle", "Vexil", "Fántain", "Ámdiam", "Xairfön"]),
    ("Hello, the kids are called ანა, ელენა and გიორგი.", ["ანა", "ელენა", "გიორგი"]),
]


@pytest.mark.parametrize(("text", "names"), TOLD)
def test_a_class_told_in_a_sentence(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


@pytest.mark.parametrize("line", [
    "Bonjour, voici mes élèves : Quorrik, Zandelle et Vexil.",  # on no list of names
    "Hello, here are the kids: Mia, Leo and Ava. Noah comes too.",
    "Hallo, das packen wir für die Kinder ein: Mütze, Schal, Jacke, Hose, Stiefel und Handschuhe. Danke!",
    "Hello, our class went to Mia, Leo and Ava.",
    "Hello, the parents of my class are Mia, Leo and Ava."])
def test_names_that_may_be_no_children_are_left_out_with_the_way_to_write_them(line: str) -> None:
    with pytest.raises(RosterError) as error:
        read_roster(line)
    (report,) = error.value.lines
    assert report.outcome is Outcome.LEFT_OUT
    assert [note.key for note in report.notes] == ["roster.several", "roster.one_each"]


def test_a_sentence_about_children_of_the_list_makes_nobody_twice() -> None:
    roster = read_roster("Mia\nLeo\nAva\nNoah\nHi, my kids with a form are: Mia, Leo and Ava.")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]
    assert roster.lines[-1].outcome is Outcome.HEADING


def test_a_line_that_tells_of_two_children_makes_no_one_of_them() -> None:
    roster = read_roster("Ava\nMia\nNoah leaves at 2, Emma rides bus 7.")
    assert [child.practice for child in roster.children] == ["Ava", "Mia"]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("lead", ["In der Bauecke sind", "On the rug you'll have", "En la alfombra están",
                                  "Sul tappeto sono", "Au coin lecture sont", "No tapete estão"])
@pytest.mark.parametrize("names", [["Aurélie", "Ben"], ["Aurélie", "Ben", "Mira"], ["Aurélie", "Ben", "Mira", "Emil"]])
def test_children_in_a_note_are_made_without_the_words_before_them(lead: str, names: list[str]) -> None:
    and_ = {"In": "und", "On": "and", "En": "y", "Su": "e", "Au": "et", "No": "e"}[lead[:2]]
    text = f"{lead} {', '.join(names[:-1])} {and_} {names[-1]}."
    assert [child.practice for child in read_roster(text).children] == names


@pytest.mark.parametrize("names", ["Mia and Leo", "Mia, Ida and Leo"])
def test_helpers_told_by_their_given_names_are_made_once(names: str) -> None:
    """They have lines with the family's name, too."""
    read = read_roster(f"Mia Vost\nLeo Tarn\nBen Koch\nIda Berg\nThe line leaders today are {names}.")
    assert [child.practice for child in read.children] == ["Mia", "Leo", "Ben", "Ida"]


def test_thanks_behind_the_names_are_none() -> None:
    assert [child.practice for child in read_roster("The new ones are Mia and Leo. Thanks!").children] == ["Mia", "Leo"]


@pytest.mark.parametrize("text", [
    "Le chef de rang est Shiaseru. Xobrel a besoin de son doudou. Vemka part à midi.",
    "El encargado es Shiaseru. Xobrel necesita ayuda con la cremallera. Vemka se va a las 12.",
    "Tischdienst hat Shiaseru. Xobrel braucht Hilfe beim Anziehen. Vemka wird um 12 abgeholt.",
    "The line leader is Shiaseru. Xobrel needs help with the zipper. Vemka naps with a blue blanket."])
def test_several_sentences_are_no_child(text: str) -> None:
    """Where nobody of them has a line, as with names on no list, they are asked about and not made into one."""
    read = read_roster(f"Mira Vost\n{text}")
    assert [child.practice for child in read.children] == ["Mira"]
    assert is_a_text(text)


@pytest.mark.parametrize("text", ["Mira Vost – allergic to nuts. Has an EpiPen. Sits near the door.",
                                  "Xobrel Vost (allergic to nuts. Has an EpiPen. Sits near the door.)",
                                  "Vost, Xobrel: allergic to nuts. Has an epipen and sits in front."])
def test_a_remark_of_several_sentences_is_no_text(text: str) -> None:
    assert not is_a_text(text)


NOTES = ["This month please practise with {}, {} and {}; {} is away.",
         "Dear sub, {} and {} need help, {} can write. {} is sick.",
         "Este mes practica por favor con {}, {} y {}; {} está ausente.",
         "Por favor trabaja hoy con {}, {} y los mellizos {} y {}.",
         "Ce mois-ci, merci de travailler avec {}, {} et {} ; {} est absent.",
         "Diesen Monat bitte mit {}, {} und {} üben; {} fehlt heute.",
         "Bitte übe mit {}, {} und den Zwillingen {} und {}.",
         "Questo mese per favore esercitati con {}, {} e {}; {} è assente.",
         "Olá, {} e {} precisam de ajuda, {} escreve sozinha. {} está doente hoje.",
         "Este mês por favor pratica com {}, {} e {}; {} está ausente."]


@pytest.mark.parametrize("note", NOTES)
@pytest.mark.parametrize("names", [("Mia", "Leo", "Ava", "Otis"), ("Xobrel", "Zuthe", "Vemka", "Rinno")])
@pytest.mark.parametrize("count", [1, 2])
def test_a_note_that_names_children_in_passing_is_asked_about(note: str, names: tuple[str, ...], count: int) -> None:
    """Never is its first word a child, nor are some of them left out in silence."""
    text = "\n".join((note.format(*names), note.format("Noah", "Ida", "Tilo", "Bo"))[:count])
    with pytest.raises(RosterError) as caught:
        read_roster(text)
    assert all(line.outcome is Outcome.LEFT_OUT and line.notes for line in caught.value.lines)
