"""More shapes of list brought along from home and hall, at first measured only and now open."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.household import each, given, plain, shuffled, sown, speak, titled, ways
from made_lists.judging import Made
from made_lists.papers import address, aside, comma, dates, phone, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
MAY_ASK: set[str] = set()  # of these a careful human would ask about some names
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "about": "All about me~Our favorites|Todo sobre mí|Tout sur moi~Nos goûts|Das bin ich~Unsere Lieblingssachen|"
             "Tutto su di me|Tudo sobre mim",
    "likes": "Name,Color,Animal,Food|Nombre,Color,Animal,Comida|Prénom,Couleur,Animal,Plat|Name,Farbe,Tier,Essen|Nome,"
             "Colore,Animale,Cibo|Nome,Cor,Animal,Comida",
    "tints": "blue,red,pink,purple,green|azul,rojo,rosa,verde,violeta|bleu,rouge,rose,vert,violet|blau,rot,rosa,grün,"
             "lila|blu,rosso,rosa,verde,viola|azul,vermelho,rosa,verde,roxo",
    "beasts": "tiger,horse,bunny,robin,lion|tigre,caballo,conejo,león,paloma|tigre,cheval,lapin,lion,colombe|Tiger,"
              "Pferd,Hase,Löwe,Wolf|tigre,cavallo,coniglio,leone,colomba|tigre,cavalo,coelho,leão,pomba",
    "meals": "pizza,noodles,apples,rice|pizza,pasta,manzana,arroz|pizza,pâtes,pommes,frites|Pizza,Nudeln,Äpfel,Reis|"
             "pizza,pasta,mele,riso|piza,massa,maçã,arroz",
    "my": "My name is {}.~I am {}.|Me llamo {}.|Je m'appelle {}.|Ich heiße {}.~Ich bin {}.|Mi chiamo {}.|Eu chamo-me "
          "{}.~Meu nome é {}.",
    "like": "I like {}.|Me gusta {}.|J'aime {}.|Ich mag {}.|Mi piace {}.|Eu gosto de {}.",
    "homes": "Who is where (two homes)~Pick-up weeks|Semanas con mamá y papá~Custodia|Garde alternée|Wechselmodell~"
             "Wer ist wann wo|Settimane mamma / papà~Affido|Guarda partilhada~Semanas",
    "weeks": "Child,Week A,Week B~Child,Mon-Wed,Thu-Fri|Niño/a,Semana A,Semana B|Enfant,Semaine A,Semaine B~Enfant,"
             "Semaine paire,Semaine impaire|Kind,Woche A,Woche B~Kind,gerade Woche,ungerade Woche|Bambino,Settimana A,"
             "Settimana B|Criança,Semana A,Semana B",
    "kin": "mum,dad,gran~mom,dad,grandma|mamá,papá,abuela|maman,papa,mamie|Mama,Papa,Oma|mamma,papà,nonna|mãe,pai,avó",
    "reports": "Report comments~Term 1 comments|Informes~Observaciones 1er trimestre|Appréciations 1er trimestre|"
               "Lernstandsberichte~Zeugnistexte|Giudizi primo quadrimestre|Apreciações 1.º período",
    "praise": "{} has settled in well and enjoys stories.;{} can write most letters, but still holds the pencil "
              "tightly.;This term {} made good friends.|{} se ha adaptado muy bien y disfruta de los cuentos.;{} ya "
              "escribe su nombre sin ayuda.;Este trimestre {} ha hecho amigos.|{} a pris ses repères et aime les "
              "histoires.;{} sait écrire son prénom en capitales.;Ce trimestre, {} a fait de beaux progrès.|{} hat "
              "sich gut eingelebt und hört gern Geschichten.;{} schreibt den eigenen Namen sicher.;In diesem Halbjahr "
              "hat {} Freunde gefunden.|{} si è inserito bene e ama le storie.;{} scrive il suo nome da solo.;In "
              "questo periodo {} ha fatto progressi.|{} adaptou-se bem e gosta de histórias.;{} já escreve o nome sem "
              "ajuda.;Neste período {} fez amigos.",
    "praise2": "Keep it up!,Needs help with scissors.|¡Sigue así!,Necesita ayuda con las tijeras.|Continue ainsi !,"
               "Doit encore travailler le découpage.|Weiter so!,Braucht Hilfe mit der Schere.|Continua così!,Ha "
               "bisogno di aiuto con le forbici.|Continua assim!,Precisa de ajuda com a tesoura.",
    "spoken": "new line~comma~next line|coma~nueva línea~punto y aparte|virgule~à la ligne~retour à la ligne|Komma~"
              "neue Zeile~Absatz|virgola~a capo~nuova riga|vírgula~nova linha~parágrafo",
    "begin": "class list~okay the class list colon~|lista de clase~la lista de clase dos puntos~|liste de la classe "
             "deux points~|Klassenliste Doppelpunkt~|elenco della classe due punti~|lista da turma dois pontos~",
    "ended": "full stop~end of list~|punto~punto final~|point~fin de la liste~|Punkt~fertig~|punto~fine elenco~|ponto~"
             "fim da lista~",
    "by_last": "By last name~Sorted by surname|Por apellidos~Orden: apellido|Par nom de famille~Tri par nom|Nach "
               "Nachnamen~Sortiert nach Familienname|Per cognome~Ordine per cognome|Por apelido~Ordem: apelido",
    "by_first": "By first name~Sorted by first name|Por nombre~Orden: nombre|Par prénom~Tri par prénom|Nach Vornamen~"
                "Sortiert nach Vorname|Per nome~Ordine per nome|Por nome próprio~Ordem: nome",
    "key": "Key person:~Key worker –|Educadora de referencia:~Tutora:|Référente :~ATSEM :|Bezugserzieherin:~"
           "Bezugsperson –|Educatrice di riferimento:|Educadora de referência:",
    "crumbs": "Home > My classes > Kindergarten|Inicio > Mis clases > Infantil|Accueil > Mes classes > Maternelle|"
              "Start > Meine Klassen > Vorschule|Home > Le mie classi > Infanzia|Início > As minhas turmas > Pré",
    "tools": "Add student,Sort by: last name,Export|Añadir alumno,Ordenar por: apellido,Exportar|Ajouter un élève,"
             "Trier par : nom,Exporter|Kind hinzufügen,Sortieren nach: Name,Exportieren|Aggiungi alunno,Ordina per: "
             "cognome,Esporta|Adicionar aluno,Ordenar por: apelido,Exportar",
    "counted": "{} students|{} alumnos|{} élèves|{} Kinder|{} alunni|{} alunos",
    "active": "Active 2 days ago,Never signed in,Active today|Activo hace 2 días,Sin conexión,Activo hoy|Actif il y a "
              "2 jours,Jamais connecté,Actif aujourd'hui|Aktiv vor 2 Tagen,Noch nie angemeldet,Heute aktiv|Attivo 2 "
              "giorni fa,Mai connesso,Attivo oggi|Ativo há 2 dias,Nunca entrou,Ativo hoje",
    "buttons": "Edit · Remove~Edit  Message|Editar · Eliminar|Modifier · Supprimer|Bearbeiten · Entfernen|Modifica · "
               "Rimuovi|Editar · Remover",
    "foot": "Show more,Help · Privacy|Ver más,Ayuda · Privacidad|Afficher plus,Aide · Confidentialité|Mehr anzeigen,"
            "Hilfe · Datenschutz|Mostra altro,Aiuto · Privacy|Mostrar mais,Ajuda · Privacidade",
    "next": "Where we go in September~First grade schools|¿A qué cole vamos?~Colegios 1º Primaria|Orientation CP~"
            "École de rentrée|Schulanfänger – welche Schule?~Einschulung|Scuola primaria scelta~Dove andiamo a "
            "settembre|Escola no 1.º ano",
    "schools": "St Anne's School,Oak Hill Primary,Lakeview,Mill Road School|CEIP San José,Colegio Santa Clara,CEIP El "
               "Prado|École Sainte-Marie,École Jean Moulin,École du Parc|Grundschule Am Berg,Annaschule,Lindenschule,"
               "Martinschule|Scuola San Luca,Primaria Santa Chiara,Scuola Rodari|EB1 de Santa Clara,Escola São João,"
               "EB do Monte",
    "unsure": "not decided,?,moving away|sin decidir,?,se muda|pas encore décidé,?,déménage|noch offen,?,zieht um|da "
              "decidere,?,si trasferisce|por decidir,?,muda de cidade",
    "school": "Child,School|Niño/a,Colegio|Élève,École|Kind,Schule|Bambino,Scuola|Criança,Escola",
    "sports": "Sports day – results~Field day|Día del deporte|Fête du sport – résultats|Sportfest – Ergebnisse|Festa "
              "dello sport – risultati|Dia do desporto – resultados",
    "events": "Sack race,Egg and spoon,30 m run,Long jump,Relay,Ball throw|Carrera de sacos,Salto,Relevos,30 metros|"
              "Course en sac,Saut,Relais,30 mètres|Sackhüpfen,Weitsprung,Eierlauf,30-m-Lauf|Corsa nei sacchi,Salto,"
              "Staffetta,30 metri|Corrida de sacos,Salto,Estafeta,30 metros",
    "shots": "Shots – kindergarten entry~Immunization check|Vacunas – revisión|Vaccinations – à vérifier|Impfstatus~"
             "Masernnachweis|Vaccinazioni – controllo|Vacinas – verificação",
    "needles": "MMR,DTaP,Varicella|triple vírica,DTPa,varicela|ROR,DTP,hépatite B|MMR,Tdap,Varizellen|MPR,esavalente,"
               "varicella|VASPR,DTPa,varicela",
    "state": "up to date,card not seen,exempt,due in March|al día,falta cartilla,pendiente|à jour,carnet non vu,"
             "rappel en mars|vollständig,Ausweis fehlt,Auffrischung fällig|in regola,libretto mancante,richiamo a "
             "marzo|em dia,boletim em falta,reforço em março",
    "choice": "Assembly and RE~Electives|Religión / Valores~Optativas|Options du mercredi~Activités|Religion / Ethik~"
              "Religionsunterricht|Religione / alternativa~IRC|Moral / alternativa~Opções",
    "options": "RE,no RE,quiet reading|Religión,Valores,Atención educativa|chorale,étude,garderie|ev.,rk.,Ethik,isl.|"
               "IRC,no IRC,alternativa|EMRC,não,alternativa",
    "option": "Name,Choice|Alumno,Opción|Élève,Choix|Name,Rel.|Alunno,Scelta|Aluno,Opção",
    "claps": "Clap your name~Syllables|Palmadas~Sílabas de mi nombre|Syllabes de nos prénoms|Namen klatschen~Silben|"
             "Battiamo il nome~Sillabe|Batemos palmas~Sílabas",
    "clap": "clap|palmada|syllabe|Silbe|sillaba|sílaba",
    "signs": "letters|letras|lettres|Buchstaben|lettere|letras",
    "clapped": "Name,Syllables,Letters|Nombre,Sílabas,Letras|Prénom,Syllabes,Lettres|Name,Silben,Buchstaben|Nome,"
               "Sillabe,Lettere|Nome,Sílabas,Letras",
    "index": "INDEX OF PORTFOLIOS~Index|ÍNDICE DE CARPETAS~Índice|INDEX DES CAHIERS~Index|VERZEICHNIS~Register der "
             "Mappen|INDICE~Indice delle cartelle|ÍNDICE DOS PORTEFÓLIOS~Índice",
    "page": "page|página|page|Seite|pagina|página",
}


@shape()
def pocket_favourites(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(3)
    text, sign, kinds = titled(rng, say("about")), rng.choice((", ", " / ", " – ")), ("tints", "beasts", "meals")
    rows = [[way(one), *(rng.choice(each(say, kind)) for kind in kinds)] for one in some]
    if form == 0:
        text.append(written([each(say, "likes"), *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{row[0]}: {sign.join(row[1:])}" for row in rows]
    else:
        text += [f"{say('my').format(one.given)} {say('like').format(row[1 + at % 3])}"
                 for at, (one, row) in enumerate(zip(some, rows, strict=True))]
    words = [word for kind in kinds for word in each(say, kind)]
    return Made("\n".join(text), wanted(some), (*words, *each(say, "likes"), say("about"), say("my"), say("like")))


@shape(MAY_ASK)
def pocket_two_homes(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, adults = speak(rng, WORDS), plain(rng), aside(rng, some, 2 * len(some))
    titles, kin, form = each(say, "weeks"), each(say, "kin"), rng.randrange(3)
    text, rows = titled(rng, say("homes")), [titles]
    for one, two, three in zip(some, adults[::2], adults[1::2], strict=True):
        both, shown = [f"{two.given} ({kin[0]})", f"{three.given} ({kin[1]})"], rng.random() < 0.7
        both = [kin[0], kin[1]] if rng.random() < 0.3 else both
        rows.append([way(one), *(both if shown else ["–", "–"])])
        if form == 0:
            told = [f"{title}: {who}" for title, who in zip(titles[1:], both, strict=True)]
            text.append(f"{way(one)} – {', '.join(told)}" if shown else way(one))
        elif form == 1:
            text.append(f"{way(one)}: {' / '.join(both)}" if shown else f"{way(one)}: {kin[0]}")
    text += [written(rows, rng.choice(("\t", ";", " | ")))] if form == 2 else []
    return Made("\n".join(text), wanted(some), (*map(full, adults), *titles, *kin, say("homes")))


@shape()
def pocket_reports(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, head = speak(rng, WORDS), rng.choice((full, full, comma)), rng.random() < 0.7
    praise, more, text = say("praise").split(";"), each(say, "praise2"), titled(rng, say("reports"))
    mark = rng.choice(("", "", "### ", "• "))
    for one in some:
        told = [line.format(one.given) for line in rng.sample(praise, rng.randrange(1, 3))]
        told += [sown(rng, more, 0.4)]
        body = " ".join(part for part in told if part)
        text += [mark + way(one), body, ""] if head else [f"{mark}{way(one)}: {body}", ""]
    known = {word for line in praise for word in line.replace("{}", "").replace(".", "").split()}
    return Made("\n".join(text).strip(), wanted(some), (*known, *more, say("reports")))


@shape()
def pocket_spoken_marks(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), rng.choice((full, full, given))
    sign, wide = f" {say('spoken')} ", rng.choice((10_000, 10_000, 60, 80))
    words = " ".join((say("begin"), sign.join(map(way, some)), say("ended"))).split()
    rows = [""]
    for word in words:
        if len(rows[-1]) + len(word) > wide:
            rows.append("")
        rows[-1] = f"{rows[-1]} {word}".strip()
    return Made("\n".join(rows), wanted(some), (say("spoken"), say("begin"), say("ended")))


@shape(MAY_ASK)
def pocket_sorted_twice(rng: random.Random, some: Sequence[Person]) -> Made:
    say, sign = speak(rng, WORDS), rng.choice(("", "", "- ", "# "))
    lists = [(say("by_last"), [comma(one) for one in sorted(some, key=lambda one: one.family)]),
             (say("by_first"), [full(one) for one in sorted(some, key=given)])]
    parts = [[title, *(f"{at}. {name}" if sign == "# " else sign + name for at, name in enumerate(names, 1))]
             for title, names in rng.sample(lists, 2)]
    return Made("\n\n".join("\n".join(part) for part in parts), wanted(some), (say("by_last"), say("by_first")))


@shape()
def pocket_key_person(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, count = speak(rng, WORDS), plain(rng), rng.randrange(2, 4)
    adults, form, text = aside(rng, some, count), rng.randrange(3), list[str]()
    for at, adult in enumerate(adults):
        names = list(map(way, some[at::count]))
        who = rng.choice((adult.given, full(adult))) + (f" ({phone(rng)})" if rng.random() < 0.3 else "")
        if form == 0:
            text += [f"{say('key')} {who}", *(f"- {name}" for name in names), ""]
        elif form == 1:
            text += [f"{say('key')} {who}", *names, ""]
        else:
            text += [f"{say('key')} {who}", ", ".join(names), ""]
    return Made("\n".join(text).strip(), wanted(some), (*map(full, adults), say("key")))


@shape()
def pocket_page_of_a_platform(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, keep = speak(rng, WORDS), rng.choice((full, full, comma)), [rng.random() < 0.6 for _ in range(4)]
    text = [say("crumbs"), say("counted").format(len(some)), *each(say, "tools")][:rng.randrange(1, 6)]
    for one in some:
        block = [one.given[0] + one.family[0], way(one), rng.choice(each(say, "active")),
                 f"{address(rng, one, 'school.example')}", say("buttons")]
        text += [cell for cell, kept in zip(block, (keep[0], True, *keep[1:]), strict=True) if kept]
    text += each(say, "foot") if rng.random() < 0.6 else []
    words = (*each(say, "tools"), *each(say, "active"), *each(say, "foot"))
    return Made("\n".join(text), wanted(some), (say("crumbs"), say("buttons"), say("counted"), *words))


@shape()
def pocket_next_schools(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, sign = speak(rng, WORDS), ways(rng), rng.choice((" → ", " – ", ": ", "\t", " (", " -> "))
    schools, unsure, text = each(say, "schools"), each(say, "unsure"), titled(rng, say("next"))
    if rng.random() < 0.25:
        text = []
        for at, school in enumerate(schools):
            text += [f"{school}:", *map(way, some[at::len(schools)]), ""] if some[at::len(schools)] else []
    else:
        text += ["\t".join(each(say, "school"))] if sign == "\t" and rng.random() < 0.7 else []
        for one in some:
            school = sown(rng, unsure, 0.1) or rng.choice(schools)
            text.append(f"{way(one)}{sign}{school}{')' if '(' in sign else ''}")
    return Made("\n".join(text).strip(), wanted(some), (*schools, *unsure, *each(say, "school"), say("next")))


@shape()
def pocket_sports_day(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(3)
    events, text, mark = shuffled(rng, each(say, "events")), titled(rng, say("sports")), rng.choice((".", ","))
    for at, event in enumerate(events):
        part = some[at::len(events)]
        if part and form == 0:
            text += [event, *(f"{place}. {way(one)}  {rng.randrange(7, 19)}{mark}{rng.randrange(10)} s"
                              for place, one in enumerate(part, 1)), ""]
        elif part and form == 1:
            text.append(f"{event}: " + ", ".join(f"{place}. {way(one)}" for place, one in enumerate(part, 1)))
        elif part:
            text += [f"{event}:", *(f"{medal} {way(one)}".strip() for medal, one in zip(
                ("🥇", "🥈", "🥉", *[""] * len(part)), part, strict=False)), ""]
    return Made("\n".join(text).strip(), wanted(some), (*events, say("sports")))


@shape()
def pocket_shots(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), ways(rng)
    needles, state, day = each(say, "needles"), each(say, "state"), dates(rng)
    sign, with_day = rng.choice((" – ", "\t", "; ", " | ", "  ")), rng.random() < 0.5
    text = titled(rng, say("shots"))
    for one in some:
        told = [f"{needle} {rng.randrange(3)}/2" for needle in needles[:rng.randrange(1, 4)]]
        cells = [way(one), *([day()] if with_day else []), *told, rng.choice(state)]
        text.append(sign.join(cells))
    return Made("\n".join(text), wanted(some), (*needles, *state, say("shots")))


@shape()
def pocket_options(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), ways(rng), rng.randrange(4)
    options, text = each(say, "options"), titled(rng, say("choice"), 0.6)
    rows = [[way(one), rng.choice(options)] for one in some]
    if form == 0:
        text.append(written([each(say, "option"), *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{name} ({option})" for name, option in rows]
    elif form == 2:
        text += [f"{name}{' ' * rng.randrange(2, 6)}{option}" for name, option in rows]
    else:
        for option in options:
            names = [name for name, chosen in rows if chosen == option]
            text += [option, *names, ""] if names else []
    return Made("\n".join(text).strip(), wanted(some), (*options, *each(say, "option"), say("choice")))


def _parted(name: str) -> list[str]:
    parts = [""]
    for at, sign in enumerate(name):
        rest = name[at + 1:]
        if parts[-1] and any(vowel in parts[-1].lower() for vowel in "aeiouyáéíóúäöü") and sign.lower() not in \
                "aeiouyáéíóúäöü" and any(vowel in rest.lower() for vowel in "aeiouyáéíóúäöü"):
            parts.append("")
        parts[-1] += sign
    return parts


@shape()
def pocket_claps(rng: random.Random, some: Sequence[Person]) -> Made:
    say, form, text = speak(rng, WORDS), rng.randrange(5), list[str]()
    rows = [[one.given, "-".join(_parted(one.given)), str(len(one.given))] for one in some]
    for name, parts, size in rows:
        claps = parts.count("-") + 1
        text.append((f"{name}  {parts}  {claps}", f"{name} – {size} {say('signs')}", f"{name} ({claps} 👏)",
                     f"{name}: {parts.replace('-', ' · ')}", "\t".join((name, parts, size)))[form])
    head = ["\t".join(each(say, "clapped"))] if form == 4 else titled(rng, say("claps"))
    parts = [part for row in rows for part in row[1].split("-") if part != row[0] and "-" in row[1]]
    return Made("\n".join((*head, *text)), wanted(some), (*each(say, "clapped"), say("claps"), say("signs"), *parts))


@shape()
def pocket_photo_of_an_index(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), rng.choice((comma, comma, full))
    dirt, ends = ("|", "'", ".", "_", "~", "—"), ("", "", "", " .", " |", " _")
    ordered, text = sorted(some, key=lambda one: way(one)), [say("index")]
    entries = [f"{way(one)} {rng.choice(('. . . .', '.....', '… …', '..,...', '·····', '_ _ .'))} "
               f"{rng.randrange(2, 60)}{rng.choice(ends)}" for one in ordered]
    if rng.random() < 0.4:
        half = -(-len(entries) // 2)
        wide = max(map(len, entries)) + 4
        text += [left.ljust(wide) + right for left, right in zip(entries[:half], [*entries[half:], ""], strict=False)]
    else:
        start, heads = "", rng.random() < 0.6
        for one, entry in zip(ordered, entries, strict=True):
            if heads and way(one)[0].upper() != start:
                start = way(one)[0].upper()
                text.append(start + rng.choice(("", "", " |")))
            text.append(entry)
    text.insert(rng.randrange(2, len(text)), rng.choice(dirt))
    text += [f"- {rng.randrange(60, 99)} -"] if rng.random() < 0.5 else [f"{say('page')} {rng.randrange(60, 99)}"]
    return Made("\n".join(text), wanted(some), (say("index"), say("page")))
