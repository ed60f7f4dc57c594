"""``loads`` as ``tomllib`` has it, by the same reader compiled to machine code where there is one.

A first class reads words, letters and evidence; the standard library takes three times as long for them. Inside a
browser there is no compiled reader.
"""

from __future__ import annotations

try:
    from tomli import loads as loads
except ModuleNotFoundError:
    from tomllib import loads as loads
