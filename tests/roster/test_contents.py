"""What columns hold, by their cells over all rows."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.children import Outcome, RosterError
from namewright.roster.contents import is_sheet_sign, judge, names_in
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role

GIVEN, FAMILY, FULL, OTHER = Role.GIVEN, Role.FAMILY, Role.FULL, Role.OTHER
ROWS = [
    ([("Mia", "Smith"), ("Leo", "Johnson"), ("Noah", "Brown")], (GIVEN, FAMILY), "known names"),
    ([("Smith", "Mia"), ("Johnson", "Leo"), ("Brown", "Noah")], (FAMILY, GIVEN), "known names, turned"),
    ([("1", "Mia Smith"), ("2", "Leo Brown")], (OTHER, FULL), "a number before whole names"),
    ([("Mia Smith", "left"), ("Leo Brown", "right")], (FULL, Role.HAND), "a hand"),
    ([("Smith, Mia", "Ann Smith"), ("Brown, Leo", "Jo Brown")], (FULL, OTHER), "a comma, and somebody else"),
    ([("Xobrel Vost", "Vemka Tarn (mother)"), ("Oda Elm", "Yul Fen (mother)")], (FULL, OTHER), "a mother in brackets"),
    ([("Xobrel Vost", "Vemka Tarn (Oma)"), ("Oda Elm", "Yul Fen (Oma)")], (FULL, OTHER), "a grandmother in brackets"),
    ([("Xobrel", "mãe Vemka, avó Odelo"), ("Oda", "só o pai Yul"), ("Ilva", "tia Yul")], (FULL, OTHER), "who fetches"),
    ([("Xobrel Vost", "Mama Vemka"), ("Oda Elm", "nur Papa Yul"), ("Ilva Fen", "Tante Yul")], (FULL, OTHER), "so too"),
    ([("Mia", "walks with Vemka"), ("Leo", "dad Yul only"), ("Noah", "mum Vemka")], (FULL, OTHER), "in English"),
    ([("XOBREL", "Vemka"), ("TARNUL", "Odelo"), ("ELMIR", "Yulka")], (FAMILY, GIVEN), "capitals"),
    ([("van der Xobrel", "Vemka"), ("de Tarnul", "Odelo"), ("von Elmir", "Yulka")], (FAMILY, GIVEN), "particles"),
]


@pytest.mark.parametrize(("rows", "roles", "why"), ROWS, ids=[row[2] for row in ROWS])
def test_columns_are_told_by_what_they_hold(rows: list[tuple[str, ...]], roles: tuple[Role, ...], why: str) -> None:
    found = judge(rows, "\t", "  ")
    assert found.roles == roles, why
    assert found.doubt is None
    assert not found.grid


def test_where_nothing_tells_the_two_columns_are_in_doubt() -> None:
    assert judge([("Xonomam", "Xiubar"), ("Tralamu", "Zobosi"), ("Kwulim", "Vemkaru")], "\t", "  ").doubt == (0, 1)


def test_two_whole_names_a_row_are_in_doubt() -> None:
    rows = [("Mia Smith", "Ann Brown"), ("Leo Johnson", "Jo Green"), ("Noah Davis", "Kim White")]
    assert judge(rows, "\t", "  ").doubt == (0, 1)


GRID = [("Mia", "Leo", "Noah"), ("Emma", "Lucas", "Olivia"), ("Liam", "Sophia", "Henry")]


def test_columns_of_given_names_are_a_grid() -> None:
    found = judge(GRID, "\t", "  ")
    assert found.grid
    assert not found.headed


@pytest.mark.parametrize("titles", [("Owls", "Foxes", "Bees"), ("Table 1", "Table 2", "Table 3"),
                                    ("Rote Gruppe", "Blaue Gruppe", "Grüne Gruppe")])
def test_groups_over_a_grid_are_titles(titles: tuple[str, ...]) -> None:
    found = judge([titles, *GRID], "\t", "  ")
    assert found.grid
    assert found.headed


def test_a_row_unlike_all_others_is_a_header() -> None:
    rows = [("Kiddo", "Peg"), ("Mia Smith", "12"), ("Leo Brown", "14"), ("Noah Davis", "15")]
    assert judge(rows, "\t", "  ").headed
    assert not judge(rows[1:], "\t", "  ").headed


def test_a_first_child_called_as_a_particle_is_no_header() -> None:
    """Ben is a child, and whoever is taken for a header is told."""
    rows = [("Ben Shiels", "Tanya Vost (mãe)"), ("Mia Smith", "Eric Tarn (mãe)"), ("Leo Brown", "Ann Elm (mãe)")]
    assert not judge(rows, "\t", "  ").headed
    header = read_roster("Sprout\tPeg\nMia Smith\t12\nLeo Brown\t14\nNoah Davis\t15").lines[0]
    assert (header.outcome, header.notes) == (Outcome.HEADER, (message("roster.if_child"),))


def test_signs_of_a_spreadsheet_are_no_names() -> None:
    assert is_sheet_sign("#REF!")
    assert is_sheet_sign("=A2")
    assert not is_sheet_sign("Mia")
    assert names_in(("Mia", "#N/A", "12", "", "left")) == 1


TICKS = [("Cahiers de réussites", "couverture", "autoportrait", "photo"),
         ("Cartelline", "copertina", "autoritratto", "foto"),
         ("Carpetas", "portada", "autorretrato", "foto"), ("Mappen", "Deckblatt", "Selbstbild", "Foto"),
         ("Portefólios", "capa", "autorretrato", "foto"), ("Folders", "cover", "self-portrait", "photo")]


@pytest.mark.parametrize("titles", TICKS, ids=lambda titles: titles[0])
@pytest.mark.parametrize("names", [("Mira", "Tilo", "Anna"), ("Xobrel", "Vemka", "Outhna")])
def test_words_over_columns_of_ticks_are_titles(titles: tuple[str, ...], names: tuple[str, ...]) -> None:
    ticks = ("x\t\tx", "\tx\tx", "x\tx\t")
    rows = [f"{name}\t{tick}" for name, tick in zip(names, ticks, strict=True)]
    assert [child.practice for child in read_roster("\n".join(["\t".join(titles), *rows])).children] == list(names)


def test_a_child_with_remarks_over_ticks_stays() -> None:
    text = "Mira\tnuts\tglasses\tnew\nTilo\tx\tx\tx\nAnna\tx\t\tx\nBen\t\tx\tx"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna", "Ben"]


GROUPS = [("Rojo", "Amarillo", "Verde"), ("Rossi", "Gialli", "Verdi"), ("Rot", "Gelb", "Grün"),
          ("Rouges", "Jaunes", "Verts"), ("Vermelho", "Amarelo", "Verde"), ("Red", "Yellow", "Green"),
          ("Ladybugs", "Crickets", "Fireflies"), ("Igel", "Füchse", "Käfer")]


@pytest.mark.parametrize("titles", GROUPS, ids=lambda titles: titles[0])
@pytest.mark.parametrize("known", [True, False])
def test_groups_of_several_sizes_beside_each_other(titles: tuple[str, ...], known: bool) -> None:
    """What stands over them is no child, and nobody is the family of who stands beside."""
    one, two, three, four, five, six = (
        ("Mira", "Tilo", "Anna", "Ben", "Clara", "Emil") if known else
        ("Xobrel", "Vemka", "Outhna", "Jelbru", "Syvan", "Tarmel"))
    read = read_roster("\n".join(("\t".join(titles), f"{one}\t{two}\t{three}", f"{four}\t{five}\t", f"{six}\t\t")))
    assert [child.practice for child in read.children] == [one, two, three, four, five, six]


def test_a_column_that_ends_sooner_makes_no_groups_of_parts_of_names() -> None:
    """A name to go by stands beside the first ones; two columns of one depth may be parts of names."""
    rows = [("Mia", "Smith", "Mimi"), ("Leo", "Johnson", ""), ("Noah", "Brown", "")]
    assert not judge(rows, "\t", "  ").grid
    assert not judge([("Xobrel", "Vemka", "Xo"), ("Outhna", "Jelbru", ""), ("Syvan", "Tarmel", "")], "\t", "  ").grid


def test_rosa_and_brown_are_a_child() -> None:
    assert [child.family for child in read_roster("Rosa\tBrown\nMia\tSmith\nLeo\tJohnson").children] == [
        "Brown", "Smith", "Johnson"]


@pytest.mark.parametrize("sign", ["\t", ";", "|", ","])
def test_columns_of_names_on_no_list_are_told_by_how_families_end(sign: str) -> None:
    families, givens = ("Xobrelski", "Tarnulescu", "Vemkavic", "Odel"), ("Jelbru", "Pesku", "Nift", "Trumlu")
    for one, two in ((families, givens), (givens, families)):
        rows = [sign.join((*pair, "K")) for pair in zip(one, two, strict=True)]
        assert [child.practice for child in read_roster("\n".join(rows)).children] == list(givens)


def test_a_cell_for_several_rows_is_a_group() -> None:
    rows = "Ours\tXobrel\tVemkaski\n\tJelbru\tTarnulescu\nRenards\tPesku\tOdelovic\n\tNift\tTrumluski"
    assert [child.practice for child in read_roster(rows).children] == ["Xobrel", "Jelbru", "Pesku", "Nift"]


def test_our_friends_are_a_title_of_columns() -> None:
    rows = "Our friends,Peg,Mat\nXobrel Vemka,Owl,blue\nJelbru Tarn,Bee,red\nPesku Odel,Fox,blue\nNift Trum,Fox,red"
    assert [child.practice for child in read_roster(rows).children] == ["Xobrel", "Jelbru", "Pesku", "Nift"]


def test_whole_names_side_by_side_as_a_page_prints_them_are_children() -> None:
    rows = ["Xobrel Vemka        Jelbru Tarnul", "Peskul Odelim       Niftam Quorlet",
            "Trumlu Istrel       Zemba Korvin", "Ulmok Sheltan       Brakil Doventa"]
    assert len(read_roster("\n".join(rows)).children) == 8
    with pytest.raises(RosterError):  # in the columns of a sheet the second may fetch the first
        read_roster("\n".join("\t".join(row.split("  ", 1)) for row in rows))


def test_a_family_that_a_third_column_repeats_is_told() -> None:
    rows = [f"{given},{family},{parent} {family}" for given, family, parent in (
        ("Xobrel", "Vemka", "Ulmok"), ("Jelbru", "Tarnul", "Brakil"), ("Peskul", "Odelim", "Zemba"),
        ("Niftam", "Quorlet", "Istrel"))]
    practised = [child.practice for child in read_roster("\n".join(rows)).children]
    assert practised == ["Xobrel", "Jelbru", "Peskul", "Niftam"]


@pytest.mark.parametrize("titles", [
    "Ladybugs|Crickets|Fireflies", "Mariquitas|Grillos|Luciérnagas", "Igel|Hasen|Füchse",
    "Coccinelles|Grillons|Lucioles", "Coccinelle|Grilli|Lucciole", "Joaninhas|Grilos|Abelhas"])
@pytest.mark.parametrize("gap", [0, 1, 2])
@pytest.mark.parametrize("sign", ["\t", ";"])
def test_a_group_that_nobody_is_in_makes_no_families_of_the_others(sign: str, gap: int, titles: str) -> None:
    """Known given names are children each; of others it is asked what they are."""
    rows = [["Mira", "Elodie"], ["Tilo", "Jacques"], ["Anna", "Clara"], ["Emil", "Camille"]]
    for row in rows:
        row.insert(gap, "")
    text = "\n".join(sign.join(row) for row in (titles.split("|"), *rows))
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == [cell for row in rows for cell in row if cell]
    assert roster.lines[0].outcome is not Outcome.CHILD
    unknown = text.replace("Elodie", "Vemka").replace("Jacques", "Tunzo").replace("Clara", "Plom")
    with pytest.raises(RosterError):
        read_roster(unknown.replace("Camille", "Gaskwan"))


def test_an_empty_column_of_middle_names_is_no_group() -> None:
    text = "Keresztnév\tMásodik\tVezetéknév\nMira\t\tSmith\nTilo\t\tMiller\nAnna\t\tBrown\nEmil\t\tTaylor"
    assert [child.family for child in read_roster(text).children] == ["Smith", "Miller", "Brown", "Taylor"]


@pytest.mark.parametrize("said", ["butterfly, brings juice|tiger|???, no paint",
                                  "mariposa, trae zumo|tigre|???, sin color", "papillon, apporte un jus|tigre|???",
                                  "farfalla, porta il succo|tigre|???, niente",
                                  "borboleta, traz sumo|tigre|???, sem pintura", "tijger, brengt sap|vlinder|???"])
@pytest.mark.parametrize("names", ["VOST Mira|TARN Tilo|REY Anna|ELM Emil|KOCH Ida", "Mira|Tilo|Anna|Emil|Ida"])
def test_words_in_small_letters_beside_names_with_capitals_are_none(names: str, said: str) -> None:
    """Where they had a comma a whole class was to practise what it dresses up as."""
    costumes = said.split("|") * 2
    text = "\n".join(f"{name}\t{costume}" for name, costume in zip(names.split("|"), costumes, strict=False))
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Tilo", "Anna", "Emil", "Ida"]
    assert len(read_roster("mira\tvost\ntilo\ttarn\nanna\trey").children) == 3


@pytest.mark.parametrize(("one", "two"), [("muletas", "cadeira de rodas"), ("crutches", "wheelchair"),
                                          ("Krücken".lower(), "sitzt vorne"), ("béquilles", "fauteuil roulant")])
def test_a_first_child_of_whom_something_is_told_is_no_title(one: str, two: str) -> None:
    """Others further down have small words beside them, too."""
    text = f"בן לוין;{one}\nאסיל אוחיון;\nאווה אבו ראס;\nמרום יעקבי;\nאדיר ותד;{two}\nשירי פז;"
    assert [child.practice for child in read_roster(text).children] == ["בן", "אסיל", "אווה", "מרום", "אדיר", "שירי"]


def test_a_first_row_without_a_first_cell_is_judged() -> None:
    """It raised an error."""
    text = ("\t\tLes Lapins\t\t\tLes Renards\n1\tΑγγελική\t\t1\tΤιμοθέα\n2\tΧριστόφορος\t\t2\tΊων\n"
            "3\tΡάλλης\t\t3\tΙσμήνη\n\t\t\t4\tλΉ-ΔΑ")
    assert len(read_roster(text).children) >= 6
