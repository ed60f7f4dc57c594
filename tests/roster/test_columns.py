"""Lines into cells and columns: the delimiter, quoted cells, headers, and columns judged by what they hold."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.children import Outcome, RosterError
from namewright.roster.columns import WIDE_SPACE, lay_out, split_cells
from namewright.roster.contents import is_sheet_sign
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role

FULL, GIVEN, FAMILY, OTHER = Role.FULL, Role.GIVEN, Role.FAMILY, Role.OTHER
TABLES = [  # lines, delimiter, header row, roles, why
    (["Mira Vost", "Tilo Brae"], "", None, (FULL,), "plain lines are free text"),
    (["Vost, Mira", "Brae, Tilo"], "", None, (FULL,), "one comma is a name turned round and no table"),
    (["Given\tFamily", "Mira\tVost"], "\t", 0, (GIVEN, FAMILY), "a header says what is what"),
    (["Alder class", "", "Given,Family", "Mira,Vost"], ",", 2, (GIVEN, FAMILY), "also further down"),
    (["Mira\tVost"], "\t", None, (GIVEN, FAMILY), "one tab makes a table; given names stand first"),
    (["Vost,Mira,K", "Brae,Tilo,K", "Marn,Oda,K"], ",", None, (FAMILY, GIVEN, OTHER), "family names first"),
    (["Mira,Vost,K", "Tilo,Brae,K", "Oda,Marn,K"], ",", None, (GIVEN, FAMILY, OTHER), "given names first, too"),
    (["Mira;Vost", "Tilo;Brae"], ";", None, (GIVEN, FAMILY), "semicolons"),
    (["Mira|Vost", "Tilo|Brae"], "|", None, (GIVEN, FAMILY), "upright lines"),
    (["Mira   Vost", "Tilo   Brae"], WIDE_SPACE, None, (GIVEN, FAMILY), "wide space"),
    (["VOST\tMira", "BRAE\tTilo"], "\t", None, (FAMILY, GIVEN), "capitals tell a family name"),
    (["van Vost\tMira", "de Brae\tTilo"], "\t", None, (FAMILY, GIVEN), "so do particles"),
    (["Vost\tMira (Mimi)", "Brae\tTilo"], "\t", None, (FAMILY, GIVEN), "a name to go by tells a given name"),
    (["1\tMira\tVost", "2\tTilo\tBrae"], "\t", None, (OTHER, GIVEN, FAMILY), "a column of numbers is none of names"),
    (["Mira\tL", "Tilo\tR"], "\t", None, (FULL, Role.HAND), "a column of hands is known by them"),
    (["Mira\tfull", "Tilo\tlight"], "\t", None, (FULL, Role.SUPPORT), "a column of levels of support, too"),
    (["Mira Vost\tOda Vost", "Tilo Brae\tKim Brae"], "\t", None, (FULL, OTHER), "two of one family"),
    (['"Vost, Mira",K', '"Brae, Tilo",K'], ",", None, (FULL, OTHER), "quoted cells make a table of two columns"),
    (["Mira, Tilo, Oda"], "", None, (FULL,), "several names in one line are no table"),
    (["Mira; Tilo; Oda"], "", None, (FULL,), "whatever parts them"),
]


@pytest.mark.parametrize(("lines", "delimiter", "header", "roles", "why"), TABLES, ids=[row[4] for row in TABLES])
def test_how_lines_are_laid_out(lines: list[str], delimiter: str, header: int | None, roles: tuple[Role, ...],
                                why: str) -> None:
    table = lay_out(lines)
    assert (table.delimiter, table.header, table.roles) == (delimiter, header, roles), why


CELLS = [
    ("a,b", ",", ["a", "b"], "plain"), (" a , b ", ",", ["a", "b"], "trimmed"),
    ("a,,b", ",", ["a", "", "b"], "an empty one"),
    ('"a,b",c', ",", ["a,b", "c"], "a quoted one holds its delimiter"),
    ('"a ""b""",c', ",", ['a "b"', "c"], "and quotation marks"),
    ('a "b",c', ",", ['a "b"', "c"], "a mark inside a cell is text"),
    ('"a"b,c', ",", ['"a"b', "c"], "as is one that closes early"),
    ("a  b   c", WIDE_SPACE, ["a", "b", "c"], "wide space"), ('"a,b', ",", None, "one that is not closed"),
    ("", ",", [""], "nothing"),
]


@pytest.mark.parametrize(("line", "delimiter", "cells", "why"), CELLS, ids=[row[3] for row in CELLS])
def test_a_line_is_cut(line: str, delimiter: str, cells: list[str] | None, why: str) -> None:
    assert split_cells(line, delimiter) == cells, why


@given(st.lists(st.text(st.sampled_from('ab ,;"é'), max_size=8).map(lambda text: " ".join(text.split())), min_size=1,
                max_size=5), st.sampled_from(",;\t"))
def test_what_python_writes_as_csv_is_read_back(cells: list[str], delimiter: str) -> None:
    """RFC 4180 as the standard library writes it: every cell comes back, quoted or not, whatever it holds."""
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter, lineterminator="", quoting=csv.QUOTE_ALL).writerow(cells)
    assert split_cells(out.getvalue(), delimiter) == [" ".join(cell.split()) for cell in cells]


def test_a_quoted_cell_may_run_over_lines() -> None:
    """Its row takes as many lines as the cell; where it never closes, its mark is only text."""
    rows = lay_out(["Given,Family", '"Mira', 'Oda",Vost', "Tilo,Brae"]).rows
    assert [(row.line, row.span, row.cells) for row in rows] == [
        (0, 1, ("Given", "Family")), (1, 2, ("Mira Oda", "Vost")), (3, 1, ("Tilo", "Brae"))]
    rows = lay_out(["Given,Family", '"Mira,Vost', "Tilo,Brae"]).rows
    assert [row.cells for row in rows] == [("Given", "Family"), ("Mira", "Vost"), ("Tilo", "Brae")]


@pytest.mark.parametrize(("above", "found"), [(0, 0), (9, 9), (10, None)])
def test_a_header_row_stands_among_the_first_ten(above: int, found: int | None) -> None:
    """Below so many other lines it is no header any more but a line like others."""
    table = lay_out([*["The Alder class"] * above, "Given\tFamily", "Mira\tVost"])
    assert table.header == found


@given(st.lists(st.text(st.sampled_from('Mira \t,;|"12'), max_size=14), max_size=8))
def test_every_line_is_in_one_row(lines: list[str]) -> None:
    """However lines are cut, the rows take them all, one after another."""
    at = 0
    for row in lay_out(lines).rows:
        assert row.line == at
        at += row.span
    assert at == len(lines)


@pytest.mark.parametrize(("cell", "sign"), [("#REF!", True), ("=A1", True), ("#N/A", True), ("Mira", False),
("#1", False)])
def test_a_formula_or_an_error_of_a_spreadsheet_is_known(cell: str, sign: bool) -> None:
    assert is_sheet_sign(cell) is sign


@pytest.mark.parametrize("sign", ["\t", ";", ",", " | "])
@pytest.mark.parametrize("titles", ["Boys Girls", "Niños Niñas", "Garçons Filles", "Jungen Mädchen", "Maschi Femmine",
                                    "Meninos Meninas", "Bambini Bambine", "Team_1 Team_2", "Rote_Gruppe Graue_Gruppe"])
@pytest.mark.parametrize("rows", ["Tilo Mira\nBen Anna\nIvo Oda",
                                  "Tilo_Brae Mira_Vost\nBen_Pell Anna_Reed\nIvo_Grell Oda_Marn"])
def test_columns_of_groups_hold_a_child_in_every_cell(sign: str, titles: str, rows: str) -> None:
    """Two given names side by side are never made into one child, nor those of the second column left out."""
    lines = [line.replace(" ", sign).replace("_", " ") for line in (titles, *rows.split("\n"))]
    assert [child.practice for child in read_roster("\n".join(lines)).children] == [
        "Tilo", "Mira", "Ben", "Anna", "Ivo", "Oda"]


def test_groups_over_marks_behind_names_are_no_columns_of_children() -> None:
    text = "\tGroup A\tGroup B\nMira Vost\tx\t\nTilo Brae\t\tx\nAnna Reed\tx\tx"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna"]


def test_two_cells_with_no_space_behind_any_comma_are_a_table() -> None:
    """As a program writes them: no question about two children for each."""
    pairs = [("Anna", "Reed"), ("Ben", "Marsh"), ("Priya", "Raman"), ("Lena", "Hoffmann"), ("Yuki", "Tanaka")]
    for lines in ([f"{one},{two}" for one, two in pairs], [f"{two},{one}" for one, two in pairs]):
        assert [child.practice for child in read_roster("\n".join(lines)).children] == [one for one, _ in pairs]


def test_family_names_by_comma_and_children_by_semicolon_in_one_line() -> None:
    line = "Reed, Anna; Marsh, Ben"
    for others in ("", "Priya\nLena\nYuki\n", "Priya Raman\nLena Hoffmann\nYuki Tanaka\n",
                   "Raman, Priya\nHoffmann, Lena\n"):
        assert [child.practice for child in read_roster(others + line).children][-2:] == ["Anna", "Ben"]


@pytest.mark.parametrize("titles", ["Kind\tXobrel", "Kind\tXobrel\tlinks", "Child;Odelo", "Schuler,Vemka,12.3.2019"])
def test_a_family_called_as_a_title_loses_no_child_where_names_are_unknown(titles: str) -> None:
    """All cells below are single unknown names, as those of a table without titles are; a real title stays one."""
    sign = next(sign for sign in "\t;," if sign in titles)
    rest = titles.split(sign)[2:]
    rows = [sign.join((*names, *rest)) for names in (("Vost", "Odrelo"), ("Tarn", "Ilvemka"), ("Yulk", "Fensa"))]
    assert _read_or_asked("\n".join((titles, *rows))) in (len(rows) + 1, "roster.two_readings")


def _read_or_asked(text: str) -> int | str:
    try:
        return len(read_roster(text).children)
    except RosterError as error:
        return error.message.key


@pytest.mark.parametrize("text", ["Kind\tTier\nMia\tHund\nLeo\tKatze\nNoah\tMaus",
                                  "Kind\tHaus\nXobrel\tRot\nVemka\tRot",
                                  "Kind\tEltern\nXobrel\tJo\nVemka\tAl", "Kind\tGröße\nXobrel\t128\nVemka\t122",
                                  "Kind\tTier\nXobrel Vost\tHund\nVemka Tarn\tMaus"])
def test_a_title_over_other_things_stays_one(text: str) -> None:
    assert read_roster(text).lines[0].outcome is Outcome.HEADER


@pytest.mark.parametrize("about", ["sunflower seeds", "Rollator", "Oma holt ab", "Bus 4", "alergia a nueces"])
@pytest.mark.parametrize("ends", [";", ";;"])
def test_a_column_that_is_mostly_empty_is_one(about: str, ends: str) -> None:
    """Its signs stand in every line."""
    names = ["Mira Vost", "Tilo Tarn", "Xobrel Menk", "Una Elm", "Zuthe Thal"]
    lines = [f"{name}{ends}" for name in names]
    lines[2] += about
    assert [child.given for child in read_roster("\n".join(lines)).children] == [name.split()[0] for name in names]


def test_few_names_for_a_remark_make_no_second_column_of_names() -> None:
    names = ["Paloma Benitez", "Simon Ledesma", "Uma Moyano", "Abril Aguirre", "Nina Suarez", "Julian Ayala"]
    about = ["", "la abuela recoge", "", "Oma holt ab", "", "pas de photos"]
    lines = [f"{name};{said}" for name, said in zip(names, about, strict=True)]
    assert [child.given for child in read_roster("\n".join(lines)).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("second", ["Bo", "Bo Rey", "Zuthe Menk", "Rey, Bo"])
def test_a_second_child_behind_a_semicolon_is_never_a_remark(second: str) -> None:
    lines = ["Mira Vost;", "Tilo Tarn;", f"Una Elm;{second}", "Xobrel Thal;"]
    roster = read_roster("\n".join(lines))
    given = "Bo" if "Bo" in second else "Zuthe"
    left = [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT]
    assert any(child.given == given for child in roster.children) or any(second in text for text in left)


def test_a_number_in_front_tells_that_a_row_is_no_title() -> None:
    """Žák is a pupil in Czech and a family's name."""
    text = "• 1 . Dominika  Bílková __\n| 2. Lýdie  Žák\nl3. Alžběta  Lišková\n4, Vítězslav Sedlák |\n_5, Matěj  Marek"
    assert [child.practice for child in read_roster(text).children] == [
        "Dominika", "Lýdie", "Alžběta", "Vítězslav", "Matěj"]


@pytest.mark.parametrize("behind", [
    " ...... 7,00 € fehlt 3,50 €", " = 16,00 € becado", " – 4,5 km", ": € 7,50 mancano € 3,50", " - 12,50 EUR, 3,5 kg"])
@pytest.mark.parametrize("names", [["Vost, Mira", "Tarn, Tilo", "Rey, Anna", "Elm, Leo"],
                                   ["Xobrelsen, Vemka", "Tunzoski, Quilba", "Plomberg, Gaskwan", "Wimström, Thoum"]])
def test_a_comma_within_a_sum_or_a_measure_parts_no_columns(names: list[str], behind: str) -> None:
    roster = read_roster("\n".join(name + behind for name in names))
    assert [child.practice for child in roster.children] == [name.split(", ")[1] for name in names]
    table = read_roster("\n".join(f"{name.replace(', ', ',')},7,5a" for name in names))
    assert [child.practice for child in table.children] == [name.split(", ")[1] for name in names]


@pytest.mark.parametrize("titles", ["Nome;Salto;Corrida;Bola", "Niño;Lun.;Mar.;Mié.", "Child;Sight;Sound;Blend",
                                    "Vorname;Hüpfen;Werfen;Rollen"])
def test_one_title_over_names_is_enough_over_figures(titles: str) -> None:
    rows = ["Mira;12;7;3", "Xobrel;9;8;4", "Leo;11;5;4", "Vemka;10;6;2", "Ida;8;8;3"]
    assert [child.practice for child in read_roster("\n".join([titles, *rows])).children] == [
        "Mira", "Xobrel", "Leo", "Vemka", "Ida"]


@pytest.mark.parametrize("behind", ["  99  18,2  25", "  104  7,5", "   18,25"])
def test_a_figure_with_a_comma_parts_no_columns_behind_names_nobody_knows(behind: str) -> None:
    """The family name was practised in silence."""
    names = ["Xobrel, Sahd", "Drasel, Pukin", "المغاولة, ظاعن", "Tarnow, Vemka", "Brunn, Zuki"]
    roster = read_roster("\n".join(name + behind for name in names))
    assert [child.practice for child in roster.children] == [name.split(", ")[1] for name in names]


@pytest.mark.parametrize("titles", ["Nome;Usuário;Senha", "Name;Username;Password", "Nome;Utente;Password",
                                    "Nome;Salto;Bola", "Nome;Utilizador;Palavra-passe", "Niño;Usuario;Clave"])
def test_titles_of_logins_are_known_below_what_stands_over_them(titles: str) -> None:
    rows = ["Xobrel Z.;xobrelz;sol gato 29", "Vemka K.;vemkak;lua 3", "Pukin D.;k804;flor 9", "Drasel T.;k33;mar 2"]
    roster = read_roster("\n".join(["Mi clase 2024/25", "", titles, *rows]))
    assert [child.practice for child in roster.children] == ["Xobrel", "Vemka", "Pukin", "Drasel"]
    assert roster.lines[2].outcome is Outcome.HEADER


@pytest.mark.parametrize("title", ["Nome", "Nombre", "Prénom", "Vorname", "First name", "Nome proprio"])
def test_a_title_of_given_names_over_both_by_comma_is_of_whole_ones(title: str) -> None:
    """No family name was ever known, and all of a cell was practised."""
    rows = ["Белозерова, Платон\tx\t-\t4", "Tarnow, Xobrel\tx\tx\t3", "Drasel, Pukin\t-\tx\t1", "Ruun, Vemka\tx\tx\t2"]
    roster = read_roster("\n".join([f"{title}\tS\tT\tTotal", *rows]))
    assert [child.practice for child in roster.children] == ["Платон", "Xobrel", "Pukin", "Vemka"]


@pytest.mark.parametrize("state", ["absent", "ausente", "absente", "fehlt", "assente", "nicht gemessen", "por medir"])
@pytest.mark.parametrize("sign", ["\t", ";", "   "])
def test_a_first_child_who_was_away_is_no_title(state: str, sign: str) -> None:
    rows = [("Xobrel Quix", state), ("Mira Vost", "104", "19,7", "27"), ("Vemka Drun", "110", "20,1", "28"),
            ("Leo Tarn", "109", "20,3", "26"), ("Ida Moss", "101", "18,3", "26")]
    roster = read_roster("\n".join(map(sign.join, rows)))
    assert [child.practice for child in roster.children][-4:] == ["Mira", "Vemka", "Leo", "Ida"]
    assert roster.lines[0].outcome in (Outcome.CHILD, Outcome.LEFT_OUT)


def test_figures_among_words_in_small_letters_make_no_column_of_names() -> None:
    told = ("VASPR 1/2; boletim em falta", "VASPR 2/2; em dia", "VASPR 1/2; DTPa 0/2; em dia")
    names = ("Xamim Vosthelian", "Berolt Zellumi", "Thouga Quinthar", "Quorrik Marnov", "Zandelle Tarnu", "Vexil Dolt")
    roster = read_roster("\n".join(f"{name}; {told[at % 3]}" for at, name in enumerate(names)))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("sign", ["\t", ";", "; ", " | ", ", "])
def test_a_mark_of_sameness_swallows_no_rows(sign: str) -> None:
    """A quotation mark alone in a cell opens nothing: it says that the cell is as the one above."""
    rows = [("Mira Vost", "Room 4", "bus 2"), ("Xobrel Quix", '"', '"'), ("Leo Tarn", '"', "car"),
            ("Ida Moss", '"', '"'), ("Noah Fenn", "Room 5", '"'), ("Ava Rey", '"', "on foot")]
    roster = read_roster("\n".join(map(sign.join, rows)))
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo", "Ida", "Noah", "Ava"]


def test_a_mark_that_is_never_closed_swallows_no_row() -> None:
    """What opens a second time was not closed: whoever stands there is a child."""
    roster = read_roster('Name;Note\nMira Vost;"left\nLeo Tarn;"right\nIda Moss;')
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]


def test_a_cell_may_begin_with_a_line_break() -> None:
    rows = lay_out(["Name;Note;Bus", 'Mira Vost;"', 'likes red";2', "Leo Tarn;;3"]).rows
    assert [row.cells for row in rows][1:] == [("Mira Vost", "likes red", "2"), ("Leo Tarn", "", "3")]


@pytest.mark.parametrize("sign", ["\t", ";", ","])
@pytest.mark.parametrize("titles", [(), ("Name", "Notes"), ("Timestamp", "Child's name", "Notes")])
@pytest.mark.parametrize("said", [
    "Wears glasses.\nPlease seat near the front.", "Bus 4\nAsk Grandma", "Line one\n\nLine three",
    "Mama: Jo\nPapa: Al"])
@pytest.mark.parametrize("names", [
    ("Mira Vost", "Tilo Berg", "Anna Tarn", "Noah Roth", "Ava Quill"),
    ("Xobrel Tarn", "Vemka Quill", "Tulmo Dravis", "Niftam Vost", "Jelbru Elm")])
def test_a_note_that_runs_over_lines_is_a_cell(sign: str, titles: tuple[str, ...], said: str,
                                               names: tuple[str, ...]) -> None:
    """As a sheet gives it when it is copied: whoever has such a note is a child, and so is everybody else."""
    rows = [(f"9/{at}/2025 8:04:31",) * (len(titles) > 2) + (name, f'"{said}"' if at in (1, 2, 4) else "")
            for at, name in enumerate(names)]
    roster = read_roster("\n".join(sign.join(row) for row in (*([titles] if titles else []), *rows)))
    assert [f"{child.given} {child.family}" for child in roster.children] == list(names)


@pytest.mark.parametrize("titles", ["Prénom\tNom de l'élève", "Prénom\tNom de l'enfant", "Vorname\tName des Kindes"])
@pytest.mark.parametrize("rows", ["Falke\tPrado\nGioia\tPage\nLuc\tRoux", "Xolbul\tDrethan\nNaril\tKwosen"])
def test_a_name_of_the_child_beside_its_given_one_is_its_family(titles: str, rows: str) -> None:
    wanted = [row.split("\t")[0] for row in rows.splitlines()]
    roster = read_roster(f"{titles}\n{rows}")
    assert [child.practice for child in roster.children] == wanted
    assert [child.family for child in roster.children] == [row.split("\t")[1] for row in rows.splitlines()]


@pytest.mark.parametrize("rows", [
    "Sophie\tLéo\nPierre\tMia\nAnne\tLuc", "Falke\tFalke Prado\nGioia\tGioia Page\nLuc\tLuc Roux"])
def test_a_name_of_the_child_stays_one_where_it_is_or_holds_the_given_one(rows: str) -> None:
    roster = read_roster(f"Prénom\tNom de l'enfant\n{rows}")
    assert [child.practice for child in roster.children] == [
        row.split("\t")[1].split()[0] for row in rows.splitlines()]


@pytest.mark.parametrize("group", [
    ("Niños", "Niñas"), ("Bambini", "Bambine"), ("Boys", "Girls"), ("Filles", "Garçons")])
@pytest.mark.parametrize("sign", ["\t", ", ", ";"])
def test_the_group_of_a_child_in_the_first_row_is_no_title(group: tuple[str, str], sign: str) -> None:
    names = ["Ana Gil", "Leo Paz", "Eva Mora", "Pablo Rey", "Luis Sanz"]
    text = "\n".join(f"{name}{sign}{group[at % 2]}" for at, name in enumerate(names))
    assert [child.practice for child in read_roster(text).children] == ["Ana", "Leo", "Eva", "Pablo", "Luis"]


@pytest.mark.parametrize("text", [
    "Tarn, Mira – bus\nVost, Leo – late\nNiño, Ada – new\nLind, Bo – bus\nBerg, Ida",
    "Tarn, Mira (bus)\nKind, Leo (spät)\nKind, Ada (neu)\nLind, Bo (Bus)\nBerg, Ida",
    "My Linde\tMarta Tarn (Mutter)\nMira Vost\tHanno Lind (Mutter)\nAda Berg\tIlse Vost (Mutter)"])
def test_a_row_with_the_same_sign_as_the_others_has_no_titles(text: str) -> None:
    assert len(read_roster(text).children) == len(text.splitlines())


def test_titles_of_italian_and_portuguese_pupils_are_known_below_the_class() -> None:
    for title, other in (("Studente", "Sezione"), ("Estudante", "Turma"), ("Élève", "Cantine")):
        roster = read_roster(f"Classe prima\n{title}\t{other}\nLuzi, Stefania\t2\nManacorda, Franco\t6")
        assert [child.practice for child in roster.children] == ["Stefania", "Franco"]


def test_a_tab_among_wide_gaps_is_no_cell() -> None:
    rows = ["Xobrel Tarn   \t   F    08/12/2020", *(f"{name}      M    07/12/2020" for name in (
        "Vemka Quill", "Tulmo Dravis", "Niftam Vost"))]
    assert [child.practice for child in read_roster("\n".join(rows)).children] == ["Xobrel", "Vemka", "Tulmo", "Niftam"]


@pytest.mark.parametrize(("titles", "family_first"), [
    ("Nombre del niño/a\tApellidos\tMadre", False), ("Child's name\tLast name\tAge", False),
    ("Nachname\tName des Kindes\tAlter", True)])
def test_family_names_beside_the_childs_single_names_are_its_own(titles: str, family_first: bool) -> None:
    names = [("Mira", "Vost"), ("Xobrel", "Tarn"), ("Leo", "Brae")]
    rows = ["\t".join((*(reversed(name) if family_first else name), "x")) for name in names]
    roster = read_roster("\n".join((titles, *rows)))
    assert [(child.practice, child.family) for child in roster.children] == names


def test_family_names_beside_the_childs_whole_names_are_a_grown_ups() -> None:
    roster = read_roster("Nombre del niño\tApellidos\tTel.\nMira Vost\tBrae\t6\nLeo Tarn\tQuix\t7")
    assert [(child.practice, child.family) for child in roster.children] == [("Mira", "Vost"), ("Leo", "Tarn")]


@pytest.mark.parametrize("titles", ["Nr.\tZuname\tTaufname\tOrt", "No.\tSurname\tEveryday\tTown"])
def test_given_names_under_a_title_nobody_knows_are_practised(titles: str) -> None:
    rows = ["1\tVost\tMira\tElm", "2\tTarn\tXobrel\tElm", "3\tBrae\tLeo\tAsh", "4\tQuix\tIda\tElm"]
    roster = read_roster("\n".join((titles, *rows)))
    assert [(child.practice, child.family) for child in roster.children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Leo", "Brae"), ("Ida", "Quix")]


def test_a_teacher_beside_family_names_is_no_given_name() -> None:
    rows = ["Vost\tAda\t5", "Tarn\tAda\t5", "Brae\tLeo\t6", "Quix\tLeo\t6"]
    roster = read_roster("\n".join(("Surname\tBubble\tAge", *rows)))
    assert [child.practice for child in roster.children] == ["Vost", "Tarn", "Brae", "Quix"]
