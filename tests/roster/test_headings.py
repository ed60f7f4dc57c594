"""A line about the class is told from a line that is a child."""

from __future__ import annotations

import time

import pytest

from namewright.roster.children import Outcome
from namewright.roster.headings import heading_reason, heads_adults, perhaps_heading
from namewright.roster.parsing import read_roster

HEADINGS = [
    ("Children:", "it ends in a colon"), ("Ms. Ferrow", "a title in front"), ("Sra. Quill", "in Spanish"),
    ("Ms. Ferrow’s class", "a class that is named"), ("The Alder class", "the … class"),
    ("Class list", "a list"), ("Page 2", "a page number"), ("Room 6", "a place and its number"),
    ("Teacher: Oda Vost", "a label for somebody else"), ("Grade: K", "a label for something else"),
    ("September 2026", "a month and a year"), ("3. Room 6", "numbered or not"), ("Roster", "a word of headings alone"),
    ("Alder Room 2026/27 - Ms. Ferrow", "a room, a school year and an adult"),
    ("Alder Room, Ms. Ferrow", "an adult behind a comma"), ("Alder Room - mornings", "words behind a dash"),
    ("Salle des Aulnes 2026/27 - Mme Ferrow", "in French"), ("Bärengruppe 2026/27", "in German, in one word"),
    ("Sala dos Salgueiros 2026/27 - Prof. Ferrow", "in Portuguese"), ("Sezione degli Ontani", "in Italian"),
    ("Sala Girasoles, maestra Irune", "a room and a teacher in Spanish"),
    ("Sala Girasoles (maestra Irune)", "in brackets"),
    ("Aula Girasoli – insegnante Irune", "in Italian, behind a dash"),
    ("Sala dos Girassóis, educadora Irune", "in Portuguese"), ("Salle Tournesol, ATSEM Irune", "in French"),
    ("Raum Erle, Erzieherin Irune", "in German"), ("Erlenraum, Frau Ferrow, 2026/27", "in one word, with a year"),
    ("Room Sunflower, teacher Irune", "in English"),
    ("Telefonliste", "a list in German, in one word"), ("Édité le 03/09/2026", "a print, by a word that is a name too"),
    ("x = here, o = away", "what marks mean"), ("V = vino; F = faltó; T = tarde", "in Spanish"),
    ("P = présente / A = absente", "in French"), ("✓ = da, – = krank", "signs in German"),
    ("(G = giustificato, A = assente)", "in brackets"), ("F = falta", "one mark and a small word in Portuguese"),
    ("Mon 30 Nov", "a day and a date"), ("Montag, 30. November", "the same in German"),
    ("lunes 30 de noviembre de 2026", "in Spanish"), ("le lundi 30 novembre", "in French again"),
    ("lunedì 30 novembre", "in Italian again"), ("segunda-feira, 30 de novembro", "in Portuguese again"),
    ("Roll call – Reception", "a list of who is there, though Roll is a name"), ("Roll call", "by itself"),
    ("Registro di classe 1B", "the same in Italian"), ("Chamada – Jardim II", "in Portuguese, a word of calling, too"),
    ("30 Nov", "a date without a day"), ("Monday", "a day alone"),
    ("Infantil 5 años B", "a level, an age and a letter"), ("Educación Infantil, 5 años", "two words of a level"),
    ("Alumnos de 5 años", "children of an age"), ("Moyenne section", "a level in French"), ("PS/MS/GS", "three short"),
    ("Scuola dell’infanzia", "a level in Italian"), ("Sala dos 5 anos", "an age in Portuguese"),
    ("Educação pré-escolar", "a level in Portuguese"), ("Vorschulkinder 2026", "children in German"),
    ("Children aged 4-5", "two ages"), ("Reception B", "a level in England"), ("List as of 3 Sept", "its day"),
    ("As of September", "a day alone"), ("Liste au 3 septembre", "in French"),
    ("Aggiornato al 3 settembre", "in Italian"),
    ("Nombre d'élèves : 24", "how many there are"), ("Subs: please note", "a note to a colleague"),
    ("Bitte nicht verteilen", "a note in German"), ("Nota: no compartir", "a note in Spanish"),
    ("Educadora, sala 2", "who signs, and where"), ("Erzieherin, Raum 2", "the same in German"),
    ("Ciao Rita", "a greeting"), ("Coucou Rita,", "one in French"), ("Servus Rita", "one in Austria"),
    ("Save   Cancel", "what stands on buttons"), ("Speichern   Abbrechen", "in German"),
    ("Salva   Annulla", "in Italian"),
    ("Guardar   Cancelar", "in Spanish and Portuguese"), ("Enregistrer   Annuler", "in French"),
    ("Home   Classi   Presenze   Messaggi 3", "a menu"), ("Showing 1–5 of 5", "how many are shown"),
    ("1–5 von 5 Einträgen", "the same in German"), ("Mostrando 1–5 de 5 resultados", "the same in Spanish"),
    ("Alle Kinder", "all of them, by a word that is a name too"),
    ("Roter Tisch", "a table in a colour"), ("GRÜNE GRUPPE", "a group in capitals"),
    ("Red Table 2", "the second table"),
    ("Mesa roja", "a table in Spanish"), ("Équipe Verte", "a team in French"), ("Tavolo rosso", "a table in Italian"),
    ("Mesa vermelha", "a table in Portuguese"),
]
CHILDREN = [
    ("Mira Vost", "a plain name"), ("Name: Mira Vost", "the label of a name"),
    ("Mira Sala, Frau Ferrow", "a family name that means a room, and a teacher"), ("Sala, Irune", "the same alone"),
    ("Sala Irune, autismo", "a given name that means a room"), ("Zimmer, Anna", "a family name in German"),
    ("Edite Vost", "a name that means printed elsewhere"), ("Edite (5)", "and an age"),
    ("April", "a month alone may be a child"),
    ("Summer Vost", "so may a season"), ("Grace Ms", "a title behind a name"), ("Paige", "a name that sounds like one"),
    ("Mira", "one word"), ("1. Mira", "numbered"), ("De la Brae, Mira", "a comma"), ("", "nothing at all"),
    ("April 12", "a name and a number"), ("Sam 4 May", "a name that is a short day, and a birthday"),
    ("Sun May", "two words of a calendar that are names"), ("Mira Room 4", "a child and the room"),
    ("3. Mars", "a month that is numbered as a name"), ("Domingo", "a day that is a name"),
    ("Mira Vost 2026/27", "a name beside a year"), ("Mira Vost - Ms. Ferrow", "a child and the teacher"),
    ("Ola Antonsen", "a name that is a greeting elsewhere"), ("Nota Kallis", "a name that is a word for a note"),
    ("Bitte Hansen", "a name that is a polite word"), ("Grande, Ana", "a family name that is a size"),
    ("Kind Anna", "a family name that is a word for a child"), ("Section Kwibra", "one unknown word"),
    ("Katie please sit at the front", "a child and a wish"), ("Rosa Mesa", "a name that is a colour and a table"),
    ("Viola Sala", "a name that is a colour and a room"),
]


@pytest.mark.parametrize(("line", "why"), HEADINGS, ids=[row[1] for row in HEADINGS])
def test_a_line_about_the_class(line: str, why: str) -> None:
    assert heading_reason(line), why


@pytest.mark.parametrize(("line", "why"), CHILDREN, ids=[row[1] for row in CHILDREN])
def test_a_line_that_is_a_child(line: str, why: str) -> None:
    assert not heading_reason(line), why


PERHAPS = [
    ("Sala Marco, maestra Irune", "a room or a family name before a given one, and a teacher"),
    ("Telefonliste Marienkäfer", "a list in German, in one word"), ("To: Kim Olmo", "to whom a letter goes"),
    ("Aula Girasoles", "a word for a class in front"), ("Bluebirds - Ms. Ferrow", "one word and an adult"),
    ("Bluebirds 2026/27", "a school year"), ("Kita Sonnenhügel", "a house in German"),
    ("Vorschulgruppe Marienkäfer", "a German word in one"), ("Gruppe Max", "a group called as a child is"),
    ("Colegio San Marcos", "a school in Spanish"), ("Jardim do Vale", "in Portuguese"), ("Hallo Leute", "a greeting"),
]
NOT_EVEN_PERHAPS = [
    ("Mira - Ms. Ferrow", "a name that is known"), ("Mira Vost 2026/27", "beside a year too"),
    ("Kirrin Brane - Ms. Ferrow", "two words are a whole name"), ("Sala, Mira", "a comma"), ("Kirrin", "one word"),
    ("To: nut allergy", "a child called To"), ("Mira Telefonliste", "a name in front"), ("Kaplan", "a family name"),
]


@pytest.mark.parametrize(("line", "why"), PERHAPS, ids=[row[1] for row in PERHAPS])
def test_a_line_that_may_be_about_the_class(line: str, why: str) -> None:
    assert not heading_reason(line), why
    assert perhaps_heading(line), why


@pytest.mark.parametrize(("line", "why"), NOT_EVEN_PERHAPS, ids=[row[1] for row in NOT_EVEN_PERHAPS])
def test_a_line_that_nobody_has_to_ask_about(line: str, why: str) -> None:
    assert not perhaps_heading(line), why


@pytest.mark.parametrize("text", [
    "Xyra – red table\nTholm – blue table\nBrenu, green table", "Xyra → Rote Gruppe\nTholm → Rote Gruppe\nBrenu",
    "Xyra – ____\nTholm – ____ \nBrenu – ____",
    "Xyra – Rote Gruppe\nTholm – Blaue Gruppe\nBrenu – Grüne Gruppe", "Xyra\nMia – Blaue Gruppe\nBrenu",
])
def test_a_child_with_a_place_behind_it_is_no_heading(text: str) -> None:
    children = read_roster(text).children
    assert [child.practice for child in children] == [line.split()[0].strip(",") for line in text.splitlines()]


def test_a_group_with_its_names_below_is_a_heading() -> None:
    read = read_roster("Igel – Rote Gruppe\nTholm\nBrenu\n\nFuchs – Blaue Gruppe\nMia\nLars")
    assert [child.practice for child in read.children] == ["Tholm", "Brenu", "Mia", "Lars"]


@pytest.mark.parametrize("line", ["Klassenlehrerin: Frau Vogt", "Vorschullehrer: Herr Brae", "St. Anne's Primary",
                                  "Alder Lane Nursery"])
def test_a_teacher_and_a_school_below_given_names_are_no_child(line: str) -> None:
    names = ["Mira", "Tilo", "Oda", "Anna"]
    for text in ("\n".join([*names, "", line]), "\n".join([line, *names])):
        assert [child.practice for child in read_roster(text).children] == names


def test_a_class_with_a_figure_and_a_letter_is_never_a_child_of_one_letter() -> None:
    """``CE1 A`` below given names is asked about."""
    roster = read_roster("Mira\nTilo\nOda\nAnna\nCE1 A")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Oda", "Anna"]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("line", ["Olá,", "Olá!", "Olá Rita,", "Olá"])
def test_a_greeting_whose_marks_no_name_has_is_no_child(line: str) -> None:
    assert [child.practice for child in read_roster(f"{line}\nMira\nTilo\nAnna").children] == ["Mira", "Tilo", "Anna"]
    assert heading_reason("Ola Berntsen") is None
    assert heading_reason("Olá Rita Vost") is None


@pytest.mark.parametrize("line", ["Lunch: pizza", "Mittagessen - nudeln", "Goûter : pommes", "Merienda: fruta"])
def test_what_a_day_has_in_small_letters_behind_a_sign_is_asked_about(line: str) -> None:
    roster = read_roster(f"{line}\nMira\nTilo\nAnna")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna"]
    assert roster.lines[0].outcome is not Outcome.CHILD


@pytest.mark.parametrize("text", ["5 años A", "4-5 years", "5 years old", "3 ans", "5 Jahre", "4 anni B", "5 anos C"])
def test_an_age_alone_is_no_child(text: str) -> None:
    roster = read_roster(f"{text}\nMira Vost\nTilo Tarn")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo"]


@pytest.mark.parametrize("title", ["Red table", "Rote Gruppe", "Sunny room", "Table rouge", "Grupo azul"])
def test_a_table_named_twice_is_no_child(title: str) -> None:
    roster = read_roster(f"{title}\nMira Vost\nTilo Tarn\n{title}\nUna Elm\nBo Thal")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Una", "Bo"]


@pytest.mark.parametrize("name", ["Buddy", "Zak"])
def test_a_name_that_only_columns_are_called_by_is_a_child_with_figures(name: str) -> None:
    assert [child.practice for child in read_roster(f"{name} 5\nMia 5\nLeo 6").children] == [name, "Mia", "Leo"]


@pytest.mark.parametrize("text", [
    "Teachers: Mrs. Tarn, Mr. Vost", "Maestras: Sra. Tarn, Sra. Vost", "Adultes : Mme Tarn, M. Vost",
    "Xobrelen: Frau Tarn und Herr Vost", "Maestre: sig.ra Tarn, sig.ra Vost", "Educadoras: D. Tarn, D. Vost"])
def test_adults_behind_a_label_are_no_child(text: str) -> None:
    """Their title tells, be the word before them known or not; without titles a word for teachers does."""
    read = read_roster(f"Mira Vost\nTilo Tarn\nAnna Berg\n{text}")
    assert [child.practice for child in read.children] == ["Mira", "Tilo", "Anna"]


@pytest.mark.parametrize("text", ["Mira Vost, Sr.", "Table: Mira Vost, Tilo Tarn", "Mira: Frau Berg"])
def test_a_label_before_children_or_one_adult_heads_no_adults(text: str) -> None:
    assert not heads_adults(text)


def test_a_word_of_lists_behind_a_picture_is_a_child_as_all_others_are() -> None:
    assert [child.practice for child in read_roster("⭐ Line\n⭐ Mathilde Nilsson\n⭐ Sarah Bruun").children] == [
        "Line", "Mathilde", "Sarah"]


def test_an_age_behind_a_name_that_is_a_title_tells_a_child() -> None:
    """The Chilean number RUT is a title of columns, and Rut a child."""
    assert [child.practice for child in read_roster("Rut (4)\nMira (5)\nLeo (4)").children] == ["Rut", "Mira", "Leo"]


@pytest.mark.parametrize("text", ["☐ #☐ " * 12_000, "*5Tue☐ Leo VostName-" * 4_000])
def test_a_line_without_an_end_is_looked_at_once(text: str) -> None:
    """Signs one behind the other, or words that may be titles: it took over ten seconds."""
    start = time.process_time()
    read_roster(f"{text}\nMia Vost\nLeo Quill")
    assert time.process_time() - start < 6


@pytest.mark.parametrize("text", ["Viel Spaß!", "¡Suerte!", "Bon courage !", "Buon lavoro!", "Bom trabalho!",
                                  "Have fun!", "Suerte!"])
def test_a_cry_at_the_end_of_a_note_is_asked_about(text: str) -> None:
    assert perhaps_heading(text) is not None


@pytest.mark.parametrize("text", ["Mira!", "Xobrel!", "Mira Vost NEU!", "Xobrel Tarn NEW!", "Mira is new!", "Bo Kim!"])
def test_a_child_with_a_sign_behind_is_no_cry(text: str) -> None:
    """In a chat a name stands so, and that a child is new is said so, too."""
    assert perhaps_heading(text) is None


def test_rut_is_a_girl_with_a_small_number_behind_her() -> None:
    assert heading_reason("Rut #19") is None
    assert heading_reason("Rut 12.345.678") is not None


@pytest.mark.parametrize("before", ["", "Mia"])
def test_many_spaces_in_a_line_are_looked_at_once(before: str) -> None:
    """Twenty thousand took two seconds inside a line, and before it more than a minute."""
    start = time.process_time()
    assert heading_reason(f"{before}{' ' * 40_000}x!") is None
    assert time.process_time() - start < 1


@pytest.mark.parametrize("family", ["Criado", "Stand", "Quelle", "Creato"])
@pytest.mark.parametrize("between", [",", ", "])
def test_a_word_of_printers_is_a_family_name_with_another_behind_it(family: str, between: str) -> None:
    """The first child of a class was a line that a program prints: ``CRIADO ECHEVERRÍA,JOSEFA``."""
    names = ((f"{family.upper()} QUORNE", "ZYPHRA"), ("VOST TARN", "MIRA"), ("ELM WARD", "OTIS"))
    roster = read_roster("\n".join(f"0{at} {between.join(name)}" for at, name in enumerate(names, 1)))
    assert [child.practice for child in roster.children] == ["Zyphra", "Mira", "Otis"]


@pytest.mark.parametrize("title", ["Swimming Tuesday", "Schwimmen Dienstag", "Natación martes", "Piscine mardi"])
def test_a_word_nobody_knows_before_a_day_is_asked_about(title: str) -> None:
    """Swimming was a child of the family Tuesday, where groups stood below."""
    roster = read_roster(f"{title}\n\nGuppies 1:\nMira Vost\nLeo Tarn\nOtis Elm\nAda Quorne")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Otis", "Ada"]
    assert roster.lines[0].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("said", ["brother at school", "hermana en el colegio", "frère à l'école",
                                  "Bruder in der Schule", "sorella nella nostra scuola", "irmão na escola"])
def test_who_has_somebody_at_the_school_is_no_class(said: str) -> None:
    text = f"1. Vost, Mira – {said}\n2. Tarn, Tilo\n3. Xobrel, Vemka – {said}\n4. Rey, Anna"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Vemka", "Anna"]


@pytest.mark.parametrize("title", ["Friday Folders", "Chess Club", "Seat order", "1 b", "1A", "1.º A", "2.ª B",
                                   "Mesa 2", "Gruppe Blau", "La mia classe", "Les enfants", "As crianças"])
def test_what_stands_over_names_is_told(title: str) -> None:
    """It is nobody, and nothing is asked about it; the children below it are all there."""
    for names in ("Emma\nTheo\nLuz\nMina", "Emma Vost\nTheo Tarn\nLuz Brask"):
        roster = read_roster(f"{title}\n{names}")
        assert [child.practice for child in roster.children] == [name.split()[0] for name in names.splitlines()]
        assert roster.lines[0].outcome is Outcome.HEADING


@pytest.mark.parametrize("title", ["Violet Club", "Prima A", "Les métiers", "Secret Santa", "to print"])
def test_what_may_be_a_child_over_names_is_asked_about(title: str) -> None:
    roster = read_roster(f"{title}\nEmma\nTheo\nLuz\nMina\nIda")
    assert roster.lines[0].outcome is not Outcome.CHILD


@pytest.mark.parametrize("line", ["Xobrel T. = fish, costume from school", "Ava Elm = fish, costume from school",
                                  "Xobrel T. = ein Hund, Kleid aus der Schule"])
def test_what_a_child_with_an_initial_has_from_school_is_no_class(line: str) -> None:
    """The child was a heading, for the line ends in a place."""
    roster = read_roster(f"Mira V. = pirate\nOtis H. = witch\n{line}")
    assert [child.practice for child in roster.children] == ["Mira", "Otis", line.split()[0]]


@pytest.mark.parametrize("line", [
    "Panicz, Malwina = ???, costume from school", "Vost, Mira: Kostüm aus der Schule", "Xolen, Quorda: bruja, a clase",
    "Muratovic, Jules: pirate, costume from school"])
def test_what_a_child_by_its_family_first_has_from_school_is_no_class(line: str) -> None:
    roster = read_roster(f"Tarn, Otis: witch\n{line}\nBerg, Ava: ghost")
    assert [child.family for child in roster.children] == ["Tarn", line.split(",")[0], "Berg"]


@pytest.mark.parametrize("line", ["Room 4, Rose: our class", "Klasse 1, Rosa: Liste"])
def test_a_class_and_its_place_by_a_comma_is_one(line: str) -> None:
    assert heading_reason(line)


def test_a_day_of_something_is_asked_about_though_a_girl_has_that_name() -> None:
    for title in ("Día del deporte", "Dia do desporto – resultados", "Día de la paz"):
        made = [child.practice for child in read_roster(f"{title}\nMia Vost\nLeo Zell\nAva Quin").children]
        assert made == ["Mia", "Leo", "Ava"]
    made = [child.practice for child in read_roster("Dia da Silva\nMia Vost\nLeo Zell").children]
    assert made == ["Dia", "Mia", "Leo"]


@pytest.mark.parametrize("line", ["Art Room = our school", "Rose Table = by the window", "Violet Group: near the door"])
def test_a_place_called_as_a_child_is_none_when_it_is_told_what_it_is(line: str) -> None:
    assert [child.practice for child in read_roster(f"{line}\nMia Kell\nLeo Berg\nAnna Fuchs").children] == [
        "Mia", "Leo", "Anna"]


def test_a_whole_name_that_is_told_of_is_a_child() -> None:
    assert [child.practice for child in read_roster("Art Fuchs = fish\nMia Kell = sun\nLeo Berg = moon").children] == [
        "Art", "Mia", "Leo"]


@pytest.mark.parametrize("line", ["Valentine names", "Christian names", "Namen Valentin", "Prénoms Valentin", "K-Vale"])
def test_a_title_that_opens_or_ends_as_a_name_is_asked_about(line: str) -> None:
    report = read_roster(f"{line}\nMia\nLeo\nAnna").lines[0]
    assert (report.outcome, [note.key for note in report.notes]) == (Outcome.LEFT_OUT, ["roster.perhaps_heading"])


@pytest.mark.parametrize("line", ["J-Marie", "Nomi Kell", "Valentine Names"])
def test_a_name_beside_such_titles_is_a_child(line: str) -> None:
    assert read_roster(f"{line}\nMia\nLeo\nAnna").lines[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("line", ["Religión", "Valores", "Ethik", "Ethics", "Religione", "Religião"])
def test_a_lesson_over_names_is_no_child(line: str) -> None:
    for names in ("Mia\nLeo", "Mia Kell\nLeo Berg\nAnna Fuchs"):
        assert read_roster(f"{line}\n{names}").lines[0].outcome is Outcome.HEADING


@pytest.mark.parametrize("line", [
    "Prof.ª Marta", "Profª Marta Lima", "Prof.ª Marta Lima - 1.º A", "Sr.ª Marta Lima", "Dr.ª Ana Lima", "Sala verde",
    "Aula azul"])
def test_a_teacher_with_a_raised_letter_and_a_room_by_its_colour_are_no_children(line: str) -> None:
    for names in (["Ana", "Rui"], ["Cruz, Mia", "Lima, Rui", "Sousa, Ana"]):
        roster = read_roster("\n".join((line, *names)))
        assert [child.line for child in roster.children] == list(range(2, len(names) + 2))


@pytest.mark.parametrize("line", ["Chère collègue,", "Caro collega,", "Liebe kollegin,", "Cara colega!"])
def test_a_greeting_with_a_small_word_is_no_child(line: str) -> None:
    roster = read_roster(f"{line}\nCi-dessous la liste :\nLuc Roux\nMia Petit")
    assert [child.practice for child in roster.children] == ["Luc", "Mia"]


def test_who_signs_below_kisses_is_no_child() -> None:
    assert [child.practice for child in read_roster("- Róza Szabó\n- Mira Vost\n- Leo Tarn\n\nxx\nKaren").children] == [
        "Róza", "Mira", "Leo"]


@pytest.mark.parametrize("text", ["Class average: 92,4 %", "Media de la clase: 95.5 %", "Moyenne de la classe : 91.2 %",
                                  "Durchschnitt: 87,6 %", "Media della classe: 90 %", "Média da turma: 93,1 %"])
def test_a_mean_with_its_figure_is_a_heading(text: str) -> None:
    reason = heading_reason(text)
    assert reason is not None
    assert reason.key == "roster.heading_count"
    assert heading_reason("Mia Vost: 92,4 %") is None


@pytest.mark.parametrize("line", ["Total present: 4 3", "Total présents : 24", "Totale presenti: 12",
                                  "Total de presentes: 12", "Gesamt anwesend: 9", "Total absent 2"])
def test_a_total_of_who_came_is_no_child(line: str) -> None:
    roster = read_roster(f"Mira Vost\nLeo Tarn\n{line}")
    assert [child.practice for child in roster.children] == ["Mira", "Leo"]
    assert roster.lines[-1].outcome is Outcome.HEADING


@pytest.mark.parametrize("name", ["Totál B.", "Totál B.*", "Sumé R."])
def test_a_name_with_marks_that_no_total_has_is_a_child_before_an_initial(name: str) -> None:
    roster = read_roster(f"CAR LINE\nRoshym K.*\nManyai G.\n{name}\nDensei F.")
    assert [child.practice for child in roster.children] == ["Roshym", "Manyai", name.split()[0], "Densei"]
    assert heading_reason("Total B.") is not None


@pytest.mark.parametrize("line", ["Irma: guardanapos", "Irma: nounou Gertrude", "4. Irma: pão"])
def test_a_child_called_nearly_as_a_sister_labels_nothing(line: str) -> None:
    assert heading_reason(line) is None
    assert heading_reason("Irmã: Leo") is not None


def test_an_initial_before_a_school_is_of_a_child() -> None:
    assert heading_reason("Thuthukile N. – Oak Hill Primary") is None
    assert heading_reason("Klasse B – Oak Hill School") is not None
