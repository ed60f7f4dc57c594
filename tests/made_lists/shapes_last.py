"""Shapes of list that were held back: written together with `shapes_further`, and looked at once, at the very end."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, lines, paired, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape


@shape()
def said_aloud(rng: random.Random, some: Sequence[Person]) -> Made:
    said = ("/shih-VAWN/", "[KAY-lah]", "sounds like Lee-uh", "(pronounced “Zhoo-lee”)", "(gesprochen: Schowahn)",
            "(se pronuncia Yoana)", "(prononcer : Maé)", "(si legge Gioia)", "(lê-se Ruana)", "rhymes with sofa")
    return lines(some, lambda one: f"{full(one)} {rng.choice(said)}" if rng.random() < 0.3 else full(one), *said)


@shape()
def signs_and_a_key(rng: random.Random, some: Sequence[Person]) -> Made:
    signs = "🥜🚌⭐👓🐝"
    key = rng.choice(("🥜 = nuts\n🚌 = bus\n⭐ = new", "🥜 Nüsse, 🚌 Bus, ⭐ neu", "🥜 : arachide   🚌 : car",
                      "🥜 frutos secos · 🚌 ruta · ⭐ nueva"))
    rows = [full(one) + "".join(f" {sign}" for sign in signs if rng.random() < 0.15) for one in some]
    return Made("\n".join((*rows, "", key)), wanted(some),
                ("nuts bus new Nüsse Bus neu arachide car frutos secos ruta",))


@shape()
def waiting_list(rng: random.Random, some: Sequence[Person]) -> Made:
    head = rng.choice(("Waiting list", "Warteliste", "Liste d'attente", "Lista de espera", "Lista d'attesa",
                       "WAITLIST:", "On hold"))
    cut = max(2, 3 * len(some) // 4)
    return Made("\n".join((*map(full, some[:cut]), "", head, *map(full, some[cut:]))), wanted(some), (head,))


@shape()
def picked_up_by(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("{c} → Grandma {a}", "{c} (pickup: {a})", "{c} wird von {a} abgeholt", "{c} – récupérée par {a}",
                       "{c}: recoge {a}", "{c} – ritira {a}", "{c} (quem busca: {a})", "{c} - goes home with {a}",
                       "{c} | Mum {a}"))
    half = len(some) // 2
    return Made("\n".join(form.format(c=full(one), a=other.given) for one, other in paired(some)),
                wanted(some[:half]), tuple(other.given for other in some[half:]))


@shape(HEADED)
def titles_in_two_languages(rng: random.Random, some: Sequence[Person]) -> Made:
    titles = rng.choice((("Last name / Apellido", "First name / Nombre", "Hand / Mano"),
                         ("Name / Soyadı", "Vorname / Adı", "Klasse / Sınıf"),
                         ("Nom / اللقب", "Prénom / الاسم", "Âge / العمر"),
                         ("Family name (Họ)", "Given name (Tên)", "Class (Lớp)"),
                         ("Cognome - Surname", "Nome - Name", "Classe - Class")))
    rows = ["\t".join(titles), *(f"{one.family}\t{one.given}\t{rng.choice(('4', '5', ''))}" for one in some)]
    return Made("\n".join(rows), wanted(some))


@shape()
def tables_in_a_row(rng: random.Random, some: Sequence[Person]) -> Made:
    word = rng.choice(("{} table", "House {}", "{}-Gruppe", "Table {}", "Mesa {}", "Tavolo {}", "Mesa {}"))
    heads = ("Blue", "Green", "Gold", "Rot", "verte", "azul", "rosso", "Lilac")
    names = [full(one) for one in some]
    rows = [f"{word.format(heads[at // 4 % 8])}\t" + ", ".join(names[at : at + 4]) for at in range(0, len(names), 4)]
    return Made("\n".join(rows), wanted(some), (*heads, word.replace("{}", "")))


@shape(CLEAN)
def initials_of_the_family(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("{g} {i}", "{g} {i}.", "{i}., {g}", "{g} {i}{s}.", "{g}_{i}", "{g}.{i}"))
    return lines(some, lambda one: form.format(g=one.given, i=one.family[0], s=one.family[1]))


@shape(CLEAN)
def capitals_date_and_level(rng: random.Random, some: Sequence[Person]) -> Made:
    level = rng.choice(("PS", "GS", "K", "Vorsch.", "5 anni", "5 años", "JI"))
    kept = [one for one in some if len(one.family) > 2] or list(some)
    return Made("\n".join(f"{one.family.upper()} {one.given} {rng.randrange(10, 28)}/05/2020 {level}" for one in kept),
                wanted(kept), (level,))


@shape()
def footers_of_a_print(rng: random.Random, some: Sequence[Person]) -> Made:
    foot = rng.choice(("— end of list —\nPrinted by J. Vale 9/3/26 3:14 PM", "24 students total\nConfidential",
                       "Ende der Liste\nGedruckt am 03.09.2026 von Talberg", "Fin de la liste\nÉdité le 03/09/2026",
                       "Fin del listado\nImpreso el 3/9/2026", "Fine elenco\nStampato il 03/09/2026 – Uso interno",
                       "Fim da lista\nImpresso em 03/09/2026 – Uso interno"))
    return Made("\n".join((*map(full, some), "", foot)), wanted(some),
                ("end list Printed Vale students total Confidential Ende Liste Gedruckt Talberg Fin Fine elenco",))


@shape()
def languages_at_home(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("Arabic", "Somali", "speaks Polish"), ("Arabisch", "spricht Türkisch", "Ukrainisch"),
                       ("arabe", "parle turc", "kabyle"), ("árabe", "habla rumano"), ("arabo", "parla albanese"),
                       ("crioulo", "fala ucraniano")))
    form = rng.choice(("{} ({})", "{} – {}", "{}, {}", "{}: {}", "{} - home lang.: {}"))
    return lines(some, lambda one: form.format(full(one), rng.choice(said)) if rng.random() < 0.4 else full(one), *said)


@shape(CLEAN)
def vietnamese_among_others(rng: random.Random, some: Sequence[Person]) -> Made:
    """Vietnamese children as their families write them, among others with the given name first."""
    own = (("Nguyễn", "Thị", "Lan"), ("Trần", "Văn", "Hùng"), ("Phạm", "Gia", "Bảo"), ("Lê", "Minh", "Châu"),
           ("Đặng", "Thùy", "Dương"), ("Huỳnh", "Kim", "Ngân"))
    drawn = rng.sample(own, min(2, len(some)))
    rows = [(full(one), Wanted((one.given,), one.given)) for one in some]
    rows += [(" ".join(name), Wanted((name[-1], " ".join(name[1:])), " ".join(name))) for name in drawn]
    rng.shuffle(rows)
    return Made("\n".join(text for text, _ in rows), tuple(one for _, one in rows))
