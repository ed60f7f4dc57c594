"""Shapes of list from a whole school year, open to those who mend the reader."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.year import (
    DAYS,
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
register en DOB|Birthdate; Parent/Guardian|Guardian 1; Phone|Cell; Home language; Notes; asthma|wears glasses|IEP
register es F. nacimiento; Madre/Padre|Tutor; Teléfono|Tel.; Idioma en casa; Observaciones; asma|usa gafas|logopedia
register fr Né(e) le; Responsable légal|Parent 1; Tél.|Portable; Langue parlée; Remarques; asthme|lunettes|orthophonie
register de geb. am|Geburtsdatum; Mutter; Telefon|Handy; Familiensprache; Bemerkungen; Asthma|Brille|Logopädie
register it Data di nascita|Nato/a il; Genitore; Telefono|Cell.; Lingua madre; Note; asma|occhiali|logopedia
register pt Data de nasc.; Responsável; Telefone|Contacto; Língua materna; Observações; asma|usa óculos|terapia da fala
register nl Geb.datum; Ouder/verzorger; Telefoon; Thuistaal; Bijzonderheden; astma|draagt een bril|logopedie
evening en Welcome Night|Meet the Teacher|Open House; can't make it|maybe|coming late; {} people|{} coming; and
evening es Reunión de bienvenida|Tarde de acogida; no puede|quizás|llega tarde; {} personas|vienen {}; y
evening fr Soirée d'accueil|Réunion de rentrée; absents|peut-être|en retard; {} personnes|à {}; et
evening de Begrüßungsabend|Kennenlernabend; verhindert|vielleicht|kommt später; {} Personen|zu {}.; und
evening it Serata di benvenuto|Incontro di accoglienza; non può|forse|arriva tardi; {} persone|in {}; e
evening pt Noite de boas-vindas|Reunião de acolhimento; não pode|talvez|chega tarde; {} pessoas|são {}; e
centre en Blocks|Art table|Dramatic play|Sand|Writing|Puzzles|Science|Play dough; Centers week {}|Center rotation; and
centre es Construcciones|Arte|Casita|Arena|Escritura|Puzles|Ciencias|Plastilina; Rincones, semana {}|Rincones; y
centre fr Construction|Peinture|Dînette|Eau|Graphisme|Puzzles|Sciences|Pâte à modeler; Ateliers semaine {}|Ateliers; et
centre de Bauecke|Maltisch|Puppenecke|Sandtisch|Schreibecke|Puzzle|Forscherecke|Knete; Ecken Woche {}|Freispiel; und
centre it Costruzioni|Pittura|Casetta|Travasi|Scrittura|Puzzle|Scienze|Pasta di sale; Angoli settimana {}|Angoli; e
centre pt Blocos|Pintura|Casinha|Areia e água|Escrita|Puzzles|Ciências|Plasticina; Cantinhos semana {}|Cantinhos; e
snack en fruit|crackers|cheese sticks|muffins|carrots; no school|field trip; Snack calendar|Snack helpers
snack es fruta|galletas|queso|zumo|bizcocho; festivo|excursión; Almuerzo compartido|Calendario de meriendas
snack fr fruits|gâteau|fromage|compotes|pain; férié|sortie; Goûters|Calendrier des goûters
snack de Obst|Kekse|Käse|Brötchen|Möhren; frei|Ausflug; Frühstücksplan|Obstkorb
snack it frutta|biscotti|formaggio|crostata|carote; festa|gita; Merende|Turni merenda
snack pt fruta|bolachas|queijo|bolo|iogurtes; feriado|passeio; Lanches|Calendário do lanche
allergy en Allergy|Allergic to; Reaction; Action; peanuts|eggs|milk; hives|swelling; inhaler in office|call Mom; none
allergy es Alergia; Reacción; Qué hacer; cacahuetes|huevo|leche; ronchas|hinchazón; llamar a la madre|jarabe; ninguna
allergy fr Allergie; Réaction; Conduite à tenir; arachides|œufs|lait; urticaire|gonflement; appeler le 15|sirop; aucune
allergy de Allergie; Reaktion; Maßnahme; Erdnüsse|Ei|Milch; Ausschlag|Schwellung; Mutter anrufen|Notfallset; keine
allergy it Allergia; Reazione; Cosa fare; arachidi|uova|latte; orticaria|gonfiore; chiamare la mamma|sciroppo; nessuna
allergy pt Alergia; Reação; O que fazer; amendoim|ovo|leite; urticária|inchaço; ligar à mãe|xarope; nenhuma
pickup en after care|walks home with sister; NOT; Pick-up list|Who may pick up
pickup es comedor|ludoteca; NO; Recogida|Personas autorizadas
pickup fr garderie|périscolaire; PAS; Sortie de 16h30|Personnes autorisées
pickup de Hort|Bus; NICHT; Abholliste|Abholberechtigte
pickup it doposcuola|pulmino; NON; Deleghe|Uscita
pickup pt ATL|prolongamento; NÃO; Autorizações de saída|Saída
bus en Bus {}|Route {}; Driver; Stop; Elm St|Main & 3rd|Library|Church Rd|Oak Ave
bus es Ruta {}|Autobús {}; Conductor; Parada; Plaza|Iglesia|Calle Mayor
bus fr Car {}|Ligne {}; Chauffeur; Arrêt; Mairie|Église|Place du marché|Stade
bus de Bus {}|Linie {}; Fahrer; Haltestelle; Rathaus|Kirche|Am Markt|Bahnhof
bus it Pulmino {}|Linea {}; Autista; Fermata; Municipio|Chiesa|Stazione
bus pt Carrinha {}|Autocarro {}; Motorista; Paragem; Igreja|Mercado|Estação
talk en Parent-teacher conferences|Conferences; break|lunch; free|open; both parents|interpreter|by phone
talk es Tutorías|Entrevistas con familias; descanso; libre; ambos padres|con intérprete|por teléfono
talk fr Rendez-vous parents|Entretiens; pause; libre; les deux parents|interprète|par téléphone
talk de Elternsprechtag|Entwicklungsgespräche; Pause; frei; beide Eltern|Dolmetscher|telefonisch
talk it Colloqui|Colloqui individuali; pausa; libero; entrambi i genitori|interprete|per telefono
talk pt Reuniões individuais|Atendimento aos pais; intervalo; livre; ambos os pais|intérprete|por telefone
talk sv Utvecklingssamtal; rast; ledig; båda föräldrarna|tolk|per telefon
mail en Hi {},|Dear {},; here is my class:|these are the kids on Thursday:; Thank you!; Best,; shy|leaves early
mail es Hola {}:; te paso la lista de mi grupo:; ¡Muchas gracias!; Un abrazo,; necesita ayuda|sale antes
mail fr Bonjour {},; voici les élèves que tu auras jeudi :; Merci !; Bises,|À lundi,; très timide|besoin d'aide
mail de Hallo {},|Hi {},; hier sind die Kinder meiner Gruppe:; Vielen Dank!; Liebe Grüße; braucht Hilfe|geht früher
mail it Ciao {},|Ciao {}!; ecco l'elenco della mia sezione:; Grazie mille!; Un abbraccio; ha bisogno di aiuto|esce prima
mail pt Olá {},; aqui vai a lista da minha turma:; Muito obrigada!; Beijinhos,; precisa de ajuda|sai mais cedo
chat en Kids coming to the park Saturday:|Who is in the play:; Thanks!|👍|Can't wait|ok
chat es Niños que vienen al parque el sábado:; ¡Gracias!|👍|Perfecto
chat fr Enfants présents samedi :; Merci !|👍|Parfait
chat de Diese Kinder kommen am Samstag mit:; Danke!|👍|Super
chat it Bambini che vengono al parco sabato:; Grazie!|👍|Perfetto
chat pt Crianças que vêm ao parque no sábado:; Obrigada!|👍|Perfeito
absent en P|P|P|A|T; sick|dentist|vacation
absent es ✓|✓|✓|F|R; enfermo|dentista
absent fr P|P|P|A; malade|dentiste
absent de x|x|x|k|e; krank|Zahnarzt|Urlaub
absent it P|P|P|A; malato|dentista
absent pt P|P|P|F; doente|dentista
absent nl x|x|x|z; ziek|tandarts
skill en Letters /26|Counts to|Scissors|Shapes; not yet|developing|secure
skill es Letras|Cuenta hasta|Tijeras|Formas; iniciado|en proceso|logrado
skill fr Lettres|Compte jusqu'à|Ciseaux|Formes; non acquis|en cours|acquis
skill de Buchstaben|Zählt bis|Schere|Formen; noch nicht|teilweise|sicher
skill it Lettere|Conta fino a|Forbici|Forme; da rivedere|in corso|raggiunto
skill pt Letras|Conta até|Tesoura|Formas; por adquirir|em curso|adquirido
lunch en Hot lunch|Packed lunch|Vegetarian|Milk only; Lunch count
lunch es Menú normal|Sin gluten|Vegetariano|Come en casa; Comedor
lunch fr Cantine|Sans porc|Végétarien|Panier-repas; Repas du jour
lunch de Mittagessen|Vegetarisch|Brotdose|Ohne Milch; Essensliste
lunch it Mensa|Senza glutine|Vegetariano|Pasto da casa; Presenze mensa
lunch pt Refeição normal|Dieta|Vegetariano|Lanche de casa; Almoços
buddy en Our class|Kinder student; Big buddy (Grade 4)|4th grade buddy|Buddy from Room 12
buddy es Nuestra clase|Alumno de infantil; Padrino de 4.º|Padrino/madrina (4.º B)
buddy fr Élève de maternelle|Notre classe; Parrain (CM1)|Marraine/parrain de CM2
buddy de Unser Kind|Vorschulkind; Pate (Klasse 4)|Pate/Patin aus der 4b
buddy it Nostro bambino|Bambino dell'infanzia; Tutor (classe quarta)|Tutor di 4ª B
buddy pt Aluno do pré|A nossa turma; Padrinho (4.º ano)|Padrinho/madrinha do 4.º B
cubby en Cubby tags|Name tags to make; and
cubby es Etiquetas para los percheros|Casilleros; y
cubby fr Étiquettes porte-manteaux|Étiquettes; et
cubby de Garderobenschilder|Namensschilder; und
cubby it Etichette per gli armadietti|Targhette; e
cubby pt Etiquetas dos cabides|Etiquetas; e
"""


@shape(HEADED)
def registration(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, heads = told(rng, WORDS, "register")
    elders = grown(rng, some, len(some))
    rows = [[pick(rng, head) for head in (FAMILY[lang], GIVEN[lang], *heads[:5])]]
    rows += [[one.family, one.given, born(rng, lang), f"{elder.given} {rng.choice((one.family, elder.family))}",
              phone(rng), pick(rng, "EN|ES|FR|DE|AR"), pick(rng, heads[5]) if rng.random() < 0.5 else ""]
             for one, elder in zip(some, elders, strict=True)]
    columns = rng.choice(([0, 1], [0, 1], [1, 0])) + [at for at in range(2, 7) if rng.random() < 0.55]
    sign, counted = rng.choice("\t\t\t;,"), rng.random() < 0.3
    text = [sign.join(([str(at or "#")] if counted else []) + [row[column] for column in columns])
            for at, row in enumerate(rows)]
    return made(text, some, *(one.given for one in elders), *heads)


@shape(HEADLESS)
def welcome_evening(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (title, nay, count, join) = told(rng, WORDS, "evening")
    name, sign, answers = written(rng, short=False), rng.choice((" – ", " - ", "\t", " | ", ": ")), []
    for _ in some:
        first, second = rng.sample(KIN[lang].split("|"), 2)
        size = pick(rng, count).format(rng.randint(2, 5))
        answers.append(rng.choice((f"{first} {join} {second}", f"{first}, {size}", size, pick(rng, nay))))
    rows = [name(one) + sign + answer for one, answer in zip(some, answers, strict=True)]
    return made(opening(rng, f"{pick(rng, title)}, {day(rng, lang, 9)}") + rows, some, *answers, title)


@shape()
def centres(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (places, title, join) = told(rng, WORDS, "centre")
    centre = rng.sample(places.split("|"), 8)
    name, sign, last = brief(rng), rng.choice((": ", ": ", " – ", " = ")), rng.choice((", ", f" {join} "))
    rows = [pick(rng, title).format(rng.randint(2, 30))] if rng.random() < 0.6 else []
    for at, group in enumerate(parted(rng, some, 3, 5)):
        *names, final = map(name, group)
        rows.append(centre[at] + sign + (", ".join(names) + last if names else "") + final)
    return made(rows, some, places, title)


@shape(HEADLESS)
def snack_calendar(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (foods, nothing, title) = told(rng, WORDS, "snack")
    name, sign, bare, dated = written(rng), rng.choice((" – ", "\t", " ", ": ")), rng.random() < 0.4, rng.random() < 0.7
    month, at, rows, waiting = rng.randrange(9, 12), rng.randint(1, 7), [], list(some)
    weekday = 0
    while waiting:
        when = DAYS[lang].split()[weekday] + (f" {date(lang, month, at)}" if dated else "")
        free = rng.random() < 0.08
        rows.append(when + sign + (pick(rng, nothing) if free else name(waiting.pop(0))))
        rows[-1] += "" if bare or free else f" ({pick(rng, foods)})"
        at, weekday = at + (3 if weekday == 4 else 1), (weekday + 1) % 5
        month, at = (month, at) if at <= 30 else (month + 1, at - 30)
    return made(opening(rng, title) + rows, some, foods, nothing, title)


@shape()
def allergy_sheet(rng: random.Random, some: Sequence[Person]) -> Made:
    _, words = told(rng, WORDS, "allergy")
    name, gap, steps = written(rng, short=False), rng.choice(("", "  ", "\t", "- ")), rng.randint(1, 3)
    labels, blocks = [pick(rng, each) for each in words[:3]], []
    for one in some:
        said = [f"{gap}{labels[at]}: {pick(rng, words[at + 3])}" for at in range(steps)]
        said = said if rng.random() < 0.6 else [f"{gap}{labels[0]}: {words[6]}"]
        blocks.append("\n".join((name(one), *said)))
    return made([rng.choice(("\n", "\n\n")).join(blocks)], some, *words)


@shape()
def pick_up(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (other, never, title) = told(rng, WORDS, "pickup")
    name, elders, sign = written(rng), grown(rng, some, len(some)), rng.choice((": ", " – ", " -> ", " → "))
    rows = opening(rng, title)
    for one, elder in zip(some, elders, strict=True):
        first, second, third = rng.sample(KIN[lang].split("|"), 3)
        rows.append(name(one) + sign + rng.choice((
            f"{first} {elder.given} ({phone(rng)}), {second}", f"{first}, {second}", pick(rng, other),
            f"{first} {elder.given} {one.family}, {never} {third}", f"{pick(rng, TITLES[lang])} {elder.family}")))
    return made(rows, some, *names_of(elders), other, KIN[lang])


@shape()
def bus_stops(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (bus, driver, stop, stops) = told(rng, WORDS, "bus")
    name, mark, elder = written(rng), rng.choice(("", "- ", "• ", "  ")), grown(rng, some, 1)[0]
    rows = [pick(rng, bus).format(rng.randint(2, 40))]
    rows += [f"{driver}: {pick(rng, TITLES[lang])} {elder.family}"] if rng.random() < 0.6 else []
    packed = rng.random() < 0.25
    for at, group in enumerate(parted(rng, some, 2, 6)):
        place = f"{stop} {at + 1} – {pick(rng, stops)}"
        rows += [f"{place}: {', '.join(one.given for one in group)}"] if packed else [
            "", f"{place}, 7:{10 + 4 * at:02}", *(mark + name(one) for one in group)]
    return made(rows, some, elder.family, driver, stop, stops)



@shape()
def conference_times(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (title, pause, free, notes) = told(rng, WORDS, "talk")
    name, step, clock = written(rng), rng.choice((15, 20, 30)), rng.choice((8 * 60, 10 * 60 + 30, 13 * 60))
    dot, span, sign = rng.choice(":."), rng.random() < 0.4, rng.choice((" ", "  ", "\t", " – "))
    rows, waiting = opening(rng, f"{pick(rng, title)} {day(rng, lang, 11)}"), list(some)
    while waiting:
        times = [f"{at // 60 % 24}{dot}{at % 60:02}" for at in (clock, clock + step)]
        clock, chance = clock + step, rng.random()
        who = pick(rng, pause) if chance < 0.06 else pick(rng, free) if chance < 0.12 else name(waiting.pop(0))
        who += f" ({pick(rng, notes)})" if chance > 0.7 else ""
        rows.append("-".join(times if span else times[:1]) + sign + who)
    return made(rows, some, title, pause, free, notes)


@shape()
def colleague_mail(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (hello, intro, thanks, bye, notes) = told(rng, WORDS, "mail")
    name, (to, me), mark, form = written(rng), grown(rng, some, 2), pick(rng, "- ||* |• "), pick(rng, " ({})| – {}")
    rows = [mark + name(one) + (form.format(pick(rng, notes)) if rng.random() < 0.3 else "") for one in some]
    text = [pick(rng, hello).format(to.given), "", pick(rng, intro), "", *rows, "", thanks, pick(rng, bye), me.given]
    return made(text, some, to.given, me.given, notes, thanks, bye)


@shape()
def chat_copy(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (intro, replies) = told(rng, WORDS, "chat")
    name, elders, clock, at = written(rng), grown(rng, some, 3), rng.randint(480, 1300), rng.randint(1, 28)
    form = rng.choice(("[{:02}.10.24, {:02}:{:02}] {}: ", "{:02}/10/2024, {:02}:{:02} - {}: "))
    opened = [form.format(at, (clock + late) // 60, (clock + late) % 60,
                          rng.choice((one.given, f"{one.given} {one.family}"))) for late, one in enumerate(elders)]
    rows = [opened[0] + pick(rng, intro), *map(rng.choice(("{}", "{}", "- {}", "✅ {}")).format, map(name, some))]
    rows += [start + pick(rng, replies) for start in opened[1:]]
    return made(rows, some, *names_of(elders), replies, intro)



@shape(HEADED)
def attendance_week(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (marks, why) = told(rng, WORDS, "absent")
    name, sign, noted = written(rng), rng.choice(("\t", "\t", " | ", ";")), rng.choice((0, 0.3))
    rows = [[pick(rng, WHOLE[lang]), *DAYS[lang].split()]]
    rows += [[name(one), *(pick(rng, marks) for _ in range(5)), *([pick(rng, why)] if rng.random() < noted else [])]
             for one in some]
    return made(map(sign.join, rows), some, why, *DAYS[lang].split())


@shape(HEADED)
def progress_table(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (skills, levels) = told(rng, WORDS, "skill")
    chosen, parts, name = sorted(rng.sample(range(4), rng.randint(2, 4))), rng.random() < 0.6, written(rng)
    turn = rng.choice((1, -1))
    heads = [pick(rng, FAMILY[lang]), pick(rng, GIVEN[lang])][::turn] if parts else [pick(rng, WHOLE[lang])]
    rows = [[*heads, *(skills.split("|")[at] for at in chosen)]]
    rows += [[*([one.family, one.given][::turn] if parts else [name(one)]),
              *(str(rng.randint(3, 26)) if at < 2 else pick(rng, levels) for at in chosen)] for one in some]
    return made(map("\t".join, rows), some, levels, skills)


@shape()
def lunch_count(rng: random.Random, some: Sequence[Person]) -> Made:
    lang, (kinds, title) = told(rng, WORDS, "lunch")
    name, sign, between = brief(rng), rng.choice((": ", " – ", " -> ")), pick(rng, ", |; | / ")
    counted = rng.random() < 0.6
    kind = rng.sample(kinds.split("|"), 4)
    groups = [some[at::3] for at in range(3)] if len(some) > 5 else [some[:2], some[2:]]
    rows = [f"{title} {day(rng, lang)}"] * rng.randint(0, 1)
    rows += [kind[at] + (f" ({len(group)})" if counted else "") + sign + between.join(map(name, group))
             for at, group in enumerate(groups)]
    return made(rows, some, kinds, title)


@shape(HEADED)
def big_buddies(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (ours, theirs) = told(rng, WORDS, "buddy")
    name, sign, buddies = written(rng), rng.choice(("\t", "\t", " | ", ";")), grown(rng, some, len(some))
    rows = [(pick(rng, ours), pick(rng, theirs)), *zip(map(name, some), map(name, buddies), strict=True)]
    return made(map(sign.join, rows), some, *names_of(buddies), ours, theirs)


@shape(CLEAN)
def cubby_tags(rng: random.Random, some: Sequence[Person]) -> Made:
    _, (title, join) = told(rng, WORDS, "cubby")
    full = rng.random() < 0.4
    *names, final = [f"{one.given} {one.family}" if full else one.given for one in some]
    start = pick(rng, title) + rng.choice((": ", ":\n", "\n\n")) if rng.random() < 0.6 else ""
    return made([start + ", ".join(names) + rng.choice((", ", f" {join} ")) + final], some, title)
