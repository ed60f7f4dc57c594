"""What the shapes of a whole school year have in common: names as they are written, adults, dates, wordings."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable, Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person, invented, people

TITLES = {"en": "Mrs.|Ms.|Mr.|Miss", "es": "Sra.|Sr.|Profe", "fr": "Mme|M.", "de": "Frau|Herr", "it": "Sig.ra|maestra",
          "pt": "Sra.|Prof.", "nl": "juf|meester", "sv": "fröken"}
DAYS = {"en": "Mon Tue Wed Thu Fri", "es": "lun mar mié jue vie", "fr": "lun mar mer jeu ven", "de": "Mo Di Mi Do Fr",
        "it": "lun mar mer gio ven", "pt": "seg ter qua qui sex", "nl": "ma di wo do vr", "sv": "mån tis ons tors fre"}
KIN = {"en": "Mom|Dad|Grandma|Grandpa|Aunt|Nanny", "es": "mamá|papá|abuela|abuelo|tía",
       "fr": "maman|papa|mamie|papi|tata", "de": "Mama|Papa|Oma|Opa|Tante", "it": "mamma|papà|nonna|nonno|zia",
       "pt": "mãe|pai|avó|avô|tia", "nl": "mama|papa|oma|opa|tante", "sv": "mamma|pappa|mormor|farfar|moster"}
FAMILY = {"en": "Last Name|Surname|Child Last", "es": "Apellidos|Apellido", "fr": "Nom|NOM|Nom de famille",
          "de": "Nachname|Familienname|Name", "it": "Cognome", "pt": "Apelido|Sobrenome", "nl": "Achternaam",
          "sv": "Efternamn"}
GIVEN = {"en": "First Name|Given Name|Child First", "es": "Nombre|Nombre del alumno", "fr": "Prénom|Prénom de l'élève",
         "de": "Vorname|Rufname", "it": "Nome", "pt": "Nome|Nome próprio", "nl": "Voornaam|Roepnaam", "sv": "Förnamn"}
WHOLE = {"en": "Name|Student|Child|Student Name", "es": "Alumno|Niño/a|Alumno/a", "fr": "Élève|Enfant|Nom de l'élève",
         "de": "Kind|Name des Kindes|Schüler/in", "it": "Bambino|Alunno|Bambino/a", "pt": "Aluno|Criança|Aluno(a)",
         "nl": "Naam|Leerling|Kind", "sv": "Namn|Barn|Elev"}


def told(rng: random.Random, table: str, of: str) -> tuple[str, list[str]]:
    """Choose a row of a table (list, language, wordings); return the language of the list and its wordings."""
    rows = [row.split(" ", 2) for row in table.strip().splitlines() if row.startswith(f"{of} ")]
    _, lang, words = rng.choice(rows)
    return lang, words.split("; ")


def pick(rng: random.Random, words: str) -> str:
    """Choose one of the words parted by bars."""
    return rng.choice(words.split("|"))


def written(rng: random.Random, *, short: bool = True) -> Callable[[Person], str]:
    """Choose how every child of a list is written; ``short`` allows given names without the family's."""
    ways: list[Callable[[Person], str]] = [
        lambda one: f"{one.given} {one.family}", lambda one: f"{one.given} {one.family}",
        lambda one: f"{one.family}, {one.given}", lambda one: f"{one.family.upper()} {one.given}",
        lambda one: f"{one.given} {one.family.upper()}"]
    return rng.choice([*ways, brief(rng), brief(rng)] if short else ways)


def brief(rng: random.Random) -> Callable[[Person], str]:
    """Choose how the children of a list are called who are called by their given names."""
    ways: list[Callable[[Person], str]] = [
        lambda one: one.given, lambda one: one.given, lambda one: f"{one.given} {one.family[0]}."]
    return rng.choice(ways)


def made(rows: Iterable[str], some: Sequence[Person], *remarks: str, either: Sequence[Person] = ()) -> Made:
    """Return a list of lines; right is the given name. Words of ``remarks`` may be parted by bars, too."""
    words = (word.strip("{}.,;:!?¡()") for remark in remarks for word in remark.replace("|", " ").split())
    return Made("\n".join(rows), _wanted(some), tuple(filter(None, words)), _wanted(either))


def _wanted(some: Sequence[Person]) -> tuple[Wanted, ...]:
    return tuple(Wanted((one.given,), one.given) for one in some)


def grown(rng: random.Random, some: Sequence[Person], count: int) -> list[Person]:
    """Draw adults of the place of the children, no word of whose names is a child's."""
    taken = {word.lower() for one in some for word in f"{one.given} {one.family}".split()}
    drawn = people(rng, some[0].place, 3 * count)
    fit = [one for one in drawn if taken.isdisjoint(f"{one.given} {one.family}".lower().split())][:count]
    return [*fit, *(Person(*invented(rng)) for _ in range(count - len(fit)))]


def names_of(some: Sequence[Person]) -> tuple[str, ...]:
    """Return every name of adults."""
    return tuple(name for one in some for name in (one.given, one.family))


def date(lang: str, month: int, at: int) -> str:
    """Return a date without its year, as it is written in the language."""
    return f"{month}/{at}" if lang == "en" else f"{at}.{month}." if lang == "de" else f"{at:02}/{month:02}"


def day(rng: random.Random, lang: str, month: int = 0) -> str:
    """Return some date, in a month."""
    return date(lang, month or rng.randrange(1, 13), rng.randrange(1, 29))


def born(rng: random.Random, lang: str) -> str:
    """Return a birthday with its year."""
    at, month, year = rng.randrange(1, 29), rng.randrange(1, 13), rng.choice((2018, 2019))
    return f"{month}/{at}/{year}" if lang == "en" else ("." if lang == "de" else "/").join(
        (f"{at:02}", f"{month:02}", str(year)))


def money(lang: str, amount: float) -> str:
    """Return a sum of money."""
    return f"${amount:.2f}" if lang == "en" else f"{amount:.2f} €".replace(".", ",")


def phone(rng: random.Random) -> str:
    """Return a telephone number."""
    form = rng.choice(("555-01{}", "0{} 55501{}", "(555) 555-01{}", "0{}/55501{}"))
    return form.format(rng.randrange(10, 99), rng.randrange(10, 99))


def parted(rng: random.Random, some: Sequence[Person], least: int, most: int) -> list[Sequence[Person]]:
    """Part the children into groups."""
    groups: list[Sequence[Person]] = []
    while some:
        size = rng.randint(least, most)
        groups.append(some[:size])
        some = some[size:]
    return groups


def opening(rng: random.Random, title: str) -> list[str]:
    """Return a title, with or without an empty line after it, or none."""
    return [pick(rng, title), ""][:rng.choice((0, 1, 2))]
