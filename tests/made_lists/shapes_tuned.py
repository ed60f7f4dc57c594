"""Shapes of list that were looked at while the reader was written."""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
HEALTH = ("Peanuts", "EpiPen", "Autism", "Asthma", "Diabetes", "Epilepsy", "Zyrtec", "Gluten", "Seizures", "Inhaler",
          "nut allergy", "wears glasses", "hearing aid", "OT Tuesdays", "speech", "new", "Mom: Jo", "bus 4", "IEP",
          "allergic to eggs", "picked up by Grandma", "Down syndrome", "lactose", "ADHD", "VIP", "leaves at 12")
FIRST_LAST = (("First Name", "Last Name"), ("Nombre", "Apellidos"), ("Prénom", "Nom"), ("Vorname", "Nachname"),
              ("Nome", "Cognome"), ("Nome", "Apelido"), ("Prénoms", "Nom de famille"), ("Vornamen", "Familienname"),
              ("Given name", "Surname"), ("Nombres", "Primer apellido"), ("Nome", "Sobrenome"))


def full(one: Person) -> str:
    """Return given and family name."""
    return f"{one.given} {one.family}"


def wanted(some: Sequence[Person]) -> tuple[Wanted, ...]:
    """Return what is right: the given name."""
    return tuple(Wanted((one.given,), one.given) for one in some)


def lines(some: Sequence[Person], text: Callable[[Person], str], *remarks: str) -> Made:
    """Return a list of a line a child."""
    return Made("\n".join(map(text, some)), wanted(some), remarks)


@shape(CLEAN)
def given_alone(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: one.given)


@shape(CLEAN)
def given_family(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, full)


@shape(CLEAN)
def family_comma_given(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{one.family}, {one.given}")


@shape(CLEAN)
def numbered(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("\n".join(f"{at}. {full(one)}" for at, one in enumerate(some, 1)), wanted(some))


@shape(CLEAN)
def bulleted(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice(("- ", "* ", "• ", "☐ ", "[ ] ", "– "))
    return lines(some, lambda one: sign + full(one))


@shape(CLEAN)
def capitals_family_first(rng: random.Random, some: Sequence[Person]) -> Made:
    def loud(one: Person) -> bool:  # a script without capitals tells by none which name is the family's
        return len(one.family) > 2 and one.family.upper() != one.family.lower()

    return lines(some, lambda one: f"{one.family.upper()} {one.given}" if loud(one) else full(one))


@shape(CLEAN, HEADED)
def headed_two(rng: random.Random, some: Sequence[Person]) -> Made:
    first, last = rng.choice(FIRST_LAST)
    sign, turned = rng.choice(",;\t"), rng.random() < 0.5
    rows = [(first, last), *((one.given, one.family) for one in some)]
    return Made("\n".join(sign.join(row[::-1] if turned else row) for row in rows), wanted(some))


@shape(CLEAN, HEADED)
def headed_school_export(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Student ID,Last Name,First Name,Grade,Birthdate,Homeroom"]
    rows += [f"{rng.randrange(10000, 99999)},{one.family},{one.given},K,{_day(rng)},Birch" for one in some]
    return Made("\n".join(rows), wanted(some), ("Birch",))


@shape(CLEAN, HEADED)
def headed_whole(rng: random.Random, some: Sequence[Person]) -> Made:
    title = rng.choice(("Student", "Kind", "Schüler/in", "Élève", "Alunno", "Alumno", "Aluno", "Name", "Camper",
                        "Child"))
    rows = [f"{title}\tRoom", *(f"{full(one)}\t{rng.randrange(1, 30)}" for one in some)]
    return Made("\n".join(rows), wanted(some))


@shape(HEADED)
def headed_parent_and_child(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    rows = ["First Name,Last Name,Child First Name,Child Last Name"]
    rows += [f"{adult.given},{child.family},{child.given},{child.family}" for child, adult in pairs]
    return Made("\n".join(rows), wanted([child for child, _ in pairs]), tuple(adult.given for _, adult in pairs))


@shape(HEADED)
def headed_name_and_childs_name(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    rows = ["Name,Child's name,Phone", *(f"{full(adult)},{full(child)},555-01{rng.randrange(10, 99)}"
                                         for child, adult in pairs)]
    return Made("\n".join(rows), wanted([child for child, _ in pairs]), tuple(adult.given for _, adult in pairs))


@shape(HEADED)
def headed_unknown_words(rng: random.Random, some: Sequence[Person]) -> Made:
    titles = rng.choice((("Cub", "Den", "Snack"), ("Kiddo", "Shelf", "Colour"), ("Our friends", "Peg", "Mat")))
    rows = [",".join(titles), *(f"{full(one)},{rng.choice(('Owl', 'Fox', 'Bee'))},{rng.choice(('red', 'blue'))}"
                                for one in some)]
    return Made("\n".join(rows), wanted(some), (*titles, "Owl Fox Bee red blue"))


@shape(CLEAN, HEADLESS)
def headless_given_family(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice("\t;|,")
    return lines(some, lambda one: sign.join((one.given, one.family, "K")))


@shape(CLEAN, HEADLESS)
def headless_family_given(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice("\t;|,")
    return lines(some, lambda one: sign.join((one.family, one.given, "K")))


@shape(CLEAN, HEADLESS)
def headless_with_dates(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("\n".join(f"{at},{one.family},{one.given},{rng.choice('MF')},{_day(rng)}"
                          for at, one in enumerate(some, 1)), wanted(some))


@shape(HEADLESS)
def headless_with_parent(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    return Made("\n".join(f"{full(child)}\t{adult.given} {child.family}\t555-01{rng.randrange(10, 99)}"
                          for child, adult in pairs), wanted([child for child, _ in pairs]),
                tuple(adult.given for _, adult in pairs))


@shape(HEADLESS)
def headless_with_marks(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: "\t".join((full(one), *(rng.choice(("x", "", "A", "P")) for _ in range(5)))))


@shape()
def remark_in_brackets(rng: random.Random, some: Sequence[Person]) -> Made:
    return _remarked(rng, some, "{name} ({remark})")


@shape()
def remark_behind_dash(rng: random.Random, some: Sequence[Person]) -> Made:
    return _remarked(rng, some, rng.choice(("{name} - {remark}", "{name} – {remark}", "{name}: {remark}")))


@shape()
def remark_behind_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    return _remarked(rng, some, "{name}, {remark}")


@shape()
def remark_in_square_brackets(rng: random.Random, some: Sequence[Person]) -> Made:
    return _remarked(rng, some, "{name} [{remark}]")


@shape()
def goes_by_told(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    how = rng.choice(("{name} (goes by {called})", "{name} - called {called}", "{first} “{called}” {last}",
                      '{first} "{called}" {last}', "{name} (nickname: {called})"))
    text = "\n".join(how.format(name=full(one), called=other.given, first=one.given, last=one.family)
                     for one, other in pairs)
    return Made(text, tuple(Wanted((other.given,), one.given) for one, other in pairs))


@shape()
def two_by_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    return _several(rng, some, ", ", lambda one: one.given)


@shape()
def two_by_slash(rng: random.Random, some: Sequence[Person]) -> Made:
    return _several(rng, some, rng.choice((" / ", " & ", " + ", " and ", "; ")), lambda one: one.given)


@shape()
def two_by_dash(rng: random.Random, some: Sequence[Person]) -> Made:
    return _several(rng, some, " - ", lambda one: one.given)


@shape()
def two_whole_names(rng: random.Random, some: Sequence[Person]) -> Made:
    return _several(rng, some, rng.choice((", ", " / ", " & ", "; ", " and ")), full)


@shape()
def one_line_of_givens(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made(rng.choice((", ", "; ", " / ")).join(one.given for one in some), wanted(some))


@shape()
def one_line_of_wholes(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made(rng.choice((", ", "; ")).join(map(full, some)), wanted(some))


@shape()
def a_b_and_c(rng: random.Random, some: Sequence[Person]) -> Made:
    names = [one.given for one in some[:6]]
    return Made(", ".join(names[:-1]) + rng.choice((" and ", ", and ", " & ", " y ", " et ", " und ")) + names[-1],
                wanted(some[:6]))


@shape()
def address_line(rng: random.Random, some: Sequence[Person]) -> Made:
    text = rng.choice((", ", "; ")).join(f"{full(one)} <p{at}@mail.example>" for at, one in enumerate(some))
    return Made(rng.choice(("", "To: ", "Cc: ")) + text, wanted(some))


@shape()
def tab_row_among_plain(rng: random.Random, some: Sequence[Person]) -> Made:
    at = rng.randrange(len(some))
    return Made("\n".join(f"{one.given}\t{one.family}" if here == at else full(one) for here, one in enumerate(some)),
                wanted(some))


@shape()
def tab_behind_number(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("\n".join(f"{at}.{chr(9) if rng.random() < 0.3 else ' '}{full(one)}" for at, one in enumerate(some, 1)),
                wanted(some))


@shape()
def html_list(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("<ul>\n" + "\n".join(f"  <li>{full(one)}</li>" for one in some) + "\n</ul>", wanted(some))


@shape()
def html_table(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = "".join(f"<tr><td>{one.given}</td><td class='b'>{one.family}</td></tr>" for one in some)
    return Made(f"<html><body><table><tr><th>First name</th><th>Last name</th></tr>{rows}</table></body></html>",
                wanted(some))


@shape()
def chat(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("[{day}, {time}] {who}: {name}", "{day}, {time} - {who}: {name}", "{who} {time}: {name}"))
    who = rng.choice(("Ms Tarn", "Pat", "Sra. Olmo"))
    text = "\n".join(form.format(day="9/3/26", time=f"8:{10 + at}", who=who, name=full(one))
                     for at, one in enumerate(some))
    return Made(text, wanted(some), ("Tarn Olmo",))


@shape(HEADED)
def markdown_table(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["| Name | Group |", "|:-----|------:|", *(f"| {full(one)} | {rng.randrange(1, 5)} |" for one in some)]
    return Made("\n".join(rows), wanted(some))


@shape(HEADED)
def attendance(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Name\tM\tT\tW\tTh\tF"]
    rows += ["\t".join((full(one), *(rng.choice("✓XAPL ") for _ in range(5)))) for one in some]
    return Made("\n".join(rows), wanted(some))


@shape()
def boys_and_girls(rng: random.Random, some: Sequence[Person]) -> Made:
    heads = rng.choice((("Boys", "Girls"), ("Niños", "Niñas"), ("Garçons", "Filles"), ("Jungen", "Mädchen"),
                        ("Maschi", "Femmine"), ("Meninos", "Meninas"), ("Table 1", "Table 2"),
                        ("Red group", "Blue group")))
    half = len(some) // 2
    text = "\n".join((heads[0], *map(full, some[:half]), "", heads[1], *map(full, some[half:])))
    return Made(text, wanted(some), heads)


@shape()
def teacher_and_room(rng: random.Random, some: Sequence[Person]) -> Made:
    head = rng.choice(("Ms. Alder", "Frau Müller", "Mme Dupont", "Sra. Olmo", "Maestra Bianca", "Professora Rita"))
    room = rng.choice(("Room 12", "Klasse 1b", "Classe de CP", "Aula 3", "Sala 5", "Classe 1ª B", "Grado K"))
    end = rng.choice((f"Total: {len(some)}", f"{len(some)} children", "Generated by PowerOffice on 9/3/2026",
                      f"Gesamt: {len(some)}", f"Totale {len(some)}", "Page 1 of 1"))
    return Made("\n".join((head, room, *map(full, some), end)), wanted(some),
                ("Alder Müller Dupont Olmo Klasse Room Generated PowerOffice Total Page",))


@shape(HEADED)
def quoted_newline(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Name,Notes", *(f'"{full(one)}","brings own lunch{chr(10)}on Mondays"' for one in some)]
    return Made("\n".join(rows), wanted(some), ("brings Mondays",))


@shape()
def two_columns_of_names(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    text = "\n".join(f"{full(one):<34}{full(other)}" for one, other in paired(some))
    return Made(text, wanted(some[: 2 * half]))


@shape()
def grid_of_givens(rng: random.Random, some: Sequence[Person]) -> Made:
    names = [one.given for one in some]
    rows = [names[at : at + 4] for at in range(0, len(names), 4)]
    return Made("\n".join("\t".join(row) for row in rows), wanted(some))


def _day(rng: random.Random) -> str:
    return f"{rng.randrange(2020, 2022)}-{rng.randrange(1, 13):02}-{rng.randrange(1, 29):02}"


def paired(some: Sequence[Person]) -> list[tuple[Person, Person]]:
    """Return the people of the first half, each with one of the second."""
    half = len(some) // 2
    return list(zip(some[:half], some[half:], strict=False))


def _remarked(rng: random.Random, some: Sequence[Person], form: str) -> Made:
    """Return a list where a third of the children have a remark beside their name."""
    said: list[str] = []
    rows = []
    for one in some:
        if rng.random() < 0.34:
            said.append(rng.choice(HEALTH))
            rows.append(form.format(name=full(one), remark=said[-1]))
        else:
            rows.append(full(one))
    return Made("\n".join(rows), wanted(some), tuple(said))


def _several(rng: random.Random, some: Sequence[Person], sign: str, text: Callable[[Person], str]) -> Made:
    """Return a list where some lines hold two children."""
    rows: list[str] = []
    waiting = list(some)
    while waiting:
        take = 2 if len(waiting) > 1 and rng.random() < 0.3 else 1
        rows.append(sign.join(map(text, waiting[:take])))
        waiting = waiting[take:]
    return Made("\n".join(rows), wanted(some))
