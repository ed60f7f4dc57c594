"""What shapes of list from offices share: words in seven languages, adults, dates, telephones and tables."""

from __future__ import annotations

import random
import unicodedata
from collections.abc import Callable, Mapping, Sequence
from datetime import date, timedelta

from made_lists.judging import fold
from made_lists.people import INVENTED, TUNED, Person, people
from made_lists.shapes_tuned import full

Say = Callable[[str], str]
Column = tuple[str, list[str]]
# English, Spanish, French, German, Italian, Portuguese and Dutch; a word may be written in several ways.
WORDS = {
    "first": "First name~Given name~FIRST|Nombre~Nombres|Prénom~Prénom(s)|Vorname~Rufname|Nome|Nome próprio|Voornaam",
    "last": "Last name~Surname~LAST|Apellidos~Apellido|Nom~Nom de famille|Nachname~Familienname|Cognome|Apelido~"
            "Sobrenome|Achternaam",
    "name": "Student~Child~Student name|Alumno~Alumno/a|Élève~Nom et prénom|Kind~Name des Kindes|Alunno~Bambino/a|"
            "Aluno~Aluno(a)|Leerling~Kind",
    "id": "ID~Student ID~Local ID|Matrícula~Nº exp.|Identifiant~N° élève|Schüler-Nr.~ID|Matricola|N.º processo|Nummer",
    "birth": "DOB~Birth date~Birthdate|Fecha de nac.~F. nacimiento|Né(e) le~Date de naissance|Geb.-Datum~geb. am|Data "
             "di nascita~Nato il|Data de nasc.~Nascimento|Geb.datum",
    "sex": "Sex~Gender|Sexo|Sexe|Geschl.~Geschlecht|Sesso|Sexo|M/V",
    "sexes": "F,M~Female,Male~Girl,Boy|F,M~Niña,Niño|F,M~Fille,Garçon|w,m~weibl.,männl.|F,M|F,M~Menina,Menino|V,M",
    "group": "Class~Homeroom~Group|Grupo~Clase|Classe~Groupe|Klasse~Gruppe|Sezione~Gruppo|Turma~Sala|Groep",
    "guardian": "Guardian~Parent~Contact 1|Tutor~Madre/padre/tutor|Responsable légal~Parent 1|Erziehungsber.~Kontakt "
                "1|Genitore~Tutore|Encarregado de educação~Responsável|Ouder/verzorger",
    "phone": "Phone~Home phone|Teléfono~Tel.|Téléphone~Tél.|Telefon~Tel.|Telefono~Tel.|Telefone|Telefoon",
    "mail": "E-mail~Email|Correo|Courriel~Mél|E-Mail|E-mail|E-mail|E-mail",
    "street": "Address|Domicilio~Dirección|Adresse|Anschrift~Adresse|Indirizzo|Morada~Endereço|Adres",
    "streets": "Mill Road,Oak Lane,Church Street|Calle Mayor,Avenida del Río|rue des Lilas,avenue du Port|Bachgasse,"
               "Schulweg|Via del Mulino,Via Larga|Rua da Fonte,Rua Nova|Molenweg,Kerkstraat",
    "bus": "Bus~Transport|Transporte~Ruta|Car~Transport|Bus|Pulmino~Trasporto|Transporte|Vervoer",
    "buses": "bus 4,walker,car,bus 11|ruta 2,a pie,coche|car 3,à pied,voiture|Bus 7,zu Fuß,Auto|linea 2,a piedi,auto|"
             "linha 5,a pé,carro|bus 2,lopend,auto",
    "meal": "Meal~Lunch|Comedor|Cantine|Mittagessen|Mensa|Almoço|Eten",
    "meals": "free,paid,reduced|sí,no|oui,non|ja,nein|sì,no|sim,não|ja,nee",
    "speech": "Home language|Lengua materna|Langue parlée|Muttersprache|Lingua madre|Língua materna|Thuistaal",
    "speeches": "English,Spanish,Somali|español,inglés,árabe|français,arabe,anglais|Deutsch,Türkisch,Polnisch|"
                "italiano,cinese,arabo|português,inglês|Nederlands,Turks",
    "hand": "Hand|Mano|Main|Hand|Mano|Mão|Hand",
    "hands": "right,left|diestro,zurdo|droitier,gaucher|rechts,links|destra,sinistra|destro,canhoto|rechts,links",
    "level": "Level~Grade|Nivel|Niveau|Stufe|Livello|Nível|Niveau",
    "levels": "K,Pre-K,KG|Infantil 5,2º ciclo|GS,MS|Vorschule,1a|ultimo anno,5 anni|Pré,5 anos|1,2",
    "school": "Birch Lane School~Hillside Elementary|CEIP Los Álamos~Escuela del Sol|École des Tilleuls|Lindenschule~"
              "Kita Regenbogen|Scuola dell'infanzia I Tigli|Jardim de Infância das Flores|De Lindeschool",
    "list": "Class list~Class roster|Lista de clase~Lista de alumnos|Liste de classe~Liste des élèves|Klassenliste|"
            "Elenco alunni|Lista da turma|Klassenlijst",
    "printed": "Printed on~Run date:|Impreso el|Édité le|Gedruckt am~Stand:|Stampato il|Impresso em|Geprint op",
    "page": "Page~Pg.|Página~Pág.|Page|Seite|Pagina~Pag.|Página|Pagina",
    "total": "Total~Total students:|Total~Total alumnos:|Total~Effectif :|Summe~Anzahl Kinder:|Totale|Total|Totaal",
    "teacher": "Teacher: Ms.~Teacher: Mr.|Maestra: Sra.~Tutor: D.|Enseignante : Mme|Lehrerin: Frau|Maestra: sig.ra|"
               "Educadora: Sra.|Leerkracht: juf",
    "groups": "Bears,Foxes,Owls,Robins|Osos,Zorros,Búhos|Ours,Renards,Hiboux|Bären,Füchse,Eulen|Orsi,Volpi,Gufi|Ursos,"
              "Raposas,Corujas|Beren,Vossen,Uilen",
    "halves": "Morning group,Afternoon group~AM,PM|Grupo de mañana,Grupo de tarde|Matin,Après-midi|Vormittagsgruppe,"
              "Nachmittagsgruppe|Gruppo mattina,Gruppo pomeriggio|Manhã,Tarde|Ochtendgroep,Middaggroep",
    "waiting": "Waiting list|Lista de espera|Liste d'attente|Warteliste|Lista d'attesa|Lista de espera|Wachtlijst",
    "heads": "From:,To:,Sent:,Subject:|De:,Para:,Enviado:,Asunto:|De :,À :,Envoyé :,Objet :|Von:,An:,Gesendet:,"
             "Betreff:|Da:,A:,Inviato:,Oggetto:|De:,Para:,Enviada:,Assunto:|Van:,Aan:,Verzonden:,Onderwerp:",
    "hello": "Dear~Hi|Hola~Estimada|Bonjour|Liebe~Hallo|Cara~Ciao|Olá~Cara|Beste",
    "here": "Here is the list you asked for:~as promised, your class:|Te envío la lista de tu clase:|voici la liste "
            "de votre classe :|anbei die Liste deiner Klasse:|ecco l'elenco della tua sezione:|segue a lista da "
            "turma:|hierbij de lijst van je groep:",
    "missing": "Please tell me by Friday if someone is missing.|Avísame si falta alguien.|Dites-moi s'il manque un "
               "nom.|Bitte melde dich, falls jemand fehlt.|Fammi sapere se manca qualcuno.|Avisa-me se faltar alguém.|"
               "Laat het weten als er iemand mist.",
    "bye": "Best wishes,~Kind regards|Un saludo,|Cordialement,|Viele Grüße|Cordiali saluti|Cumprimentos,|Groeten,",
    "ask": "could you send me my class list, please?|¿me mandas la lista de mi clase?|pourriez-vous m'envoyer la "
           "liste de ma classe ?|kannst du mir bitte meine Klassenliste schicken?|mi mandi l'elenco della mia "
           "sezione?|podes mandar-me a lista da minha turma?|kun je me mijn groepslijst sturen?",
    "q_time": "Timestamp|Marca temporal|Horodateur|Zeitstempel|Ora|Carimbo de data/hora|Tijdstempel",
    "q_first": "What is your child's first name?|¿Cómo se llama su hijo o hija? (solo nombre)|Prénom de votre enfant|"
               "Wie heißt Ihr Kind mit Vornamen?|Nome del bambino o della bambina|Nome próprio da criança|Voornaam "
               "van uw kind",
    "q_last": "What is your child's last name?|Apellidos del niño o de la niña|Nom de famille de votre enfant|Wie "
              "heißt Ihr Kind mit Nachnamen?|Cognome del bambino o della bambina|Apelido da criança|Achternaam van uw "
              "kind",
    "q_whole": "Child's first and last name|Nombre y apellidos del alumno|Prénom et nom de l'enfant|Vor- und Nachname "
               "Ihres Kindes|Nome e cognome del bambino|Nome e apelido da criança|Voor- en achternaam van uw kind",
    "q_you": "Your name (parent)|Su nombre (madre, padre o tutor)|Votre nom (parent)|Ihr Name (Elternteil)|Il suo "
             "nome (genitore)|O seu nome (pai, mãe)|Uw naam (ouder)",
    "q_ill": "Any allergies?|¿Alguna alergia?|Des allergies ?|Allergien?|Allergie?|Tem alergias?|Allergieën?",
    "ills": "none,peanuts,no,-|ninguna,no,huevo|non,aucune,arachides|keine,nein,Nüsse|nessuna,no,latte|nenhuma,não,"
            "leite|nee,geen,noten",
    "case": "Caseload – speech~Caseload: occupational therapy~School nurse – care plans|Logopedia – alumnos atendidos|"
            "Suivi orthophonie|Logopädie – Kinder|Logopedia – bambini seguiti|Terapia da fala – casos|Logopedie – "
            "kinderen",
    "cases": "articulation,fine motor,inhaler in office,hearing check|articulación,motricidad fina,revisar audición|"
             "articulation,motricité fine,audition à revoir|Aussprache,Feinmotorik,Hörtest|articolazione,motricità "
             "fine|articulação,motricidade fina|uitspraak,fijne motoriek",
    "days": "Mon,Tue,Wed,Thu|lun,mar,mié,jue|lun.,mar.,jeu.|Mo,Di,Mi,Do|lun,mar,mer,gio|seg,ter,qua,qui|ma,di,wo,do",
    "event": "Birthday:~Conference:~Parent meeting –|Cumpleaños:~Tutoría:|Anniversaire :~Rendez-vous parents :|"
             "Geburtstag:~Elterngespräch:|Compleanno:~Colloquio:|Aniversário:~Reunião de pais:|Verjaardag:~"
             "Oudergesprek:",
    "calendar": "Calendar~Schedule|Calendario|Agenda|Kalender|Calendario|Calendário|Agenda",
    "room": "Room 4|Aula 2|Salle 3|Raum 12|Aula 5|Sala 1|Lokaal 3",
}


def tongue(rng: random.Random, table: Mapping[str, str]) -> Say:
    """Return what says the words of a table in one language, and each of them in one way."""
    at, said = rng.randrange(7), dict[str, str]()

    def say(key: str) -> str:
        return said.setdefault(key, rng.choice(table[key].split("|")[at].split("~")))
    return say


def aside(rng: random.Random, some: Sequence[Person], count: int) -> list[Person]:
    """Draw adults, no word of whose names is one of a child's."""
    taken = set(fold(" ".join(map(full, some))).split())
    found: list[Person] = []
    scripts, own = {_script(one) for one in some}, some[0].place or INVENTED
    for place in (*rng.sample((own, rng.choice(TUNED)), 2), INVENTED):
        for one in people(rng, place, count + 6):
            words = fold(full(one)).split()
            fit = place == INVENTED or _script(one) in scripts  # adults write as the children do
            if fit and len(found) < count and taken.isdisjoint(words):
                taken.update(words)
                found.append(one)
    return found


def _script(one: Person) -> str:
    return unicodedata.name(one.given[0]).split()[0]


def dates(rng: random.Random, first: int = 2019) -> Callable[[], str]:
    """Return what draws dates that are all written in one way."""
    form = rng.choice(("%Y-%m-%d", "%d.%m.%Y", "%m/%d/%Y", "%d/%m/%Y", "%d.%m.%y", "%d-%m-%Y"))
    return lambda: (date(first, 1, 1) + timedelta(days=rng.randrange(700))).strftime(form)


def phone(rng: random.Random) -> str:
    """Return the number of a telephone."""
    form = rng.choice(("(555) 555-01##", "555-01##", "0171 / 55501##", "06 55 50 01 ##", "+34 600 555 1##"))
    return form.replace("##", f"{rng.randrange(100):02}")


def address(rng: random.Random, one: Person, at: str = "mail.example") -> str:
    """Return an e-mail address that is spelt from a name, where its letters can be."""
    given, family = ("".join(letter for letter in unicodedata.normalize("NFKD", part) if letter.isascii()
                             and letter.isalnum()) for part in (one.given, one.family))
    spelt = f"{given}.{family}" if given and family else f"k{rng.randrange(1000, 9999)}"
    return f"{spelt.lower()}@{at}"


def capitals(one: Person) -> str:
    """Return the family name in capitals and the given name, or a comma where capitals would not tell."""
    family = one.family.upper()
    return f"{family} {one.given}" if len(family) > 2 and family != one.family.lower() else f"{one.family}, {one.given}"


def comma(one: Person) -> str:
    """Return family name, comma, given name."""
    return f"{one.family}, {one.given}"


def written(rows: Sequence[Sequence[str]], sign: str, quotes: bool = False) -> str:
    """Return the rows of a table with a sign between cells, in quotes where there must be some."""
    return "\n".join(sign.join(f'"{cell}"' if quotes or (sign in cell and sign in ",;") else cell for cell in row)
                     for row in rows)


def turned(columns: Sequence[Column]) -> list[tuple[str, ...]]:
    """Return the rows of some columns, their titles first."""
    return [tuple(title for title, _ in columns), *zip(*(cells for _, cells in columns), strict=True)]
