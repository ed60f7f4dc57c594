"""From what holds for a child or for all to what each kind of page takes; only the kind that is made is loaded."""

from __future__ import annotations

from typing import TYPE_CHECKING

from namewright.pages.blocks import PageSettings

if TYPE_CHECKING:
    from datetime import date

    from namewright.pages.child_progress import ProgressSettings
    from namewright.pages.name_card import CardSettings
    from namewright.pages.paper import CardSize
    from namewright.pages.plan.pages import PlanSettings
    from namewright.pages.sheet_settings import SheetSettings
    from namewright.pages.tile_sheet import TileSettings
    from namewright.practice.ordering import Order


def for_card(holds: SheetSettings, size: CardSize) -> CardSettings:
    """Return how a card is made."""
    from namewright.pages.name_card import CardSettings

    return CardSettings(holds.ruling, size, holds.support, holds.language, holds.letters, holds.names_in,
                        holds.beats, holds.whose)


def for_tiles(holds: SheetSettings, side_mm: float) -> TileSettings:
    """Return how tiles are made."""
    from namewright.pages.tile_sheet import TileSettings

    return TileSettings(side_mm, holds.paper, holds.landscape, holds.binding, holds.language, holds.letters,
                        holds.tile_names)


def for_ruled_page(holds: SheetSettings) -> PageSettings:
    """Return how the size finder or a group's sheet is made."""
    return PageSettings(holds.ruling, holds.paper, holds.binding, holds.language, holds.letters)


def for_plan(holds: SheetSettings, order: Order, monday: date | None = None) -> PlanSettings:
    """Return how the plan is made."""
    from namewright.pages.plan.pages import PlanSettings

    return PlanSettings(holds.paper, holds.binding, order, holds.language, monday)


def for_progress(holds: SheetSettings) -> ProgressSettings:
    """Return how pages of progress are made."""
    from namewright.pages.child_progress import ProgressSettings

    return ProgressSettings(holds.paper, holds.binding, holds.language)
