"""Connections that dawdle are cut, so that a few of them do not keep everybody else waiting.

A request must have come whole within half a minute of its first byte, however the bytes are spread, and an address may
hold so many connections and no more, this machine's own apart. So many may wait for a request in all: one more ends
the oldest of them, first of those that never sent a whole one, so that who asks at once is always let in. Out of
scope: connections on which nothing comes at all, which the server itself ends.
"""

from __future__ import annotations

import time
from typing import Any, TypeVar

from waitress.channel import HTTPChannel
from waitress.server import BaseWSGIServer

WHOLE_REQUEST_S = 30.0
MAX_OF_ONE_ADDRESS = 24
MAX_WAITING = 200  # of the connections that the server takes (``serve``): the others are for those that are answered
_LOOPBACK = ("127.", "::1")
Server = TypeVar("Server")


class PromptChannel(HTTPChannel):
    """A connection whose requests may not dawdle."""

    _begun = 0.0
    _asked = False  # a whole request has come

    def __init__(self, server: Any, sock: Any, addr: Any, adj: Any, map: Any = None) -> None:
        super().__init__(server, sock, addr, adj, map=map)
        host = str(addr[0])
        same = sum(str(each.addr[0]) == host for each in list(server.active_channels.values()))
        if same > MAX_OF_ONE_ADDRESS and not host.startswith(_LOOPBACK):
            self.will_close = True
        _shed([each for each in list((map or {}).values()) if isinstance(each, PromptChannel) and each is not self])

    def received(self, data: bytes) -> bool:
        """Take what has come, unless its request has been coming for too long."""
        now = time.monotonic()
        if self.request is None:
            self._begun = now
        elif now - self._begun > WHOLE_REQUEST_S:
            self.will_close = True
            return False
        taken = bool(super().received(data))
        self._asked = self._asked or bool(self.requests)
        return taken


def _shed(others: list[PromptChannel]) -> None:
    """Make room for one more beside the others, where too many of them wait for a request."""
    waiting = [each for each in others if not each.requests and not each.will_close]
    waiting.sort(key=lambda each: (each._asked, each.creation_time))
    for each in waiting[:max(0, len(waiting) + 1 - MAX_WAITING)]:
        each.will_close = True  # at the next turn of the loop


def hurried(server: Server) -> Server:
    """Let a server, on however many addresses, make such connections."""
    listening = [server, *getattr(server, "map", {}).values()]
    for one in listening:
        if isinstance(one, BaseWSGIServer):
            one.channel_class = PromptChannel
    return server
