"""Shapes of list as a school's office and its machines put them out: exports, forms, printed pages, records."""

from __future__ import annotations

import json
import random
from collections.abc import Sequence

from made_lists.judging import Made, fold
from made_lists.papers import (
    WORDS,
    Column,
    Say,
    address,
    aside,
    capitals,
    comma,
    dates,
    phone,
    tongue,
    turned,
    written,
)
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape


def named(rng: random.Random, say: Say, some: Sequence[Person]) -> list[Column]:
    """Return one or two columns that hold the names."""
    apart = [(say("first"), [one.given for one in some]), (say("last"), [one.family for one in some])]
    way = rng.choice((full, comma))
    return rng.choice((apart, apart[::-1], [(say("name"), list(map(way, some)))]))


def further(rng: random.Random, say: Say, some: Sequence[Person],
            whole: Sequence[Person] = ()) -> tuple[list[Column], list[str]]:
    """Return some of the other columns of a register, and the names of the guardians in them."""
    day, adults, at = dates(rng), aside(rng, whole or some, len(some)), rng.randrange(1000, 90000)
    have = [(say("birth"), [day() for _ in some])]
    have += [(say(title), [rng.choice(say(of).split(",")) for _ in some]) for title, of in (
        ("sex", "sexes"), ("bus", "buses"), ("meal", "meals"), ("speech", "speeches"), ("hand", "hands"),
        ("level", "levels"))]
    have += [(say("group"), [rng.choice(("K-2", "1B", "KG 3", "C"))] * len(some)),
             (say("phone"), [phone(rng) for _ in some]),
             (say("mail"), [address(rng, Person(two.given, one.family))
                            for one, two in zip(some, adults, strict=True)]),
             (say("street"), [f"{rng.randrange(1, 99)} {rng.choice(say('streets').split(','))}" for _ in some])]
    if who := rng.random() < 0.5:
        have.append((say("guardian"), [f"{two.given} {one.family}" for one, two in zip(some, adults, strict=True)]))
    some_of = rng.sample(have, rng.randrange(1, 6))
    if rng.random() < 0.6:
        some_of.insert(0, (say("id"), [str(at + 7 * step) for step in range(len(some))]))
    shown = who and have[-1] in some_of
    return some_of, [two.given for two in adults] if shown else []


@shape(CLEAN, HEADED)
def office_register(rng: random.Random, some: Sequence[Person]) -> Made:
    say = tongue(rng, WORDS)
    columns, adults = further(rng, say, some)
    at = rng.randrange(min(3, len(columns)) + 1)
    rows = turned([*columns[:at], *named(rng, say, some), *columns[at:]])
    text = written(rows, rng.choice((",", ";", "\t", "|", " | ")), rng.random() < 0.4)
    return Made(text, wanted(some), (*rows[0], *adults))


@shape(HEADLESS)
def office_register_untitled(rng: random.Random, some: Sequence[Person]) -> Made:
    say = tongue(rng, WORDS)
    day, sign, way = dates(rng), rng.choice((",", ";", "\t", "|")), rng.choice((full, comma, capitals))
    group, ids, sexes = rng.choice(("K-2", "1B", "KG")), rng.randrange(100, 90000), say("sexes").split(",")
    keep = [rng.random() < 0.6 for _ in range(4)]
    rows = [[cell for cell, kept in zip((str(ids + at), group), keep, strict=False) if kept] + [way(one), day()]
            + [cell for cell, kept in zip((rng.choice(sexes), phone(rng), rng.choice(say("buses").split(","))),
                                          keep[1:], strict=True) if kept] for at, one in enumerate(some)]
    return Made(written(rows, sign, rng.random() < 0.4), wanted(some), (*sexes, say("buses").replace(",", " ")))


@shape(HEADED)
def office_printed_pages(rng: random.Random, some: Sequence[Person]) -> Made:
    say = tongue(rng, WORDS)
    day, teacher, each = dates(rng), aside(rng, some, 1)[0], rng.randrange(4, 10)
    cells = [(rng.choice(("#", "No.", "Nr")), [str(at) for at in range(1, len(some) + 1)]), *named(rng, say, some),
             (say("birth"), [day() for _ in some]), (say("sex"), [rng.choice(say("sexes").split(",")) for _ in some])]
    rows = turned(cells[:rng.randrange(4, 6)])
    wide = [max(map(len, column)) + rng.randrange(2, 5) for column in zip(*rows, strict=True)]
    head, *body = ["".join(map(str.ljust, row, wide)).rstrip() for row in rows]
    pages, stamp = range(0, len(body), each), f"{say('printed')} {dates(rng, 2024)()} {rng.randrange(7, 17)}:24"
    top, tail, shown = [f"{say('school')}    {say('list')} K-2", f"{say('teacher')} {teacher.family}"], [], rng.random()
    text: list[str] = []
    for number, start in enumerate(pages, 1):
        foot = f"{say('page')} {number}" + (f" / {len(pages)}" if shown < 0.5 else "")
        tail = [f"{stamp}     {foot}"] if shown < 0.7 else [foot]
        text += [*top, head, *(["-" * sum(wide)] if shown < 0.4 else []), *body[start:start + each], *tail, ""]
    text.insert(-1 - len(tail), f"{say('total')} {len(some)}")
    return Made("\n".join(text), wanted(some), (*rows[0], *top, teacher.given, say("page"), say("total"), stamp))


@shape(HEADED)
def office_merged_cells(rng: random.Random, some: Sequence[Person]) -> Made:
    say = tongue(rng, WORDS)
    groups, adults, day = say("groups").split(","), aside(rng, some, 4), dates(rng)
    count = rng.randrange(2, 4)
    size, who = -(-len(some) // count), rng.random() < 0.5
    starts = {at * size: f"{groups[at]}" for at in range(count)}
    columns = [(say("group"), [starts.get(at, "") for at in range(len(some))]), *named(rng, say, some)]
    if who:
        columns.insert(1, (say("teacher").split(":")[0].strip(), [
            adults[at // size].family if at in starts else "" for at in range(len(some))]))
    columns += [(say("birth"), [day() for _ in some])] if rng.random() < 0.6 else []
    rows = turned(columns)
    return Made(written(rows, rng.choice(("\t", "\t", ";", " | ", ","))), wanted(some),
                (*rows[0], *groups, *(one.family for one in adults)))


@shape(HEADED)
def office_two_tables(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign = tongue(rng, WORDS), rng.choice((";", "\t", " | ", ","))
    sure = some[:-2] if len(some) > 9 and rng.random() < 0.3 else some
    half, texts, remarks = len(sure) // 2, [], [say("halves").replace(",", " "), say("waiting")]
    titles = (*say("halves").split(","), say("waiting"))
    for title, part in zip(titles, (sure[:half], sure[half:], some[len(sure):]), strict=True):
        if part:
            columns, adults = further(rng, say, part, some)
            rows = turned([*named(rng, say, part), *columns][:rng.randrange(3, 7)])
            texts.append("\n".join((rng.choice((title, f"{say('list')} – {title}")), written(rows, sign))))
            remarks += [*rows[0], *adults]
    return Made("\n\n".join(texts), wanted(sure), tuple(remarks), wanted(some[len(sure):]))


@shape(HEADED)
def office_transposed(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day = tongue(rng, WORDS), dates(rng)
    lines = named(rng, say, some)
    if rng.random() < 0.6:
        lines.insert(0, ("No.", [str(at) for at in range(1, len(some) + 1)]))
    lines += rng.sample([(say("birth"), [day() for _ in some]), (say("hand"), [
        rng.choice(say("hands").split(",")) for _ in some]), (say("bus"), [
            rng.choice(say("buses").split(",")) for _ in some])], rng.randrange(1, 4))
    sign = rng.choice(("\t", ";", " | ", "\t"))
    return Made("\n".join(sign.join((title, *cells)) for title, cells in lines), wanted(some),
                (*(title for title, _ in lines), say("hands").replace(",", " "), say("buses").replace(",", " ")))


@shape(HEADLESS)
def office_label_sheet(rng: random.Random, some: Sequence[Person]) -> Made:
    say, count, way = tongue(rng, WORDS), rng.choice((2, 3, 3, 4)), rng.choice((full, full, comma))
    under = [line for line in (f"{say('group')} K-2", say("school")) if rng.random() < 0.6]
    tab = rng.random() < 0.5
    wide = max(len(text) for text in (*map(way, some), *under)) + rng.randrange(3, 7)
    rows = []
    for start in range(0, len(some), count):
        labels = [[way(one), *under] for one in some[start:start + count]]
        rows += [("\t" if tab else "").join(cell if tab else cell.ljust(wide) for cell in line).rstrip()
                 for line in zip(*labels, strict=True)] + ([""] if under else [])
    return Made("\n".join(rows), wanted(some), tuple(under))


@shape()
def office_mail_thread(rng: random.Random, some: Sequence[Person]) -> Made:
    say, (sender, asker) = tongue(rng, WORDS), aside(rng, some, 2)
    sign, way = rng.choice(("- ", "", "• ", "# ")), rng.choice((full, comma, capitals))
    heads, day, hi, last = say("heads").split(","), dates(rng, 2024), say("hello"), rng.random()
    text = [f"{heads[0]} {full(sender)} <{address(rng, sender, 'school.example')}>", f"{heads[1]} {full(asker)}",
            f"{heads[2]} {day()} 08:{rng.randrange(10, 60)}", f"{heads[3]} RE: {say('list')} K-2", "",
            f"{hi} {asker.given},", say("here"), ""][4 if last < 0.2 else 0:]
    text += [f"{at}. {way(one)}" if sign == "# " else sign + way(one) for at, one in enumerate(some, 1)]
    text += ["", say("missing"), "", say("bye"), full(sender), f"{say('school')}, {phone(rng)}"]
    if last < 0.7:
        text += ["", f"> {heads[0]} {full(asker)}", f"> {heads[2]} {day()}", ">",
                 f"> {hi} {sender.given}, {say('ask')}", f"> {asker.given}"]
    return Made("\n".join(text), wanted(some), (full(sender), full(asker), say("school"), *heads))


@shape(HEADED)
def office_form_answers(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, adults = tongue(rng, WORDS), dates(rng, 2024), aside(rng, some, len(some))
    names = [(say("q_first"), [one.given for one in some]), (say("q_last"), [one.family for one in some])]
    if rng.random() < 0.4:
        names = [(say("q_whole"), [full(one) for one in some])]
    ills = (say("q_ill"), [rng.choice(say("ills").split(",")) for _ in some])
    mail = (say("mail"), [address(rng, two) for two in adults])
    parent = (say("q_you"), [f"{two.given} {rng.choice((one.family, two.family))}"
                             for one, two in zip(some, adults, strict=True)])
    rest = rng.sample([ills, mail, parent], rng.randrange(1, 4))
    at = rng.randrange(2)
    rows = turned([(say("q_time"), [f"{day()} {rng.randrange(7, 22)}:{rng.randrange(10, 60)}:07" for _ in some]),
                   *rest[:at], *names, *rest[at:]])
    text = written(rows, "\t") if rng.random() < 0.5 else written(rows, rng.choice(",;"), quotes=True)
    return Made(text, wanted(some), (*(two.given for two in adults), say("ills").replace(",", " ")))


@shape()
def office_caseload(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign, adult = tongue(rng, WORDS), rng.choice((" – ", " | ", "; ", "\t", " - ")), aside(rng, some, 1)[0]
    way = rng.choice((full, full, comma))
    keep, rows = [rng.random() < 0.6 for _ in range(3)], [f"{say('case')} ({full(adult)})"]
    for one in some:
        when = f"{rng.choice(say('days').split(','))} {rng.randrange(8, 12)}:{rng.choice((10, 20, 45))}"
        cells = (rng.choice(("K-2", "K-3", "1B")), when, f"{rng.choice((15, 20, 30))} min")
        shown = [cell for cell, kept in zip(cells, keep, strict=True) if kept]
        rows.append(sign.join((way(one), *shown, rng.choice(say("cases").split(",")))))
    return Made("\n".join(rows), wanted(some), (full(adult), say("case"), say("cases").replace(",", " ")))


@shape(CLEAN)
def office_records(rng: random.Random, some: Sequence[Person]) -> Made:
    say, teacher, way = tongue(rng, WORDS), aside(rng, some, 1)[0], rng.choice((0, 1, 2))
    columns, adults = further(rng, say, some)
    rows = turned([*named(rng, say, some), *columns])
    keys = [fold(title).replace(" ", "_").replace(".", "") for title in rows[0]]
    records = [dict(zip(keys, row, strict=True)) for row in rows[1:]]
    if way == 0:
        text = "\n".join(json.dumps(one, ensure_ascii=False) for one in records)
    else:
        whole = {fold(say("teacher").split(":")[0].strip()): full(teacher), fold(say("group")) + "_1": "K-2",
                 fold(say("list")).replace(" ", "_"): records}
        text = json.dumps(whole if way == 1 else records, ensure_ascii=False, indent=rng.choice((1, 2, 4)))
    return Made(text, wanted(some), (*keys, full(teacher), *adults))


@shape()
def office_scan(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = tongue(rng, WORDS), rng.choice((full, comma, capitals))
    marks, ends = rng.sample(("", "| ", ". ", "_ ", "~ ", "' ", "= "), 4), ("", "", " .", " |", " _", " ,", " —", " ' ")
    number, dirt = rng.choice(("{}.", "{} .", "{},", "{}-", "")), rng.choice(("~ . _", "|", ". .", "— —", "_"))
    rows = [f"{rng.choice(marks)}{say('list').upper()}  2024 .", dirt] + [
        f"{rng.choice(marks)}{number.format(at)} {way(one)}{rng.choice(ends)}".strip()
        for at, one in enumerate(some, 1)]
    rows.insert(rng.randrange(3, len(rows)), dirt)
    rows += rng.choice(([], [f"- {rng.randrange(1, 9)} -"], [f"{say('total')} {len(some)} ."]))
    return Made("\n".join(rows), wanted(some), (say("list"), say("total")))


@shape(HEADED)
def office_web_source(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day = tongue(rng, WORDS), dates(rng)
    if rng.random() < 0.4:
        tag, kind = rng.choice(("ul", "ol")), rng.choice(("", ' class="row"'))
        inner = [f"  <li{kind}>{full(one)}{rng.choice(('', f' <small>{day()}</small>'))}</li>" for one in some]
        text = [f"<h2>{say('list')}</h2>", f"<{tag}>", *inner, f"</{tag}>"]
        return Made("\n".join(text), wanted(some), (say("list"),))
    kind, apart = rng.choice(("", ' class="c"', ' align="left"')), rng.random() < 0.3
    rows = turned([*named(rng, say, some), (say("birth"), [day() for _ in some])])
    text = [f"<table{kind}>", f"<caption>{say('school')}</caption>"][:rng.randrange(1, 3)]
    for at, row in enumerate(rows):
        cells = [f"<{'td' if at else 'th'}{kind}>{cell}</{'td' if at else 'th'}>" for cell in row]
        text += ["<tr>", *(f"  {cell}" for cell in cells), "</tr>"] if apart else [f"<tr>{''.join(cells)}</tr>"]
    return Made("\n".join((*text, "</table>")), wanted(some), (*rows[0], say("school")))


@shape()
def office_calendar(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, event = tongue(rng, WORDS), dates(rng, 2024), rng.choice(("raw", "agenda", "agenda", "table"))
    rows, head = [], [f"{say('calendar')} K-2"]
    for one in some:
        hour = f"{rng.randrange(8, 17):02}:{rng.choice(('00', '20', '40'))}"
        if event == "raw":
            stamp = f"2024{rng.randrange(1, 13):02}{rng.randrange(1, 29):02}"
            rows += ["BEGIN:VEVENT", f"DTSTART:{stamp}T{hour.replace(':', '')}00",
                     f"SUMMARY:{say('event')} {full(one)}", f"LOCATION:{say('room')}", "END:VEVENT"]
        elif event == "agenda":
            weekday = rng.choice(say("days").split(","))
            rows.append(f"{weekday} {day()} {hour} {say('event')} {full(one)} ({say('room')})")
        else:
            rows.append(f"{day()}\t{hour}\t{say('event')} {full(one)}\t{say('room')}")
    head = ["BEGIN:VCALENDAR", "VERSION:2.0"] if event == "raw" else head[:rng.randrange(2)]
    return Made("\n".join((*head, *rows)), wanted(some), (say("event"), say("room"), say("calendar"), "VEVENT"))
