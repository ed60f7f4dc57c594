"""A line that is unlike all others is no child without somebody's word, and is told."""

from __future__ import annotations

import time
from collections.abc import Sequence

import pytest

from namewright.roster.children import LineReport, Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.unlike import is_closing, unlike_lines

NAMES = ("Mira Vost", "Xobrel Tarn", "Oda Quill", "Vemka Elm", "Una Fen", "Tilo Marsh")


def fate(line: str, *more: str) -> tuple[Outcome, list[str]]:
    """Return what becomes of a line among six names, and the keys of its notes."""
    report = read_roster("\n".join((*NAMES[:3], line, *more, *NAMES[3:]))).lines[3]
    return report.outcome, [note.key for note in report.notes]


@pytest.mark.parametrize("line", ["Keppra", "no pork", "Oma holt ab", "   Ventolin", "\tRollator", "piqûres d'abeille",
                                  "Will needs a walker"])
def test_a_remark_on_a_line_of_its_own_is_asked_about(line: str) -> None:
    outcome, notes = fate(line)
    assert outcome is Outcome.LEFT_OUT
    assert notes in (["roster.unlike"], ["roster.remark", "roster.if_child"])


@pytest.mark.parametrize("line", ["Mia", "mia chen",
                                  "Xobrelia da Silva", "Name: Keppra", "Nom : Keppra", "O'Xobrel Ana",
                                  "Xobrel vom Vemka", "Xobrel Vemka 4 yrs", "Xobrel Vemka – no pork"])
def test_a_rare_name_in_a_names_place_is_a_child(line: str) -> None:
    assert fate(line)[0] is Outcome.CHILD


@pytest.mark.parametrize("head", ["Die Igel", "Les Papillons", "Sala Rosa", "Marienkäfer", "Busy Bumblebees"])
def test_what_stands_over_known_names_and_is_none_is_asked_about(head: str) -> None:
    """Over each block of a list; who is called so is a child by one answer."""
    text = f"{head}\nMira\nLeo\nAna\nBen\n\nSchildkröten\nTom\nClara"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ana", "Ben", "Tom", "Clara"]
    assert [note.key for note in read_roster(text).lines[0].notes] == ["roster.unlike"]
    assert len(read_roster(text.replace(head, f"Name: {head}")).children) == 7


@pytest.mark.parametrize("first", ["Aarvi Xobrelsen", "Xobrel Moss", "1. Xobrel Vemka"])
def test_a_rare_name_at_the_head_of_a_list_is_a_child(first: str) -> None:
    """In its place of the alphabet, half known, or numbered."""
    assert read_roster(f"{first}\nAna Vidal\nKatie Moss\nLeo Marsh\nMia Reed").children[0].line == 1


def test_a_label_in_place_of_a_whole_name_is_asked_about() -> None:
    assert fate("Dienste: mittags um elf")[0] is Outcome.LEFT_OUT
    assert fate("Xobrel Vemka: needs a cushion")[0] is Outcome.CHILD


def test_what_stands_again_and_again_is_no_child() -> None:
    text = "\n".join(f"{name}\nLast here today" for name in NAMES)
    roster = read_roster(text)
    assert [child.given for child in roster.children] == ["Mira", "Xobrel", "Oda", "Vemka", "Una", "Tilo"]
    assert {report.outcome for report in roster.lines[1::2]} == {Outcome.HEADING}


def test_two_children_of_one_name_stay_two() -> None:
    assert len(read_roster("Mira\nXobrel\nMira\nBo\nUna\nJo\nAl").children) == 7


@pytest.mark.parametrize("end", ["Thanks,\nMrs. Vale\nK-2, Maple Room", "Viele Grüße\nFrau Talberg",
                                 "¡Muchas gracias!\nRosa", "Thanks so much! Ms Quill", "Thanks, Mrs Vale",
                                 "Grazie mille\nLena", "Grazie ed Un Saluto\nLena", "Best,\nKim"])
def test_who_signs_a_letter_is_no_child(end: str) -> None:
    roster = read_roster("\n".join(NAMES) + "\n\n" + end)
    assert len(roster.children) == len(NAMES)
    assert all(report.outcome is Outcome.HEADING and report.notes for report in roster.lines[7:] if report.text)


@pytest.mark.parametrize("end", [
    "Thank you!", "Thanks,", "Vielen Dank!", "Merci !", "¡Gracias!", "Saluti,", "Obrigada!"])
@pytest.mark.parametrize("below", [("Ben Quill",), ("Ben Quill", "Leo Moss"), ("Rosa", "Leo Moss")])
def test_whole_names_below_thanks_may_be_children_and_are_asked_about(end: str, below: tuple[str, ...]) -> None:
    roster = read_roster("\n".join((*NAMES, end, *below)))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in NAMES]
    fates = {line.text: line.outcome for line in roster.lines}
    assert all(fates[name] is (Outcome.LEFT_OUT if " " in name else Outcome.HEADING) for name in below)


def test_given_names_below_thanks_are_asked_about_where_all_are_so() -> None:
    roster = read_roster("Mira\nTilo\nAnna\nThank you!\nBen")
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("heads", [
    ("HIGH", "MIDDLE", "LOW"), ("ALTO", "MEDIO", "BAJO"), ("FORTS", "MOYENS", "FAIBLES")])
def test_words_in_capitals_over_given_names_are_asked_about(heads: tuple[str, ...]) -> None:
    groups = ("Mira\nTilo", "Anna\nBen", "Leo\nZoe")
    text = "\n".join(f"{head}\n{group}" for head, group in zip(heads, groups, strict=True))
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna", "Ben", "Leo", "Zoe"]
    assert len(read_roster("\n".join((*groups, "MIA", "Uma"))).children) == len(NAMES) + 2


@pytest.mark.parametrize("line", ["Best Adeyemi", "Love", "Gracia Vost", "Regardsen Vost"])
def test_a_name_like_a_closing_is_a_child(line: str) -> None:
    assert not is_closing(line)
    assert fate(line)[0] is Outcome.CHILD


@pytest.mark.parametrize("name", ["Love, Kirk", "Best, Otta"])
def test_a_family_name_like_a_closing_is_a_child_where_families_stand_first(name: str) -> None:
    """Neither that child nor those below are taken for a signature; in a list without commas it ends a letter."""
    names = ("Moss, Katie", "Vost, Mirel", "Finch, Bo", name, "Reed, Ava")
    found = read_roster("\n".join(names)).children
    assert [child.family for child in found] == [one.partition(",")[0] for one in names]
    closed = read_roster("\n".join((*NAMES, "Best, Mrs Quill")))
    assert len(closed.children) == len(NAMES)


def test_more_than_a_signature_below_a_closing_is_read() -> None:
    assert len(read_roster("\n".join((*NAMES, "Thanks!", *(f"{name}son" for name in NAMES)))).children) == 12


def test_a_legend_is_no_child() -> None:
    roster = read_roster("Mira Vost *\nXobrel Tarn\nOda Quill *\n\n* neu")
    assert len(roster.children) == 3
    assert roster.lines[-1].outcome is Outcome.HEADING


def test_a_list_of_bullets_has_no_legend() -> None:
    assert len(read_roster("* Mira\n* Bo\n* Una\n* Jo *").children) == 4


def test_few_lines_tell_nothing() -> None:
    assert not unlike_lines(["Mira Vost", "Keppra", "Oda Quill"])


@pytest.mark.parametrize(("text", "line", "why"), [
    ("Mira Vost\nTilo Tarn\nAnna Rey\nBen Quill\n\nGracias\nRosa", 7, "closing"),
    ("Mira Vost *\nXobrel Tarn\nOda Quill *\n\n* neu", 5, "sign"),
    ("7:12 Church\nXobrel\nTarnul\nMia\n\n7:21 Plaza\nLeo\nOdelo", 1, "stop"),
    ("3 anni\nXobrel\nTarnul\nMia\n4 anni\nLeo\nOdelo", 1, "over"),
    ("BLAU\nMira Vost\nTilo Tarn\n\nGRÜN\nAnna Rey\nBen Quill", 5, "over"),
    ("Kuchenplan\nApril\nMira 3\nTilo 9\nMay\nAnna 2\nJune\nBen 7\nJuly\nOda 1", 1, "title"),
    ("Mira Vost\nTilo Tarn\nAnna Rey\nBen Quill\nTallas: 3 x S, 5 x M", 5, "count"),
])
def test_why_a_line_is_no_child_is_said_as_it_is(text: str, line: int, why: str) -> None:
    """A stop or a head of a group is no remark for the teacher, nor made of words of headings alone."""
    report = read_roster(text).lines[line - 1]
    assert report.outcome is Outcome.HEADING
    assert report.notes[0].key == f"roster.heading_{why}"


FAREWELLS = ["All the best,", "With thanks,", "Talk soon,", "With love and light,", "Bien à toi,", "Alles Liebe",
             "Un caro saluto", "Abraços", "Hugs", "Un beso", "Até logo,", "Bis bald"]


@pytest.mark.parametrize("end", FAREWELLS)
def test_who_signs_below_other_farewells_is_no_child(end: str) -> None:
    """Below whole names and below given names."""
    for names in (["Mira Vost", "Tilo Brae", "Anna Reed", "Ben Pell"], ["Mira", "Tilo", "Anna", "Ben"]):
        text = "\n".join([*names, "", end, "Karen", "Karen Hobb"])
        assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna", "Ben"]


def test_a_long_signature_is_asked_about() -> None:
    """The first name below the closing is who signs; nobody else is made or left out in silence."""
    names = [f"{one} Vost" for one in ("Mira", "Tilo", "Anna", "Ben", "Clara", "Ivo", "Oda", "Leo", "Ada", "Ida")]
    below = ["Karen", "Karen Hobb", "School Office", "Alder Lane", "Tel. 555 0123"]
    roster = read_roster("\n".join([*names, "", "All the best,", *below]))
    assert len(roster.children) == len(names)
    assert roster.lines[len(names) + 3].outcome is Outcome.LEFT_OUT
    assert roster.lines[-1].outcome is Outcome.HEADING


def test_a_remark_that_ends_in_a_comma_ends_no_letter() -> None:
    names = "Mira Vost\nTilo Brae\n\nXobrel likes trucks,\nAnna Reed\nBen Pell\nClara Quill\nIvo Grell"
    assert [child.practice for child in read_roster(names).children][-4:] == ["Anna", "Ben", "Clara", "Ivo"]


MAILS = ["From: Karen Hobb\nSent: Monday, 4 September\nTo: Rosa Quint\nCc: Bea Lind\nSubject: list",
         "De : Claire Petit\nÀ : Rosa Quint\nObjet : liste", "Von: Petra Vogt\nAn: Rosa Quint\nBetreff: Liste",
         "Da: Elena Riva\nA: Rosa Quint\nOggetto: elenco", "De: Pilar Sanz\nPara: Rosa Quint\nAsunto: lista"]


@pytest.mark.parametrize("head", MAILS)
def test_whom_a_message_goes_to_is_no_question(head: str) -> None:
    roster = read_roster(f"{head}\n\nMira Vost\nTilo Brae\nAnna Reed\nBen Pell")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna", "Ben"]
    assert all(line.outcome is not Outcome.LEFT_OUT for line in roster.lines)


def test_a_name_behind_to_with_no_message_about_it_is_asked_about() -> None:
    roster = read_roster("To: Rosa Quint\nMira Vost\nTilo Brae\nAnna Reed\nBen Pell")
    assert roster.lines[0].outcome is Outcome.LEFT_OUT


def test_two_dozen_names_in_a_sentence_are_no_reason_to_read_the_rest_of_a_letter() -> None:
    names = ", ".join(f"Xobrelumik{char}" for char in "abcdefghijklmnopqrst")
    with pytest.raises(RosterError):
        read_roster(f"Hi! My class this year: {names}.\nCould I have the cards by Monday please? Thank you!!\n"
                    "Wilma, Room 3")


@pytest.mark.parametrize("head", ["In macchina", "In carrozzina", "Con amici", "Per mano", "Im auto", "Em casa"])
def test_a_way_home_that_opens_as_a_name_is_no_child(head: str) -> None:
    roster = read_roster(f"Mira Vost\nTilo Brae\n\n{head}\nAnna Reed\nBen Pell\nIda Thal")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna", "Ben", "Ida"]


def test_a_child_called_so_stays() -> None:
    roster = read_roster("Mira Vost\nTilo Brae\nIn Park\nCon Reed\nPer Thal")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "In", "Con", "Per"]


@pytest.mark.parametrize("below", ["", "\n\n> On Aug 22, Vole wrote:\n> Hi Denise, where is my list?\n> Thanks, Vole",
                                   "\n\nAm 22. August schrieb Vole:\n> Guten Tag, wo bleibt die Liste?\n> Vielen Dank"])
@pytest.mark.parametrize("closing", ["Best,", "Viele Grüße", "Saludos,", "Cordialement,"])
def test_who_signed_above_a_quoted_mail_is_no_child_in_silence(closing: str, below: str) -> None:
    roster = read_roster("\n".join((*NAMES, "", closing, "Denise Harker", f"School Secretary{below}")))
    assert len(roster.children) == len(NAMES)
    signed = next(report for report in roster.lines if "Denise Harker" in report.text)
    assert signed.outcome is Outcome.LEFT_OUT


def test_many_senders_one_below_another_are_looked_at_once() -> None:
    """Each looked anew at all of its neighbours: the time grew by the fourth power, and so many took seconds."""
    heads = [f"{label}: Mira Vost" for label in ("From", "To", "Cc") for _ in range(50)]
    start = time.process_time()
    assert {at for at, _ in enumerate(heads, len(NAMES))} <= unlike_lines([*NAMES, *heads]).keys()
    assert time.process_time() - start < 1


@pytest.mark.parametrize("line", ["Hilfskraft: Herr Vost", "Cuidadora: Sra. Vost", "Runner: Ms. Vost",
                                  "Tata: maestra Vost", "Assistante : Mme Vost", "Monitora - Sra. Vost"])
def test_one_word_before_an_adult_is_no_child(line: str) -> None:
    """Asked about where it stands alone; a known name, or one such line after another, may be children."""
    children = "Xobrel\nVemka\nTunzo\nQuilba"
    for text in (f"{line}\n\n{children}", f"{children}\n{line}"):
        assert [child.practice for child in read_roster(text).children] == children.split(), text
    known = f"{children}\nMira: Frau Vost"
    assert [child.practice for child in read_roster(known).children][-1] == "Mira"


@pytest.mark.parametrize("months", ["September|October", "Abril|Mayo", "März|April", "Aprile|Maggio", "Avril|Mai"])
def test_a_month_over_birthdays_in_columns_is_no_child(months: str) -> None:
    one, two = months.split("|")
    text = f"{one}\n8  Mira Vost\n22  Tilo Tarn\n26  Anna Rey\n{two}\n25  Emil Koch"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna", "Emil"]


@pytest.mark.parametrize("title", ["Open House, 9/19", "Sommerfest, 12.9.", "Kermesse, 4/6"])
def test_what_stands_over_names_with_a_day_behind_a_comma_is_no_child(title: str) -> None:
    roster = read_roster(f"{title}\nMia Lange\nTheo Brandt\nLena Weiss")
    assert [child.practice for child in roster.children] == ["Mia", "Theo", "Lena"]


@pytest.mark.parametrize("text", [
    "Lundi\nMia\nLéo\nAnna", "Lundi\n\nMia absente\nZoé\nLéo", "Lundi\nMia\nLéo\n\nMardi\nAnna\nHugo",
    "Domenica\nLuca\nAnna\nSara",
])
def test_a_day_over_names_that_is_a_name_too_is_asked_about(text: str) -> None:
    report = read_roster(text).lines[0]
    assert (report.outcome, [note.key for note in report.notes]) == (Outcome.LEFT_OUT, ["roster.perhaps_heading"])


@pytest.mark.parametrize("name", ["Sol", "Dom", "Mar", "Sam"])
def test_a_short_name_over_others_is_no_day(name: str) -> None:
    assert [child.practice for child in read_roster(f"{name}\nMia\nLéo\nAnna").children] == [name, "Mia", "Léo", "Anna"]


@pytest.mark.parametrize("line", ["Make-ups", "Sign-ups", "Porte-manteaux", "Check-ins"])
def test_two_words_about_a_hyphen_over_names_are_asked_about(line: str) -> None:
    for names in ("Mia\nLeo\nAnna", "Mia Kell\nLeo Berg"):
        assert read_roster(f"{line}\n{names}").lines[0].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("text", ["Jean-marc\nMia\nLeo", "Al-amin\nMia\nLeo", "Mia\nXo-brel\nLeo", "Xo-Brel\nMia\nLeo"])
def test_a_name_about_a_hyphen_is_a_child(text: str) -> None:
    assert len(read_roster(text).children) == 3


@pytest.mark.parametrize("title", ["Kuchenbasar", "Garderobenschilder", "Fahrgemeinschaften Ausflug", "Credenziali"])
@pytest.mark.parametrize("names", [
    "Mia\nLeo\nAva", "Mia, Leo, Ava and Ben", "Xobrel, Vemka, Tulmo und Nyai", "Mia Vost\nLeo Tarn",
    "- Mia\n- Leo", "Frau Vale (5 Plätze) -> Mia, Leo, Ava"])
def test_what_stands_apart_on_top_is_asked_about(title: str, names: str) -> None:
    """An empty line parts it from all others: it was made a child, and without that line it was asked about."""
    lines = _lines(f"{title}\n\n{names}")
    assert lines[0].outcome in (Outcome.LEFT_OUT, Outcome.HEADING)


def _lines(text: str) -> Sequence[LineReport]:
    """Return what became of the lines, of a list without a child, too."""
    try:
        return read_roster(text).lines
    except RosterError as error:
        return error.lines


@pytest.mark.parametrize("text", [
    "Mia\n\nLeo\nAva", "Xobrel\n\nVemka\n\nTulmo", "Xobrel\n\nVemka", "1. Xobrel\n\n2. Vemka\n3. Tulmo",
    "Tarn, Xobrel\n\nQuill, Vemka\nBerg, Tulmo", "Xobrel Vost\n\nVemka Tarn\nTulmo Berg"])
def test_a_child_on_top_of_an_empty_line_stays_one(text: str) -> None:
    assert read_roster(text).lines[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("aside", ["(gemelos)", "(twins)", "(Zwillinge)", "(jumeaux)", "(gemelli)", "(gémeos)"])
def test_a_child_that_is_called_as_letters_end_may_have_a_bracket(aside: str) -> None:
    assert not is_closing(f"Love {aside}")
    assert is_closing("Love, Mrs Vale (Room 4)")
    roster = read_roster(f"14:10 Monika\n14:50 Viveka\n15:00 Kristoffer & Love {aside}\n15:10 Gert")
    assert [child.practice for child in roster.children] == ["Monika", "Viveka", "Kristoffer", "Love", "Gert"]


def test_a_family_called_as_letters_end_stands_in_groups_of_families() -> None:
    """With two headings a group a third of the lines were no pairs, and the child was lost."""
    text = ("Ms. Kidd's kids\nRitter, Aimee\nBest, Haley\nHernandez, Destiny\n3 kids\n\nMr. Gates's kids\n"
            "Giles, Tracey\nBeasley, Shawn\n2 kids")
    assert [child.practice for child in read_roster(text).children] == ["Aimee", "Haley", "Destiny", "Tracey", "Shawn"]


@pytest.mark.parametrize("day", ["Lundi", "Lunes", "Montag", "Monday", "Lunedì", "Segunda"])
@pytest.mark.parametrize("bullet", ["□", "●", "-", "✓"])
def test_a_day_without_a_bullet_is_asked_about_over_lines_with_one(day: str, bullet: str) -> None:
    """Behind an empty line it was a child as they are."""
    names = ("Tami", "Samuel", "Karla", "Phyllis")
    roster = read_roster(f"Modifié hier, 21:14\n\n{day}\n" + "\n".join(f"{bullet} {name}" for name in names))
    assert [child.practice for child in roster.children] == [*names]
    assert len(read_roster(f"{bullet} {day}\n{bullet} Mia\n{bullet} Leo").children) >= 2


def test_a_line_that_opens_a_block_as_headings_do_is_asked_about() -> None:
    text = "Bus 4\nAimyas K.\n\nBus 12 (blue)\nDihom T.\n\nWalkers\nBress L.\n\nAfter-care\nRouk L."
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Aimyas", "Dihom", "Bress", "Rouk"]
    assert len(read_roster(text.replace("After-care", "Mia")).children) == 5


@pytest.mark.parametrize("title", ["Custodia", "Carnevale", "Garda"])
def test_a_title_in_latin_letters_over_names_in_others_is_asked_about(title: str) -> None:
    """It is a name, too; but nobody of the class is written so."""
    roster = read_roster(f"{title}\n\nХарбингър Четрафилски\nНеделчо Мустакова\nРанчо Куртакова")
    assert [child.practice for child in roster.children] == ["Харбингър", "Неделчо", "Ранчо"]


@pytest.mark.parametrize("sign", [" – ", ": "])
def test_a_familys_name_apart_over_names_with_remarks_is_asked_about(sign: str) -> None:
    names = ("Mlungisi", "Nobuhle", "Sphiwe", "Gugu", "Nomvula")
    text = "Carnevale\n\n" + "\n".join(f"{name}{sign}{what}" for name, what in zip(
        names, ("???", "strega", "farfalla", "tigre", "???"), strict=True))
    assert [child.practice for child in read_roster(text).children] == [*names]
