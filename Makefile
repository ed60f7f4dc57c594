# Two commands do everything: make demo, make test. Each sets up what it needs first.
PYTHON ?= python3
VENV   ?= .venv
BIN    := $(VENV)/bin
RUN    := $(BIN)/python

NO_VENV  := Namewright needs Python 3.11 or newer with venv: Debian or Ubuntu "apt install python3-venv", \
Fedora "dnf install python3", macOS "brew install python", Windows python.org.
AS_ROOT  := $(shell if [ "$$(id -u)" = 0 ]; then echo env; elif command -v sudo >/dev/null; then echo sudo -n; fi)

.PHONY: demo test test-long wheel-check site bench bench-long gallery known-cues lint clean system test-system

demo: $(VENV)/.runtime
	@mkdir -p out
	$(BIN)/namewright sheets src/namewright/demo.txt -o out/class.pdf --summary out/for-the-adult.pdf
	@echo "The demo class is in out/class.pdf: print it at 100 %. The order and the reasons are in out/for-the-adult.pdf."

# What a change is tried by at the desk; the longest tests are left to test-long.
test: $(VENV)/.dev test-system
	$(RUN) -m pytest -n auto --dist worksteal -m "not long"

test-long: $(VENV)/.dev test-system
	$(RUN) -m pytest -n auto --dist worksteal -m long

# The wheel, alone in a clean environment: a PDF and a web answer.
wheel-check: $(VENV)/.dev
	$(RUN) tests/wheel/check.py

# The whole program as a folder of static files, which runs inside a browser.
site: $(VENV)/.runtime
	@command -v npm >/dev/null || $(call apt,npm) || { echo "The site needs npm, which fetches Python for browsers." >&2; exit 1; }
	$(RUN) -m namewright.site.build -o dist/site

lint: $(VENV)/.dev
	$(BIN)/ruff check .
	$(BIN)/mypy
	$(BIN)/mypy --config-file tests/mypy.ini gallery tests

bench: $(VENV)/.bench
	$(RUN) tests/bench/run.py
	$(RUN) tests/bench/web.py
	$(RUN) tests/bench/lists.py
	$(RUN) tests/bench/site.py

# Fifty thousand children by two processes: some minutes of both cores, and only with nothing else at work.
bench-long: $(VENV)/.bench
	$(RUN) tests/bench/large.py

gallery: $(VENV)/.dev test-system
	$(RUN) gallery/build.py
	$(RUN) gallery/build_letters.py
	$(RUN) gallery/build_web.py
	$(RUN) gallery/build_site.py

# Where stroke marks, dots and letters stand on the usual lines, worked out once for the first class of all: some minutes.
known-cues: $(VENV)/.dev
	$(RUN) fonts/build_known_cues.py

clean:
	rm -rf $(VENV) out build dist

# Python's own venv, by apt where that may be done, else one line that says what to install.
system:
	@$(PYTHON) -c 'import ensurepip, venv' 2>/dev/null || $(call apt,python3-venv) || { echo '$(NO_VENV)' >&2; exit 1; }

# What only some tests and the gallery need: the cairo library for pictures, a browser, the library that its driver
# needs, and a general-purpose typeface. Those tests say so where they are missing.
test-system:
	@command -v chromium >/dev/null && [ -e /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf ] \
		&& $(PYTHON) -c 'import ctypes.util, sys; sys.exit(not ctypes.util.find_library("atomic") or not ctypes.util.find_library("cairo"))' \
		|| $(call apt,libcairo2 chromium libatomic1 fonts-dejavu-core fonts-dejavu-extra \
			fonts-liberation fonts-cantarell fonts-inter-variable tesseract-ocr) \
		|| echo "Tests of pictures, in a browser and against a typeface need Debian's libcairo2, chromium, libatomic1 and fonts-dejavu-core." >&2

apt = { [ -n "$(AS_ROOT)" ] && command -v apt-get >/dev/null \
	&& $(AS_ROOT) apt-get -qq update && $(AS_ROOT) apt-get -qq install -y $(1) >/dev/null; }

$(VENV)/bin/python: | system
	$(PYTHON) -m venv $(VENV)

$(VENV)/.runtime: pyproject.toml | $(VENV)/bin/python
	$(RUN) -m pip install --quiet --disable-pip-version-check -e .
	@touch $@

$(VENV)/.dev: pyproject.toml | $(VENV)/bin/python
	$(RUN) -m pip install --quiet --disable-pip-version-check -e '.[dev]'
	@touch $@ $(VENV)/.runtime

$(VENV)/.bench: pyproject.toml | $(VENV)/bin/python
	$(RUN) -m pip install --quiet --disable-pip-version-check -e '.[dev,bench]'
	@touch $@ $(VENV)/.dev $(VENV)/.runtime
