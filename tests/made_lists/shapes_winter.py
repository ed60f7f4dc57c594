"""More shapes of list from a whole school year; open since the figures of a first look were taken."""

from __future__ import annotations

import random
from collections.abc import Sequence
from itertools import zip_longest

from made_lists.judging import Made
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.year import (
    FAMILY,
    GIVEN,
    KIN,
    TITLES,
    WHOLE,
    born,
    brief,
    date,
    day,
    grown,
    made,
    money,
    names_of,
    opening,
    parted,
    phone,
    pick,
    told,
    written,
)

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
WORDS = """
swim en Minnows|Guppies|Level {}|Lane {}; can float|afraid of water|ear tubes; Swim groups|Swimming Tuesday
swim es Nivel {}|Calle {}; flota solo|miedo al agua|sin gafas|otitis; Natación|Grupos de piscina
swim fr Niveau {}|Groupe {}; sait flotter|peur de l'eau|lunettes|otites; Piscine|Groupes piscine
swim de Gruppe {}|Bahn {}; Seepferdchen|hat Angst|Schwimmflügel|Ohrenschutz; Schwimmen|Schwimmgruppen
swim it Livello {}|Corsia {}; galleggia|paura dell'acqua|braccioli|otite; Piscina|Gruppi di nuoto
swim pt Nível {}|Pista {}; flutua sozinho|medo da água|braçadeiras|otites; Natação|Grupos de piscina
swim nl Groep {}|Baan {}; kan drijven|bang voor water|zwembandjes|oordopjes; Zwemmen
book en Book|Title; Due|Return by; The Blue Kite|Bear Finds a Boat|Ten Little Ducks; returned|lost|overdue
book es Libro|Título; Devolver|Fecha; El pato valiente|La luna y el zorro|Un oso en casa; devuelto|perdido|pendiente
book fr Livre|Titre; Retour|À rendre le; Le loup rouge|La petite graine|Un ours à l'école; rendu|perdu|en retard
book de Buch|Titel; Rückgabe|zurück bis; Der kleine Igel|Das blaue Boot|Bär geht baden; zurück|verloren|überfällig
book it Libro|Titolo; Restituire|Scadenza; Il lupo verde|La luna storta|Un orso in cucina; restituito|perso|in ritardo
book pt Livro|Título; Devolver|Entrega; O pato azul|A lua e o rato|Um urso na escola; devolvido|perdido|em atraso
birthday en September|October|November|December|January|February; turns 5|turns 6; Birthdays|Birthday chart
birthday es Septiembre|Octubre|Noviembre|Diciembre|Enero|Febrero; cumple 5|cumple 6; Cumpleaños
birthday fr Septembre|Octobre|Novembre|Décembre|Janvier|Février; 5 ans|6 ans; Anniversaires
birthday de September|Oktober|November|Dezember|Januar|Februar; wird 5|wird 6; Geburtstage|Geburtstagskalender
birthday it Settembre|Ottobre|Novembre|Dicembre|Gennaio|Febbraio; compie 5|compie 6; Compleanni
birthday pt Setembro|Outubro|Novembro|Dezembro|Janeiro|Fevereiro; faz 5|faz 6; Aniversários
costume en pirate|witch|superhero|butterfly|???; brings cupcakes|no face paint|costume from school; Costume parade
costume es pirata|bruja|superhéroe|mariposa|tigre|???; trae zumo|sin maquillaje; Carnaval|Disfraces
costume fr pirate|sorcière|chevalier|papillon|tigre|???; apporte un gâteau|pas de maquillage; Carnaval|Déguisements
costume de Pirat|Hexe|Ritter|Schmetterling|Löwe|???; bringt Muffins|keine Schminke; Fasching|Faschingsfeier
costume it pirata|strega|cavaliere|farfalla|tigre|???; porta le frittelle|niente trucco; Carnevale|Maschere
costume pt pirata|bruxa|cavaleiro|borboleta|tigre|???; traz sumo|sem pintura; Carnaval|Desfile
reading en Red group|Blue group|Green group|Yellow group; Reading groups|Guided reading, Room 4
reading es Grupo rojo|Grupo azul|Grupo verde|Grupo amarillo; Grupos de lectura
reading fr Groupe rouge|Groupe bleu|Groupe vert|Groupe jaune; Groupes de lecture
reading de Rote Gruppe|Blaue Gruppe|Grüne Gruppe|Gelbe Gruppe; Lesegruppen|Vorlesegruppen
reading it Gruppo rosso|Gruppo blu|Gruppo verde|Gruppo giallo; Gruppi di lettura
reading pt Grupo vermelho|Grupo azul|Grupo verde|Grupo amarelo; Grupos de leitura
contact en Class reps|Room parents; Parent|Mother; Phone|Cell; wants no texts|works nights
contact es Delegadas de clase|Vocales; Madre|Padre; Móvil|Teléfono; sin mensajes
contact fr Parents délégués|Délégués; Parent|Mère; Portable|Tél.; pas de SMS
contact de Elternvertreter|Elternbeirat; Elternteil|Mutter; Handy|Telefon; nur abends
contact it Rappresentanti di classe; Genitore|Mamma; Cellulare|Telefono; solo la sera
contact pt Representantes dos pais; Mãe|Encarregado de educação; Telemóvel|Contacto; só à noite
sub en 8:15 Arrival, free play|9:00 Circle time|10:30 Recess; Students|My class; Aide; runner|naps long
sub es 9:00 Asamblea|10:30 Patio|12:00 Comedor; Alumnos|Mi grupo; Auxiliar; se escapa|va mucho al baño
sub fr 8h30 Accueil|9h00 Regroupement|10h15 Récréation; Élèves|Ma classe; ATSEM; dort encore|pleure le matin
sub de 8:00 Freispiel|9:00 Morgenkreis|10:30 Garten; Kinder|Meine Gruppe; Zweitkraft; läuft weg|beißt
sub it 8:30 Accoglienza|10:00 Merenda|12:00 Pranzo; Bambini|La mia sezione; Collaboratrice; scappa|piange al mattino
sub pt 9:00 Acolhimento|10:30 Recreio|12:00 Almoço; Crianças|A minha sala; Auxiliar; foge|chora de manhã
wait en Waiting list|Waitlist (not confirmed); Room 3 – enrolled|Confirmed; sibling|full time|mornings
wait es Lista de espera; Admitidos|Plazas confirmadas; hermano en el centro|jornada completa
wait fr Liste d'attente; Inscrits|Places confirmées; fratrie|temps plein|matin
wait de Warteliste|Nachrücker; Zusagen|Feste Plätze; Geschwisterkind|ganztags|halbtags
wait it Lista d'attesa; Iscritti|Ammessi; fratello|tempo pieno
wait pt Lista de espera; Admitidos|Vagas confirmadas; irmão na escola|dia inteiro
pdf en Class list 2024-25|Homeroom roster; Page {} of {}; Printed {}; Oak Hill Elementary; F|M
pdf es Listado de grupo 2024/25; Página {} de {}; Impreso el {}; CEIP Las Eras; M|H
pdf fr Liste de classe 2024-2025; Page {} sur {}; Édité le {}; École maternelle Les Tilleuls; F|G
pdf de Klassenliste 2024/25|Gruppenliste; Seite {} von {}; Stand: {}; Kita Am Lindenweg; w|m
pdf it Elenco sezione 2024/25; Pagina {} di {}; Stampato il {}; Scuola dell'infanzia Il Prato; F|M
pdf pt Lista da turma 2024/2025; Página {} de {}; Impresso em {}; Jardim de Infância do Vale; F|M
cell en Birthday; Goes home with; Allergies; none|nuts|dairy
cell es Cumpleaños; Recoge; Alergias; ninguna|nueces|lactosa
cell fr Anniversaire; Repart avec; Allergies; aucune|noix|lait
cell de Geburtstag; Abholung; Allergien; keine|Nüsse|Milch
cell it Compleanno; Ritiro; Allergie; nessuna|noci|latte
cell pt Aniversário; Quem vem buscar; Alergias; nenhuma|nozes|leite
ride en Carpool to the farm|Drivers for Friday; {} seats|{} booster seats; Still need a ride
ride es Coches para la granja; {} plazas; Sin coche todavía
ride fr Covoiturage sortie ferme; {} places; Sans voiture
ride de Fahrgemeinschaften Ausflug|Wer fährt wen; {} Plätze|{} Kindersitze; Noch ohne Auto
ride it Macchine per la gita; {} posti; Ancora senza passaggio
ride pt Boleias para a quinta; {} lugares; Ainda sem boleia
job en Line leader|Door holder|Calendar|Plant waterer|Caboose|Lunch cart; On vacation|Day off; Class jobs
job es Primero de la fila|Borrar la pizarra|Calendario|Regar plantas|Reparte; Descansan|Sin cargo; Encargados
job fr Chef de rang|Date du jour|Météo|Arrosage|Distribution; En vacances|Repos; Métiers de la classe
job de Türdienst|Kalender|Blumendienst|Tischdienst|Wetterdienst; Ferien|frei; Dienste der Woche
job it Capofila|Calendario|Innaffiare|Apparecchiare|Meteo; Riposo|In vacanza; Incarichi
job pt Chefe da fila|Calendário|Regar as plantas|Pôr a mesa|Meteorologia; Descanso|De férias; Tarefas
money en Zoo trip|Farm visit|Pumpkin patch; paid|owes {}|scholarship; Total collected
money es Excursión a la granja|Salida al teatro; pagado|debe {}|becado; Total
money fr Sortie au zoo|Sortie à la ferme; payé|reste {}|chèque; Total
money de Ausflug Zoo|Ausflug Bauernhof; bezahlt|fehlt {}|bar; Summe
money it Gita alla fattoria|Gita al museo; pagato|mancano {}|contanti; Totale
money pt Visita à quinta|Passeio ao zoo; pago|faltam {}|isento; Total
photo en Package A|Package B|digital only; paid|not paid|retake; #|No.; Package; Status
photo es pack A|pack B|solo grupo; pagado|pendiente|repetir; N.º|Núm.; Pack; Pago
photo fr pochette A|pochette B|groupe seul; payé|à payer|à refaire; N°; Pochette; Règlement
photo de Mappe A|Mappe B|nur Gruppenbild; bezahlt|offen|Nachtermin; Nr.|Lfd. Nr.; Mappe; Status
photo it pacchetto A|pacchetto B|solo gruppo; pagato|da pagare|da rifare; N.; Pacchetto; Pagamento
photo pt pacote A|pacote B|só grupo; pago|por pagar|repetir; N.º; Pacote; Pagamento
card en Valentine names|Mailbox labels|Cards for
card es Tarjetas de amistad|Etiquetas del buzón
card fr Cartes de vœux|Étiquettes courrier
card de Adventskalender|Karten für
card it Biglietti di auguri|Etichette
card pt Cartões de amizade|Etiquetas do correio
"""


@shape()
def swim_groups(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (levels, notes, title) = told(rng, WORDS, "swim")
    name, groups, level = written(rng), parted(rng, some, 3, 7), pick(rng, levels)
    level, mark, form = level if "{" in level else level + " {}", pick(rng, "|- |• "), pick(rng, " ({})| – {}| / {}")
    rows, elders = opening(rng, title), grown(rng, some, len(groups))
    for at, group in enumerate(groups):
        teacher = f" – {pick(rng, TITLES[lang])} {elders[at].family}" if at % 2 or rng.random() < 0.5 else ""
        rows.append(level.format(at + 1) + teacher + rng.choice(("", ":")))
        rows += [mark + name(one) + (form.format(pick(rng, notes)) if rng.random() < 0.3 else "") for one in group]
    return made(rows, some, *names_of(elders), levels, notes, title)


@shape(HEADED)
def library_books(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (book, due, titles, states) = told(rng, WORDS, "book")
    name, sign, quoted = written(rng), rng.choice(("\t", "\t", ";", " | ")), rng.random() < 0.4
    rows = [[pick(rng, WHOLE[lang]), pick(rng, book), pick(rng, due)]]
    rows += [[name(one), f"“{title}”" if quoted else title, rng.choice((day(rng, lang), pick(rng, states)))]
             for one in some for title in [pick(rng, titles)]]
    return made(map(sign.join, rows), some, titles, states, book, due)


@shape()
def birthday_months(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (months, ages, title) = told(rng, WORDS, "birthday")
    name, sign, aged = written(rng), rng.choice((" – ", ". ", ": ", "  ")), rng.choice((0.0, 1.0, 0.4))
    groups, rows = parted(rng, some, 1 + len(some) // 6, 6), opening(rng, title)
    names = [month.upper() if len(some) % 2 else month for month in months.split("|")]
    for month, group in zip(names, groups, strict=False):
        days = sorted(rng.sample(range(1, 29), len(group)))
        rows += [month, *(f"{at}{sign}{name(one)}" + (f" ({pick(rng, ages)})" if rng.random() < aged else "")
                          for at, one in zip(days, group, strict=True)), *([""] if sign == " – " else [])]
    return made(rows, [one for group in groups[:6] for one in group], months, ages, title)


@shape(HEADLESS)
def costume_table(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (costumes, notes, title) = told(rng, WORDS, "costume")
    name, sign, noted = written(rng), rng.choice((" – ", "\t", ": ", " = ", " -> ")), rng.choice((0.0, 0.4))
    rows = [name(one) + sign + pick(rng, costumes) + (", " + pick(rng, notes) if rng.random() < noted else "")
            for one in some]
    return made(opening(rng, title) + rows, some, costumes, notes, title)


@shape(HEADED)
def reading_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (groups, title) = told(rng, WORDS, "reading")
    name, count = written(rng), rng.choice((2, 3, 4))
    heads = rng.sample(groups.split("|"), 4)[:count]
    columns = [list(map(name, some[at::count])) for at in range(count)]
    rows = [heads, *map(list, zip_longest(*columns, fillvalue=""))]
    return made(opening(rng, title) + ["\t".join(row) for row in rows], some, groups, title)



@shape(HEADED)
def contact_sheet(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (reps, parent, call, notes) = told(rng, WORDS, "contact")
    elders, sign, turn = grown(rng, some, len(some)), rng.choice(("\t", "\t", " | ", ";")), rng.choice((1, -1))
    parts, name, most = rng.random() < 0.5, written(rng), rng.choice((2, 3))
    heads = [pick(rng, FAMILY[lang]), pick(rng, GIVEN[lang])][::turn] if parts else [pick(rng, WHOLE[lang])]
    rows = [[*heads, *[pick(rng, parent), pick(rng, call), "E-mail"][:most]]]
    for at, (one, elder) in enumerate(zip(some, elders, strict=True)):
        said = [f"{elder.given} {one.family}", phone(rng) + (f" ({pick(rng, notes)})" if rng.random() < 0.1 else "")]
        said.append(f"family{at + 1}@example.org")
        rows.append([*([one.family, one.given][::turn] if parts else [name(one)]), *said[:most]])
    top = [f"{pick(rng, reps)}: {elders[0].given} {some[0].family}, {elders[1].given} {some[1].family}", ""]
    text = (top if rng.random() < 0.5 else []) + [sign.join(row) for row in rows]
    return made(text, some, *(elder.given for elder in elders), reps, notes)


@shape()
def substitute_plan(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (times, title, aide, notes) = told(rng, WORDS, "sub")
    name, elder, mark = written(rng), grown(rng, some, 1)[0], rng.choice(("", "- ", "• ", "{}. ", "{}) "))
    plan = [*times.split("|"), *([f"{aide}: {pick(rng, TITLES[lang])} {elder.family}"] if rng.random() < 0.7 else [])]
    rows = [f"{pick(rng, title)} ({len(some)}):", *(mark.format(at) + name(one) + (
        f" – {pick(rng, notes)}" if rng.random() < 0.2 else "") for at, one in enumerate(some, 1))]
    return made(rng.choice(([*plan, "", *rows], [*rows, "", *plan])), some, elder.family, times, aide, notes)


@shape()
def waiting_list(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (later, title, notes) = told(rng, WORDS, "wait")
    name, sign, count = written(rng, short=False), rng.choice((" (", " – ")), rng.randint(1, max(1, len(some) // 4))
    sure, unsure = some[:-count], some[-count:]
    texts = [f"{at}. {name(one)}" + (sign + pick(rng, notes) + ")" * ("(" in sign) if rng.random() < 0.3 else "")
             for group in (sure, unsure) for at, one in enumerate(group, 1)]
    rows = [pick(rng, title), *texts[:-count], "", pick(rng, later), *texts[-count:]]
    return made(rows, sure, notes, title, later, either=unsure)



@shape()
def pdf_pages(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (title, page, printed, school, sexes) = told(rng, WORDS, "pdf")
    name, numbered, sexed = written(rng, short=False), rng.random() < 0.6, rng.random() < 0.5
    rows = [f"{at} " * numbered + f"{name(one)} {born(rng, lang)}" + f" {pick(rng, sexes)}" * sexed
            for at, one in enumerate(some, 1)]
    top, half = [school, pick(rng, title)], len(rows) // 2 + 1
    when = printed.format(day(rng, lang, 10) + ("2024" if lang == "de" else "/2024"))
    if len(rows) > 8:
        text = [*top, *rows[:half], page.format(1, 2), *top, *rows[half:], page.format(2, 2), when]
    else:
        text = [*top, *rows, when, page.format(1, 1)]
    return made(text, some, title, page, printed, school)


@shape(HEADED)
def cells_apart(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (birthday, home, ill, kinds) = told(rng, WORDS, "cell")
    name, chosen, gap = written(rng), sorted(rng.sample(range(3), rng.randint(1, 2))), rng.choice(([], [""]))
    rows = [pick(rng, WHOLE[lang]), *([birthday, home, ill][at] for at in chosen), *gap]
    for one in some:
        cells = [day(rng, lang), pick(rng, KIN[lang]), pick(rng, kinds)]
        rows += [name(one), *(cells[at] for at in chosen), *gap]
    return made(rows, some, birthday, home, ill, kinds, KIN[lang])


@shape()
def car_pool(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (title, seats, without) = told(rng, WORDS, "ride")
    name, groups = brief(rng), parted(rng, some, 2, 4)
    elders = grown(rng, some, len(groups))
    sign, join, listed = rng.choice((": ", " -> ", " – ")), rng.choice((", ", " + ")), rng.random() < 0.4
    rows = [pick(rng, title) + rng.choice(("", f" {date(lang, 5, 16)}")), ""]
    for at, group in enumerate(groups):
        driver = f"{pick(rng, TITLES[lang])} {elders[at].family} ({pick(rng, seats).format(rng.randint(4, 6))})"
        driver = without if at and at == len(groups) - 1 and len(some) % 3 == 0 else driver
        rows += [driver + ":", *(f"- {name(one)}" for one in group), ""] if listed else [
            driver + sign + join.join(map(name, group))]
    return made(rows, some, *names_of(elders), title, seats, without)


@shape()
def job_chart(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (jobs, rest, title) = told(rng, WORDS, "job")
    name, sign, join = brief(rng), rng.choice((": ", ": ", " – ", " = ")), rng.choice((", ", " & ", " + "))
    chosen, waiting = rng.sample(jobs.split("|"), min(len(some) - 1, 5)), list(some)
    rows = opening(rng, title)
    for job in chosen:
        count = 2 if len(waiting) > 7 and rng.random() < 0.5 else 1
        rows.append(job + sign + join.join(map(name, waiting[:count])))
        waiting = waiting[count:]
    rows += [pick(rng, rest) + sign + ", ".join(map(name, waiting))] if waiting else []
    return made(rows, some, jobs, rest, title)


@shape()
def trip_money(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (title, states, total) = told(rng, WORDS, "money")
    name, price, sign = written(rng, short=False), rng.randint(5, 20), rng.choice((" ...... ", "\t", " - ", " = "))
    rows, told_price = opening(rng, title), money(lang, price) + " " if rng.random() < 0.5 else ""
    rows += [name(one) + sign + told_price + pick(rng, states).format(money(lang, price / 2)) for one in some]
    rows += [f"{total}{sign}{money(lang, price * (len(some) - 1))}"] * rng.randint(0, 1)
    return made(rows, some, title, states, total)


@shape(HEADED)
def photo_day(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (packs, states, *heads) = told(rng, WORDS, "photo")
    name, sign, start = written(rng), rng.choice(("\t", "\t", ";", " | ")), rng.randint(0, 1)
    rows = [[pick(rng, heads[0]), pick(rng, WHOLE[lang]), *heads[1:]]]
    rows += [[str(at), name(one), pick(rng, packs), pick(rng, states)] for at, one in enumerate(some, 1)]
    return made((sign.join(row[start:]) for row in rows), some, packs, states)


@shape(CLEAN)
def card_labels(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (title,) = told(rng, WORDS, "card")
    full, wide, sign = rng.random() < 0.6, rng.choice((2, 3)), rng.choice(("\t", "\t", "     "))
    names = [f"{one.given} {one.family}" if full else one.given for one in some]
    rows = [sign.join(names[at:at + wide]) for at in range(0, len(names), wide)]
    return made(opening(rng, title) + rows, some, title)
