"""The page in the browser, for the teacher, the aide and the specialist: one more edge of the house.

Thin views over the engine and the class's file. ``create_app`` makes the application; ``serve`` runs it on this
machine. Nothing here decides what stands on a page.
"""

from namewright.web.app import create_app

__all__ = ["create_app"]
