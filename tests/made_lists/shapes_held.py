"""Shapes of list that were kept apart: written before the reader was changed, and looked at once, at the end."""

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
CARE = ("Milch", "noix", "frutos secos", "Insulin", "asma", "lunettes", "Brille", "celiac", "no dairy", "tube fed",
        "cochlear implant", "custody", "Dad picks up", "half days", "alergia al huevo", "Logopädie", "braces",
        "penicillin")


@shape(HEADED)
def form_answers(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Timestamp,Email Address,What is your child's first name?,What is your child's last name?,Any allergies?"]
    rows += [f"9/{at}/2026 8:00:12,fam{at}@mail.example,{one.given},{one.family},{rng.choice(('none', 'Peanuts', ''))}"
             for at, one in enumerate(some, 1)]
    return Made("\n".join(rows), wanted(some), ("Peanuts none",))


@shape(HEADED)
def form_answers_in_spanish(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Marca temporal;¿Cómo se llama su hijo o hija?;¿Quién responde?"]
    rows += [f"3/9/2026 8:{at};{full(one)};Mamá" for at, one in enumerate(some, 10)]
    return Made("\n".join(rows), wanted(some), ("Mamá",))


@shape(HEADED)
def german_table_with_remarks(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Nr.;Name;Vorname;Rufname;Geburtsdatum;Bemerkung"]
    rows += [f"{at};{one.family};{one.given};;{at}.05.2020;{rng.choice(CARE)}" for at, one in enumerate(some, 1)]
    return Made("\n".join(rows), wanted(some), CARE)


@shape(HEADED)
def french_table(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["N°\tNOM\tPrénom(s)\tNé(e) le\tResponsable légal"]
    rows += [f"{at}\t{one.family.upper()}\t{one.given}\t{at:02}/05/2020\tM. ou Mme {one.family}"
             for at, one in enumerate(some, 1)]
    return Made("\n".join(rows), wanted(some), ("Mme M. ou",))


@shape(HEADED)
def italian_table(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Cognome,Nome,Data di nascita,Sesso"]
    rows += [f"{one.family},{one.given},{at:02}/05/2020,{rng.choice('MF')}" for at, one in enumerate(some, 1)]
    return Made("\n".join(rows), wanted(some))


@shape(HEADED)
def portuguese_table(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Número;Nome do aluno;Turma;Encarregado de educação"]
    rows += [f"{at};{full(one)};1.º A;Rita {one.family}" for at, one in enumerate(some, 1)]
    return Made("\n".join(rows), wanted(some), ("Rita",))


@shape(HEADED)
def last_first_in_one_column(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Student Name (Last, First)\tAdvisor", *(f"{one.family}, {one.given}\tAlder" for one in some)]
    return Made("\n".join(rows), wanted(some), ("Alder Advisor",))


@shape(CLEAN)
def givens_in_one_row(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made(" ".join(one.given for one in some), wanted(some))


@shape(CLEAN)
def given_and_initial(rng: random.Random, some: Sequence[Person]) -> Made:
    dot = rng.choice((".", ""))
    return lines(some, lambda one: f"{one.given} {one.family[0]}{dot}")


@shape(CLEAN)
def all_capitals(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: full(one).upper())


@shape(CLEAN)
def all_small(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: full(one).lower())


@shape(CLEAN)
def family_first_no_comma_titled(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("\n".join(("Last name, first name", *(f"{one.family}, {one.given}" for one in some))), wanted(some))


@shape()
def mail_reply(rng: random.Random, some: Sequence[Person]) -> Made:
    head = ("Hi Jo,", "here is my list for next week:", "")
    tail = ("", "Thanks!", "Kim")
    return Made("\n".join((*head, *(f"> {full(one)}" for one in some), *tail)), wanted(some), ("Thanks list",))


@shape()
def html_breaks(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = "<br>".join(f"{at}.&nbsp;{full(one)}" for at, one in enumerate(some, 1))
    return Made(f"<div>{rows}</div>", wanted(some))


@shape()
def html_with_style(rng: random.Random, some: Sequence[Person]) -> Made:
    style = "<style>td { color: red }</style><script>var a = 1</script>"
    rows = "\n".join(f"<tr>\n<td>{at}</td>\n<td><b>{one.family}</b>, {one.given}</td>\n</tr>"
                     for at, one in enumerate(some, 1))
    head = f"<!DOCTYPE html><html><head><title>My class</title>{style}</head>"
    return Made(f"{head}<body><table>\n{rows}\n</table></body></html>", wanted(some), ("color var class",))


@shape()
def phone_chat(rng: random.Random, some: Sequence[Person]) -> Made:
    text = "\n".join(f"{at:02}.09.26, 18:{at + 10} - +49 170 55501{at}: {full(one)}" for at, one in enumerate(some, 1))
    return Made("01.09.26, 18:00 - Messages are end-to-end encrypted.\n" + text, wanted(some), ("Messages encrypted",))


@shape(HEADLESS)
def pipes(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} | {rng.choice(('AM', 'PM'))} | {rng.randrange(100, 999)}")


@shape(HEADLESS)
def wide_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one):<30}{rng.choice('MF')}    0{rng.randrange(1, 9)}/12/2020")


@shape(HEADLESS)
def birthdays(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{one.given},{one.family},2020-0{rng.randrange(1, 9)}-12")


@shape(HEADLESS)
def families(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    pairs = paired(some)
    return Made("\n".join(f"{one.given},{one.family},{other.given} {one.family},p{at}@mail.example"
                          for at, (one, other) in enumerate(pairs)), wanted(some[:half]),
                tuple(other.given for _, other in pairs))


@shape()
def care_in_brackets(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} ({rng.choice(CARE)})" if rng.random() < 0.4 else full(one), *CARE)


@shape()
def care_behind_given(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{one.given} ({rng.choice(CARE)})" if rng.random() < 0.4 else one.given, *CARE)


@shape()
def care_behind_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)}, {rng.choice(CARE)}" if rng.random() < 0.3 else full(one), *CARE)


@shape()
def care_on_its_own_line(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: full(one) + (f"\n   - {rng.choice(CARE)}" if rng.random() < 0.2 else ""), *CARE)


@shape()
def bold_boxes(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"- [ ] **{full(one)}**" + rng.choice(("", " – EpiPen", " (new)")), "EpiPen new")


@shape()
def siblings(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 3
    pairs = paired(some[: 2 * half])
    rows = [f"{one.given} & {other.given} {one.family}" for one, other in pairs]
    text = "\n".join((*rows, *map(full, some[2 * half :])))
    return Made(text, wanted([*(each for pair in pairs for each in pair), *some[2 * half :]]))


@shape()
def two_in_a_cell(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    rows = ["Table,Children", *(f'{at},"{one.given}, {other.given}"' for at, (one, other) in enumerate(pairs, 1))]
    return Made("\n".join(rows), wanted([each for pair in pairs for each in pair]))


@shape()
def letter(rng: random.Random, some: Sequence[Person]) -> Made:
    names = [one.given for one in some[:5]]
    return Made(f"My class: {', '.join(names[:-1])} and {names[-1]}", wanted(some[:5]), ("class",))


@shape()
def form_blocks(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("\n\n".join(f"Name: {full(one)}\nAge: {rng.randrange(4, 6)}" for one in some), wanted(some), ("Age",))


@shape()
def sex_in_brackets(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} ({rng.choice('mf')})")


@shape()
def buses(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} Bus {rng.randrange(1, 40)}", "Bus")


@shape(HEADED)
def footed(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Sunny Meadow Kindergarten,,", "Class list 2026/27,,", "First,Last,Age"]
    rows += [f"{one.given},{one.family},{rng.randrange(4, 6)}" for one in some]
    return Made("\n".join((*rows, f"Total,{len(some)},", "Average age,,4.6")), wanted(some),
                ("Sunny Meadow Kindergarten Class Total Average",))


@shape(HEADED)
def marked_by_day(rng: random.Random, some: Sequence[Person]) -> Made:
    rows = ["Kind;Mo;Di;Mi;Do;Fr", *(";".join((full(one), *(rng.choice(("x", "", "k", "/")) for _ in range(5))))
                                     for one in some)]
    return Made("\n".join(rows), wanted(some))


@shape()
def address_book(rng: random.Random, some: Sequence[Person]) -> Made:
    text = "; ".join(f'"{one.family}, {one.given}" <p{at}@mail.example>' for at, one in enumerate(some))
    return Made(text, wanted(some))


@shape()
def groups_in_lines(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    return Made(f"Red table: {', '.join(one.given for one in some[:half])}\n"
                f"Blue table: {', '.join(one.given for one in some[half:])}", wanted(some), ("Red Blue table",))


@shape()
def short_forms(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = (("Katherine", "Katie"), ("William", "Will"), ("Elizabeth", "Lizzy"), ("Francisco", "Paco"),
             ("Alexander", "Sasha"), ("Guadalupe", "Lupita"), ("Giuseppe", "Beppe"), ("Maximilian", "Max"))
    text = "\n".join(f"{long} {one.family} ({short})" for (long, short), one in zip(pairs, some, strict=False))
    return Made(text, tuple(Wanted((short,), long) for (long, short), _ in zip(pairs, some, strict=False)))
