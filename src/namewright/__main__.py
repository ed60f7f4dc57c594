"""``python -m namewright``: the command line."""

import sys

from namewright.cli import main

if __name__ == "__main__":
    sys.exit(main())
