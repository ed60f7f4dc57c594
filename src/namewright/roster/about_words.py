"""Words by which a mail, a payment or a log tells of a child: it is absent, pays for a trip, was added. Data only.

Written down by hand in the six languages of the pages and in Dutch; modest: where a word is missing, the reader asks.
Folded: small letters, no accents.
"""

from __future__ import annotations

from namewright.roster.vocabulary import word_set

ABOUT = word_set("""
    absent, absence, absences, away, late, sick, ill, fever, cold, cough, flu, dentist, doctor, appointment, excuse,
    excused, trip, outing, farm, zoo, museum, theatre, theater, swimming, lunch, lunches, milk, snack, photo, photos,
    fee, fees, fund, money, deposit, contribution, question, permission, slip, pickup, re, about, regarding,
    ausente, ausencia, falta, faltara, tarde, enfermo, enferma, malo, mala, fiebre, tos, gripe, dentista, medico,
    cita, justificante, casa, maison, hause, home, huis, excursion, granja, comedor, cuota, salida, foto, fotos,
    pregunta, permiso, sobre, material,
    absente, retard, malade, fievre, toux, grippe, rdv, rendez-vous, dentiste, medecin, excuse, mot, sortie, ferme,
    cantine, cotisation, cooperative, photographe, autorisation, propos, concernant, voyage, musee, piscine, garderie,
    fehlt, abwesend, krank, krankmeldung, entschuldigung, abmeldung, spater, verspatet, fieber, husten, erkaltet,
    arzt, arzttermin, zahnarzt, termin, ausflug, bauernhof, klassenfahrt, wandertag, theaterfahrt, klassenkasse,
    gruppenkasse, essensgeld, milchgeld, kopiergeld, bastelgeld, elternbeitrag, beitrag, fototermin, frage, betr,
    assente, assenza, malato, malata, febbre, tosse, influenza, tardi, ritardo, dentista, dottore, visita,
    giustificazione, gita, fattoria, mensa, quota, contributo, assicurazione, domanda, permesso,
    assenta, doente, febre, tosse, gripe, atraso, atrasado, atrasada, consulta, justificacao, quinta, passeio,
    cantina, almoco, mensalidade, seguro, pergunta, autorizacao,
    ziek, ziekmelding, afwezig, afwezigheid, afmelding, later, koorts, tandarts, dokter, vraag, schoolreis,
    schoolreisje, ouderbijdrage, overblijven, uitstapje""")
"""What mails and payments of families are about, each with the child's name beside it."""

ABOUT_ENDINGS = ("geld", "kasse", "fahrt", "ausflug", "meldung", "termin", "beitrag", "schoolreis", "bijdrage")
"""How words in one for such things end in German and Dutch."""

BY = word_set("with, by, mit, bei, con, por, avec, par, chez, com, beside, neben, junto, to, met, door")
"""Small words behind which somebody else than the child stands: ``reads with Leo``."""

SENDERS = word_set("""
    from, sender, payer, paid by, paid in by, remitter, name of payer, debtor, de, remitente, ordenante, emisor,
    pagador,
    expediteur, emetteur, donneur d'ordre, donneur d’ordre, payeur, von, absender, auftraggeber,
    auftraggeber/empfanger, zahlungspflichtiger, einzahler, zahler, da, mittente, ordinante, pagante, remetente,
    pagador, van, afzender, betaler""")
"""Titles and labels of who writes or pays."""

SUBJECTS = word_set("""
    subject, reference, ref, purpose, payment reference, memo, details, re, asunto, concepto, referencia, objet,
    libelle, motif, reference, communication, betreff, verwendungszweck, zweck, buchungstext, oggetto, causale,
    descrizione, assunto, descritivo, referencia, onderwerp, omschrijving, mededeling""")
"""Titles and labels of what they write or pay for."""

DONE_TO = (
    "add", "invit", "enrol", "register", "creat", "approv", "accept", "assign", "import", "edit", "updat", "chang",
    "anad", "agreg", "inscri", "cread", "creo", "matricul", "asign", "aprob", "edit", "actualiz", "modific",
    "ajout", "invite", "enregistr", "cree", "approuv", "modifi", "affect",
    "hinzu", "eingeladen", "angelegt", "angemeldet", "aufgenommen", "zugewiesen", "bearbeitet", "geandert",
    "importiert",
    "aggiun", "iscri", "inserit", "modificat", "assegnat", "approvat",
    "adicion", "convid", "inscre", "matricul", "criou", "criad", "atribu", "aprov", "alter",
    "toegevoegd", "uitgenodigd", "ingeschreven", "aangemaakt", "bewerkt",
)
"""How words begin for what somebody who keeps a list does to a child of it."""

TAKEN_OFF = (
    "remov", "delet", "archiv", "unenrol", "withdr", "deactiv", "eliminad", "eliminó", "elimino", "quitad", "quito",
    "borrad", "borro", "baja", "desmatric", "desactiv", "retir", "supprim", "enlev", "desinscr", "desactiv", "entfernt",
    "geloscht", "abgemeldet", "ausgetragen", "deaktiv", "archivier", "rimoss", "eliminat", "cancellat", "disattiv",
    "removeu", "removid", "exclu", "apagou", "apagad", "eliminou", "verwijderd", "uitgeschreven", "gearchiveerd",
)
"""How words begin for taking a child off a list."""
