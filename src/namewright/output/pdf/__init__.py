"""Pages as one PDF (ISO 32000-1), written batch by batch so that memory does not grow with the class."""

from __future__ import annotations

from namewright.output.pdf.document import write_pdf

__all__ = ["write_pdf"]
