"""The steps from a text as it was pasted to lines that may be children, in their order, each beside what it is for.

Each step sees what those before it left. One that looks for certain signs is left out where no line has one of them,
so a list of plain names passes most steps at the cost of one look. What a step takes out of the lines, because it is
told of children and of the day, comes back at the end where it stood (``unfolding``).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.address_lines import from_address_labels
from namewright.roster.ages import from_ages
from namewright.roster.alike import from_a_program
from namewright.roster.arrows import from_arrows
from namewright.roster.bare_labels import from_bare_labels
from namewright.roster.birthdays import from_birthdays, without_days_below
from namewright.roster.buddy_lists import from_buddy_lists
from namewright.roster.captions import from_captions
from namewright.roster.cast_lists import from_a_cast
from namewright.roster.cell_lines import from_cell_lines
from namewright.roster.classes_beside import from_classes_beside
from namewright.roster.codes_before import from_codes_before
from namewright.roster.columns import DELIMITERS
from namewright.roster.copied_pages import without_copied_pages
from namewright.roster.corrected import from_corrections
from namewright.roster.counted import from_counted
from namewright.roster.counted_blocks import from_counted_blocks
from namewright.roster.dashed import from_dashed_families
from namewright.roster.day_plans import from_a_day_plan
from namewright.roster.dictated import from_a_telling
from namewright.roster.family_visits import from_families
from namewright.roster.fetched import without_grown_ups
from namewright.roster.fetchers import without_fetchers
from namewright.roster.file_names import from_file_names
from namewright.roster.folder_trees import from_a_folder_tree
from namewright.roster.form_letters import without_form_letters
from namewright.roster.forms import from_a_form
from namewright.roster.further_tables import from_further_tables
from namewright.roster.group_beside import SIGNS, without_groups_beside
from namewright.roster.group_lines import counted_titles, state_titles
from namewright.roster.in_two_lines import from_two_lines
from namewright.roster.index_pages import from_an_index
from namewright.roster.jobs_below import without_jobs
from namewright.roster.label_sheets import from_label_sheets
from namewright.roster.leaver_blocks import without_leaver_blocks
from namewright.roster.leavers import without_leavers
from namewright.roster.margin_notes import without_margin_notes
from namewright.roster.merged_cells import SIGNS as CELL_SIGNS
from namewright.roster.merged_cells import from_merged_cells
from namewright.roster.names_beside import from_names_beside
from namewright.roster.page_heads import without_page_heads
from namewright.roster.parents_of import from_parents_of
from namewright.roster.passed_on import from_passed_on
from namewright.roster.pasted import Line, are_paired
from namewright.roster.photos import from_a_photo
from namewright.roster.prose import Aside
from namewright.roster.said_below import without_said_below
from namewright.roster.said_beside import from_said_beside
from namewright.roster.sheet_frames import without_sheet_frames
from namewright.roster.short_pairs import from_short_pairs
from namewright.roster.siblings import from_siblings
from namewright.roster.spelt_in_parts import from_parts
from namewright.roster.spoken_signs import from_spoken_signs
from namewright.roster.staff_blocks import without_staff
from namewright.roster.wrapped import PARTING, from_wrapped

_THINGS = pattern(r"[0-9\"“„«»]")


class Step(NamedTuple):
    """What is done to the lines, and signs of which they must have one: without, it leaves all as it is.

    What is done returns the lines, or them and what it took out of them.
    """

    take: Callable[[list[Line]], list[Line] | tuple[list[Line], list[Aside]]]
    needs: Sequence[str] = ()


def through(steps: Sequence[Step], lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return what is left of the lines behind all steps, and what these took out, in their order."""
    asides: list[Aside] = []
    text = _whole(lines)
    if are_paired(lines):
        return lines, asides
    for step in steps:
        if step.needs and not any(map(text.__contains__, step.needs)):
            continue
        taken = step.take(lines)
        found, told = taken if isinstance(taken, tuple) else (taken, [])
        asides += told
        if found != lines:
            lines, text = found, _whole(found)
    return lines, asides


def _whole(lines: Sequence[Line]) -> str:
    return "\n".join([line.text for line in lines])


def _from_pages(lines: list[Line]) -> list[Line]:
    return from_further_tables(without_page_heads(from_label_sheets(from_classes_beside(lines))))


def _beside_things(lines: list[Line]) -> list[Line]:
    """Return children alone who stand beside codes of things or titles of works; looked for where a sign says so."""
    return from_captions(from_codes_before(lines)) if _THINGS.search(_whole(lines)) else lines


def _counted_told(lines: list[Line]) -> list[Line]:
    """Return the lines that count the names below, or tell their state, as headings."""
    texts = [line.text for line in lines]
    counted = counted_titles(texts) | state_titles(texts)
    return [line.heading(line.text) if at in counted else line for at, line in enumerate(lines)] if counted else lines


AS_PASTED = (
    Step(from_a_folder_tree),  # ├── Mia Vost/
    Step(from_wrapped, PARTING),  # In my class I have Mia Vost, Leo, over Berg and Ava Tarn.
    Step(from_parents_of, ",;"),  # Dear parents of Mia Vost, Leo Berg and Ava Tarn,
    Step(_beside_things),  # TAB-01 = Mia Vost; Mia Vost (5): “My cat”, clay
    Step(without_copied_pages),  # MV · Mia Vost · Active today · Edit, each on a line
    Step(without_sheet_frames),  # 1 · Name · Group, over 2 · Mia Vost · Owls
    Step(from_merged_cells, CELL_SIGNS),  # Red table | Mia Vost, over  | Leo Berg
    Step(from_ages, ";/"),  # Mia Vost (4;7) – /k/ for /t/
    Step(from_bare_labels, ":"),  # Mia: ||, over Leo:
    Step(without_staff),  # Staff, over Ms. Vale · Mr. Oak
    Step(without_margin_notes),  # Commented [KB1]: ask her mother
    Step(without_leavers),  # Mia Vost → left us
    Step(without_leaver_blocks),  # Leavers:, over Mia Vost
    Step(from_spoken_signs),  # Mia Vost comma Leo Berg new line Ava Tarn
    Step(from_passed_on),  # Mia gives to Leo, over Leo gives to Ava
    Step(without_fetchers),  # Mia Vost: Ana Vost (mom); Mia Vost, over Ana Vost (mom) 555-0104
    Step(from_said_beside),  # My name is Mia. I like red.
    Step(from_an_index, ("...", ". .", "…", "··", "· ·", "__", "_ _")),  # Vost, Mia ..... 12    Zell, Bo ..... 31
    Step(from_parts),  # Mira: Mi · ra
    Step(from_arrows, ("→", "⇒", "->", "=>", " – ", " — ", " - ", ": ")),  # Mia Vost → Oak Hill School
    Step(from_a_photo, "._~'`=|¦,—"),  # ' 1, Mia Vost _
    Step(from_two_lines),  # Mia, over VOST
    Step(from_cell_lines),  # Name · Bus · Mia Vost · 4 · Leo Berg · 7, each on a line
    Step(from_a_program, "\"'"),  # ["Mia", "Leo"]
    Step(from_file_names, ".:"),  # Mia_Vost.jpg
    Step(from_a_form, ":=._…"),  # First name: Mia
    Step(from_address_labels),  # To the parents of Mia Vost · 7 Oak Lane · 12345 Elmham
)
"""What a program, a device, a screen or a photo wrote about the names; not asked where texts of keys were read."""

BEFORE_COLUMNS = (
    Step(from_names_beside, ("\t", "|", ";", "  ")),  # 1. Mia Vost   3. Ava Tarn, over 2. Leo Berg   4. Noah Birk
    Step(without_groups_beside, SIGNS),  # Mia · Red group
    Step(without_jobs),  # To buy, over glue sticks
    Step(from_a_cast, ":-–—=→\t"),  # Sheep: Leo and Ava
    Step(without_form_letters),  # the same certificate for each child
    Step(_from_pages, DELIMITERS),  # labels, printed pages and tables, one child below another
    Step(without_said_below),  # Allergy: nuts, below each name
    Step(without_days_below),  # April 3, below each birthday
    Step(without_grown_ups, ")]"),  # 8:02 Mia Vost (Grandma)
    Step(from_corrections),  # NOT Ana – Anna
    Step(from_families),  # The Vost family (Mia), 7 Oak Lane
    Step(from_birthdays),  # Mia Vost's 5th birthday
    Step(from_counted),  # 1. Mia 2. Leo 3. Sam
    Step(from_counted_blocks, ("1.", "1)")),  # Long jump, over 1. Mia · 2. Leo; and so on
    Step(from_dashed_families, "-–—"),  # Brandt - Ottilie
    Step(from_short_pairs),  # Mia, Lange
    Step(from_siblings),  # The Vost twins Rafi & Luz
    Step(from_buddy_lists),  # Buddies from 5B, over Kian - Theo
    Step(from_a_day_plan),  # 9:00 Reading with Mia, Leo
    Step(_counted_told),  # Foxes (12), over twelve names; Present, over who is there
    Step(from_a_telling),  # then Mia, and last Leo
)
"""What says something of the names or stands about them, before it is asked which columns the lines have."""
