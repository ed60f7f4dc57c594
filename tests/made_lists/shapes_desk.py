"""Shapes of list as they lie on a desk: messages, notes, slides, file names and grids, kept shut."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, fold
from made_lists.papers import address, aside, capitals, comma, dates, phone, tongue
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese and Dutch; a word may be written in several ways.
WORDS = {
    "to": "To:~Cc:|Para:~CC:|À :~Cc :|An:~Cc:|A:~Cc:|Para:~Cc:|Aan:~Cc:",
    "subject": "Subject: Class list|Asunto: lista|Objet : liste|Betreff: Klassenliste|Oggetto: elenco|Assunto: lista|"
               "Onderwerp: lijst",
    "ask": "Can you send me the names again?~who is in your class this year?|¿Me mandas los nombres?|Tu m'envoies les "
           "prénoms ?|Schickst du mir die Namen?|Mi mandi i nomi?|Mandas-me os nomes?|Stuur je me de namen?",
    "sure": "Sure, one by one:~Yes, here they are|Claro, ahí van|Oui, voilà|Ja klar, hier kommen sie|Certo, eccoli|"
            "Claro, aqui vão|Ja hoor, daar komen ze",
    "thanks": "Thank you!~Got it, thanks|¡Gracias!|Merci beaucoup !|Danke dir!|Grazie mille|Obrigada!|Dank je wel",
    "day": "Daily list~Attendance today|Lista del día|Liste du jour|Tagesliste|Elenco del giorno|Lista do dia|Daglijst",
    "present": "Present~Here|Presentes|Présents|Anwesend|Presenti|Presentes|Aanwezig",
    "absent": "Absent~Out today|Ausentes|Absents|Abwesend~Fehlt|Assenti|Ausentes|Afwezig",
    "early": "Early pick-up~Leaving early|Sale antes|Départ anticipé|Wird früher abgeholt|Uscita anticipata|Sai mais "
             "cedo|Gaat eerder weg",
    "why": "fever,dentist,family trip,called in|fiebre,dentista,viaje|fièvre,dentiste,voyage|Fieber,Zahnarzt,verreist|"
           "febbre,dentista,in viaggio|febre,dentista,viagem|koorts,tandarts,op reis",
    "at": "at|a las|à|um|alle|às|om",
    "first": "First name~Given name|Nombre|Prénom|Vorname|Nome|Nome próprio|Voornaam",
    "last": "Last name~Surname|Apellidos|Nom|Nachname|Cognome|Apelido|Achternaam",
    "name": "Name~Child~Student|Nombre~Alumno|Nom et prénom~Enfant|Name~Kind|Nome~Bambino|Nome~Criança|Naam~Kind",
    "birth": "Born~Birthday|Nacimiento|Né(e) le|Geboren|Nato il|Nascimento|Geboren",
    "phone": "Phone~Mobile|Teléfono~Móvil|Tél.|Telefon~Handy|Telefono|Telemóvel|Mobiel",
    "mother": "Mother~Mom|Madre|Mère|Mutter|Madre|Mãe|Moeder",
    "notes": "Notes|Observaciones|Remarques|Bemerkung|Note|Observações|Opmerking",
    "remark": "no nuts,new in October,wears glasses|usa gafas,sin gluten|porte des lunettes,sans porc|trägt eine "
              "Brille,keine Nüsse|porta gli occhiali,senza latte|usa óculos,sem glúten|draagt een bril,geen noten",
    "done": "form returned,photo OK|autorización,foto|autorisation,photo|Formular,Foto|modulo,foto|autorização,foto|"
            "formulier,foto",
    "welcome": "Welcome to our class!~Meet our class|¡Bienvenidos a nuestra clase!|Bienvenue dans notre classe !|"
               "Willkommen in unserer Klasse!|Benvenuti nella nostra classe!|Bem-vindos à nossa turma!|Welkom in onze "
               "klas!",
    "tables": "Red table,Blue table,Green table|Mesa roja,Mesa azul,Mesa verde|Table rouge,Table bleue,Table verte|"
              "Roter Tisch,Blauer Tisch,Grüner Tisch|Tavolo rosso,Tavolo blu,Tavolo verde|Mesa vermelha,Mesa azul,"
              "Mesa verde|Rode tafel,Blauwe tafel,Groene tafel",
    "slide": "Slide|Diapositiva|Diapositive|Folie|Diapositiva|Diapositivo|Dia",
    "evening": "Open house|Reunión de padres|Réunion de rentrée|Elternabend|Riunione dei genitori|Reunião de pais|"
               "Informatieavond",
    "work": "selfportrait,drawing,photo|autorretrato,dibujo,foto|autoportrait,dessin,photo|selbstbild,zeichnung,foto|"
            "autoritratto,disegno,foto|autorretrato,desenho,foto|zelfportret,tekening,foto",
    "open": "okay so the first one is~first|bueno, la primera es~primero|alors d'abord~le premier c'est|also zuerst~"
            "als erstes|allora prima|então primeiro|oké eerst",
    "next": "then,next is,after that,and then|luego,después,y luego|ensuite,puis,après|dann,danach,als nächstes|poi,"
            "dopo,e poi|depois,a seguir,e depois|dan,daarna,en dan",
    "final": "and last|y por último|et enfin|und zuletzt|e infine|e por fim|en als laatste",
    "parents": "To the parents of~To the family of|A la familia de|Aux parents de|An die Eltern von|Ai genitori di|"
               "Aos pais de|Aan de ouders van",
    "roads": "Mill Road #,Oak Lane #|Calle Mayor #,Calle del Río #|# rue des Lilas,# rue du Port|Bachgasse #,Schulweg "
             "#|Via Larga #,Via del Mulino #|Rua da Fonte #,Rua Nova #|Molenweg #,Kerkstraat #",
    "towns": "Northfield|Villanueva|Sainte-Croix|Neustadt|Borgo Nuovo|Vila Nova|Nieuwdorp",
    "week": "M,T,W,T,F|L,M,X,J,V|L,M,M,J,V|Mo,Di,Mi,Do,Fr|L,M,M,G,V|S,T,Q,Q,S|ma,di,wo,do,vr",
    "sum": "Total~Present|Total|Total~Présents|Summe|Totale|Total|Totaal",
    "key": "P = present, A = absent|P = presente, A = ausente|P = présent, A = absent|P = da, A = fehlt|P = presente, "
           "A = assente|P = presente, A = falta|P = er, A = weg",
    "stop": "Stop|Parada|Arrêt|Haltestelle|Fermata|Paragem|Halte",
    "driver": "Driver:|Conductor:|Conducteur :|Fahrer:|Autista:|Motorista:|Chauffeur:",
    "route": "Bus route 4|Ruta 4|Ligne 4|Buslinie 4|Linea 4|Linha 4|Buslijn 4",
    "letters": "Letters~Sounds|Letras|Lettres|Buchstaben|Lettere|Letras|Letters",
    "counting": "Counting|Conteo|Compter|Zählen|Contare|Contagem|Tellen",
    "mean": "Class average|Promedio|Moyenne|Durchschnitt|Media|Média|Gemiddelde",
    "test": "Fall screening|Evaluación inicial|Évaluation de rentrée|Lernstand Herbst|Prove d'ingresso|Avaliação "
            "inicial|Toets najaar",
    "seats": "Cubby~Locker|Casillero~Percha|Casier|Garderobe|Armadietto|Cabide|Kapstok",
}


def _parts(rng: random.Random, some: Sequence[Person], count: int) -> list[Sequence[Person]]:
    """Cut children into some parts, none of them empty."""
    cuts = sorted(rng.sample(range(1, len(some)), min(count, len(some)) - 1))
    return [some[start:end] for start, end in zip((0, *cuts), (*cuts, len(some)), strict=True)]


@shape()
def desk_addressees(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign = tongue(rng, WORDS), rng.choice(("; ", ";\n", "; "))
    way = rng.choice((full, comma, lambda one: f'"{comma(one)}"'))
    names = list(map(way, some))
    at = rng.choice(("pupils.example", "school.example"))
    text = sign.join(f"{name} <{address(rng, one, at)}>" for name, one in zip(names, some, strict=True))
    if "\n" in sign and rng.random() < 0.5:
        return Made(text, wanted(some))
    return Made(f"{say('to')} {text}\n{say('subject')}", wanted(some), (say("to"), say("subject")))


@shape()
def desk_messages(rng: random.Random, some: Sequence[Person]) -> Made:
    say, (asks, tells), day = tongue(rng, WORDS), aside(rng, some, 2), dates(rng, 2024)()
    form = rng.choice(("[{day}, {time}] {who}: {text}", "{day} {time} - {who}: {text}", "{who} ({time}): {text}",
                       "[{time}] {who}: {text}"))
    said = [(asks, say("ask")), (tells, say("sure")), *((tells, full(one)) for one in some), (asks, say("thanks"))]
    called = {one: full(one) if rng.random() < 0.6 else one.given for one in (asks, tells)}
    minute, rows = rng.randrange(10, 30), []
    for who, text in said:
        minute += rng.randrange(2)
        rows.append(form.format(day=day, time=f"08:{minute}", who=called[who], text=text))
    return Made("\n".join(rows), wanted(some), (full(asks), full(tells)))


@shape()
def desk_day_list(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, way = tongue(rng, WORDS), dates(rng, 2024)(), rng.choice((full, comma))
    sign, mark = rng.choice((" – ", " (", " - ")), rng.choice(("- ", "", "• "))
    rows = [f"{say('day')} {day}"]
    for head, part in zip(("present", "absent", "early"), _parts(rng, some, 3), strict=False):
        rows += ["", say(head) + rng.choice((":", f" ({len(part)})"))]
        for one in part:
            why = f"{rng.randrange(10, 14)}:{rng.choice((15, 30, 45))}" if head == "early" else ""
            why = why or (rng.choice(say("why").split(",")) if head == "absent" else "")
            rows.append(f"{mark}{way(one)}" + (f"{sign}{why}{')' if '(' in sign else ''}" if why else ""))
    heads = tuple(say(head) for head in ("day", "present", "absent", "early"))
    return Made("\n".join(rows), wanted(some), (*heads, say("why").replace(",", " ")))


@shape()
def desk_cards(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, adults = tongue(rng, WORDS), dates(rng), aside(rng, some, len(some))
    colon, rule = rng.choice((": ", ":\t", " = ", " : ")), rng.choice(("", "", "---", "* * *"))
    apart, way = rng.random() < 0.5, rng.choice((full, comma))
    keep, cards = [rng.random() < 0.6 for _ in range(4)], []
    for at, (one, adult) in enumerate(zip(some, adults, strict=True), 1):
        pairs = [(say("first"), one.given), (say("last"), one.family)] if apart else [(say("name"), way(one))]
        rest = [(say("birth"), day()), (say("mother"), f"{adult.given} {one.family}"), (say("phone"), phone(rng)),
                (say("notes"), rng.choice(("-", "", *say("remark").split(","))))]
        pairs += [pair for pair, kept in zip(rest, keep, strict=True) if kept] or rest[:1]
        pairs = [("Nr", str(at)), *pairs] if keep[0] else pairs
        cards.append("\n".join(f"{key}{colon}{value}".rstrip() for key, value in pairs))
    return Made((f"\n{rule}\n" if rule else "\n\n").join(cards), wanted(some),
                (*(adult.given for adult in adults), say("remark").replace(",", " ")))


@shape()
def desk_marked_up_notes(rng: random.Random, some: Sequence[Person]) -> Made:
    say, one_way = tongue(rng, WORDS), rng.choice((full, comma))
    done = say("done").split(",")
    if rng.random() < 0.5:
        rows = [f"| {say('name')} | {' | '.join(done)} |", "|" + "---|" * 3]
        rows += [f"| {one_way(one)} | {rng.choice(('✓', ' ', 'x'))} | {rng.choice(('✓', ' ', 'x'))} |" for one in some]
        return Made("\n".join(rows), wanted(some), (say("name"), *done))
    bold, rows = rng.choice(("", "**", "_")), [f"# {say('day')}", ""]
    for table, part in zip(say("tables").split(","), _parts(rng, some, 3), strict=False):
        rows += [f"## {table}", *(f"- [{rng.choice(' x')}] {bold}{full(one)}{bold}" + rng.choice(
            ("", "", f" ({rng.choice(say('remark').split(','))})")) for one in part), ""]
    return Made("\n".join(rows), wanted(some), tuple(say(key).replace(",", " ") for key in ("day", "tables", "remark")))


@shape()
def desk_slide(rng: random.Random, some: Sequence[Person]) -> Made:
    say, adult, mark = tongue(rng, WORDS), aside(rng, some, 1)[0], rng.choice(("• ", "▪ ", "– ", "o ", "➢ ", "\t• "))
    way = rng.choice((full, full, lambda one: one.given, lambda one: f"{one.given} {one.family[0]}."))
    rows = [say("welcome"), f"{rng.choice(('', say('evening') + ', '))}{full(adult)}", ""]
    count = rng.randrange(1, 4)
    for at, (table, part) in enumerate(zip(say("tables").split(","), _parts(rng, some, count), strict=False), 1):
        rows += [table] if count > 1 else []
        rows += [*(mark + way(one) for one in part), f"{say('slide')} {at}" if rng.random() < 0.8 else str(at), ""]
    return Made("\n".join(rows), wanted(some), (say("welcome"), say("evening"), full(adult), say("slide"),
                                                say("tables").replace(",", " ")))


@shape()
def desk_file_names(rng: random.Random, some: Sequence[Person]) -> Made:
    say, end = tongue(rng, WORDS), rng.choice((".jpg", ".png", ".pdf", ".JPG", ".docx"))
    work, year = rng.choice(say("work").split(",")), rng.choice(("2024", "24-25", "K2"))
    form = rng.choice(("{given}_{family}_{work}{end}", "{work}_{given}_{family}{end}", "{year}_{given}_{family}{end}",
                       "{family}, {given} - {work}{end}", "{given} {family} {work} {year}{end}",
                       "{at:02}_{given}_{family}{end}", "{work} {given} {family}{end}", "{given} {family}{end}"))
    rows = [form.format(given=one.given, family=one.family, work=work, year=year, end=end, at=at)
            for at, one in enumerate(some, 1)]
    if rng.random() < 0.3:
        rows = [f"{row}    {rng.randrange(20, 900)} KB" for row in rows]
    return Made("\n".join(rows), wanted(some), (work, year, end))


@shape()
def desk_dictated(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = tongue(rng, WORDS), rng.choice((full, full, lambda one: one.given))
    *most, last = some[1:]
    sign = rng.choice((", ", ",\n", " … ", "\n"))
    words = [f"{say('open')} {way(some[0])}", *(rng.choice((f"{rng.choice(say('next').split(','))} ", "")) + way(one)
                                                for one in most), f"{say('final')} {way(last)}"]
    return Made(sign.join(words) + rng.choice(("", ".")), wanted(some),
                (say("open"), say("next").replace(",", " "), say("final")))


@shape(HEADED)
def desk_cell_a_line(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, apart = tongue(rng, WORDS), dates(rng), rng.random() < 0.5
    titles = [say("first"), say("last")] if apart else [say("name")]
    way = rng.choice((full, comma))
    number, gap = rng.random() < 0.5, rng.choice((0, 0, 1))
    rows = [["Nr"] * number + titles + [say("birth")]] + [
        [str(at)] * number + ([one.given, one.family] if apart else [way(one)]) + [day()]
        for at, one in enumerate(some, 1)]
    text = ("\n\n" if gap else "\n").join("\n".join(row) for row in rows)
    return Made(text, wanted(some), tuple(rows[0]))


@shape()
def desk_address_labels(rng: random.Random, some: Sequence[Person]) -> Made:
    say, code = tongue(rng, WORDS), rng.randrange(1000, 99999)
    above, country = rng.random() < 0.7, rng.choice(("{code} {town}", "{town} {code}", "{code} {town}"))
    town, labels = country.format(code=code, town=say("towns")), []
    for one in some:
        road = rng.choice(say("roads").split(",")).replace("#", str(rng.randrange(1, 120)))
        labels.append("\n".join((*[say("parents")][:above], full(one), road, town)))
    return Made("\n\n".join(labels), wanted(some), (say("parents"), say("roads").replace(",", " "), say("towns")))


@shape(CLEAN)
def desk_odd_numbers(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = tongue(rng, WORDS), rng.choice((full, comma, capitals))
    numbers = rng.choice((sorted(rng.sample(range(1, 99), len(some))), [7 * at + 103 for at in range(len(some))],
                          [at % 5 + 1 for at in range(len(some))], rng.sample(range(1, 40), len(some)),
                          list(range(len(some), 0, -1)), [1] * len(some)))
    form = rng.choice(("{}. ", "{}) ", "#{} ", "({}) ", "{:03} ", "{}\t", "{} - ", "{}.) ", "nº {} "))
    head = [say("seats")] if rng.random() < 0.4 else []
    rows = [form.format(number) + way(one) for number, one in zip(numbers, some, strict=True)]
    return Made("\n".join((*head, *rows)), wanted(some), (say("seats"),))


@shape(HEADED)
def desk_week_grid(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign, way = tongue(rng, WORDS), rng.choice(("\t", " | ", ";", "  ")), rng.choice((full, comma))
    marks, wide = rng.choice(("PPPA", "✓✓✓–", "xxx-", "///O", "1110")), max(len(way(one)) for one in some)
    rows = [[say("name"), *say("week").split(","), say("sum")]]
    for one in some:
        days = [rng.choice(marks) for _ in range(5)]
        rows.append([way(one), *days, str(sum(day == marks[0] for day in days))])
    rows.append([say("sum"), *(str(sum(row[at] == marks[0] for row in rows[1:])) for at in range(1, 6)), ""])
    text = "\n".join(sign.join((row[0].ljust(wide) if sign == "  " else row[0], *row[1:])).rstrip() for row in rows)
    text += f"\n{say('key')}" if marks == "PPPA" else ""
    return Made(text, wanted(some), (say("name"), say("sum"), say("key")))


@shape()
def desk_bus_stops(rng: random.Random, some: Sequence[Person]) -> Made:
    say, driver, inline = tongue(rng, WORDS), aside(rng, some, 1)[0], rng.random() < 0.4
    rows, way = [say("route"), f"{say('driver')} {full(driver)}, {phone(rng)}"], rng.choice((full, full, comma))
    for at, part in enumerate(_parts(rng, some, rng.randrange(2, 5)), 1):
        road = rng.choice(say("roads").split(",")).replace("#", str(rng.randrange(1, 90)))
        stop = f"{say('stop')} {at} – {road} – 7:{rng.randrange(10, 59)}"
        rows += [f"{stop}: {', '.join(map(full, part))}"] if inline else [stop, *(f"   {way(one)}" for one in part)]
    return Made("\n".join(rows), wanted(some), (full(driver), *(say(key).replace(",", " ") for key in (
        "route", "driver", "stop", "roads"))))


@shape(HEADED)
def desk_screening(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign, way = tongue(rng, WORDS), rng.choice(("\t", ";", ",", " | ")), rng.choice((full, comma))
    day, apart = dates(rng, 2024)(), rng.random() < 0.5
    title = [say("last"), say("first")] if apart else [say("name")]
    rows = [[*title, say("letters"), say("counting")]]
    for one in some:
        name = [one.family, one.given] if apart else [f'"{comma(one)}"' if sign == "," and way is comma else way(one)]
        rows.append([*name, f"{rng.randrange(3, 27)}/26", rng.choice((str(rng.randrange(5, 100)), "-"))])
    rows.append([say("mean"), *[""] * apart, f"{rng.randrange(8, 22)}/26", str(rng.randrange(30, 60))])
    text = "\n".join((f"{say('test')} {day}", *map(sign.join, rows)))
    return Made(text, wanted(some), (*rows[0], say("mean"), say("test")))


@shape(HEADED)
def desk_fixed_width(rng: random.Random, some: Sequence[Person]) -> Made:
    say, upper = tongue(rng, WORDS), rng.random() < 0.6
    rows = [[say("last"), say("first"), "ID", "S"]]
    rows += [[one.family, one.given, f"{rng.randrange(10**6):07}", rng.choice("MF")] for one in some]
    rows = [[cell.upper() for cell in row] for row in rows] if upper else rows
    order = rng.choice(((2, 0, 1, 3), (0, 1, 2, 3), (2, 1, 0, 3), (0, 1, 3)))
    wide = {at: max(len(row[at]) for row in rows) + rng.randrange(2, 6) for at in order}
    text = ["".join(row[at].ljust(wide[at]) for at in order).rstrip() for row in rows]
    text.insert(1, "".join(("=" * (wide[at] - 1)).ljust(wide[at]) for at in order).rstrip())
    text += rng.choice(([], [f"*** {len(some)} ***"], ["*** EOF ***"]))
    return Made("\n".join(text), wanted(some), tuple(map(fold, rows[0])))
