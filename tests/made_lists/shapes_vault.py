"""Further shapes of list that schools have at hand; kept shut: the reader is not mended by them."""

from __future__ import annotations

import random
import textwrap
from collections.abc import Sequence

from made_lists.household import each, given, initial, plain, speak, titled
from made_lists.judging import Made
from made_lists.papers import Say, aside, capitals, comma, dates, phone, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "school": "Birch Hill Elementary School~Lakeside Early Learning Center|CEIP Las Encinas~Colegio Valle Verde|École "
              "maternelle des Marronniers|Grundschule am Bach~Kita Sonnenhügel|Scuola dell'infanzia Il Girasole|"
              "Jardim de Infância da Ribeira",
    "report": "Class List by Homeroom~Homeroom Roster|Listado de alumnos por grupo|Liste des élèves par classe|"
              "Klassenliste nach Gruppen~Gruppenliste|Elenco alunni per sezione|Relação de alunos por turma",
    "office": "#,Student,ID,Sex,DOB,Phone|N.º,Alumno/a,Exp.,Sexo,F. nac.,Teléfono|N°,Élève,INE,Sexe,Né(e) le,"
              "Téléphone|Nr.,Schüler/in,ID,G,geb.,Telefon|N.,Alunno,Matr.,Sesso,Nato il,Telefono|N.º,Aluno,Proc.,Sexo,"
              "Nasc.,Telefone",
    "sexes": "F,M|F,M|F,M|w,m|F,M|F,M",
    "page": "Page {} of {}|Página {} de {}|Page {} sur {}|Seite {} von {}|Pagina {} di {}|Página {} de {}",
    "run": "Run date:~Printed|Fecha de impresión:|Édité le|Stand:~Druckdatum:|Stampato il|Emitido em",
    "counted": "Total students: {}|Total alumnos: {}|Nombre d'élèves : {}|Anzahl Kinder: {}|Totale alunni: {}|Total "
               "de alunos: {}",
    "head": "Teacher:~Homeroom teacher:|Tutor/a:|Enseignant(e) :|Klassenleitung:|Insegnante:|Professor(a):",
    "supply": "Supply list – who brings what~Party supplies|Material: qué trae cada uno|Fournitures : qui apporte "
              "quoi|Materialliste – wer bringt was~Fürs Fest|Materiale: chi porta cosa|Material: quem traz o quê",
    "goods": "tissues,glue sticks (4),paper towels,dry erase markers,baby wipes,paper plates,zip bags,crayons|"
             "pañuelos,pegamento (4),toallitas,rotuladores,platos de papel,cartulinas|mouchoirs,bâtons de colle (4),"
             "lingettes,feutres,assiettes en carton|Taschentücher,Klebestifte (4),Feuchttücher,Küchenrolle,Pappteller,"
             "Wachsmaler|fazzoletti,colla stick (4),salviette,pennarelli,piatti di carta|lenços,colas (4),toalhitas,"
             "marcadores,pratos de papel",
    "lunch": "Lunch count~Lunch orders Tuesday|Comedor – hoy|Cantine du jour~Repas|Essensliste~Mittagessen|Mensa – "
             "oggi|Almoços de hoje",
    "meals": "hot,cold,home|menú,bocadillo,casa|repas,pique-nique,maison|warm,kalt,zu Hause|mensa,panino,casa|prato,"
             "sandes,casa",
    "child": "Name~Child~Student|Alumno/a~Nombre|Élève~Prénom et nom|Kind~Name|Bambino/a~Alunno|Criança~Aluno",
    "consent": "Photo consent~Media release|Autorización de fotos|Autorisation photo~Droit à l'image|Fotoerlaubnis~"
               "Einverständnis Fotos|Consenso foto~Liberatoria|Autorização de fotografias",
    "uses": "Photo,Website,Field trip|Fotos,Web,Salidas|Photo,Site,Sortie|Foto,Homepage,Ausflug|Foto,Sito,Uscite|"
            "Fotos,Página web,Visitas",
    "yes": "yes,no~Y,N~☑,☐~✓,✗|sí,no~☑,☐~✓,✗|oui,non~☑,☐|ja,nein~☑,☐~✓,–|sì,no~☑,☐|sim,não~☑,☐",
    "may": "Photos OK,NO photos,No form yet|Fotos sí,Fotos NO,Falta la hoja|Photos d'accord,Pas de photo,Fiche non "
           "rendue|Fotos ja,Keine Fotos,Zettel fehlt|Foto sì,Niente foto,Modulo mancante|Fotografias sim,Sem "
           "fotografias,Falta a ficha",
    "after": "Aftercare roster~Extended day|Aula matinal y tardes~Horario ampliado|Garderie du soir~Périscolaire|Hort "
             "und Spätdienst~Spätbetreuung|Post-scuola|Prolongamento de horário",
    "days": "Monday,Tuesday,Wednesday,Thursday,Friday|Lunes,Martes,Miércoles,Jueves,Viernes|Lundi,Mardi,Mercredi,"
            "Jeudi,Vendredi|Montag,Dienstag,Mittwoch,Donnerstag,Freitag|Lunedì,Martedì,Mercoledì,Giovedì,Venerdì|"
            "Segunda,Terça,Quarta,Quinta,Sexta",
    "short": "M,T,W,Th,F~Mon,Tue,Wed,Thu,Fri|L,M,X,J,V~lun,mar,mié,jue,vie|lun,mar,mer,jeu,ven|Mo,Di,Mi,Do,Fr|lun,mar,"
             "mer,gio,ven|seg,ter,qua,qui,sex~2ª,3ª,4ª,5ª,6ª",
    "until": "until|hasta|jusqu'à|bis|fino alle|até às",
    "case": "Speech caseload – fall~My speech kids|Alumnos de logopedia|Prises en charge orthophonie|Logopädie – "
            "Termine|Logopedia: bambini seguiti|Terapia da fala – horário",
    "aims": "artic,language,fluency,artic + language|articulación,lenguaje,fluidez|articulation,langage,fluence|"
            "Artikulation,Wortschatz,Redefluss|articolazione,linguaggio,fluenza|articulação,linguagem,fluência",
    "class": "{}'s class~Rm. 4 ({})|clase de {}|classe de {}|Klasse {}|classe {}|turma {}",
    "meet": "Meet our class!~Welcome to Kindergarten!~Our Class Family|¡Bienvenidos a Infantil!~Esta es nuestra clase|"
            "Bienvenue en maternelle !~Voici notre classe|Willkommen im Kindergarten!~Das sind wir|Benvenuti!~Ecco la "
            "nostra classe|Bem-vindos!~A nossa turma",
    "under": "We are so happy you are here~2024 – 2025|Curso 2024/2025|Année scolaire 2024-2025|Wir freuen uns auf "
             "euch~Schuljahr 2024/25|Anno scolastico 2024/2025|Ano letivo 2024/2025",
    "click": "Click to add text~Slide 2|Haga clic para agregar texto~Diapositiva 2|Cliquez pour ajouter du texte~"
             "Diapositive 2|Text durch Klicken hinzufügen~Folie 2|Fare clic per aggiungere testo~Diapositiva 2|Clique "
             "para adicionar texto~Diapositivo 2",
    "speak": "Say hello and thank the families for coming.~Welcome everyone, hand out certificates one by one.|"
             "Saludar y dar las gracias a las familias.|Accueillir les familles et les remercier.|Alle begrüßen und "
             "den Familien danken.|Salutare e ringraziare le famiglie.|Dar as boas-vindas e agradecer às famílias.",
    "pause": "(pause for photos)~[next slide]~(applause)|(pausa para fotos)~[siguiente]|(pause photo)~[diapo "
             "suivante]|(Pause für Fotos)~[nächste Folie]|(pausa per le foto)~[prossima]|(pausa para fotos)~[seguinte]",
    "close": "Thank you all, cookies are in the gym!|¡Gracias a todos, hay galletas en el patio!|Merci à tous, un "
             "goûter vous attend !|Danke an alle, im Flur gibt es Kuchen!|Grazie a tutti, ci sono i biscotti!|"
             "Obrigada a todos, há bolachas no pátio!",
    "loves": "loves dinosaurs;best block builder;wants to be a firefighter;always helps friends;great reader;sings "
             "all day|le encantan los dinosaurios;gran constructora;quiere ser bombero;siempre ayuda;canta todo el "
             "día|adore les dinosaures;grand bâtisseur;veut être pompier;aide toujours les autres;chante toute la "
             "journée|liebt Dinosaurier;baut die höchsten Türme;will zur Feuerwehr;hilft immer;singt den ganzen Tag|"
             "ama i dinosauri;costruisce torri altissime;vuole fare il pompiere;aiuta sempre;canta tutto il giorno|"
             "adora dinossauros;constrói torres;quer ser bombeiro;ajuda sempre;canta o dia todo",
    "seats": "Seating chart~Carpet spots|Plano de la clase~Sitios en la alfombra|Plan de classe~Places au tapis|"
             "Sitzplan|Disposizione dei banchi~Posti sul tappeto|Planta da sala",
    "things": "BOARD,Door,Window,Teacher's desk|PIZARRA,Puerta,Ventana,Mesa de la profe|TABLEAU,Porte,Fenêtre,Bureau|"
              "TAFEL,Tür,Fenster,Lehrertisch|LAVAGNA,Porta,Finestra,Cattedra|QUADRO,Porta,Janela,Secretária",
    "row": "Row|Fila|Rang|Reihe|Fila|Fila",
    "empty": "empty~---~X|vacío~---|vide~---|frei~---|vuoto~---|vazio~---",
    "list": "Class list~Kindergarten|Lista de clase|Liste de la classe|Klassenliste|Elenco|Lista da turma",
    "twins": "twins,siblings|mellizos,hermanos|jumeaux,frère et sœur|Zwillinge,Geschwister|gemelli,fratelli|gémeos,"
             "irmãos",
    "and": "and,&|y,&|et,&|und,&|e,&|e,&",
    "told": "My students this year are|Mis alumnos de este año son|Mes élèves cette année :|In meiner Gruppe sind|I "
            "miei alunni di quest'anno sono|Os meus alunos deste ano são",
    "call": "Attendance – week 3~Attendance September|Asistencia – semana 3|Appel – semaine 3|Anwesenheit – 3. Woche|"
            "Presenze – settimana 3|Presenças – semana 3",
    "codes": "P,A,T~✓,A,L~/,O,L|P,F,R~✓,F,R|P,A,R~✓,A,R|x,F,v~✓,F,v|P,A,R~✓,A,R|P,F,A~✓,F,A",
    "key": "P = present  A = absent  T = tardy|P = presente  F = falta  R = retraso|P = présent  A = absent  R = "
           "retard|x = da  F = fehlt  v = verspätet|P = presente  A = assente  R = ritardo|P = presente  F = falta  A "
           "= atraso",
    "jobs": "Class jobs~Helpers this week|Encargados de la semana~Responsables|Métiers de la classe~Responsabilités|"
            "Dienste~Klassendienste|Incarichi della settimana|Tarefas da semana",
    "job": "Line leader,Door holder,Calendar helper,Plant waterer,Lunch helper,Lights,Librarian,Weather reporter|"
           "Primero de la fila,Puerta,Calendario,Regar plantas,Merienda,Luces,Biblioteca,El tiempo|Chef de file,Porte,"
           "Calendrier,Arroser les plantes,Goûter,Lumières,Bibliothèque,Météo|Anführer,Türdienst,Kalenderdienst,"
           "Blumendienst,Tischdienst,Licht,Bücherei,Wetterdienst|Capofila,Porta,Calendario,Piante,Merenda,Luci,"
           "Biblioteca,Meteo|Chefe da fila,Porta,Calendário,Plantas,Lanche,Luzes,Biblioteca,Tempo",
    "rest": "On break~Next week|Descansan~La próxima semana|En repos~Semaine prochaine|Pause~Nächste Woche|A riposo|"
            "De folga",
    "from": "From {}'s room:~{} (AM class):|De la clase de {}:|De la classe de {} :|Aus der Gruppe von {}:|Sezione {}:|"
            "Sala {}:",
    "title": "Ms. {}~Mrs. {}|la Sra. {}|Mme {}|Frau {}|maestra {}|Prof. {}",
}


def _words(say: Say, key: str) -> list[str]:
    return [word.strip() for word in say(key).split(";")]


def _time(rng: random.Random, first: int, last: int) -> str:
    return f"{rng.randrange(first, last)}:{rng.choice((0, 15, 30, 45)):02}"


@shape()
def vault_office_print(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of every page; not the teacher, and nothing that comes again at the head of a page."""
    say, day, teacher = speak(rng, WORDS), dates(rng), aside(rng, some, 1)[0]
    way, tail = rng.choice((comma, lambda one: comma(one).upper(), comma)), rng.choice(("", "", " A.", " M."))
    heads, cut = each(say, "office"), rng.choice((len(some), (len(some) + 1) // 2))
    order, sign = [0, 1, *sorted(rng.sample((2, 3, 4, 5), rng.randrange(1, 5)))], rng.choice((" ", "  ", "   "))
    pages, text, printed = -(-len(some) // cut), list[str](), dates(rng, 2024)()
    for at, one in enumerate(some):
        if at % cut == 0:
            text += [say("school"), say("report"), f"{say('head')} {comma(teacher)}"]
            text.append(sign.join(heads[column] for column in order))
        name = way(one) + (tail if rng.random() < 0.5 else "")
        cells = (str(at + 1), name, str(rng.randrange(10000, 99999)), rng.choice(each(say, "sexes")), day(), phone(rng))
        text.append(sign.join(cells[column] for column in order))
        if at % cut == cut - 1 or at == len(some) - 1:
            text += [f"{say('run')} {printed}   {say('page').format(at // cut + 1, pages)}"]
    text += [say("counted").format(len(some))] if rng.random() < 0.6 else []
    told = [say(key) for key in ("school", "report", "head", "run", "page", "counted")]
    return Made("\n".join(text), wanted(some), (*told, *heads, full(teacher)))


@shape()
def vault_supplies(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; nothing that it brings."""
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(4)
    goods, text = each(say, "goods"), titled(rng, say("supply"))
    if form == 0:
        text += [f"{way(one)} – {rng.choice(goods)}" for one in some]
    elif form == 1:
        text += [f"{way(one)}: {' + '.join(rng.sample(goods, rng.randrange(1, 3)))}" for one in some]
    elif form == 2:
        count = min(len(goods), max(2, len(some) // 3))
        text += [f"{good}: {', '.join(way(one) for one in some[at::count])}" for at, good in enumerate(goods[:count])]
    else:
        text += [f"{way(one)}\t{rng.choice(goods)}\t{rng.choice(('✓', '', ''))}".rstrip() for one in some]
    return Made("\n".join(text), wanted(some), (say("supply"), *goods))


@shape()
def vault_lunch_count(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; no meal and no sum of meals."""
    say, way, form, meals = speak(rng, WORDS), rng.choice((full, full, given, initial)), rng.randrange(4), list[str]()
    words, text = each(say, "meals"), titled(rng, say("lunch"))
    meals = [rng.choice((words[0], *words)) for _ in some]
    if form == 0:
        rows = [(way(one), *("x" if meal == word else "" for word in words))
                for one, meal in zip(some, meals, strict=True)]
        text.append(written([(say("child"), *words), *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{way(one)} – {meal}" for one, meal in zip(some, meals, strict=True)]
    elif form == 2:
        text += [f"{at}. {way(one)}  {meal}" for at, (one, meal) in enumerate(zip(some, meals, strict=True), 1)]
    else:
        for word in words:
            group = [way(one) for one, meal in zip(some, meals, strict=True) if meal == word]
            text += [f"{word.capitalize()} ({len(group)}): {', '.join(group)}"] if group else []
    text += ["  ".join(f"{word}: {meals.count(word)}" for word in words)] if form < 3 and rng.random() < 0.6 else []
    return Made("\n".join(text), wanted(some), (say("lunch"), say("child"), *words))


@shape()
def vault_photo_consent(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child, whatever its family allows."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, given, initial)), rng.randrange(3)
    uses, (yes, no), may, text = each(say, "uses"), each(say, "yes"), each(say, "may"), titled(rng, say("consent"))
    ticks = [[rng.choice((yes, yes, yes, no)) for _ in uses] for _ in some]
    if form == 0:
        rows = [(way(one), *tick) for one, tick in zip(some, ticks, strict=True)]
        text.append(written([(say("child"), *uses), *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        sign = rng.choice((" – ", ": ", "  "))
        text += [f"{way(one)}{sign}{tick[0]}" for one, tick in zip(some, ticks, strict=True)]
    else:
        kinds = [rng.choice((0, 0, 0, 1, 2)) for _ in some]
        for at, head in enumerate(may):
            group = [way(one) for one, kind in zip(some, kinds, strict=True) if kind == at]
            text += [f"{head}:", *group, ""] if group else []
    return Made("\n".join(text).strip(), wanted(some), (say("consent"), say("child"), *uses, *may, yes, no))


@shape()
def vault_aftercare(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child once, though it stays on several days."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, initial)), rng.randrange(4)
    text, short, days = titled(rng, say("after")), each(say, "short"), each(say, "days")
    stays = [sorted(rng.sample(range(5), rng.randrange(1, 6))) for _ in some]
    if form == 0:
        rows = [(way(one), *("x" if at in stay else "" for at in range(5)), _time(rng, 15, 18))
                for one, stay in zip(some, stays, strict=True)]
        text.append(written([(say("child"), *short, say("until")), *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{way(one)} – {', '.join(short[at] for at in stay)} {say('until')} {_time(rng, 15, 18)}"
                 for one, stay in zip(some, stays, strict=True)]
    elif form == 2:
        text += [f"{way(one)} ({'/'.join(short[at] for at in stay)})" for one, stay in zip(some, stays, strict=True)]
    else:
        for at, day in enumerate(days):
            group = [full(one) for one, stay in zip(some, stays, strict=True) if at in stay]
            text += [day, *group, ""] if group else []
    return Made("\n".join(text).strip(), wanted(some), (say("after"), say("until"), say("child"), *short, *days))


@shape()
def vault_speech_times(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; neither its teacher nor what it works on."""
    say, way, teachers, form = speak(rng, WORDS), plain(rng), aside(rng, some, 3), rng.randrange(3)
    text, aims, days, start = titled(rng, say("case")), each(say, "aims"), each(say, "days"), 8
    rooms = [say("class").format(say("title").format(one.family)) for one in teachers]
    if form == 0:
        text += [f"{way(one)} – {rng.choice(aims)}, 2x30, {rng.choice(rooms)}" for one in some]
    elif form == 1:
        text += [f"{way(one)}, {rng.choice(rooms)}, {rng.choice(days)} {_time(rng, 8, 14)}" for one in some]
    else:
        for at in range(0, len(some), 3):
            text += [days[at // 3 % 5]] if at % 15 == 0 or rng.random() < 0.4 else []
            text.append(f"{start + at // 3}:00–{start + at // 3}:30 {', '.join(map(way, some[at : at + 3]))}")
    known = (say("case"), *aims, *days, *rooms, *map(full, teachers))
    return Made("\n".join(text), wanted(some), known)


@shape()
def vault_slide(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every name of the slide; no greeting."""
    say, way, form = speak(rng, WORDS), rng.choice((given, given, initial, full)), rng.randrange(4)
    sign, text = rng.choice(("★", "•", "🍎", "✏️", "🌈", "·")), [say("meet")]
    text += [say("under")] if rng.random() < 0.5 else []
    if form == 0:
        text += [f"{sign} {way(one)}" for one in some]
    elif form == 1:
        wide = rng.randrange(2, 5)
        text += [f" {sign} ".join(map(way, some[at : at + wide])) for at in range(0, len(some), wide)]
    elif form == 2:
        wide = rng.randrange(2, 5)
        text += [rng.choice(("    ", "\t")).join(map(way, some[at : at + wide])) for at in range(0, len(some), wide)]
    else:
        text += ["", *map(way, some), ""]
    text += [say("click")] if rng.random() < 0.4 else []
    return Made("\n".join(text).strip(), wanted(some), (say("meet"), say("under"), say("click")))


@shape()
def vault_speaker_notes(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child who is called; nothing that is said of it."""
    say, way, sign = speak(rng, WORDS), rng.choice((full, full, given)), rng.choice((" – {}", ": {}", " ({})"))
    text, said = [say("speak"), *[""] * rng.randrange(2)], _words(say, "loves")
    stop = rng.randrange(2, len(some)) if rng.random() < 0.6 else 0
    for at, one in enumerate(some):
        text += [say("pause")] if stop and at == stop else []
        text.append(f"{way(one)}{sign.format(rng.choice(said))}")
    text += [*[""] * rng.randrange(2), say("close")]
    return Made("\n".join(text), wanted(some), (say("speak"), say("pause"), say("close"), *said))


@shape()
def vault_seats(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child who has a seat; nothing that stands in the room."""
    say, way, wide = speak(rng, WORDS), rng.choice((given, given, initial)), rng.randrange(3, 6)
    things, sign = each(say, "things"), rng.choice(("\t", " | ", "    "))
    text, numbered = titled(rng, say("seats")), rng.random() < 0.4
    text += [things[0]] if rng.random() < 0.7 else []
    cells = [*map(way, some)]
    for _ in range(rng.randrange(3)):
        cells.insert(rng.randrange(1, len(cells)), say("empty"))
    for at in range(0, len(cells), wide):
        row = f"{say('row')} {at // wide + 1}: " if numbered else ""
        text.append(row + sign.join(cells[at : at + wide]))
    text += [f"{things[1]}          {things[2]}"] * (rng.random() < 0.4) + [things[3]] * (rng.random() < 0.3)
    return Made("\n".join(text), wanted(some), (say("seats"), say("row"), say("empty"), *things))


@shape()
def vault_siblings(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child, and both of a family that stand on one line."""
    say = speak(rng, WORDS)
    text, at, sign, number = titled(rng, say("list")), 0, rng.choice(("", "- ", "#")), 0
    both, told = rng.choice(each(say, "and")), rng.choice(("", *each(say, "twins")))
    shared = {*rng.sample(range(len(some) - 1), min(len(some) - 1, rng.randrange(1, 3)))}
    while at < len(some):
        one, number = some[at], number + 1
        line = full(one)
        if at in shared:
            line = f"{one.given} {both} {some[at + 1].given} {one.family}{f' ({told})' if told else ''}"
            at += 1
        text.append(f"{f'{number}. ' if sign == '#' else sign}{line}")
        at += 1
    return Made("\n".join(text), wanted(some), (say("list"), say("and"), *each(say, "twins")))


@shape()
def vault_wrapped(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of a sentence that a mail broke into lines."""
    say, way = speak(rng, WORDS), rng.choice((full, full, given, lambda one: full(one).upper()))
    names, last, sign = [*map(way, some)], each(say, "and")[0], rng.choice(",,;")
    end = f" {last} {names.pop()}" if rng.random() < 0.6 else ""
    said = f"{say('told')} " if rng.random() < 0.6 else ""
    whole = f"{said}{f'{sign} '.join(names)}{end}{rng.choice(('', '.'))}"
    quoted = rng.choice(("", "", "", "> "))
    text = textwrap.wrap(whole, rng.choice((40, 60, 72)), break_on_hyphens=False)
    return Made("\n".join(f"{quoted}{line}" for line in text), wanted(some), (say("told"), last))


@shape()
def vault_attendance(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; no mark, no day and no key."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, comma, initial)), rng.randrange(3)
    codes, days, text = each(say, "codes"), each(say, "short"), titled(rng, say("call"))
    rows = [[way(one), *(rng.choice((*codes[:1] * 8, *codes)) for _ in days)] for one in some]
    if form == 0:
        text.append(written([[say("child"), *days], *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        wide = max(len(row[0]) for row in rows) + 3
        text += [f"{'':{wide}}{' '.join(f'{day:3}' for day in days)}".rstrip()]
        text += [f"{row[0]:{wide}}{' '.join(f'{mark:3}' for mark in row[1:])}".rstrip() for row in rows]
    else:
        text += [f"{at}. {row[0]} {' '.join(row[1:])}" for at, row in enumerate(rows, 1)]
    text += [say("key")] if codes[0] in say("key").split() and rng.random() < 0.6 else []
    return Made("\n".join(text), wanted(some), (say("call"), say("key"), say("child"), *days, *codes))


@shape()
def vault_jobs(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; no job."""
    say, way, form = speak(rng, WORDS), rng.choice((given, given, initial, full)), rng.randrange(4)
    jobs, text, sign = each(say, "job"), titled(rng, say("jobs")), rng.choice((": ", " – ", "\t", " - "))
    at_work, free = some[: len(jobs)], some[len(jobs) :]
    if form == 0:
        text += [f"{way(one)}{sign}{job}" for job, one in zip(jobs, at_work, strict=False)]
    elif form == 1:
        text += [line for job, one in zip(jobs, at_work, strict=False) for line in (job, way(one))]
    else:
        text += [f"{job}{sign}{way(one)}" for job, one in zip(jobs, at_work, strict=False)]
    text += [f"{say('rest')}: {', '.join(map(way, free))}"] if free else []
    return Made("\n".join(text), wanted(some), (say("jobs"), say("rest"), *jobs))


@shape()
def vault_two_hands(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of two lists in one that are written in two ways; not their teachers."""
    say, teachers, cut = speak(rng, WORDS), aside(rng, some, 2), rng.randrange(2, len(some) - 1)
    first, second = rng.sample((full, comma, capitals, given, lambda one: full(one).upper()), 2)
    named, text = rng.random() < 0.7, titled(rng, say("list"))
    for teacher, way, group in zip(teachers, (first, second), (some[:cut], some[cut:]), strict=True):
        text += [say("from").format(say("title").format(teacher.family))] if named else []
        sign = rng.choice(("", "", "- ", "#"))
        text += [f"{f'{at}. ' if sign == '#' else sign}{way(one)}" for at, one in enumerate(group, 1)]
        text += [""] * rng.randrange(2)
    known = (say("list"), say("from").format(""), *map(full, teachers))
    return Made("\n".join(text).strip(), wanted(some), known)
