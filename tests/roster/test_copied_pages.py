"""Pages of people copied from a screen: the names are children, and what stands about each of them is not."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.copied_pages import without_copied_pages
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

NAMES = ("Mia Vost", "Tilo Berg", "Xobrel Tarn", "Ada Quill", "Noah Roth")
WORDS = [
    ("Home > My classes", "Add student", ("Active today", "Never signed in"), "Edit · Remove", "Show more"),
    ("Inicio > Mis clases", "Añadir alumno", ("Activo hoy", "Sin conexión"), "Editar", "Ver más"),
    ("Accueil > Mes classes", "Ajouter un élève", ("Actif aujourd'hui", "Jamais connecté"), "Modifier", "Aide"),
    ("Start > Meine Klassen", "Kind hinzufügen", ("Heute aktiv", "Noch nie angemeldet"), "Bearbeiten", "Hilfe"),
    ("Home > Le mie classi", "Aggiungi alunno", ("Attivo oggi", "Mai connesso"), "Modifica · Rimuovi", "Aiuto"),
    ("Início > As minhas turmas", "Adicionar aluno", ("Ativo hoje", "Nunca entrou"), "Remover", "Ajuda")]


@pytest.mark.parametrize(("crumbs", "add", "states", "buttons", "foot"), WORDS)
@pytest.mark.parametrize("kept", [(1, 1, 1, 1), (0, 1, 1, 0), (1, 0, 0, 1), (0, 0, 1, 1), (1, 1, 0, 0), (0, 1, 0, 0)])
@pytest.mark.parametrize("comma", [True, False])
def test_what_stands_about_each_name_is_nobody(
    crumbs: str, add: str, states: tuple[str, str], buttons: str, foot: str, kept: tuple[int, ...], comma: bool,
) -> None:
    text = [crumbs, add]
    for at, name in enumerate(NAMES):
        given, family = name.split()
        about = (given[0] + family[0], states[at % 2], f"{name.replace(' ', '.').lower()}@school.example", buttons)
        cells = [cell for cell, keep in zip(about, kept, strict=True) if keep]
        text += [*cells[: kept[0]], f"{family}, {given}" if comma else name, *cells[kept[0]:]]
    typed = "\n".join([*text, foot])
    roster = read_roster(typed)
    assert [(child.given, child.family) for child in roster.children] == [tuple(name.split()) for name in NAMES]
    assert {line.outcome for line in roster.lines if line.text in {add, foot}} <= {Outcome.LEFT_OUT, Outcome.HEADING}
    assert read_roster(roster.text or typed).children == roster.children


def test_a_second_name_with_each_child_stays() -> None:
    """A parent with another name stands as often as the child: nobody is taken out."""
    text = "\n".join(f"{name}\n{parent} {name.split()[1]}\n{parent.lower()}@school.example"
                     for name, parent in zip(NAMES, ("Ivo", "Lea", "Uma", "Max", "Zoe"), strict=True))
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert without_copied_pages(lines) == (lines, [])


@pytest.mark.parametrize("text", [
    "\n".join(f"Birthday of {name}\n{day}\nAll day" for name, day in zip(
        NAMES, ("1 April", "1 March", "20 April", "1 March"), strict=False)),
    "\n".join(NAMES), "Mia\nLeo\nMia\nTom\nMia\nAva\nMia\nBen", "Red\nMia\nLeo\nBlue\nAda\nBen\nRed\nNoah\nTilo"])
def test_names_alone_stay(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert without_copied_pages(lines) == (lines, [])


def test_a_child_between_states_that_come_again_is_not_said_of_another() -> None:
    """Where a state was missing, the next child stood in its place and was left out."""
    lines = ["Xobrel, mom of Lela", "At work", "Treip, mom of Daitrys", "Quorn, mom of Taithul", "Busy",
             "Zivqu, mom of Nanwin",
             "Omquil, mom of Birreir", "At work", "Vrexiu, mom of Treilker", "Aivnor, mom of Mirgem", "Busy",
             "Nawe, mom of Vomzyn", "Harozq, mom of Xasdlin"]
    assert len(read_roster("\n".join(lines)).children) == 9


def test_initials_of_a_script_without_capitals_are_said_of_the_name() -> None:
    names = {"拓吉": "吉田, 拓真", "Rヤ": "ヤマザキ, Ryohei", "ミ岡": "岡本, ミツル", "太N": "Nakagawa, 太一"}
    text = "Export\n" + "\n".join(
        f"{two}\n{name}\nk60{at}@school.example\nEdit · Remove" for at, (two, name) in enumerate(names.items()))
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["拓真", "Ryohei", "ミツル", "太一"]
    assert roster.lines[0].outcome is Outcome.HEADING
